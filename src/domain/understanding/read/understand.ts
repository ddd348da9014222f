import type { Language } from '../../units/language.ts'
import { cleanText } from '../clean-text.ts'
import type { Conversation, Open } from '../conversation.ts'
import type { Context } from '../document.ts'
import type { Draft } from '../draft.ts'
import { type Patch, preview } from '../patch.ts'
import { nothing, type Understood } from '../understood.ts'
import { spoken } from '../words/languages.ts'
import { readAges } from './ages/ages.ts'
import { readAgesOfSizes } from './ages/ages-of-sizes.ts'
import { readAnswer } from './answers.ts'
import { readLater } from './calendar/later.ts'
import { readEarly } from './early.ts'
import { intentOf } from './intent/intent-of.ts'
import { asksForOne, asksSomething, readIntent, withoutAsking } from './intent/intents.ts'
import { namedRevision, readSigning, withoutGoing } from './intent/signing.ts'
import { readAll } from './left/read-all.ts'
import { withCountsAhead } from './list/counts-ahead.ts'
import { askHalves } from './list/halved-names.ts'
import { addCounted, mergePlayers } from './list/merge-players.ts'
import { countedFrom, playerFrom, readRoster } from './list/roster.ts'
import type { RowLine } from './list/row-line.ts'
import { addPlayers } from './list/table.ts'
import { madePlain } from './made-plain.ts'
import { readStatusAsked } from './people/status-asked.ts'
import { readTeam } from './people/team.ts'
import { readLongSleeves } from './players/long-sleeves.ts'
import { readUndecided } from './players/undecided.ts'
import { readProse } from './prose.ts'
import { readAside } from './read-aside.ts'
import { settled } from './settled.ts'
import { languageOf } from './text/language.ts'
import { lexiconFor, termsOf } from './text/lexicon.ts'
import { fold, type Token, tokensOf } from './text/tokens.ts'
import { withoutAboveBeside } from './things/above-beside.ts'
import { readElsewhere, withoutThem } from './things/elsewhere.ts'
import { withNameOfAll } from './things/name-of-all.ts'
import { takenBack, withoutDismissing } from './undo/beside-undo.ts'
import { readTakenBack } from './undo/taken-back.ts'
import { agesAnswered } from './whole/ages-answered.ts'
import { ofNothing } from './whole/nothing-taken.ts'
import { ofWholeOrder } from './whole/whole-order.ts'

/** Intents of which nothing is taken into the order. */
const aside: readonly string[] = [
  'complaint',
  'care',
  'status',
  'rude',
  'thanks',
  'undo',
  'start-over',
  'person',
  'language',
  'earlier-mentioned',
]

/** Questions whose answers are choices: the message is tried as an answer even when it says something else besides. */
const choosing: readonly string[] = [
  'drop',
  'colour-of',
  'numbers-or-pieces',
  'count',
  'amount',
  'fit',
  'leaving',
  'whose',
  'name-order',
  'exchange',
]

/** A figure that answers "how many?" stands nearly alone; among other words it may be anything. */
const isChosen = (code: string, text: string): boolean =>
  choosing.includes(code) && (code !== 'count' || tokensOf(text).length <= 4)

const rosterQuestions: readonly string[] = ['ask-roster', 'ask-sizes', 'ask-names', 'ask-numbers']

const teamIn = (text: string, tokens: readonly Token[], context: Scene): string | null => {
  const terms = termsOf(context.lexicon, tokens)
  const sports = new Set(terms.flatMap((term) => (term.meaning.kind === 'sport' ? [term.from, term.to - 1] : [])))
  return readTeam({ tokens, text, lexicon: context.lexicon, people: context.people, sports })
}

/** Where players are named in answer, their numbers count nothing and make nothing. */
const aboutPeople: readonly string[] = ['leaving', 'whose']
const isRow = ({ path, value }: Patch): boolean => path[0] === 'rows' && value !== null

type Scene = { readonly lexicon: ReturnType<typeof lexiconFor>; readonly people: readonly string[] }

const numbersSaid = new RegExp(`\\b${spoken.players.numbersSaid}\\b|#`)

