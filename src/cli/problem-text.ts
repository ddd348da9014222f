import { sayProblem } from '../../templates/replies/say.ts'
import type { Problem } from '../domain/result/result.ts'
import { plainShow } from '../domain/shop/plain-show.ts'

/** One problem in words for a person at a terminal: what happened and what to do. */
export const problemText = (problem: Problem): string => sayProblem(problem, 'en', plainShow)
