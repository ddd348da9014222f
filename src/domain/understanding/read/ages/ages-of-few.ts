import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { fold } from '../text/tokens.ts'
import { classOf } from './age-answer.ts'

const said = spoken.ages
const monthsInYear = 12
const end = `(?= *(?:[.,;!?\\n]|$)| ${spoken.rosters.and} )`

/** "Two of them are 2", "una de 2", "the youngest is 20 months". */
const told = new RegExp(
  `(?<!\\w)${said.few}(?: ${said.ofThem})?,? ?${said.fewAre} (\\d{1,2})(?:[ -]?(?:(${said.months})|${said.years}))?${end}`,
  'g',
)

/** Years of a few of whom another age is told than of all the others: who they are is asked, and nothing is guessed for anybody. */
export const readAgesOfFew = (text: string, { ages }: Draft): readonly Patch[] => {
  if (ages === undefined || ages === 'unknown' || ages === 'mixed') return []
  const few = [...fold(text).matchAll(told)].map(
    ([, figure, months]) => Number(figure) / (months === undefined ? 1 : monthsInYear),
  )
  return few.some((years) => classOf(years) !== ages) ? [{ path: ['ages'], value: 'mixed' }] : []
}
