import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { children, classOf } from './age-answer.ts'
import { anyOf, fold } from './tokens.ts'

const said = spoken.ages

const grownUp = new RegExp(`\\b${said.grownUp}\\b|(?:^|[,.;] ?)${said.adults}(?=[,.;]|$)`)
const years = new RegExp(`\\b(\\d{1,2})(?:\\s*(?:-|${said.to})\\s*(\\d{1,2}))?\\s*${said.years}\\b`)

const group = anyOf(said.group)

/** "All of them are 9 or 10", "todas tienen 9 o 10": said of everybody, two figures that end the clause are years. */
const bareYears = new RegExp(
  `\\b${said.everyone}${said.are}?(?: ${said.all})?(?: ${said.between})? (\\d{1,2}) ?(?:-|${said.to}) ?(\\d{1,2})(?= *(?:[.,;!\\n]|$))`,
)

const everyonesYears = (folded: string): Draft['ages'] | null => {
  const bare = bareYears.exec(folded)
  if (bare !== null && Number(bare[2]) < 20 && Number(bare[1]) < Number(bare[2]))
    return classOf(Number(bare[1])) === classOf(Number(bare[2])) ? classOf(Number(bare[1])) : 'mixed'
  const found = years.exec(folded)
  if (found === null || !group.test(folded)) return null
  const [low, high] = [Number(found[1]), Number(found[2] ?? found[1])]
  return classOf(low) === classOf(high) ? classOf(low) : 'mixed'
}

/** What a message says of the players' ages. Sizes say nothing of them. */
export const readAges = (text: string): readonly Patch[] => {
  const folded = fold(text)
  const all = everyonesYears(folded)
  if (all !== null) return [{ path: ['ages'], value: all }]
  if (children.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  return grownUp.test(folded) ? [{ path: ['ages'], value: '13-up' }] : []
}
