import type { Severity } from '../result/result.ts'
import type { Rulebook } from './rulebook.ts'

/** What every finding under a rule book says about where it stands. */
export const bookFacts = (book: Rulebook) => ({
  body: book.body,
  clause: book.clause,
  edition: book.edition,
  mark: book.mark,
  source: `${book.body} ${book.clause}, ${book.edition} (${book.mark})`,
})

/** A rule that was read or quoted may refuse; one from memory, or given as about so much, only cautions. */
export const bookSeverity = (book: Rulebook, figure: string): Severity => {
  const weak = book.mark === 'memory' || book.fromMemory.includes(figure) || book.approximate.includes(figure)
  return weak ? 'caution' : 'stop'
}

/** How far a single figure is known, for the facts of a finding. */
export const markOf = (book: Rulebook, figure: string): string => {
  if (book.fromMemory.includes(figure)) return 'memory'
  return book.approximate.includes(figure) ? 'approximate' : book.mark
}
