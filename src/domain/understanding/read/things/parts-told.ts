import type { Draft, Mark } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { span } from '../list/change.ts'
import type { Term } from '../text/lexicon.ts'
import { type Stretch, sentencesOf, stated } from '../text/statements.ts'
import { isWord, type Token } from '../text/tokens.ts'
import { placesAt } from './groups.ts'
import { type Recolour, usesOf } from './recolour.ts'

const said = listed.parts

type Scene = { readonly tokens: readonly Token[]; readonly terms: readonly Term[]; readonly draft: Draft }

/** What is said of what is there: where it stands, what it is, its new colour and make. */
type Clause = Stretch & { readonly terms: readonly Term[] }

type Kind = Term['meaning']['kind']

const ofKind = <K extends Kind>({ terms }: Clause, kind: K): readonly Extract<Term['meaning'], { kind: K }>[] =>
  terms.flatMap(({ meaning }) => (isOf(meaning, kind) ? [meaning] : []))

const isOf = <K extends Kind>(meaning: Term['meaning'], kind: K): meaning is Extract<Term['meaning'], { kind: K }> =>
  meaning.kind === kind

const clauseOf = (terms: readonly Term[], { from, to }: Stretch): Clause => ({
  from,
  to,
  terms: terms.filter((term) => term.from >= from && term.to <= to),
})

const has = (clause: Clause, ...kinds: readonly Kind[]): boolean =>
  clause.terms.some(({ meaning }) => kinds.includes(meaning.kind))

/** Clauses of a sentence: parted by signs, and by "and" where each side has its own place and its own colour. */
const clausesOf = ({ tokens, terms }: Scene, { from, to }: Stretch): readonly Clause[] => {
  const inside = (at: number): boolean => terms.some((term) => term.from < at && term.to > at)
  const parts = [...span(from, to)].filter(
    (at) => tokens[at]?.kind !== 'word' || (isWord(tokens[at], ...said.parting) && !inside(at) && at > from),
  )
  const found: Clause[] = []
  let start = from
  for (const end of [...parts, to]) {
    const clause = clauseOf(terms, { from: start, to: end })
    const whole = tokens[end]?.kind !== 'word' || (has(clause, 'place', 'content') && has(clause, 'colour'))
    if (!whole) continue
    found.push(clause)
    start = tokens[end]?.kind === 'word' ? end : end + 1
  }
  return found
}

const plain: ReadonlySet<Kind> = new Set<Kind>([
  'place',
  'content',
  'word',
  'role',
  'colour',
  'class',
  'vinyl',
  'in',
  'and',
  'both',
  'only',
  'with',
])

const covered = ({ terms }: Clause, at: number): boolean => terms.some((term) => term.from <= at && term.to > at)

/** Nothing stands in the clause but what is there, its colour and small words. */
const isPlain = ({ tokens }: Scene, clause: Clause, more: readonly string[]): boolean =>
  clause.terms.every(({ meaning, from }) => plain.has(meaning.kind) || isWord(tokens[from], ...said.beside, ...more)) &&
  [...span(clause.from, clause.to)].every((at) => covered(clause, at) || isWord(tokens[at], ...said.beside, ...more))

type Standing = { readonly id: string; readonly mark: Mark }

/** What stands where the clause says, of the kind and on the garment that it names. */
const standing = ({ draft }: Scene, clause: Clause): readonly Standing[] => {
  const spots = ofKind(clause, 'place').map(({ id }) => id)
  const contents = ofKind(clause, 'content').map(({ id }) => id)
  return Object.entries(draft.marks).flatMap(([id, mark]) => {
    const there = mark.wanted !== false && mark.place !== undefined && mark.style?.vinyl !== false
    const meant = spots.some((spot) => placesAt(mark.content, spot).some((place) => place === mark.place))
    const kind = contents.length === 0 || contents.some((one) => one === mark.content)
    return there && meant && kind ? [{ id, mark }] : []
  })
}

const hueOf = ({ draft }: Scene, { mark }: Standing): string | undefined =>
  mark.style?.colour ?? draft.styles[mark.content]?.colour ?? draft.styles['all']?.colour

/** Made apart on each of two garments: which is meant is read where things are read. */
const isApart = ({ draft }: Scene, { id, mark }: Standing): boolean =>
  [id, mark.content].some((key) => Object.keys(draft.styles).some((style) => style.startsWith(`${key}@`)))

/** "Reflective silver like the front": a place that is only compared with. */
const isCompared = ({ tokens }: Scene, { terms }: Clause): boolean =>
  terms.some(({ meaning, from }) => {
    const back = isWord(tokens[from - 1], ...listed.things.theThing) ? from - 2 : from - 1
    return meaning.kind === 'place' && isWord(tokens[back], ...said.likewise)
  })

const isTurned = (clause: Clause): boolean =>
  !ofKind(clause, 'place').some(({ id }) => ['above', 'below', 'both-sides'].includes(id))