const hasNumbers = (draft: Draft, folded: string): boolean =>
  Object.values(draft.marks).some((mark) => mark.content === 'number' && mark.wanted !== false) || numbersSaid.test(folded)

const isShouted = (text: string): boolean => {
  const letters = text.replace(/[^\p{L}]/gu, '')
  return letters.length > 12 && letters === letters.toUpperCase()
}

/** Nothing was ordered so far that could be made another way. */
const isBlank = ({ garments, marks, rows, tally }: Draft): boolean =>
  [garments, marks, rows, tally].every((part) => Object.keys(part).length === 0)

/** A question of the price with another make is a question and changes nothing; "how much for 15 black jerseys?" at the beginning is the order. */
const isVariant = (kind: string, text: string, { shown, draft }: Conversation): boolean =>
  (kind === 'price' ? !isBlank(draft) : kind === 'what-if' && shown !== null) && !text.includes('\n') && text.length < 160

const doubts = (draft: Draft, rows: readonly RowLine[]): readonly Open[] => {
  if (rows.length === 0) return []
  const quote = rows
    .map((row) => `${row.number ?? ''} ${row.size ?? ''}`)
    .join(', ')
    .slice(0, 80)
  const readings = [
    { value: 'numbers', kind: 'word', patches: addPlayers(draft.rows, rows.map(playerFrom)) },
    { value: 'pieces', kind: 'word', patches: addCounted(draft, rows.map(countedFrom)) },
  ] as const
  return [{ about: 'numbers-or-pieces', path: '/roster', quote, readings }]
}

/** What a pasted list leaves open. */
const ofRoster = ({ doubtful, halved }: ReturnType<typeof readRoster>, draft: Draft, withRows: Draft): readonly Open[] => [
  ...doubts(draft, doubtful),
  ...askHalves(withRows, halved),
]

/** A line of garments and what goes on them is no player's: "4 navy jerseys, white numbers". */
const isOfThings = (line: string, lexicon: Scene['lexicon']): boolean =>
  termsOf(lexicon, tokensOf(line)).some(({ meaning: { kind } }) => kind === 'garment' || kind === 'content')

/** One piece of an earlier order is asked for, in this message or before. */
const isAlone = (text: string, { earlier }: Conversation): boolean => earlier?.single === true || asksForOne(text)

type Read = {
  readonly text: string
  readonly conversation: Conversation
  readonly context: Context
  readonly language: Language
}

type ReadOrder = Pick<Understood, 'patches' | 'open' | 'pasted' | 'unread' | 'unheard' | 'alike' | 'which' | 'artwork' | 'book'>

const readOrder = ({ text: whole, conversation, context, language }: Read): ReadOrder => {
  const { asked, draft } = conversation
  const lexicon = lexiconFor(context.shop, language)
  const { chosen, early, cuts, text } = readEarly(whole, conversation, lexicon)
  const expected = rosterQuestions.includes(asked?.code ?? '')
  const roster = readRoster(text, { expected, numbered: hasNumbers(draft, fold(text)) })
  const merged = mergePlayers(draft, roster)
  const withRows = preview(draft, merged)
  const { book, artwork, faces, some, apart, marks, ...aside } = readAside(roster.rest, { draft, withRows, lexicon, context })
  const special = [...chosen, ...merged, ...aside.patches]
  const start = preview(draft, special)
  const aged = readAgesOfSizes(some.rest, start)
  const prose = readProse({
    text: aged.rest,
    before: draft,
    draft: start,
    lexicon,
    context,
    language,
    asked,
    shouted: isShouted(text),
    alone: isAlone(whole, conversation),
  })
  const sized = readAgesOfSizes(aged.patches.length > 0 ? aged.rest : roster.rest, preview(start, prose.patches))
  const ages = [...aged.patches, ...sized.patches, ...readAges(sized.rest), ...early]
  const sleeves = readLongSleeves(roster.rest, { before: start, draft: preview(start, prose.patches), lexicon })
  const all = [...special, ...prose.patches, ...sleeves, ...apart.patches, ...ages, ...readLater(roster.rest)]
  const answered =
    asked !== null && prose.open.length === 0 && (all.length === 0 || isChosen(asked.code, text))
      ? readAnswer({ draft, asked, text })
      : []
  const patches = answered.length > 0 && aboutPeople.includes(asked?.code ?? '') ? all.filter(isRow) : all
  const after = preview(draft, patches)
  return {
    patches: [...patches, ...settled(draft, after, { cuts, said: whole, lexicon }), ...answered],
    open: [...faces.open, ...marks.open, ...prose.open, ...ofRoster(roster, draft, withRows)],
    unread: roster.unread.filter((line) => !isOfThings(line, lexicon)),
    ...some.told,
    artwork: artwork.said,
    book: book.unknown,
    pasted: roster.players.length + roster.counted.length,
  }
}

