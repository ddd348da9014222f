import type { Facts, FactValue, Problem } from '../../src/domain/result/result.ts'
import type { Show } from '../../src/domain/shop/show.ts'
import type { Action, Choice, FormField, Label, Reply } from '../../src/domain/understanding/replies.ts'
import type { Language } from '../../src/domain/units/language.ts'
import type { Catalogue, Sentence } from './catalogue.ts'
import { en } from './en.ts'
import { es } from './es.ts'
import { garmentText } from './tidy.ts'

export type SaidProblem = { readonly severity: Problem['severity']; readonly text: string }

export type Spoken = {
  /** All of it as plain text, lists as lines. */
  readonly text: string
  readonly parts: Sentence
  /** The code of the question, when the message asks one. */
  readonly asks?: string
  readonly actions: readonly (Omit<Action, 'label'> & { readonly label: string })[]
  readonly choices: readonly { readonly value: string; readonly label: string }[]
  readonly form: readonly FormField[]
  readonly problems: readonly SaidProblem[]
  readonly picture: string | null
}

const catalogues: Readonly<Record<Language, Catalogue>> = { en, es }

type Sayer = (facts: unknown, show: Show) => string | Sentence

/** Maker: a catalogue has, by its type, exactly the sentence that fits the facts of each code. */
const sayerOf = (sentences: object, code: string): Sayer | undefined => Reflect.get(sentences, code) as Sayer | undefined

const isList = (value: FactValue | undefined): value is readonly FactValue[] => Array.isArray(value)

const wayTexts = (catalogue: Catalogue, facts: Facts, show: Show): readonly string[] => {
  const { ways } = facts
  if (!isList(ways)) return []
  return ways.flatMap((way) => {
    if (typeof way !== 'object' || way === null || isList(way)) return []
    const { way: code, subject } = way
    const say = sayerOf(catalogue.ways, String(code))
    const text = say?.(typeof subject === 'string' ? show.colour(subject) : '', show)
    return typeof text === 'string' ? [text] : []
  })
}

const textOf = (sentence: string | Sentence): string => (typeof sentence === 'string' ? sentence : sentence.before)

/** Facts that speak of a garment of the order, with what it is called in place of its id. */
const worded = (facts: object, { garments }: Catalogue): object => {
  const garment: unknown = Reflect.get(facts, 'garment')
  return typeof garment === 'string' ? { ...facts, garment: garmentText(garments, garment) } : facts
}

/** One problem in words, with what could be done about it; a code without a sentence is shown as itself, never hidden. */
export const sayProblem = (problem: Problem, language: Language, show: Show): string => {
  const catalogue = catalogues[language]
  const say = sayerOf(catalogue.problems, problem.code)
  const sentence = say === undefined ? problem.code : textOf(say(worded(problem.facts, catalogue), show))
  const { ways: known } = problem.facts
  if (problem.severity === 'stop' && isList(known) && known.length === 0) return `${sentence} ${catalogue.noWay}`
  const ways = wayTexts(catalogue, problem.facts, show)
  return ways.length === 0 ? sentence : `${sentence} ${catalogue.couldDo(ways.join(', '))}`
}

const labelText = (catalogue: Catalogue, label: Label, show: Show): string => {
  switch (label.code) {
    case 'button':
      return catalogue.buttons[label.action](label.revision ?? 0)
    case 'row':
      return catalogue.row(label.row)
    case 'moment':
      return show.moment(label.value)
    case 'day':
      return show.day(label.value)
    case 'colour':
      return show.colour(label.value)
    case 'garment':
      return show.garment(label.value)
    case 'face':
      return show.face(label.value)
    case 'fit':
      return catalogue.fits[label.value] ?? label.value
    case 'class':
      return catalogue.classes[label.value] ?? label.value
    case 'place':
      return catalogue.places[label.value] ?? label.value
    case 'answer':
      return catalogue.answers[label.value] ?? label.value
    case 'count':
    case 'text':
      return label.value
  }
}

const tableLines = (table: NonNullable<Sentence['table']>): readonly string[] => {
  const lines = [table.head, ...table.rows]
  const widths = table.head.map((_, column) => Math.max(...lines.map((cells) => [...(cells[column] ?? '')].length)))
  return lines.map((cells) =>
    cells
      .map((cell, column) => cell + ' '.repeat(Math.max(0, (widths[column] ?? 0) - [...cell].length)))
      .join('  ')
      .trimEnd(),
  )
}

const plainText = (catalogue: Catalogue, sentence: Sentence, problems: readonly SaidProblem[]): string =>
  [
    sentence.before,
    ...(sentence.fields ?? []).map(
      ({ name, value, assumed }) => `· ${name}: ${value}${assumed ? ` ${catalogue.assumedMark}` : ''}`,
    ),
    ...(sentence.table === undefined ? [] : tableLines(sentence.table)),
    ...(sentence.sums ?? []).map(({ name, value }) => `· ${name}: ${value}`),
    ...problems.map(({ severity, text }) => `${catalogue.severities[severity]}: ${text}`),
    ...(sentence.after === undefined ? [] : [sentence.after.replace(/ {2,}/g, ' ').trim()]),
  ].join('\n')

const choiceTexts = (catalogue: Catalogue, choices: readonly Choice[], show: Show) =>
  choices.map(({ value, label }) => ({ value, label: labelText(catalogue, label, show) }))

/** An hour that ends in a full stop of its own ("5 p. m.") ends its sentence too. */
const oneStop = (text: string): string => text.replace(/(?<!\.)\.\.(?!\.)/g, '.')

const stopped = (sentence: Sentence): Sentence => ({
  ...sentence,
  before: oneStop(sentence.before),
  ...(sentence.after === undefined ? {} : { after: oneStop(sentence.after) }),
})

/** A reply in words: its text, its parts for a page, what its buttons and choices are called. */
export const say = (reply: Reply, language: Language, show: Show): Spoken => {
  const catalogue = catalogues[language]
  const said = sayerOf(catalogue.replies, reply.code)?.(worded(reply.facts, catalogue), show) ?? reply.code
  const parts: Sentence = stopped(typeof said === 'string' ? { before: said } : said)
  const problems = (reply.problems ?? []).map((problem) => ({
    severity: problem.severity,
    text: sayProblem(problem, language, show),
  }))
  const asks = /^(ask|raise)-/.test(reply.code) ? { asks: reply.code } : {}
  return {
    text: plainText(catalogue, parts, problems),
    parts,
    ...asks,
    actions: (reply.actions ?? []).map((action) => ({ ...action, label: labelText(catalogue, action.label, show) })),
    choices: choiceTexts(catalogue, reply.choices ?? [], show),
    form: reply.form ?? [],
    problems,
    picture: reply.picture ?? null,
  }
}
