import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { hasSize } from '../sizes/sizes.ts'
import { blanked, fold, isWord, tokensOf } from '../text/tokens.ts'
import { type Ref, refAt } from '../whom/refs.ts'
import { readAgeAnswer } from './age-answer.ts'

const said = spoken.ages
const ahead = `${said.turning}|${said.turnsOne}|${said.almost}`
/** "is 4", "'s 7", "turns 3 that day", "apenas cumple 3 en agosto": years behind a name, with no other figure. */
const years = new RegExp(
  `^ ?((?:(?:'?s|${said.isOld}|${said.aged}|${ahead}) ?)*)(\\d{1,2})(?![\\d/:])(?: ?(?:${said.years}))?((?: [\\p{L}']+){0,5}) *$`,
  'u',
)
const turning = new RegExp(`(?<!\\p{L})(?:${ahead})(?!\\p{L})`, 'u')

type Clause = { readonly from: number; readonly to: number; readonly text: string }
type Told = { readonly keys: readonly string[]; readonly age: number; readonly from: number; readonly to: number }

/** Nobody of the order wears a number, so that a figure behind a name is none. */
const isUnnumbered = ({ rows, marks }: Draft): boolean =>
  Object.values(rows).every(({ number }) => number === undefined) &&
  !Object.values(marks).some(({ content, wanted }) => content === 'number' && wanted !== false)

/** What stands between pauses and "and", what is in brackets left out. */
const clausesOf = (text: string): readonly Clause[] => {
  const plain = text.replace(/\([^)\n]*\)/g, (words) => ' '.repeat(words.length))
  const joints = tokensOf(plain).filter(
    (token) =>
      token.kind === 'break' || [',', ';', '.', '!', '?', '&'].includes(token.text) || isWord(token, ...listed.again.and),
  )
  return [{ end: 0 }, ...joints].flatMap(({ end: from }, at) => {
    const to = joints[at]?.start ?? text.length
    return to > from ? [{ from, to, text: plain.slice(from, to) }] : []
  })
}

const nameAhead = (clause: Clause, { rows }: Draft): { readonly ref: Ref; readonly behind: string } | null => {
  const tokens = tokensOf(clause.text)
  const ref = refAt(tokens, 0, rows)
  if (ref === null || ref.by !== 'name' || ref.keys.length !== 1) return null
  return { ref, behind: fold(clause.text.slice(tokens[ref.to - 1]?.end ?? 0)) }
}

/** The years that words behind a name tell; a year less where they are still to come. */
const ageIn = (behind: string): number | null => {
  const [whole, lead = '', figure, tail = ''] = years.exec(behind) ?? []
  if (whole === undefined || hasSize(tokensOf(tail))) return null
  return Number(figure) - (turning.test(lead) ? 1 : 0)
}

type Open = { readonly keys: readonly string[]; readonly from: number }

/** Ages clause by clause; names alone go with the next clause: "Emi y Nico tienen 2". */
const toldIn = (text: string, draft: Draft): readonly Told[] => {
  const told: Told[] = []
  let open: Open | null = null
  for (const clause of clausesOf(text)) {
    const named = nameAhead(clause, draft)
    const age = named === null ? null : ageIn(named.behind)
    const keys: readonly string[] = [...(open?.keys ?? []), ...(named?.ref.keys ?? [])]
    const whom: Open = { keys, from: open?.from ?? clause.from }
    open = named !== null && named.behind.trim() === '' ? whom : null
    if (age !== null) told.push({ ...whom, age, to: clause.to })
  }
  return told
}

/** Two and more whose years are told, or one with a word of years. */
const isSure = (text: string, told: readonly Told[]): boolean =>
  told.length > 1 || told.some(({ from, to }) => new RegExp(`\\d ?(?:${said.years})\\b`).test(fold(text.slice(from, to))))

/** "Junie is 2, Beckett turns 3 that day": ages by name in an order without numbers; `rest` is the text without them. */
export const readAgesByName = (text: string, draft: Draft): { readonly patches: readonly Patch[]; readonly rest: string } => {
  const told = isUnnumbered(draft) && Object.keys(draft.rows).length > 0 ? toldIn(text, draft) : []
  if (!isSure(text, told)) return { patches: [], rest: text }
  const nameOf = (key: string): string => draft.rows[key]?.name ?? ''
  const words = told.flatMap(({ keys, age }) => keys.map((key) => `${nameOf(key)}: ${age} years.`)).join(' ')
  const rest = told.reduce((left, { from, to }) => blanked(left, from, to), text)
  return { patches: readAgeAnswer(words, draft), rest }
}
