import { listed, months, weekdays } from '../../words/languages.ts'
import { type Change, nothing, span } from '../list/change.ts'
import { isNumber, isWord, type Token } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'
import { onlyKey, outside, type Told } from './told.ts'

const calendar: readonly string[] = [...months, ...weekdays].flat()

/** A figure that is no sum, share, day, hour or measure. */
const isBare = (tokens: readonly Token[], at: number): boolean => {
  const [before, token, next] = [tokens[at - 1], tokens[at], tokens[at + 1]]
  if (token === undefined || !isNumber(token) || !/^\d{1,3}$/.test(token.text)) return false
  if (before?.text === '$' || isWord(before, ...calendar)) return false
  if (next?.kind === 'word') return next.start > token.end && isWord(next, ...listed.told.tails)
  return ![':', '%', '"'].includes(next?.text ?? '')
}

/** "wears 13", "asked for 13", "trae el 32": a number, and no amount. */
export const isWorn = (tokens: readonly Token[], at: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 3), at)
  if (before.some((token) => isWord(token, ...listed.told.wearing))) return true
  const marked = isWord(tokens[at - 1], ...listed.told.article) || /^0|^\d\d/.test(tokens[at]?.text ?? '')
  return marked && before.some((token) => isWord(token, ...listed.told.choosing))
}

/** "Quigley asked for 13": the one number told of one player that nobody of the list has. */
export const numberTold = (told: Told): Change => {
  const { tokens, group, scene } = told
  const key = onlyKey(told)
  const places = key === null ? [] : outside(told).filter((at) => isBare(tokens, at))
  const value = tokens[places[0] ?? -1]?.text
  const sure = places.some((at) => isWorn(tokens, at)) && new Set(places.map((at) => tokens[at]?.text)).size === 1
  if (key === null || value === undefined || !sure || rowsByNumber(scene.draft.rows, value).length > 0) return nothing
  const taken = new Set([...group.places.flatMap(({ from, to }) => [...span(from, to)]), ...places])
  return { ...nothing, patches: [{ path: ['rows', key, 'number'], value }], taken }
}
