import { canonical } from '../../content-hash.ts'
import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { type Change, nothing } from '../list/change.ts'
import { isDrop } from '../players/drops.ts'
import { ofItsPiece } from '../players/of-one-garment.ts'
import { type Clause, clausesOf, isSentenceEnd } from '../text/clauses.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { blanked, fold, isWord } from '../text/tokens.ts'
import { toldOfCounts } from './left-counts.ts'
import { toldOfNewcomer } from './left-newcomer.ts'
import { respelled, type Subject, toldOfRows } from './left-rows.ts'
import { isBare, type Telling, tellingOf } from './telling.ts'

/** What a message changes and what it leaves open. */
export type Reading = { readonly patches: readonly Patch[]; readonly open: readonly Open[] }

type Scene = {
  readonly before: Draft
  readonly lexicon: Lexicon
  readonly read: (text: string) => Reading
  /** Lines that were changed last, before this message. */
  readonly lately: readonly string[]
}

/** What the clauses tell that nothing else heard, and those of which nothing is changed although they tell something. */
export type Left = Reading & {
  readonly unheard: readonly string[]
  /** The text without the clauses that were read as something else before. */
  readonly rest: string
}

const words = listed.clauses
const clitic = new RegExp(`^${spoken.again.clitic}$`, 'u')

const keysOf = ({ refs }: Telling): readonly string[] => {
  const sure = refs.filter(({ keys }) => keys.length === 1).flatMap(({ keys }) => keys)
  const open = refs.filter(({ keys }) => keys.length > 1 && !keys.some((key) => sure.includes(key)))
  return [...new Set([...sure, ...open.flatMap(({ keys }) => keys)])]
}

const refersBack = ({ tokens }: Telling, kind: readonly string[]): boolean =>
  tokens.some((token) => isWord(token, ...kind) || (kind === words.he && clitic.test(token.key)))

type Walk = { readonly subject: Subject; readonly named: readonly string[]; readonly bare: boolean }

/** Who a clause is about: whom it names, with those named alone right before; else whom the message, or the change before it, spoke of. */
const subjectOf = (
  telling: Telling,
  { joint }: Clause,
  { walk, lately }: { readonly walk: Walk; readonly lately: readonly string[] },
): Subject => {
  const own = keysOf(telling)
  const single = telling.refs.every(({ keys }) => keys.length === 1)
  if (own.length > 0) {
    const joined = walk.bare && !isSentenceEnd(joint)
    const keys = joined ? [...new Set([...walk.subject.keys, ...own])] : own
    const both = refersBack(telling, words.they) || isBare(telling)
    return { keys, several: single && (joined || (both && own.length > 1)) }
  }
  if (refersBack(telling, words.they) && walk.named.length > 1) return { keys: walk.named, several: true }
  if (walk.subject.keys.length > 0 && (!isSentenceEnd(joint) || refersBack(telling, words.he))) return walk.subject
  return refersBack(telling, words.he) && walk.named.length === 0 && lately.length === 1
    ? { keys: lately, several: false }
    : { keys: [], several: false }
}

const polite = new RegExp(`^[¿\\s]*${spoken.clauses.polite}\\b`)

const isQuestion = (text: string, { to, text: own }: Clause): boolean =>
  /^[^.,;!\n]{0,40}\?/u.test(text.slice(to)) && !polite.test(fold(own).trim())

const isCalm = (change: Change): boolean => change.patches.length + change.open.length === 0

/** A size or a figure that is neither theirs who are named nor, of counted sizes, an amount of them. */
const tells = (telling: Telling, { keys }: Subject, drafts: readonly Draft[]): boolean => {
  const values = [...telling.sizes.map(({ value }) => value.size ?? ''), ...telling.figures.map(({ value }) => value)]
  const rows = keys.flatMap((key) => drafts.flatMap(({ rows }) => [rows[key]?.number, rows[key]?.size]))
  const lines = drafts.flatMap(({ tally }) => Object.values(tally)).filter(({ size }) => values.includes(size))
  const counted = lines.flatMap(({ size, quantity }) => [size, String(quantity)])
  const stray = (theirs: readonly (string | undefined)[]): boolean => values.some((value) => !theirs.includes(value))
  const stranger = telling.names.length > 0 && telling.sizes.length > 0 && keys.length === 0
  return stranger || (keys.length > 0 && stray(rows)) || (telling.refs.length === 0 && lines.length > 0 && stray(counted))
}

/** Longer messages are lists and descriptions, whose lines are told of in their own way. */
const longest = 400
const most = 12

const frameOf = (
  telling: Telling,
  subject: Subject,
  given: { readonly draft: Draft; readonly quote: string; readonly asks: boolean; readonly old: readonly string[] },
): Change => {
  if (telling.tokens.some(isDrop)) return nothing
  const told = toldOfRows(telling, subject, given)
  const rows = { ...told, patches: ofItsPiece(told.patches, telling.terms, given.draft) }
  if (!isCalm(rows) || keysOf(telling).length > 0) return rows
  const counts = toldOfCounts(telling, given.draft)
  return isCalm(counts) && telling.sizes.length + telling.figures.length === 0
    ? respelled(telling, given.draft, given.old)
    : counts
}

type Step = {
  readonly clause: Clause
  readonly telling: Telling
  readonly subject: Subject
  /** What the clause alone brings about where nobody asks what it tells; null where it also opens or settles a question. */
  readonly effect: readonly Patch[] | null
}

