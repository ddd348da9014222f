import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import { type Patch, preview } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { type Clause, clausesOf } from '../text/clauses.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, blanked, fold, tokensOf } from '../text/tokens.ts'
import { rowsByNumber } from '../whom/refs.ts'
import { readDrops } from './drops.ts'
import { isOwnLetter, letterIn, oneEach, refKeys, type Worn } from './letters.ts'
import { wornLetters } from './letters-worn.ts'
import { readPartOfName } from './part-of-name.ts'
import { readTwiceListed } from './twice-listed.ts'
import { readWishesMoved, speaksOfIt } from './wishes-moved.ts'

type Scene = { readonly text: string; readonly draft: Draft; readonly lexicon: Lexicon }

/** Sentences with their places; three dots are a pause, not an end. */
const sentencesOf = (text: string): readonly { readonly text: string; readonly at: number }[] =>
  [...text.matchAll(/(?:\.{2,}|[^.\n!?;])+/g)].map((match) => ({ text: match[0], at: match.index }))

const said = spoken.rowMarks
const rightSide = anyOf(said.rightSide)

const firstFree = ({ rows }: Draft): number => Math.max(0, ...Object.keys(rows).map((key) => Number(key.slice(1)) || 0)) + 1

type Letter = { readonly letter: string; readonly place: 'left-chest' | 'right-chest'; readonly colour: string | undefined }

const letterPatches = (key: string, { letter, place, colour }: Letter): readonly Patch[] => [
  {
    path: ['rows', key, 'extras', `letter-${letter.toLowerCase()}`],
    value: { content: 'text', text: letter, place, ...(colour === undefined ? {} : { style: { colour } }) },
  },
]

const numbered = new RegExp(
  [
    `(?:#|${said.numberLead})(\\d{1,3})\\b`,
    `|\\b${said.role} ${said.roleIs}(?: ${said.article})?(?: #)? ?(\\d{1,3})\\b(?! ?${said.years})`,
  ].join(''),
  'giu',
)

/** The figures of a sentence that name no row yet: a captain may be named before the roster is there. */
const unknownNumbers = (sentence: string, draft: Draft): readonly string[] =>
  [...sentence.matchAll(numbered)]
    .map((match) => match[1] ?? match[2] ?? '')
    .filter((number) => rowsByNumber(draft.rows, number).length === 0)

const lettered = new RegExp(
  [
    `\\b${said.letterLead} ["']?([CA])["']?(?![\\p{L}'])`,
    `|\\b([CA]) ${said.letterOn} ${said.letterArticle}?${said.letterPlace}`,
    `|(?:^|[\\s,])([CA])(?:'?s)?(?: ${said.letterFor} |: )`,
  ].join(''),
  'u',
)
const captainSaid = anyOf(said.captain)
const patch = anyOf(said.patch)

/** "captain is Marchetti, put a C on the left chest", "17 and 88 get an A", "la capitana es la número 8, ponle una C". */
const captains = (sentence: string, scene: Scene, own?: Worn): readonly Patch[] => {
  const { draft, lexicon } = scene
  const folded = fold(sentence)
  const letter = lettered.exec(sentence)
  const captain = captainSaid.test(folded)
  if (own === undefined && letter === null && !captain) return []
  if (own === undefined && letter === null && !patch.test(folded)) return []
  const tokens = tokensOf(sentence)
  const hue = termsOf(lexicon, tokens)
    .filter((term) => term.meaning.kind === 'colour')
    .at(-1)?.meaning
  const mark = {
    letter: own?.letter ?? letter?.[1] ?? letter?.[2] ?? letter?.[3] ?? 'C',
    place: rightSide.test(folded) ? 'right-chest' : 'left-chest',
    colour: hue?.kind === 'colour' && hue.readings === undefined ? hue.id : undefined,
  } as const
  const fresh = own === undefined ? unknownNumbers(sentence, draft) : []
  const named = own?.keys ?? [...new Set(refKeys(tokens, draft))]
  const keys = named.length + fresh.length > 0 ? named : captainsBefore(scene)
  const first = firstFree(draft)
  return [
    ...keys.flatMap((key) => letterPatches(key, mark)),
    ...fresh.flatMap((number, index): readonly Patch[] => [
      { path: ['rows', `r${first + index}`, 'number'], value: number },
      ...letterPatches(`r${first + index}`, mark),
    ]),
  ]
}

const joint = new RegExp(`,| ${spoken.rosters.and} |&`)

