import type { Asked } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { readOccasion } from '../calendar/occasions.ts'
import { type Lexicon, type Term, termsOf } from '../text/lexicon.ts'
import { isWord, type Token, tokensOf } from '../text/tokens.ts'
import { readCount } from './counts.ts'
import { readPeople } from './people.ts'
import { readTeam } from './team.ts'

type Scene = { readonly text: string; readonly before: Draft; readonly lexicon: Lexicon; readonly asked: Asked | null }

/** "Grease Lightning Roller Derby here", "Copper Ridge Cicadas here" is a team and nobody's name. */
const namesTeam = ({ lexicon, text }: Scene, { path, value }: Patch): boolean => {
  if (path[0] !== 'orders' || typeof value !== 'string') return false
  const words = tokensOf(value)
  const behind = tokensOf(text.slice(text.indexOf(value) + value.length))[0]
  const many = words.length > 2 && /s$/u.test(value) && isWord(behind, ...listed.team.groups)
  return many || termsOf(lexicon, words).some((term) => term.meaning.kind === 'sport')
}

/** Where the words of a team's name stand: a colour in them is no garment's. */
export const nameSpans = (tokens: readonly Token[], team: string | undefined): ReadonlySet<number> => {
  const words = tokensOf(team ?? '').map((token) => token.text)
  if (words.length < 2 || team === team?.toUpperCase()) return new Set()
  return new Set(
    [...tokens.keys()]
      .filter((at) => words.every((word, index) => tokens[at + index]?.text === word))
      .flatMap((at) => words.map((_, index) => at + index)),
  )
}

const labelled = new Set(listed.rosters.labels)

/** "Nombre del equipo:", "Team name:" at the head of a line says what follows and speaks of nothing to press. */
export const labels = (tokens: readonly Token[]): ReadonlySet<number> => {
  const taken: number[] = []
  for (const [at, token] of tokens.entries()) {
    if (token.text !== ':') continue
    const from = tokens.slice(0, at).findLastIndex((one) => one.kind === 'break') + 1
    const words = tokens.slice(from, at)
    if (words.length <= 4 && words.some((word) => labelled.has(word.key))) for (let i = from; i < at; i += 1) taken.push(i)
  }
  return new Set(taken)
}

export const headPatches = (scene: Scene, tokens: readonly Token[], terms: readonly Term[]): readonly Patch[] => {
  const people = readPeople(scene.text, scene.before.orders).filter((patch) => !namesTeam(scene, patch))
  const names = people.flatMap((patch) =>
    typeof patch.value === 'string' && patch.path.length === 1 && patch.path[0] !== 'handOver' ? [patch.value] : [],
  )
  const sports = terms.flatMap((term) => (term.meaning.kind === 'sport' ? [term] : []))
  const team = readTeam({
    tokens,
    text: scene.text,
    lexicon: scene.lexicon,
    people: names,
    sports: new Set(sports.flatMap((term) => [term.from, term.to - 1])),
  })
  const [sport] = sports
  const use = terms.find((term) => term.meaning.kind === 'use')?.meaning
  const staff = tokens.some((token) => isWord(token, ...listed.rosters.staff))
    ? 'staff'
    : tokens.some((token) => isWord(token, ...listed.rosters.fan))
      ? 'fan'
      : undefined
  // Where garments are ordered already it is told beside things, or only spoken of: "the teachers had a chat".
  const first = Object.keys(scene.before.garments).length === 0
  const used = use?.kind === 'use' && first ? use.id : staff
  return [
    ...people,
    ...readOccasion(scene.text),
    ...(team === null || (scene.before.team !== undefined && scene.asked?.code !== 'ask-team')
      ? []
      : [{ path: ['team'], value: team }]),
    ...readCount(tokens, terms),
    ...(sport?.meaning.kind === 'sport' ? [{ path: ['sport'], value: sport.meaning.id }] : []),
    ...(used === undefined || scene.before.use !== undefined ? [] : [{ path: ['use'], value: used }]),
  ]
}
