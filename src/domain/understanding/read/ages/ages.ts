import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'
import { children, classOf } from './age-answer.ts'
import { yearsIn } from './age-spans.ts'

const said = spoken.ages

const grownUp = new RegExp(`\\b${said.grownUp}\\b|(?:^|[,.;] ?)${said.adults}(?=[,.;]|$)`)
const years = new RegExp(`\\b(\\d{1,2})(?:\\s*(?:-|${said.to})\\s*(\\d{1,2}))?\\s*${said.years}\\b`)

const group = anyOf(said.group)

/** "All of them are 9 or 10", "todas tienen 9 o 10", "they are 13+": said of everybody, figures that end the clause are years. */
const bareYears = new RegExp(
  `\\b${said.everyone}${said.are}?(?: ${said.all})?(?: ${said.between})? (\\d{1,2}) ?(?:(?:-|${said.to}) ?(\\d{1,2})|\\+|${said.up})(?= *(?:[.,;!\\n]|$))`,
)
/** Of years "and up": nobody is older. */
const eldest = 19

/** "For 2 year olds", "para niñas de dos añitos": who wears them is spoken of by years. */
const wearers = new RegExp(`(?<![\\p{L}\\d])${said.wearers}(?![\\p{L}])`, 'gu')
const oneWearer = new RegExp(`^(?:for |of )?${said.oneWearer}$`, 'u')
/** "Ages 2 to 4", "edades de 2 a 4". */
const labelled = new RegExp(
  `(?:^|[,.;(]\\s*|\\b${said.ofAges} )${said.agesAre} (\\d{1,2}) ?(?:-|${said.to}) ?(\\d{1,2})(?![\\d/])`,
)

const between = (low: number, high: number): Draft['ages'] => (classOf(low) === classOf(high) ? classOf(low) : 'mixed')

/** Of one who is under three it is asked who that is. */
const wearersYears = (folded: string): Draft['ages'] | null => {
  const found = labelled.exec(folded)
  if (found !== null) return between(Number(found[1]), Number(found[2]))
  const told = [...folded.matchAll(wearers)].map(([words]) => words)
  const spans = told.flatMap(yearsIn)
  if (spans.length === 0) return null
  const [low, high] = [Math.min(...spans.map(({ from }) => from)), Math.max(...spans.map(({ to }) => to))]
  return low < 3 && told.some((words) => oneWearer.test(words)) ? 'mixed' : between(low, high)
}

const everyonesYears = (folded: string): Draft['ages'] | null => {
  const bare = bareYears.exec(folded)
  const [youngest, oldest] = [Number(bare?.[1]), Number(bare?.[2] ?? eldest)]
  if (oldest <= eldest && youngest < oldest) return classOf(youngest) === classOf(oldest) ? classOf(youngest) : 'mixed'
  const found = years.exec(folded)
  if (found === null || !group.test(folded)) return wearersYears(folded)
  const [low, high] = [Number(found[1]), Number(found[2] ?? found[1])]
  return classOf(low) === classOf(high) ? classOf(low) : 'mixed'
}

const excepted = new RegExp(
  `(?<![\\p{L}])(?:${said.except})(?![\\p{L}])(?= (?:${said.exceptOf} )?(?:\\p{Lu}|#|\\d|${said.some}))`,
  'u',
)

const others = anyOf(said.others)

/** "Staff shirts for Westgate Elementary": the school tells nothing of who wears them. */
const elders = anyOf(said.elders)

/** "All adults except Zoe", "the rest are adults": the clause is not of everybody. */
const hasExceptions = (text: string): boolean =>
  [...text.matchAll(/[^.!?;\n]+/g)].some(([clause]) => {
    const folded = fold(clause)
    const told = grownUp.test(folded) || children.test(folded) || everyonesYears(folded) !== null
    return told && (excepted.test(clause) || others.test(folded))
  })

/** What a message says of the players' ages. Sizes say nothing of them. */
export const readAges = (text: string): readonly Patch[] => {
  const folded = fold(text)
  if (hasExceptions(text)) return [{ path: ['ages'], value: 'mixed' }]
  const all = everyonesYears(folded)
  if (all !== null) return [{ path: ['ages'], value: all }]
  if (children.test(folded) && !elders.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  return grownUp.test(folded) ? [{ path: ['ages'], value: '13-up' }] : []
}
