import type { Language } from '../../../units/language.ts'
import type { Open } from '../../conversation.ts'
import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed, spoken } from '../../words/languages.ts'
import { anyOf, fold, isWord, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { daysBeforeEvent } from './before-game.ts'
import type { WhenFound } from './day-parts.ts'
import { isBare, onOrAfter, sameDateLater } from './game-day.ts'
import { hourAt } from './hours.ts'
import { sendsLater } from './later.ts'
import { dayIn } from './near-days.ts'
import { relativeDay } from './relative-days.ts'
import { clauseAt, gameWords, keyOf, near, needWords, saysAside } from './words-beside.ts'

export type DatesFound = {
  readonly patches: readonly Patch[]
  readonly open: readonly Open[]
  /** Tokens that are part of a day or an hour. */
  readonly taken: ReadonlySet<number>
}

type Role = 'need' | 'game' | 'both' | 'aside'
type Mention = WhenFound & { readonly role: Role }

const said = listed.days
/** Another game, of which somebody talks with the shop: "who you got in the game Sunday". */
const smallTalk = anyOf(spoken.days.smallTalk)
const inMorning = phrasesOf(said.inMorning)

/** "March 19, not March 18", "el viernes en vez del jueves": a day that is taken back. */
const isTakenBack = (tokens: readonly Token[], from: number): boolean => {
  const [last, before] = [tokens[from - 1], tokens[from - 2]]
  const skip = isWord(last, ...said.onThe) ? before : last
  return isWord(skip, ...said.not) || (isWord(last, ...said.insteadOf) && isWord(before, ...said.instead))
}

const roleOf = (tokens: readonly Token[], from: number, to: number): Role => {
  if (
    isTakenBack(tokens, from) ||
    smallTalk.test(
      clauseAt(tokens, from, to)
        .map(({ key }) => key)
        .join(' '),
    )
  )
    return 'aside'
  const part = near(tokens, from, to)
  const keys = part.map(keyOf)
  if (saysAside(part) || sendsLater(keys.join(' '))) return 'aside'
  const needed = keys.some((key) => said.needs.includes(key))
  if (!needed && keys.some((key) => said.doing.includes(key))) return 'aside'
  const game = keys.some((key) => gameWords.has(key))
  const need = keys.some((key) => needWords.has(key))
  if (game && need && needed) return 'both'
  return game ? 'game' : 'need'
}

/** "Need them by Friday for a game on Saturday": of two days of a clause that speaks of both, each is what the last such word before it says. */
const apart = (tokens: readonly Token[], mentions: readonly Mention[]): readonly Mention[] =>
  mentions.map((one) => {
    const clause = clauseAt(tokens, one.from, one.to)
    const days = mentions.filter(
      (other) => other.kind === 'day' && clause.some(({ start }) => start === tokens[other.from]?.start),
    )
    if (one.role !== 'both' || days.length < 2) return one
    const before = clause.filter(({ start }) => start < (tokens[one.from]?.start ?? 0)).map(keyOf)
    const isGame = before.findLastIndex((key) => gameWords.has(key)) > before.findLastIndex((key) => needWords.has(key))
    return { ...one, role: isGame ? 'game' : 'need' }
  })

const byThen = phrasesOf(said.byThen)

/** "The bus leaves Friday at 4, we need them by then": the day and hour named last before such words are when the garments are needed. */
const pointedAt = (tokens: readonly Token[], mentions: readonly Mention[]): readonly Mention[] => {
  const at = [...tokens.keys()].find((one) => {
    const to = phraseEnd(tokens, one, byThen)
    return to !== null && near(tokens, one, to).some((token) => isWord(token, ...said.wants))
  })
  const before = at === undefined ? [] : mentions.filter(({ to }) => to <= at)
  const day = before.findLast(({ kind }) => kind === 'day')
  const hour = before.findLast((one) => one.kind === 'hour' && day !== undefined && one.role === day.role)
  if (day === undefined || isTakenBack(tokens, day.from)) return mentions
  return mentions.map((one) => {
    if (one !== day && one !== hour) return one.role === 'need' && before.includes(one) ? { ...one, role: 'aside' } : one
    return { ...one, role: day.role === 'game' || day.role === 'both' ? 'both' : 'need' }
  })
}

const events = anyOf(spoken.occasions.events)

/** "Our recital is the 5th, need them the 3rd": an occasion whose part says no word of need is its own day where another is told for the need. */
const ofOccasions = (tokens: readonly Token[], mentions: readonly Mention[], known: string | undefined): readonly Mention[] => {
  const isOccasion = ({ role, from, to }: Mention): boolean => {
    const words = near(tokens, from, to)
    const plain = role === 'need' && !words.some((token) => needWords.has(keyOf(token)))
    return plain && events.test(words.map(({ key }) => key).join(' '))
  }
  const needed = mentions.some((one) => one.kind === 'day' && one.role === 'need' && !isOccasion(one))
  return needed || known !== undefined
    ? mentions.map((one) => (isOccasion(one) ? { ...one, role: one.kind === 'day' ? 'game' : 'aside' } : one))
    : mentions
}

type Scan = { readonly today: string; readonly language: Language; readonly bare: boolean; readonly draft: Draft }

const mentionsOf = (tokens: readonly Token[], scan: Scan): readonly Mention[] => {
  const mentions: Mention[] = []
  let morning = false
  let at = 0
  while (at < tokens.length) {
    const found = dayIn(tokens, at, { scan, before: mentions }) ?? hourAt(tokens, at, scan.bare)
    if (found === null) {
      at += 1
      continue
    }
    if (found.kind === 'day') morning = phraseEnd(tokens, found.to, inMorning) !== null
    const role = roleOf(tokens, found.from, found.to)
    const early = found.kind === 'hour' && morning && found.hours.length > 1
    mentions.push(early ? { ...found, hours: found.hours.slice(0, 1), role } : { ...found, role })
    at = found.to
  }
  return ofOccasions(tokens, pointedAt(tokens, apart(tokens, mentions)), scan.draft.day)
}

const gameOf = (mentions: readonly Mention[]): Extract<Mention, { kind: 'day' }> | undefined =>
  mentions.flatMap((one) => (one.kind === 'day' && (one.role === 'game' || one.role === 'both') ? [one] : [])).at(-1)

const gamePatches = (tokens: readonly Token[], mentions: readonly Mention[], need: string | undefined): readonly Patch[] => {
  const game = gameOf(mentions)
  const [day] = game?.days ?? []
  if (game === undefined || day === undefined) return []
  const bare = isBare(tokens, game)
  const numbered = tokens.slice(game.from, game.to).some((token) => token.kind === 'number')
  const moved = numbered && bare ? sameDateLater(day, need) : onOrAfter(day, need, bare && !numbered)
  return [{ path: ['gameDay'], value: moved }]
}

const cross = (
  days: readonly string[],
  hours: readonly string[],
): readonly { day: string | undefined; hour: string | undefined }[] => {
  const dayList = days.length === 0 ? [undefined] : days
  const hourList = hours.length === 0 ? [undefined] : hours
  return dayList.flatMap((day) => hourList.map((hour) => ({ day, hour })))
}

const readingsOf = (draft: Draft, days: readonly string[], hours: readonly string[]): Open['readings'] =>
  cross(days, hours).map(({ day, hour }) => {
    const shownDay = day ?? draft.day
    const shownHour = hour ?? draft.hour
    const value = [shownDay, shownHour].filter((part) => part !== undefined).join('T')
    const patches = [
      ...(day === undefined ? [] : [{ path: ['day'], value: day }]),
      ...(hour === undefined ? [] : [{ path: ['hour'], value: hour }]),
    ]
    return {
      value,
      kind: shownDay !== undefined && shownHour !== undefined ? 'moment' : shownDay === undefined ? 'word' : 'day',
      patches,
    }
  })

const lastOf = <Kind extends WhenFound['kind']>(
  mentions: readonly Mention[],
  kind: Kind,
): Extract<Mention, { kind: Kind }> | undefined =>
  mentions
    .filter((one): one is Extract<Mention, { kind: Kind }> => one.kind === kind && (one.role === 'need' || one.role === 'both'))
    .at(-1)

type Scene = {
  readonly draft: Draft
  readonly today: string
  readonly language: Language
  readonly bare: boolean
  readonly text: string
}

const quoteOf = (tokens: readonly Token[], mentions: readonly (Mention | undefined)[], text: string): string => {
  const said = mentions.flatMap((mention) => mention ?? [])
  const first = Math.min(...said.map((mention) => mention.from))
  const last = Math.max(...said.map((mention) => mention.to))
  return text.slice(tokens[first]?.start ?? 0, tokens[last - 1]?.end ?? 0).slice(0, 80)
}

const many = (values: readonly string[]): readonly string[] => (values.length > 1 ? values : [])

const single = (values: readonly string[]): string | undefined => (values.length === 1 ? values[0] : undefined)

const withoutLater = (text: string): string => text.replace(/[^.,;\n!?]+/g, (clause) => (sendsLater(fold(clause)) ? ' ' : clause))

/** Days and hours of a message: when the garments are needed, when the game is; what may mean two moments is left open. */
export const readDates = (tokens: readonly Token[], scene: Scene): DatesFound => {
  const mentions = mentionsOf(tokens, scene)
  const taken = new Set(mentions.flatMap(({ from, to }) => Array.from({ length: to - from }, (_, index) => from + index)))
  const day = lastOf(mentions, 'day')
  const hour = lastOf(mentions, 'hour')
  const counted = mentions.some((mention) => mention.kind === 'day')
    ? null
    : relativeDay(withoutLater(scene.text), `${scene.today}T12:00`, scene.language)
  const dated = ({ from, to }: Mention): boolean => tokens.slice(from, to).some((token) => /\d/.test(token.text))
  const event = { beside: gameOf(mentions.filter(dated))?.days[0], known: scene.draft.gameDay }
  const days =
    day === undefined
      ? counted === null
        ? []
        : [counted]
      : daysBeforeEvent(tokens, day, { ...event, bare: isBare(tokens, day) })
  const hours = hour?.hours ?? []
  const sure: readonly Patch[] = [
    { path: ['day'], value: single(days) },
    { path: ['hour'], value: single(hours) },
  ]
  const known = { ...scene.draft, day: single(days) ?? scene.draft.day, hour: single(hours) ?? scene.draft.hour }
  const readings = readingsOf(known, many(days), many(hours))
  const doubtful = days.length > 1 || hours.length > 1
  const open = doubtful ? [{ about: 'needBy', path: '/needBy', quote: quoteOf(tokens, [day, hour], scene.text), readings }] : []
  const game = gamePatches(tokens, mentions, days[0] ?? scene.draft.day)
  return { patches: [...sure.filter((patch) => patch.value !== undefined), ...game], open, taken }
}
