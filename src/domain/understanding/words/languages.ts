import type { Fit, Size } from '../../garment/garment.ts'
import type { Clock } from './matters/calendar.ts'
import type { WashCounts } from './matters/complaints.ts'
import type { Phrases } from './matters/phrases.ts'
import type { WordValues } from './matters/values.ts'
import { registered } from './registered.ts'
import type { ArtworkWords, FaceWords } from './word-list.ts'

/** Every registered language by its code. */
export const languages = registered

const all = Object.values(languages)

/** The words of one kind in every language, for customers who mix them. */
const together = <Key extends string>(
  lists: readonly Readonly<Record<Key, readonly string[]>>[],
  key: Key,
): ReadonlySet<string> => new Set(lists.flatMap((list) => list[key]))

const drawings = all.map((words) => words.artwork)

/** How people speak of a drawing. */
export const artworkWords: Readonly<Record<keyof ArtworkWords, ReadonlySet<string>>> = {
  words: together(drawings, 'words'),
  lettered: together(drawings, 'lettered'),
  refused: together(drawings, 'refused'),
}

const faces = all.map((words) => words.faces)

/** How people speak of a type face. */
export const faceWords: Readonly<Record<keyof FaceWords, ReadonlySet<string>>> = {
  lettering: together(faces, 'lettering'),
  typeface: together(faces, 'typeface'),
  called: together(faces, 'called'),
  plain: together(faces, 'plain'),
  numbers: together(faces, 'numbers'),
  names: together(faces, 'names'),
  links: together(faces, 'links'),
  joins: together(faces, 'joins'),
}

const basics = all.map((words) => words.basics)

/** The words of a place in the calendar in every language. */
const calendar = (key: 'months' | 'weekdays', count: number): readonly (readonly string[])[] =>
  Array.from({ length: count }, (_, index) => basics.flatMap((one) => one[key][index] ?? []))

/** Months from January, weekdays from Sunday. */
export const months = calendar('months', 12)
export const weekdays = calendar('weekdays', 7)

/** Sizes and cuts as they are written in any language. */
export const sizeWords: Readonly<Record<string, Size>> = Object.assign({}, ...basics.map((one) => one.sizes))
export const cutWords: Readonly<Record<string, Fit>> = Object.assign({}, ...basics.map((one) => one.cuts))

/** Whom amounts are told for, with the words of the cut that those wear. */
export const groupWords: Readonly<Record<string, string>> = Object.assign({}, ...basics.map((one) => one.groups))

const contracted: Readonly<Record<string, string>> = Object.assign({}, ...basics.map((one) => one.whole))

/** A word as it is looked up: "dont" with the apostrophe it lacks. */
export const whole = (word: string): string => (Object.hasOwn(contracted, word) ? (contracted[word] ?? word) : word)

const wholePhrase = (phrase: string): string => phrase.split(' ').map(whole).join(' ')

/** One source of a pattern that matches any of these; where there are none, nothing. None stands twice: a repeated group must not try it twice. */
export const either = (sources: readonly string[]): string =>
  sources.length === 0 ? '(?!)' : `(?:${[...new Set(sources)].join('|')})`

/** What every language has for one key of a matter, in the order in which they are registered. */
const allOf = <Key extends string>(lists: readonly Phrases<Key>[], key: string): readonly string[] =>
  lists.flatMap((list) => Object.entries<readonly string[]>(list).flatMap(([own, phrases]) => (own === key ? phrases : [])))

const keysIn = (lists: readonly Phrases<string>[]): readonly string[] => Object.keys(lists[0] ?? {})

/** For each thing said in a matter, one source that matches it in any language. */
const sources = <Key extends string>(lists: readonly Phrases<Key>[]): Readonly<Record<Key, string>> =>
  Object.assign({}, ...keysIn(lists).map((key) => ({ [key]: either(allOf(lists, key)) })))

/** For each thing said in a matter, all that any language has for it. */
const lists = <Key extends string>(every: readonly Phrases<Key>[]): Readonly<Record<Key, readonly string[]>> =>
  Object.assign({}, ...keysIn(every).map((key) => ({ [key]: [...new Set(allOf(every, key).map(wholePhrase))] })))

