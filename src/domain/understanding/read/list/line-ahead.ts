import { tokensOf } from '../text/tokens.ts'

/** What stands before a list in its line, as a line of its own: "Okay," and "plus" are nobody's names. */
export const aheadOf = (words: string): string => {
  const ahead = words.trim()
  const short = ahead !== '' && tokensOf(ahead).length <= 6 && !/[.!?:]$/.test(ahead)
  return short ? `${ahead.replace(/[,;\s]+$/, '')}:` : ahead
}
