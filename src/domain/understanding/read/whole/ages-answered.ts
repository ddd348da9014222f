import type { Conversation } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { readAgeAnswer } from '../ages/age-answer.ts'
import { isBare, speaksOfAges, withoutLead } from '../ages/age-asides.ts'
import { type Mention, mentionsIn } from '../ages/age-mentions.ts'
import { isWorn } from '../players/told-number.ts'
import { hasSize } from '../sizes/sizes.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { anyOf, blanked, fold, isNumber, tokensOf } from '../text/tokens.ts'

const said = spoken.ages

const sure = anyOf(
  said.years,
  said.months,
  said.under,
  said.over,
  said.up,
  said.down,
  said.turning,
  said.almost,
  said.division,
  said.grade,
  said.mixed,
  said.least,
  said.grownUp,
  said.adult,
  said.children,
  said.babies,
)

/** Ages in words of ages: figures alone are numbers and amounts as well ("swap 3 and 5"). */
const isSure = (text: string, mentions: readonly Mention[]): boolean =>
  mentions.some(({ kind, start, end }) => kind === 'age' && sure.test(fold(text.slice(start, end))))

const spanned = new RegExp(`\\d ?(?:[-–]|${said.upTo}) ?\\d`)

/** Nobody waits for a number, so that figures of them can be no numbers. */
const areNumbered = ({ rows, marks }: Draft): boolean =>
  Object.values(rows).every(({ number }) => number !== undefined) ||
  !Object.values(marks).some(({ content, wanted }) => content === 'number' && wanted !== false)

/** "Mia is 2, the others are 8 to 10": from one figure to another, told of all or of the rest, are years. */
const isSpanOfMany = (text: string, mentions: readonly Mention[], draft: Draft): boolean =>
  areNumbered(draft) &&
  mentions.some(({ kind }) => kind === 'rest' || kind === 'all') &&
  mentions.some(({ kind, start, end }) => kind === 'age' && spanned.test(fold(text.slice(start, end))))

/** Ages that are told though nobody asked: in words of ages, by name or of everybody, and with nothing else beside. */
const tellsOfAges = (text: string, draft: Draft): boolean => {
  const own = withoutLead(text)
  const mentions = mentionsIn(own, draft.rows)
  const whose = mentions.some(
    ({ kind }) => kind === 'rows' || kind === 'all' || kind === 'nobody' || kind === 'they' || kind === 'rest',
  )
  return whose && (isSure(own, mentions) || isSpanOfMany(own, mentions, draft)) && isBare(own, mentions)
}

/** Where ages are asked, bare figures tell them if nothing else is said. */
const answersAges = (text: string, draft: Draft): boolean => {
  const own = withoutLead(text)
  const mentions = mentionsIn(own, draft.rows)
  return isSure(own, mentions) || isBare(own, mentions)
}

const idle: readonly string[] = ['and', 'in', 'with', 'no', 'count', 'only', 'both', 'of']

/** A text without the words that tell ages, and without whom they are told of. */
const withoutAges = (text: string, draft: Draft): string =>
  mentionsIn(text, draft.rows)
    .filter(({ kind }) => kind !== 'end')
    .reduce((left, { start, end }) => blanked(left, start, end), text)

/** An answer that speaks of nothing but ages: no size, no number that is worn, nothing of the trade. */
const isOfAges = (text: string, draft: Draft, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(withoutAges(text, draft))
  const worn = tokens.some((token, at) => token.text === '#' || (isNumber(token) && isWorn(tokens, at))) || /\n\W*\d/.test(text)
  return (
    tokens.length <= 30 &&
    !hasSize(tokens) &&
    !worn &&
    termsOf(lexicon, tokens).every(({ meaning }) => idle.includes(meaning.kind))
  )
}

const isAsked = ({ asked }: Pick<Conversation, 'asked'>): boolean => asked?.code === 'ask-ages'

type Scene = Pick<Conversation, 'asked' | 'draft'>

/** What is told of ages, where they were asked or not, in a message of nothing else. */
export const agesAnswered = (text: string, scene: Scene, lexicon: Lexicon): readonly Patch[] =>
  isOfAges(text, scene.draft, lexicon) &&
  ((isAsked(scene) && answersAges(text, scene.draft)) || speaksOfAges(text) || tellsOfAges(text, scene.draft))
    ? readAgeAnswer(text, scene.draft)
    : []

const years: readonly string[] = ['age', 'kids', 'all', 'nobody', 'rest']

/** Words that speak of ages where they are asked belong to the matter, understood or not. */
export const mayTellAges = (text: string, scene: Scene): boolean =>
  isAsked(scene) && (/\d/.test(text) || mentionsIn(text, scene.draft.rows).some(({ kind }) => years.includes(kind)))