/** Sources of patterns by matter, joined over the languages, for people mix them; readers build their patterns of them once. */
export const spoken = {
  intents: sources(all.map(({ intents }) => intents)),
  complaints: sources(all.map(({ complaints }) => complaints)),
  people: sources(all.map(({ people }) => people)),
  money: sources(all.map(({ money }) => money)),
  days: sources(all.map(({ days }) => days)),
  later: sources(all.map(({ later }) => later)),
  occasions: sources(all.map(({ occasions }) => occasions)),
  signing: sources(all.map(({ signing }) => signing)),
  answers: sources(all.map(({ answers }) => answers)),
  ages: sources(all.map(({ ages }) => ages)),
  sides: sources(all.map(({ sides }) => sides)),
  rosters: sources(all.map(({ rosters }) => rosters)),
  rowMarks: sources(all.map(({ rowMarks }) => rowMarks)),
  things: sources(all.map(({ things }) => things)),
  players: sources(all.map(({ players }) => players)),
  changes: sources(all.map(({ changes }) => changes)),
  anew: sources(all.map(({ anew }) => anew)),
  again: sources(all.map(({ again }) => again)),
  dictation: sources(all.map(({ dictation }) => dictation)),
  undecided: sources(all.map(({ undecided }) => undecided)),
  brought: sources(all.map(({ brought }) => brought)),
  elsewhere: sources(all.map(({ elsewhere }) => elsewhere)),
  clauses: sources(all.map(({ clauses }) => clauses)),
  takenBack: sources(all.map(({ takenBack }) => takenBack)),
  rulebooks: sources(all.map(({ rulebooks }) => rulebooks)),
  cancelling: sources(all.map(({ cancelling }) => cancelling)),
}

/** The same one by one: words that are looked for among tokens, and patterns of whole sentences with a group of their own. */
export const listed = {
  ages: lists(all.map(({ ages }) => ages)),
  people: lists(all.map(({ people }) => people)),
  hours: lists(all.map(({ hours }) => hours)),
  days: lists(all.map(({ days }) => days)),
  rosters: lists(all.map(({ rosters }) => rosters)),
  team: lists(all.map(({ team }) => team)),
  written: lists(all.map(({ written }) => written)),
  things: lists(all.map(({ things }) => things)),
  leftOff: lists(all.map(({ leftOff }) => leftOff)),
  players: lists(all.map(({ players }) => players)),
  changes: lists(all.map(({ changes }) => changes)),
  anew: lists(all.map(({ anew }) => anew)),
  again: lists(all.map(({ again }) => again)),
  dictation: lists(all.map(({ dictation }) => dictation)),
  parts: lists(all.map(({ parts }) => parts)),
  likeOthers: lists(all.map(({ likeOthers }) => likeOthers)),
  told: lists(all.map(({ told }) => told)),
  clauses: lists(all.map(({ clauses }) => clauses)),
  takenBack: lists(all.map(({ takenBack }) => takenBack)),
  brought: lists(all.map(({ brought }) => brought)),
}

/** How often something was washed, in words of any language. */
export const washCounts: WashCounts = {
  before: Object.assign({}, ...all.map((words) => words.washCounts.before)),
  behind: Object.assign({}, ...all.map((words) => words.washCounts.behind)),
}

/** Hours, parts of a day and days ahead in words of any language. */
export const clockWords: Omit<Clock, 'counted'> = {
  hours: Object.assign({}, ...all.map((words) => words.clock.hours)),
  parts: Object.assign({}, ...all.map((words) => words.clock.parts)),
  ahead: Object.assign({}, ...all.map((words) => words.clock.ahead)),
  nthOfMonth: Object.assign({}, ...all.map((words) => words.clock.nthOfMonth)),
}

/** Amounts and letters in words of any language. */
export const wordValues: WordValues = {
  lengths: Object.assign({}, ...all.map((words) => words.values.lengths)),
  apart: Object.assign({}, ...all.map((words) => words.values.apart)),
  dropped: Object.assign({}, ...all.map((words) => words.values.dropped)),
  steps: Object.assign({}, ...all.map((words) => words.values.steps)),
  letters: Object.assign({}, ...all.map((words) => words.values.letters)),
  ordinals: Object.assign({}, ...all.map((words) => words.values.ordinals)),
  figures: Object.assign({}, ...all.map((words) => words.values.figures)),
}
