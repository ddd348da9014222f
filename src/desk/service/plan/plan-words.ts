import { loadWords } from '../../../../templates/desk/load/languages.ts'
import type { LoadWords } from '../../../../templates/desk/load/words.ts'
import { writeLocal } from '../../../domain/calendar/local-time.ts'
import type { Zone } from '../../../domain/calendar/zone.ts'
import { type StationKind, stationKinds } from '../../../domain/schedule/book/operation.ts'
import type { Fix } from '../../../domain/schedule/explain/bottleneck.ts'
import type { Cause } from '../../../domain/schedule/explain/causes.ts'
import { type Show, showFor } from '../../../domain/shop/show.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Desk } from '../desk.ts'

/** How the plan is spoken of in one language. */
export type PlanWords = {
  readonly words: LoadWords
  readonly show: Show
  readonly zone: Zone
  /** Names of jobs by order. */
  readonly jobs: ReadonlyMap<string, string>
}

/** The words of the plan in a language, with the names of the jobs it is about. */
export const planWords = (desk: Desk, language: Language, jobs: ReadonlyMap<string, string>): PlanWords => ({
  words: loadWords[language],
  show: showFor(desk.workshop.shop, language),
  zone: desk.zone,
  jobs,
})

const hour = 60
const day = 1_440

/** Minutes as days, hours and minutes; hours and minutes only below a day. */
export const durationText = ({ words }: PlanWords, inMinutes: number): string => {
  const whole = Math.max(0, Math.round(inMinutes))
  const days = Math.floor(whole / day)
  const hours = Math.floor((whole % day) / hour)
  return words.duration(days, hours, days > 0 ? 0 : whole % hour)
}

/** An epoch minute as a day and an hour of the shop's zone. */
export const momentText = ({ show, zone }: PlanWords, at: number): string => show.moment(writeLocal(zone, minutes(at)))

const isKind = (name: string): name is StationKind => stationKinds.some((kind) => kind === name)

/** 'press-1' → 'press 1', in the language's word; a station with a name of its own keeps it. */
export const stationText = ({ words }: Pick<PlanWords, 'words'>, id: string): string => {
  const [, kind = '', number = ''] = /^([a-z]+)-(\d+)$/.exec(id) ?? []
  return isKind(kind) ? `${words.kinds[kind]} ${number}` : id.replaceAll('-', ' ')
}

/** 'weed-1-2' → 'weeding'. */
const workText = ({ words }: PlanWords, operation: string): string => {
  const known: { readonly [prefix: string]: string } = words.work
  const prefix = Object.keys(known)
    .filter((name) => operation === name || operation.startsWith(`${name}-`))
    .toSorted((a, b) => b.length - a.length)[0]
  return prefix === undefined ? operation.replaceAll('-', ' ') : (known[prefix] ?? operation)
}

type Told = { readonly cause: Cause['cause']; readonly about: string; readonly minutes: number }

const aboutOf = (plan: PlanWords, { cause, operation, station }: Cause): string => {
  if (cause === 'queue') return station === null ? workText(plan, operation) : stationText(plan, station)
  return cause === 'closed' || cause === 'arrival' ? '' : workText(plan, operation)
}

const mostCauses = 4

/** Why a job is ready when it is: like causes added up, the longest first, at most four of them. */
export const causesText = (plan: PlanWords, causes: readonly Cause[]): readonly string[] => {
  const told = new Map<string, Told>()
  for (const cause of causes) {
    const about = aboutOf(plan, cause)
    const key = `${cause.cause} ${about}`
    told.set(key, { cause: cause.cause, about, minutes: (told.get(key)?.minutes ?? 0) + cause.minutes })
  }
  return [...told.values()]
    .toSorted((a, b) => b.minutes - a.minutes)
    .slice(0, mostCauses)
    .map(({ cause, about, minutes: sum }) => plan.words.causes[cause](durationText(plan, sum), about))
}

const subjectText = (plan: PlanWords, { code, subject }: Fix): string => {
  if (code === 'extra-minutes') return stationText(plan, subject)
  if (code === 'go-before') return plan.jobs.get(subject) ?? subject
  return code === 'split-collection' ? subject.replace('/', ' / ') : subject
}

/** One thing that would mend a late job, in words. */
export const fixText = (plan: PlanWords, fix: Fix): string =>
  plan.words.fixes[fix.code]({
    subject: subjectText(plan, fix),
    at: fix.at === null ? '' : momentText(plan, fix.at),
    duration: durationText(plan, fix.minutes),
  })
