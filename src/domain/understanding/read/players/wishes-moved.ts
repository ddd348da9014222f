import type { Draft, Player } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { type Clause, clausesOf } from '../text/clauses.ts'
import { anyOf, blanked, fold, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'
import { letterId, letterIn } from './letters.ts'

/** What some wear and others do not: a captain's letter, or long sleeves, as a note in the customer's words. */
type Wish = { readonly letter: string } | { readonly note: string }

const word = (source: string): RegExp => new RegExp(`(?<!\\p{L})${source}(?!\\p{L})`, 'iu')
const said = spoken.rowMarks
const captainSaid = word(said.captain)
const alternateSaid = word(said.alternate)
const keeperSaid = word(said.keeper)
const sleevesSaid = word(said.longSleeve)
const takesOff = word(said.takesOff)
const givesUp = word(said.givesUp)
const moves = word(said.moves)
const changes = word(said.changesHands)
const hands = word(said.handsIt)
const keeps = word(said.keeps)
const also = word(said.alsoWears)
const patchSaid = anyOf(said.patch)

const wears = (row: Player | undefined, wish: Wish): boolean =>
  'letter' in wish ? row?.extras?.[letterId(wish.letter)] !== undefined : sleevesSaid.test(row?.note ?? '')

const wishesOf = (row: Player | undefined): readonly Wish[] => [
  ...Object.values(row?.extras ?? {}).flatMap(({ text }) => (text === 'C' || text === 'A' ? [{ letter: text }] : [])),
  ...(sleevesSaid.test(row?.note ?? '') ? [{ note: sleevesSaid.exec(row?.note ?? '')?.[0] ?? '' }] : []),
]

/** One who is named, with whether that is refused ("not 10", "en lugar de la 10") or something is theirs ("from the 10", "la C de la 10"). */
type Named = { readonly key: string; readonly refused: boolean; readonly of: boolean }

/** A clause with those of the list whom it names. */
type Part = {
  readonly clause: Clause
  readonly folded: string
  readonly named: readonly Named[]
  readonly tokens: readonly Token[]
}

const small: readonly string[] = [...listed.clauses.small, ...listed.changes.the, ...listed.told.rangeTo, ...listed.told.carrying]

/** The word that leads to a name, small words between them. */
const leadOf = (tokens: readonly Token[], from: number): Token | undefined => {
  let at = from - 1
  while (at >= 0 && isWord(tokens[at], ...small) && !isWord(tokens[at], ...listed.told.rangeFrom)) at -= 1
  return tokens[at]
}

const isInsteadOf = (tokens: readonly Token[], from: number): boolean =>
  tokens.slice(Math.max(0, from - 4), from).some((token) => isWord(token, ...listed.anew.not, ...listed.changes.not))

/** "9's A", "Ida's C": the letter of somebody. */
const owns = (tokens: readonly Token[], to: number): boolean => {
  const [mark, last, letter] = [tokens[to - 2], tokens[to - 1], tokens[to]]
  const possessive = last?.text.endsWith("'s") || (mark?.text === "'" && last?.key === 's')
  return possessive && ['C', 'A'].includes(letter?.text ?? '')
}

const partOf = (clause: Clause, { rows }: Draft): Part => {
  const tokens = tokensOf(clause.text)
  const named = refsIn(tokens, rows).flatMap(({ keys: [key, ...more], from, to }): readonly Named[] => {
    const lead = leadOf(tokens, from)
    const led = isWord(lead, ...listed.told.rangeFrom)
    const of = led || owns(tokens, to)
    const refused = isWord(lead, ...listed.changes.not, ...listed.again.refusing) || (led && isInsteadOf(tokens, from))
    return key === undefined || more.length > 0 ? [] : [{ key, refused, of }]
  })
  return { clause, folded: fold(clause.text), named, tokens }
}

/** "take it off", "pónsela": something that is worn, and nobody of the list. */
export const speaksOfIt = (folded: string): boolean => hands.test(folded) || patchSaid.test(folded)

const isPronounced = ({ folded }: Part): boolean => speaksOfIt(folded)

/** A clause names the wish, or who has it by their part in the team. */
const names = ({ clause, tokens, folded }: Part, wish: Wish): boolean => {
  if ('note' in wish) return sleevesSaid.test(folded) || keeperSaid.test(folded)
  const isAlternate = alternateSaid.test(folded)
  const ranked = wish.letter === 'A' ? isAlternate : captainSaid.test(folded) && !isAlternate
  return ranked || letterIn(clause.text) === wish.letter || tokens.some(({ text }, at) => text === wish.letter && at > 0)
}

/** The wishes that a message speaks of; where it says "it" alone, the only one of whom it is taken from. */
const wishesIn = (text: string, parts: readonly Part[], draft: Draft): readonly Wish[] => {
  const note = sleevesSaid.exec(text)?.[0]
  const letters = ['C', 'A'].filter((letter) => parts.some((part) => names(part, { letter }))).map((letter) => ({ letter }))
  const said = [...letters, ...(note === undefined ? [] : [{ note }])]
  if (said.length > 0) return said
  const worn = parts.filter(isPronounced).flatMap(({ named }) => named.flatMap(({ key }) => wishesOf(draft.rows[key])))
  return worn.length === 1 ? worn : []
}

/** "no a la 10", "ahora es la 6", "6 is": nothing but who is named. */
const isBare = ({ tokens, named }: Part): boolean =>
  named.length > 0 &&
  tokens.every(
    (token) =>
      token.kind === 'sign' ||
      isNumber(token) ||
      /^\p{Lu}/u.test(token.text) ||
      isWord(
        token,
        ...small,
        ...listed.things.noLonger,
        ...listed.changes.not,
        ...listed.changes.now,
        ...listed.again.refusing,
        ...listed.told.tells,
      ) ||
      moves.test(token.key),
  )

/** Of clauses beside one that names the wish: "it", who is named and nothing else, or who has something no more. */
const isAboutIt = (part: Part): boolean => isPronounced(part) || isBare(part) || givesUp.test(part.folded)

const tellsSize = ({ tokens }: Part): boolean =>
  [...tokens.keys()].some((at) => sizeAt(tokens, at)?.size !== undefined && !isNumber(tokens[at]))

type Change = { readonly off: readonly string[]; readonly on: readonly string[] }

/** Who wears a wish no more, and who does from now on; null where nothing of it changes hands. */
const changeOf = (
  text: string,
  parts: readonly Part[],
  { wish, draft }: { readonly wish: Wish; readonly draft: Draft },
): Change | null => {
  const folded = fold(text)
  const has = (key: string): boolean => wears(draft.rows[key], wish)
  const takes = ({ folded: own, named }: Part): boolean =>
    takesOff.test(own) || givesUp.test(own) || named.some(({ key, refused, of }) => refused || (of && has(key)))
  const kept = new Set(parts.filter((part) => keeps.test(part.folded)).flatMap(({ named }) => named.map(({ key }) => key)))
  const all = parts.flatMap(({ named }) => named)
  const wearers = [...new Set(all.filter(({ key }) => has(key)).map(({ key }) => key))].filter((key) => !kept.has(key))
  const taken = new Set(
    parts.flatMap((part) => (takes(part) ? part.named.filter((one) => has(one.key) || one.refused).map(({ key }) => key) : [])),
  )
  const given = parts.flatMap((part) =>
    part.named
      .filter(
        ({ key, refused }) => !has(key) && !refused && (!takesOff.test(part.folded) || part.named.some((one) => has(one.key))),
      )
      .map(({ key }) => key),
  )
  const on = [...new Set(given)]
  const hinted = taken.size > 0 || moves.test(folded) || changes.test(folded)
  if (wearers.length > 0 && on.length > 0 && hinted) return { off: wearers, on }
  if (on.length === 0) {
    const off = wearers.filter((key) => taken.has(key))
    return off.length > 0 ? { off, on: [] } : null
  }
  const before = Object.keys(draft.rows).filter(has)
  const stays = all.some(({ key }) => has(key)) || also.test(folded) || !(moves.test(folded) || changes.test(folded))
  return before.length === 1 && !stays ? { off: before, on } : null
}

const withoutSleeves = (note: string): string | null => {
  const left = note.replace(sleevesSaid, '').replace(/^[\s,;]+|[\s,;]+$/gu, '')
  return left === '' ? null : left
}

const patchesOf = ({ off, on }: Change, wish: Wish, { rows }: Draft): readonly Patch[] => {
  if ('note' in wish) {
    const note = (key: string, value: string | null): Patch => ({ path: ['rows', key, 'note'], value })
    const with_ = ({ note: had }: Player): string => (had === undefined ? wish.note : `${had}, ${wish.note}`)
    return [
      ...off.map((key) => note(key, withoutSleeves(rows[key]?.note ?? ''))),
      ...on.map((key) => note(key, with_(rows[key] ?? {}))),
    ]
  }
  const id = letterId(wish.letter)
  const mark = rows[off[0] ?? '']?.extras?.[id]
  return [
    ...off.map((key): Patch => ({ path: ['rows', key, 'extras', id], value: null })),
    ...on.flatMap((key): readonly Patch[] => (mark === undefined ? [] : [{ path: ['rows', key, 'extras', id], value: mark }])),
  ]
}

type Moved = { readonly patches: readonly Patch[]; readonly rest: string }

const blankedOf = (text: string, parts: readonly Part[]): string =>
  parts.reduce((left, { clause }) => blanked(left, clause.from, clause.to), text)

/** "la 6 no lleva C": said of one who never had it. */
const isDenial = ({ folded, named }: Part): boolean =>
  named.length > 0 && takesOff.test(folded) && new Set(named.map(({ refused }) => refused)).size === 1

/** Of which of several wishes a clause speaks that names none: of the one that was named last before it. */
const lastNamed = (parts: readonly Part[], index: number, wishes: readonly Wish[]): Wish | undefined => {
  const before = parts.slice(0, index).findLast((part) => wishes.some((wish) => names(part, wish)))
  return before === undefined ? undefined : wishes.find((wish) => names(before, wish))
}

const moveOf = (
  text: string,
  draft: Draft,
  { wish, wishes }: { readonly wish: Wish; readonly wishes: readonly Wish[] },
): Moved => {
  const parts = clausesOf(text).map((clause) => partOf(clause, draft))
  const isOf = (part: Part, index: number): boolean =>
    names(part, wish) ||
    (isAboutIt(part) &&
      (wishes.length === 1 || (!wishes.some((one) => names(part, one)) && lastNamed(parts, index, wishes) === wish)))
  const own = parts.filter((part, index) => !tellsSize(part) && isOf(part, index))
  const change = changeOf(text, own, { wish, draft })
  if (change !== null) return { patches: patchesOf(change, wish, draft), rest: blankedOf(text, own) }
  return {
    patches: [],
    rest: blankedOf(
      text,
      own.filter((part) => names(part, wish) && isDenial(part)),
    ),
  }
}

/**
 * What one of the list wears no more, and another may wear from now on, in any order and over the sentences of a message: "the A on 27
 * goes to 8", "ahora es la 6. La C va con la 6, a la 10 quítensela", "the long sleeves are for 13, not 1"; `rest` is the text without it.
 */
export const readWishesMoved = (text: string, draft: Draft): Moved => {
  if (text.length > 400 || !Object.values(draft.rows).some((row) => wishesOf(row).length > 0)) return { patches: [], rest: text }
  const parts = clausesOf(text).map((clause) => partOf(clause, draft))
  const wishes = wishesIn(text, parts, draft)
  return wishes.reduce<Moved>(
    (moved, wish) => {
      const { patches, rest } = moveOf(moved.rest, preview(draft, moved.patches), { wish, wishes })
      return { patches: [...moved.patches, ...patches], rest }
    },
    { patches: [], rest: text },
  )
}
