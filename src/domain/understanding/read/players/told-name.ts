import { listed } from '../../words/languages.ts'
import { type Change, nothing, span } from '../list/change.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { nearName, renamed, type Spoken } from '../text/near-names.ts'
import type { Stretch } from '../text/statements.ts'
import { fold, isCapital, isWord, type Token } from '../text/tokens.ts'
import { nameAt, rowsByName } from '../whom/refs.ts'
import { onlyKey, outside, type Told } from './told.ts'

/** "one L", "two f's", "con i": letters that are told, and no size. */
const isLetter = (tokens: readonly Token[], at: number): boolean =>
  /^\p{L}(?:'?s)?$/u.test(tokens[at]?.text ?? '') && isWord(tokens[at - 1], ...listed.told.beforeLetter)

type Named = { readonly at: number; readonly name: string }

/** Words with a capital that name nobody of the list, those that go together as one. */
const strangers = (told: Told): readonly Named[] => {
  const { tokens, scene } = told
  const free = outside(told)
  const found: (Named & { readonly to: number })[] = []
  for (const at of free) {
    if (at < (found.at(-1)?.to ?? 0) || !isCapital(tokens[at]) || (tokens[at]?.text.length ?? 0) < 3) continue
    const named = sizeAt(tokens, at) === null ? nameAt(tokens, at, () => false) : null
    if (named !== null && rowsByName(scene.draft.rows, named.name).length === 0) found.push({ at, ...named })
  }
  return found
}

/** "not Petrov", "en vez de Gordo", "no va como Lupita": the name that was. */
const refusesOld = ({ tokens, group }: Told): boolean => {
  const named = group.places.length > 1 || group.refs.some(({ by }) => by === 'name')
  const refused = ({ from }: Stretch): boolean =>
    tokens.slice(Math.max(0, from - 4), from).some((token) => isWord(token, ...listed.again.refusing, ...listed.changes.not))
  return named && group.places.some(refused)
}

/** Behind all words that name the player. */
const behind = ({ group }: Told, { at }: Named): boolean => group.places.every(({ to }) => at >= to)

/** One that is near to the name that was, where names are spoken of; else the only one behind it where the old one is refused. */
const newName = (told: Told, had: string): string | null => {
  const fresh = strangers(told)
  const speaks = told.tokens.some((token, at) => isWord(token, ...listed.told.naming) || isLetter(told.tokens, at))
  const refused = refusesOld(told)
  const written = speaks ? accented(told, had) : null
  if (written !== null) return written
  const near = speaks || refused ? fresh.flatMap(({ name }) => nearName(had, name) ?? []) : []
  const byNumber = speaks && told.group.refs.every(({ by }) => by === 'number')
  const other = refused || byNumber ? fresh.filter((one) => behind(told, one)).map(({ name }) => name) : []
  const [only, ...more] = near.length > 0 ? near : other
  return more.length > 0 ? null : (only ?? null)
}

/** "el nombre de Nuñez va con acento: Núñez": a word of the name written with the accents that it lacks. */
const accented = ({ tokens, group }: Told, had: string): string | null => {
  const words = had.split(' ')
  const spoken = group.places.flatMap(({ from, to }) => tokens.slice(from, to)).filter(({ text }) => /[^\x20-\x7e]/.test(text))
  const fresh = spoken.find(({ text }) => !words.includes(text) && words.some((word) => fold(word) === fold(text)))
  return fresh === undefined ? null : words.map((word) => (fold(word) === fold(fresh.text) ? fresh.text : word)).join(' ')
}

/** The words of the name by which somebody is spoken of, and whether a surname is told. */
const spokenOf = ({ tokens, group }: Told): Spoken => ({
  words: group.places.flatMap(({ from, to }) => tokens.slice(from, to)).map(({ text }) => fold(text)),
  surname: tokens.some((token) => isWord(token, ...listed.told.surname)),
})

/** "la 14 sí es Paty pero con i, Pati", "en vez de Gordo ponle su apellido, Quiroz": another name of the one who is spoken of. */
export const nameTold = (told: Told): Change => {
  const key = onlyKey(told)
  const had = key === null ? undefined : told.scene.draft.rows[key]?.name
  const value = had === undefined ? null : newName(told, had)
  if (key === null || had === undefined || value === null) return nothing
  return {
    ...nothing,
    patches: [{ path: ['rows', key, 'name'], value: renamed(had, value, spokenOf(told)) }],
    taken: span(0, told.tokens.length),
  }
}
