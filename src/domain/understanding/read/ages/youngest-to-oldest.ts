import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { blanked, fold } from '../text/tokens.ts'
import { classOf } from './age-answer.ts'

const said = spoken.ages
const figure = `(?:(?:${said.fewAre}|${said.isOld}|${said.aged}) ?)*(\\d{1,2})(?: ?(?:-|–|${said.to}) ?(\\d{1,2}))?(?: ?(?:${said.years}))?`
const ends = '(?= *(?:[.,;!)\\n]|$))'
/** "The youngest is 6, oldest 8", "la más chica tiene 5 y las demás de 8 a 10". */
const told = new RegExp(
  `(?<!\\p{L})${said.youngest},? ?${figure}[ ,;]+(?:${said.to} )?(?:${said.oldest}|${said.others}),? ?${figure}${ends}`,
  'u',
)
const backwards = new RegExp(
  `(?<!\\p{L})${said.oldest},? ?${figure}[ ,;]+(?:${said.to} )?${said.youngest},? ?${figure}${ends}`,
  'u',
)
const eldest = 99

/** Years of the youngest and of the oldest, or of the others: those of all. `rest` is the text without them. */
export const readYoungestToOldest = (text: string): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const folded = fold(text)
  const found = told.exec(folded) ?? backwards.exec(folded)
  const figures = (found?.slice(1) ?? []).flatMap((one) => (one === undefined || !/^\d{1,2}$/.test(one) ? [] : [Number(one)]))
  const [low, high] = [Math.min(...figures), Math.max(...figures)]
  if (found === null || figures.length < 2 || high > eldest) return { patches: [], rest: text }
  const value = classOf(low) === classOf(high) ? classOf(low) : 'mixed'
  return { patches: [{ path: ['ages'], value }], rest: blanked(text, found.index, found.index + found[0].length) }
}