/** What is in one reading and not in the other; null where their questions differ. */
const effectOf = (before: Draft, whole: Reading, without: Reading): readonly Patch[] | null => {
  const left = new Set(without.patches.map((patch) => canonical(patch)))
  const open = ({ open: all }: Reading): string => canonical(all.map(({ readings }) => readings))
  const fresh = whole.patches.filter((patch) => !left.has(canonical(patch)))
  const same = fresh.length > 0 || whole.patches.length === without.patches.length
  const was = canonical(before)
  const changing = fresh.filter((patch) => canonical(preview(before, [patch])) !== was)
  return open(whole) === open(without) && same ? changing : null
}

const stepsOf = (text: string, scene: Scene, whole: Reading): readonly Step[] => {
  const { before, lexicon, lately, read } = scene
  let walk: Walk = { subject: { keys: [], several: false }, named: [], bare: false }
  return clausesOf(text).map((clause) => {
    const telling = tellingOf(clause.text, before.rows, lexicon)
    const subject = subjectOf(telling, clause, { walk, lately })
    walk = { subject, named: [...new Set([...walk.named, ...keysOf(telling)])], bare: isBare(telling) }
    return { clause, telling, subject, effect: effectOf(before, whole, read(blanked(text, clause.from, clause.to))) }
  })
}

/** Things, not players: a clause that names one of the list and a size, read so for want of better, tells of the player. */
const isOfThings = ({ tally }: Draft, { path: [root, , field] }: Patch): boolean =>
  root === 'marks' ||
  root === 'styles' ||
  root === 'count' ||
  (root === 'tally' && Object.keys(tally).length === 0) ||
  (root === 'garments' && (field === 'size' || field === 'fit'))

/** Named by name, as "those two", or by a number that is no amount: "#9", "the 9". */
const isSurelyNamed = ({ refs, tokens }: Telling): boolean =>
  refs.every(
    ({ by, from }) => by === 'name' || tokens[from - 1]?.text === '#' || isWord(tokens[from - 1], ...listed.players.loose),
  )

/** Whether a clause may be asked what it tells: it brought nothing about, or something of things in the place of somebody. */
const isFree = ({ effect, telling, subject }: Step, before: Draft): boolean => {
  if (effect === null || effect.length === 0) return effect !== null
  const counts = subject.keys.length === 0 && Object.keys(before.tally).length > 0
  return (counts || (subject.keys.length > 0 && isSurelyNamed(telling))) && effect.every((patch) => isOfThings(before, patch))
}

const ask = (text: string, step: Step, { draft, old }: { readonly draft: Draft; readonly old: readonly string[] }): Change =>
  frameOf(step.telling, step.subject, { draft, old, quote: step.clause.text.slice(0, 80), asks: isQuestion(text, step.clause) })

/** The clauses of a sentence from one on, read as one: "add a 10, youth small". */
const sentenceFrom = (steps: readonly Step[], index: number): readonly Step[] => {
  const end = steps.findIndex(({ clause }, other) => other > index && isSentenceEnd(clause.joint))
  return steps.slice(index, end < 0 ? steps.length : end)
}

const newcomer = (
  text: string,
  steps: readonly Step[],
  { index, draft, lexicon }: { readonly index: number; readonly draft: Draft; readonly lexicon: Lexicon },
): Change => {
  const part = sentenceFrom(steps, index)
  const [first, last] = [part[0], part.at(-1)]
  if (first === undefined || last === undefined || part.some((step) => !isFree(step, draft))) return nothing
  return toldOfNewcomer(tellingOf(text.slice(first.clause.from, last.clause.to).trim(), draft.rows, lexicon), draft)
}

type Found = { readonly change: Change; readonly steps: readonly Step[] }

const foundIn = (
  text: string,
  steps: readonly Step[],
  { after, lexicon, before }: { readonly after: Draft; readonly lexicon: Lexicon; readonly before: Draft },
): readonly Found[] => {
  const found: Found[] = []
  const old = steps.flatMap(({ telling }) => keysOf(telling))
  let draft = after
  let at = 0
  while (at < steps.length) {
    const step = steps[at]
    if (step === undefined) break
    const own = isFree(step, before) ? ask(text, step, { draft, old }) : nothing
    const added = isCalm(own) && isFree(step, before) ? newcomer(text, steps, { index: at, draft, lexicon }) : nothing
    const taken = isCalm(added) ? [step] : sentenceFrom(steps, at)
    const change = isCalm(added) ? own : added
    found.push({ change, steps: taken })
    draft = preview(draft, change.patches)
    at += taken.length
  }
  return found
}

/**
 * A general reading of corrections: each clause of a message that changed nothing is asked whom it is about and what it says of them that
 * is not theirs yet. One reading changes the list, two are a question, and what tells something and changes nothing is said back.
 */
export const readLeft = (text: string, whole: Reading, scene: Scene): Left => {
  const none: Left = { patches: [], open: [], unheard: [], rest: text }
  const { before } = scene
  if (text.length > longest || Object.keys(before.rows).length + Object.keys(before.tally).length === 0) return none
  if (clausesOf(text).length > most) return none
  const after = preview(before, whole.patches)
  const found = foundIn(text, stepsOf(text, scene, whole), { ...scene, after })
  const heard = found.filter(({ change }) => !isCalm(change))
  const patches = heard.flatMap(({ change }) => change.patches)
  const open = heard.flatMap(({ change }) => change.open)
  const drafts = [before, preview(after, patches)]
  const unheard = found.flatMap(({ change, steps: [step] }) =>
    step?.effect?.length === 0 && isCalm(change) && tells(step.telling, step.subject, drafts) ? [step.clause.text] : [],
  )
  const misread = heard.flatMap(({ steps }) => steps).filter(({ effect }) => effect === null || effect.length > 0)
  const rest = misread.reduce((left, { clause }) => blanked(left, clause.from, clause.to), text)
  return { patches, open, unheard: open.length > 0 ? [] : unheard, rest }
}
