import type { Patch } from '../patch.ts'
import type { Term } from './lexicon.ts'
import { isNumber, isWord, type Token } from './tokens.ts'

const people: readonly string[] = [
  'players',
  'player',
  'kids',
  'girls',
  'boys',
  'jugadores',
  'jugadoras',
  'ninos',
  'ninas',
  'people',
  'personas',
  'pieces',
  'piezas',
  'girls',
  'athletes',
  'total',
  'muchachos',
  'muchachas',
  'coaches',
  'guys',
]

/** "6 players", "son 4 niñas": how many there shall be in all. */
export const readCount = (tokens: readonly Token[], terms: readonly Term[]): readonly Patch[] => {
  for (const [at, token] of tokens.entries()) {
    if (!isWord(token, ...people)) continue
    const before = tokens[at - 1]
    const term = terms.find((one) => one.to === at && one.meaning.kind === 'count')
    const count = isNumber(before) ? Number(before?.text) : term?.meaning.kind === 'count' ? term.meaning.id : 0
    const group = tokens[at - 2]?.end === before?.start && isWord(tokens[at - 2], 'u')
    if (!group && Number.isInteger(count) && count > 1 && count <= 500) return [{ path: ['count'], value: count }]
  }
  return []
}
