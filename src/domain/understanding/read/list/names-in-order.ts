import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold, tokensOf } from '../text/tokens.ts'
import { nameAt } from '../whom/refs.ts'

const said = spoken.rosters
const inOrder = anyOf(said.inOrder)
const joint = new RegExp(`,| ${said.and} `)

/** "Reyes, Reyes-Cobb, Ito in that order": as many names as there are rows without one go to those rows in turn. */
export const readNamesInOrder = (text: string, draft: Draft): readonly Patch[] => {
  const sentence = text.split(/[.!?\n]/).find((one) => inOrder.test(fold(one)))
  if (sentence === undefined) return []
  const end = inOrder.exec(fold(sentence))?.index ?? 0
  const names = sentence
    .slice(0, end)
    .split(joint)
    .flatMap((part) => {
      const tokens = tokensOf(part)
      const at = tokens.findIndex((_, index) => nameAt(tokens, index, () => false) !== null)
      return nameAt(tokens, at, () => false)?.name ?? []
    })
  const nameless = Object.entries(draft.rows).flatMap(([key, row]) => (row.name === undefined ? [key] : []))
  if (names.length === 0 || names.length !== nameless.length) return []
  return nameless.map((key, index) => ({ path: ['rows', key, 'name'], value: names[index] ?? null }))
}