/** "Make the sleeve one yellow", "and the front in white too": the colour of what stands there already, and of nothing else. */
const recoloured = (scene: Scene, clause: Clause): readonly Patch[] => {
  const [hue, ...hues] = ofKind(clause, 'colour')
  const [make, ...makes] = ofKind(clause, 'class')
  const clear = hue !== undefined && hue.readings === undefined && hues.length + makes.length === 0
  if (
    !clear ||
    !has(clause, 'place') ||
    has(clause, 'role', 'word') ||
    !isTurned(clause) ||
    isCompared(scene, clause) ||
    !isPlain(scene, clause, [])
  )
    return []
  const found = standing(scene, clause)
  const alike = new Set(found.map((one) => hueOf(scene, one))).size === 1
  if (!alike || found.some((one) => isApart(scene, one))) return []
  return found.flatMap(({ id }): readonly Patch[] => [
    { path: ['marks', id, 'style', 'colour'], value: hue.id },
    ...(make === undefined ? [] : [{ path: ['marks', id, 'style', 'class'], value: make.id }]),
  ])
}

const isUsed = ({ draft }: Scene, ids: readonly string[], root: 'print' | 'cloth'): boolean => {
  const { garments, styles, marks } = draft
  return ids.some((id) => usesOf(root === 'cloth' ? garments : { styles, marks }, id).length > 0)
}

const idsOf = ({ id, readings }: Extract<Term['meaning'], { kind: 'colour' }>): readonly string[] => readings ?? [id]

/** "The front stays white", "their numbers and the sleeve stay white": of what is there nothing changes. */
const isKept = (scene: Scene, clause: Clause): boolean => {
  const hues = ofKind(clause, 'colour')
  const stays = scene.tokens.slice(clause.from, clause.to).some((token) => isWord(token, ...said.staying))
  const known = hues.length > 0 && hues.every((hue) => isUsed(scene, idsOf(hue), 'print'))
  return stays && known && has(clause, 'place', 'content', 'word') && isPlain(scene, clause, said.staying)
}

/** "Red on black is hard to read", "que en negro queda muy serio": why the colour that is there is to give way. */
const isReason = (scene: Scene, clause: Clause): boolean => {
  const hues = ofKind(clause, 'colour')
  const words = scene.tokens.slice(clause.from, clause.to)
  const why = words.some((token) => isWord(token, ...said.why)) && !words.some((token) => isWord(token, ...said.praising))
  const known = hues.every((hue) => isUsed(scene, idsOf(hue), 'print') || isUsed(scene, idsOf(hue), 'cloth'))
  const bare = !has(clause, 'place', 'content', 'garment', 'count', 'unit', 'stones', 'outline', 'shadow', 'role')
  return why && bare && known && isUsed(scene, idsOf(hues[0] ?? { kind: 'colour', id: '' }), 'print')
}

/** "Mejor en negro que en blanco", "black rather than white": the colour behind gives way to the one in front. */
const outdone = ({ tokens, terms }: Scene): readonly number[] =>
  terms.flatMap(({ meaning, from, to }) => {
    if (meaning.kind !== 'colour') return []
    let at = from - 1
    while (
      at > from - 3 &&
      isWord(tokens[at], ...listed.things.notIn, ...listed.things.small) &&
      !isWord(tokens[at], ...said.than)
    )
      at -= 1
    const before = terms.findLast((term) => term.meaning.kind === 'colour' && term.to <= at)
    const near = before !== undefined && tokens.slice(before.to, at).every((token) => isWord(token, ...said.beside))
    return near && isWord(tokens[at], ...said.than) ? [...span(before.to, to)] : []
  })

const nothing: Recolour = { patches: [], taken: new Set() }

/**
 * A new colour for what stands at a place already, whatever else is there: "make the sleeve one yellow, front stays white". What
 * stays as it is and why something is to change say nothing more. A clause in which anything else stands is read with all others.
 */
export const readPartsTold = (said: readonly Token[], terms: readonly Term[], draft: Draft): Recolour => {
  if (Object.keys(draft.marks).length === 0) return nothing
  const scene = { tokens: stated(said), terms, draft }
  const taken = new Set(outdone(scene))
  const patches: Patch[] = []
  const free = { ...scene, terms: terms.filter(({ from }) => !taken.has(from)) }
  for (const sentence of sentencesOf(scene.tokens)) {
    const clauses = clausesOf(free, sentence)
    const told = clauses.some((clause) => has(clause, 'colour') && has(clause, 'place', 'content', 'word'))
    for (const clause of clauses) {
      const own = isKept(free, clause) ? [] : recoloured(free, clause)
      if (own.length === 0 && !isKept(free, clause) && !(told && isReason(free, clause))) continue
      patches.push(...own)
      for (const at of span(clause.from, clause.to)) taken.add(at)
    }
  }
  return { patches, taken }
}
