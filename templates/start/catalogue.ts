import type { OpenProblems } from '../../src/ports/opening.ts'

/** What is said when the service cannot start, by code. */
export type StartCatalogue = { readonly [C in keyof OpenProblems]: (facts: OpenProblems[C]) => string }
