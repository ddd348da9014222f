import type { Complaint } from '../../conversation.ts'
import { either, spoken, washCounts } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'
import { numbersAfter, numbersMeant } from './complaint-corrected.ts'
import { listedPieces, pointedNames } from './complaint-listed.ts'

const said = spoken.complaints

const trouble: readonly (readonly [Complaint['kind'], RegExp])[] = [
  ['wrong-name', anyOf(said.wrongName)],
  ['stones-lost', anyOf(said.stonesLost)],
  ['lift', anyOf(said.lift)],
  ['crack', anyOf(said.crack)],
  ['bleed', anyOf(said.bleed)],
  ['shine', anyOf(said.shine)],
  ['shrink', anyOf(said.shrink)],
  ['other', anyOf(said.otherTrouble)],
]

const feared = anyOf(said.feared)
const unwashed = anyOf(said.unwashed)
const wordsOf = (counts: Readonly<Record<string, number>>): string => either(Object.keys(counts))

const counted = new RegExp(`\\b(\\d{1,2}|${wordsOf(washCounts.before)})\\s+${said.washes}\\b`)
const alone = wordsOf(washCounts.behind)
const washedSo = new RegExp(`\\b${said.washed}(?: ${said.washedWhat})? (${alone})\\b|\\b(${alone})\\b.{0,14}\\b${said.washed}`)

const washesOf = (folded: string): number | undefined => {
  if (unwashed.test(folded)) return 0
  const before = counted.exec(folded)?.[1]
  if (before !== undefined) return washCounts.before[before] ?? Number(before)
  const behind = washedSo.exec(folded)
  return washCounts.behind[behind?.[1] ?? behind?.[2] ?? '']
}

const air = anyOf(said.air)
const dryer = anyOf(said.dryer)

const dryingOf = (folded: string): string | undefined => {
  if (air.test(folded)) return 'air'
  return dryer.test(folded) ? 'dryer' : undefined
}

const NAME = "\\p{Lu}[\\p{Ll}\\p{M}]+(?:[-' ]\\p{Lu}[\\p{Ll}\\p{M}]+)?"
const owners: readonly RegExp[] = [
  new RegExp(`(\\p{Lu}[\\p{Ll}\\p{M}]+)${said.behindOwner}\\b`, 'gu'),
  new RegExp(`\\b${said.beforeOwner} (${NAME})`, 'gu'),
]

const namesIn = (text: string): readonly string[] => [
  ...new Set(owners.flatMap((pattern) => [...text.matchAll(pattern)].map((match) => match[1] ?? ''))),
]

const figure = '\\d{1,3}\\b'
/** Figures one after the other: "5", "2, 8 and 10", "4 y la 9"; none that counts washes or days. */
const figures = `#?${figure}(?:(?:,|,? ${said.and}| &) (?:${said.theNumber})?#?${figure}){0,12}(?! ${said.counted})`
/** No part of a date or an hour. */
const plainly = `(?![/.:]\\d)(?! ?${said.notNumber})`
const numbered = new RegExp(
  `(?:#|\\b${said.numberSaid}|\\b${said.garment}s? ${said.of}?${said.theNumber}?|\\b${said.onThe} ${said.number}?(?=${figure}${plainly}))\\s?(${figures})`,
  'g',
)
/** "The white on 7, 19 and 31": several figures behind "on" are pieces. */
const several = new RegExp(
  `\\b${said.onPieces} (?=#?${figure}(?:,|,? ${said.and}| &) (?:${said.theNumber})?#?${figure})(${figures}${plainly})`,
  'g',
)
/** Where pieces are asked about: "son el 5 y el 17", "they are 2, 8 and 10", figures alone. */
const pointed = new RegExp(
  `(?:^|[.;!?\\n] ?|(?<!\\ba )\\b${said.pointing} )(?:${said.theNumber}|${said.onThe} )?(${figures}${plainly})`,
  'g',
)