/** "Duval wears the C and Saar gets an A": each letter is that of its own clause. */
const captainsOf = (sentence: string, scene: Scene): readonly Patch[] => {
  const whole = sentence.split(',')
  if (whole.length > 1 && whole.every((clause) => isOwnLetter(clause, scene.draft)))
    return whole.flatMap((clause) => captainsOf(clause, scene))
  const worn = wornLetters(sentence, scene.draft)
  if (worn.length > 0) return worn.flatMap((one) => captains(sentence, scene, one))
  const clauses = sentence.split(joint)
  const own = clauses.filter((clause) => isOwnLetter(clause, scene.draft))
  if (own.length > 1) return own.flatMap((clause) => captains(clause, scene))
  return captains(sentence, scene)
}

const captainBegins = new RegExp(`\\b${said.captainBegins}`, 'i')

/** Who stands on the list as captain, where a letter is spoken of and nobody is named. */
const notedCaptains = (draft: Draft): readonly string[] =>
  Object.entries(draft.rows).flatMap(([key, { note }]) => (captainBegins.test(fold(note ?? '')) ? [key] : []))

/** Who is noted as captain; else who is called so in another sentence: "two captains, 23 and 9. Put a C on both". */
const captainsBefore = ({ text, draft }: Scene): readonly string[] => {
  const noted = notedCaptains(draft)
  const called = sentencesOf(text).filter((one) => captainSaid.test(fold(one.text)) && !lettered.test(one.text))
  return noted.length > 0 ? noted : [...new Set(called.flatMap((one) => refKeys(tokensOf(one.text), draft)))]
}

const longSleeve = new RegExp(`\\b${said.longSleeve}\\b`, 'iu')
const rest = new RegExp(`\\b${said.rest}\\b`, 'iu')

/** "long sleeves for #1 and #13": a note on those rows, in the customer's words. */
const sleeves = (sentence: string, draft: Draft): readonly Patch[] => {
  const words = longSleeve.exec(sentence)?.[0]
  if (words === undefined) return []
  const stop = rest.exec(sentence)
  const part = sentence.slice(0, stop?.index ?? sentence.length)
  const keys = refKeys(tokensOf(part), draft)
  const noted = [...new Set(keys)].map((key): Patch => ({ path: ['rows', key, 'note'], value: words }))
  const first = firstFree(draft)
  const fresh = unknownNumbers(part, draft).flatMap((number, index): readonly Patch[] => [
    { path: ['rows', `r${first + index}`, 'number'], value: number },
    { path: ['rows', `r${first + index}`, 'note'], value: words },
  ])
  return [...noted, ...fresh]
}

export type RowMarks = {
  readonly patches: readonly Patch[]
  readonly rest: string
  readonly open: readonly Open[]
}

/** "10 dropped out, so 6 gets the C": clauses that take somebody off the list and speak of nothing that is worn. */
const leavings = (text: string, draft: Draft): readonly Clause[] =>
  clausesOf(text).filter((clause) => {
    const folded = fold(clause.text)
    const worn =
      letterIn(clause.text) !== undefined || longSleeve.test(clause.text) || captainSaid.test(folded) || speaksOfIt(folded)
    const gone = worn ? [] : readDrops(tokensOf(clause.text), { draft, quote: clause.text }).patches
    return gone.some(({ path, value }) => path[0] === 'rows' && path.length === 2 && value === null)
  })

const readMarks = (given: Scene): Marks => {
  const moved = readWishesMoved(given.text, given.draft)
  const scene = { ...given, text: moved.rest, draft: preview(given.draft, moved.patches) }
  return sentencesOf(scene.text).reduce<Marks>((found, sentence) => {
    const patches = [...captainsOf(sentence.text, scene), ...sleeves(sentence.text, scene.draft)]
    if (patches.length === 0) return found
    return {
      patches: [...found.patches, ...patches],
      rest: blanked(found.rest, sentence.at, sentence.at + sentence.text.length),
    }
  }, moved)
}

/** Marks and notes that only some rows wear; `rest` is the text without those sentences. */
export const readRowMarks = (whole: Scene): RowMarks => {
  const twice = readTwiceListed(whole.text, whole.draft)
  const part = readPartOfName(twice.rest, preview(whole.draft, twice.patches))
  const named = { ...whole, text: part.rest, draft: preview(whole.draft, [...twice.patches, ...part.patches]) }
  const marks = withoutLeaving(named)
  return {
    open: twice.open,
    patches: [...twice.patches, ...part.patches, ...marks.patches],
    rest: marks.rest,
  }
}

type Marks = Omit<RowMarks, 'open'>

const withoutLeaving = (given: Scene): Marks => {
  const aside = leavings(given.text, given.draft)
  const text = aside.reduce((left, { from, to }) => blanked(left, from, to), given.text)
  const { patches, rest } = readMarks({ ...given, text })
  const whole = aside.reduce((left, { from, to }) => `${left.slice(0, from)}${given.text.slice(from, to)}${left.slice(to)}`, rest)
  return { patches: [...patches, ...oneEach(given.draft, patches)], rest: whole }
}