const changesNothing = ({ patches, open }: Pick<Understood, 'patches' | 'open'>): boolean => patches.length + open.length === 0

/** A message in the words that are known, the language it is in, and the team that it or an earlier one names. */
const spokenOf = (said: string, { draft, ...conversation }: Conversation, context: Context) => {
  const lines = madePlain(said, { draft, lexicon: lexiconFor(context.shop, conversation.language) })
  const counted = withCountsAhead(lines, hasNumbers(draft, fold(lines)))
  const told = conversation.settled ? conversation.language : languageOf(counted)
  const language = told ?? conversation.language
  const lexicon = lexiconFor(context.shop, language)
  const team = teamIn(counted, tokensOf(counted), { lexicon, people: [] })
  const known = team ?? draft.team ?? null
  const text = withoutAboveBeside(withNameOfAll(counted, { team: known, lexicon }), lexicon)
  return { text, told, language, lexicon, team, known }
}

/** Everything that one message says: what it changes, what it leaves open, what it asks, whether it signs. Any text is safe. */
export const understand = (raw: string, conversation: Conversation, context: Context): Understood => {
  const { text: clean, cut } = cleanText(raw)
  const { undecided, rest } = readUndecided(clean, conversation.draft)
  const { text, told, language, lexicon, team, known } = spokenOf(rest, conversation, context)
  const heard = readIntent(text, known)
  const intent = intentOf(heard, { text, conversation, lexicon })
  const base: Understood = {
    ...nothing,
    intent,
    language: told,
    cut,
    signing: readSigning(text),
    revision: namedRevision(text),
    asks: asksSomething(text),
    undecided,
  }
  const whole = ofWholeOrder(text, conversation, lexicon)
  if (whole !== null) return { ...base, ...whole }
  const read = (words: string, of = conversation) => readOrder({ text: words, conversation: of, context, language })
  const back = readTakenBack(text, conversation, lexicon)
  const taken = takenBack(back, { conversation, lexicon, read })
  if (taken !== null) return { ...base, ...taken }
  if (intent.kind === 'status') return { ...base, patches: readStatusAsked(text, { team, draft: conversation.draft }) }
  if (aside.includes(intent.kind)) return base
  if (isVariant(intent.kind, text, conversation)) {
    const asked = readOrder({ text: withoutAsking(text), conversation: { ...conversation, asked: null }, context, language })
    return { ...base, variant: asked.open.length === 0 ? asked.patches : [] }
  }
  const answered = agesAnswered(text, conversation, lexicon)
  if (answered.length > 0) return { ...base, patches: answered }
  const left = withoutDismissing(text, back)
  const plain = base.signing === null ? left : withoutGoing(left)
  const elsewhere = readElsewhere(plain, conversation.draft, lexicon)
  const { order, unheard, ...all } = readAll(plain, (words) => read(words), { conversation, lexicon })
  const [patches, open] = [withoutThem(elsewhere, all.patches), elsewhere.alone ? [] : all.open]
  const found = { ...base, ...order, patches, open, unheard, elsewhere: elsewhere.things }
  const isHeard = order.artwork || elsewhere.things.length > 0
  const empty =
    changesNothing({ patches, open }) && !isHeard && order.book === null && order.alike.length + order.which.length === 0
  return empty ? { ...found, ...ofNothing(text, base, { conversation, lexicon }) } : found
}