const numbersBy = (pattern: RegExp, folded: string): readonly string[] => [
  ...new Set([...folded.matchAll(pattern)].flatMap((match) => (match[1] ?? '').match(/\d{1,3}/g) ?? [])),
]

/** "#7", "number 7", "the numbers on 8 and 22", "la número 06". */
const numbersIn = (folded: string): readonly string[] => [
  ...new Set([...numbersBy(numbered, folded), ...numbersBy(several, folded)]),
]

const titled = "\\p{Lu}[\\p{L}\\p{M}'-]"
const teamSaid = new RegExp(`\\b${said.teamIs} ${said.teamArticle}?(${titled}*(?: (?:${said.links} )?${titled}*)*)`, 'u')

/** A team that is named beside the number: "on the Valley Vipers", "(#31, Fen Street Frogs)", "de las Estrellas del Sur". */
const teamBeside = new RegExp(
  `\\b${said.teamBeside} (${titled}+(?: (?:${said.links} )?${titled}+)*)|#\\d{1,3}, ((?:${titled}+ ?)+)\\)`,
  'u',
)

/** What a message says of something that went wrong, without the trouble itself. */
export type ComplaintDetails = Omit<Complaint, 'kind' | 'text'>

/** Whose, which number, how often washed, how dried. */
const complaintDetails = (text: string, team: string | null): ComplaintDetails => {
  const folded = fold(text)
  const listed = listedPieces(text)
  const numbers = numbersAfter([], [...numbersIn(folded), ...listed.numbers, ...numbersMeant(folded)], folded)
  const washes = washesOf(folded)
  const drying = dryingOf(folded)
  const beside = teamBeside.exec(text)
  const named = teamSaid.exec(text)?.[1] ?? beside?.[1] ?? beside?.[2]
  const whose = named ?? team
  const names = [...new Set([...namesIn(text), ...listed.names])].filter((name) => !(named ?? '').includes(name))
  return {
    ...(whose === null ? {} : { team: whose }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    ...(washes === undefined ? {} : { washes }),
    ...(drying === undefined ? {} : { drying }),
  }
}

const kindOf = (folded: string): Complaint['kind'] | undefined => trouble.find(([, pattern]) => pattern.test(folded))?.[0]

/** A complaint with what was said of it; null when nothing went wrong yet. */
export const complaintOf = (text: string, team: string | null): Complaint | null => {
  const folded = fold(text)
  const kind = kindOf(folded)
  if (kind === undefined || feared.test(folded)) return null
  return { kind, text: text.slice(0, 1_000), ...complaintDetails(text, team) }
}

/** Words of somebody who orders. */
const wishes = anyOf(said.orders)

/** A complaint with what was said of it later; null when that was nothing. */
export const complaintWith = (complaint: Complaint, text: string, team: string | null): Complaint | null => {
  const told = complaintDetails(text, team)
  const folded = fold(text)
  const loose = numbersAfter([], numbersBy(pointed, folded), folded)
  const called = pointedNames(text)
  const more = {
    ...told,
    ...(loose.length === 0 ? {} : { numbers: [...new Set([...(told.numbers ?? []), ...loose])] }),
    ...(called.length === 0 ? {} : { names: [...new Set([...(told.names ?? []), ...called])] }),
  }
  if (Object.keys(more).length === 0 || wishes.test(folded)) return null
  const numbers = numbersAfter(complaint.numbers ?? [], more.numbers ?? [], folded)
  const names = [...new Set([...(complaint.names ?? []), ...(more.names ?? [])])]
  const kind = complaint.kind === 'other' ? (kindOf(folded) ?? complaint.kind) : complaint.kind
  return {
    ...complaint,
    ...more,
    kind,
    ...(complaint.team === undefined ? {} : { team: complaint.team }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    text: `${complaint.text}\n${text}`.slice(0, 2_000),
  }
}
