import { sizeAt } from '../sizes/sizes.ts'
import { tokensOf } from '../text/tokens.ts'

const position = /^\s*[A-Z]{1,3}(?:\/[A-Z]{1,3})?\s*$/u

/** "#1 - GK - Bo Ferris - AL": capitals in a cell of their own beside a name in small letters are where somebody plays. */
export const withoutPosition = (cells: readonly string[]): readonly string[] => {
  const named = cells.some((cell) => /\p{Lu}\p{Ll}+/u.test(cell) && sizeAt(tokensOf(cell), 0, true) === null)
  const sized = cells.filter((cell) => position.test(cell) && sizeAt(tokensOf(cell), 0, true) !== null)
  return named ? cells.filter((cell) => !position.test(cell) || cell === sized.at(-1)) : cells
}
