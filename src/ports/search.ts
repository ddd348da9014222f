import type { Book, Slot } from '../domain/schedule/book/operation.ts'

/** A book with the plan it has, to be searched for a better one: seeded, and counted rather than timed. */
export type SearchTask = {
  readonly book: Book
  readonly slots: readonly Slot[]
  readonly seed: number
  readonly seconds: number
}

/** The plan that was found, null when the book cannot be planned. Runs beside the process's own work. */
export type SearchPlan = (task: SearchTask) => Promise<readonly Slot[] | null>
