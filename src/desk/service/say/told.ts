import type { Told } from '../../../ports/counter-desk.ts'

export const doneSaying = (said: string): Told => ({ said, isDone: true })

/** Where an act answers with a sentence only when it was not done. */
export const toldWhy = (said: string | null): Told => ({ said, isDone: said === null })
