import { sizeAt } from '../sizes/sizes.ts'
import { tokensOf } from '../text/tokens.ts'

type Row = {
  readonly name?: string | undefined
  readonly number?: string | undefined
  readonly size?: string | undefined
  readonly note?: string | undefined
}

/** A captain's or an alternate's letter that ends a line, bare, in quotes or in brackets. */
const letter = /^(.*[^\s,;(-])\s*(?:[,;-]\s*|\s)(?:["“(]\s*)?([CA])(?:\s*["”)])?\s*$/u

/** A line without a figure is a player's where a size ends it. */
export const endsInSize = (text: string): boolean => {
  const tokens = tokensOf(text)
  return [3, 2, 1].some((back) => tokens.length > back && sizeAt(tokens, tokens.length - back)?.to === tokens.length)
}

/**
 * "4 Brandt L A", "9 Ruiz M (C)": a letter behind the size is no part of the name. It is noted on the line; whether it is to be pressed,
 * and where, was not said.
 */
export const letteredLine = <Line extends Row>(line: string, read: (line: string) => Line | null): Line | null => {
  const [, player, own] = letter.exec(line) ?? []
  if (player === undefined || own === undefined || !endsInSize(player)) return null
  const row = read(player)
  const whole = row?.name !== undefined && /\p{L}{2}/u.test(row.name) && row.number !== undefined && row.size !== undefined
  return row !== null && whole && row.note === undefined ? { ...row, note: own } : null
}
