import type { Player } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { sizeAt } from './sizes.ts'

/** "#9 who needs an XL": a size in the same clause behind a player counts before any that stands before. */
export const sizeRight = (tokens: readonly Token[], at: number, player: Player): Player => {
  if (player.size !== undefined) return player
  const end = tokens.findIndex((token, index) => index >= at && (token.kind === 'break' || [',', '.', ';'].includes(token.text)))
  const clause = tokens.slice(0, Math.min(end < 0 ? tokens.length : end, at + 6))
  return sizeAfter(clause, at, player)
}

/** "size 2T, number 1, name Benji" in one stretch: the size may stand before. */
export const sizeBefore = (tokens: readonly Token[], { at, since }: { at: number; since: number }, player: Player): Player => {
  if (player.size !== undefined) return player
  for (let back = at - 1; back > Math.max(0, at - 8) && back >= since; back -= 1) {
    if (tokens[back]?.kind === 'break' || tokens[back]?.text === '.') break
    const size = sizeAt(tokens, back)
    if (size?.size !== undefined && size.to <= at)
      return { ...player, size: size.size, ...(size.fit === undefined ? {} : { fit: size.fit }) }
  }
  return player
}

export const sizeAfter = (tokens: readonly Token[], at: number, player: Player): Player => {
  if (player.size !== undefined) return player
  for (let ahead = at; ahead < Math.min(tokens.length, at + 9); ahead += 1) {
    if (tokens[ahead]?.kind === 'break') break
    const size = sizeAt(tokens, ahead)
    if (size?.size !== undefined) return { ...player, size: size.size, ...(size.fit === undefined ? {} : { fit: size.fit }) }
  }
  return player
}

/** "he's 2 years old" close before a player. */
export const ageBefore = (tokens: readonly Token[], at: number): Player['age'] => {
  for (let back = at; back > Math.max(0, at - 14); back -= 1) {
    if (tokens[back]?.kind === 'break') break
    const years = isWord(tokens[back], ...listed.players.years) ? Number(tokens[back - 1]?.text) : Number.NaN
    if (Number.isInteger(years)) return years < 3 ? 'under-3' : years < 13 ? '3-12' : '13-up'
  }
  return undefined
}
