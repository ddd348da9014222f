import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { spoken } from '../words/languages.ts'
import { refsIn } from './refs.ts'
import { anyOf, fold, tokensOf } from './tokens.ts'

const said = spoken.ages
const no = spoken.answers.no

const grownUp = new RegExp(`\\b${said.grownUp}\\b|(?:^|[,.;] ?)${said.adults}(?=[,.;]|$)`)
const children = anyOf(said.children)
const years = new RegExp(`\\b(\\d{1,2})(?:\\s*(?:-|${said.to})\\s*(\\d{1,2}))?\\s*${said.years}\\b`)

const classOf = (age: number): '13-up' | '3-12' | 'under-3' => (age < 3 ? 'under-3' : age < 13 ? '3-12' : '13-up')

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

type Scene = { readonly draft: Draft; readonly asked: string | null }

const nobody = new RegExp(`\\b${said.nobody}\\b|^${no}\\b`)
const everybody = anyOf(said.everybody)
const underThree = anyOf(said.underThree)
const older = new RegExp(`\\b${said.older}`)
const some = new RegExp(`^${said.some}\\b`)
const refused = new RegExp(`^${no}\\b`)

/** The answer to "is anyone 12 or younger, under 3?": nobody, all, some, or these players by name or number. */
const answered = (text: string, { draft }: Scene): readonly Patch[] => {
  const folded = fold(text)
  const under3 = underThree.test(folded)
  const refs = refsIn(tokensOf(text), draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
  if (refs.length > 0 && !refused.test(folded)) {
    const age = under3 && !/12/.test(folded) ? 'under-3' : '3-12'
    return [{ path: ['ages'], value: '13-up' }, ...refs.map((key): Patch => ({ path: ['rows', key, 'age'], value: age }))]
  }
  if (everybody.test(folded) && !older.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  if (nobody.test(folded)) return [{ path: ['ages'], value: '13-up' }]
  return some.test(folded) ? [{ path: ['ages'], value: 'mixed' }] : []
}

/** What a message says of the players' ages. Sizes say nothing of them. */
export const readAges = (text: string, scene: Scene): readonly Patch[] => {
  const folded = fold(text)
  if (scene.asked === 'ask-ages') {
    const patches = answered(text, scene)
    if (patches.length > 0) return patches
  }
  const all = everyonesYears(folded)
  if (all !== null) return [{ path: ['ages'], value: all }]
  if (children.test(folded)) return [{ path: ['ages'], value: '3-12' }]
  return grownUp.test(folded) ? [{ path: ['ages'], value: '13-up' }] : []
}
