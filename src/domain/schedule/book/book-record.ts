import * as z from 'zod'
import { type Axis, without } from '../../calendar/axis.ts'
import { clockSchema, closedAxis, closureSchema, type Range, wallMinuteSchema, weekAxis, weekdays } from '../../calendar/hours.ts'
import { readLocal, writeLocal } from '../../calendar/local-time.ts'
import { type Zone, zoneOf } from '../../calendar/zone.ts'
import { ok, type Problem, pointer, type Result, refuse } from '../../result/result.ts'
import { type Minutes, minutes } from '../../units/units.ts'
import type { Book, BookOrder, Operation, Station } from './operation.ts'
import { stationKinds } from './operation.ts'
import { setUpSchema } from './station-records.ts'

const idSchema = z.string().min(1).max(120)

const dayWords = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun']
/** A weekday ('mon', 'Monday', 1 = Monday … 7 = Sunday) or one date, whose hours replace the week's. */
const daySchema = z.union([
  z.iso.date(),
  z
    .string()
    .regex(/^(mon|tue|wed|thu|fri|sat|sun)/i)
    .transform((text) => weekdays[dayWords.indexOf(text.slice(0, 3).toLowerCase())] ?? 'mon'),
  z
    .int()
    .min(0)
    .max(7)
    .transform((number) => weekdays[(number + 6) % 7] ?? 'mon'),
])

const operationSchema = z.strictObject({
  id: idSchema,
  minutes: z.int().min(1).max(100_000),
  needs: z.array(z.array(idSchema).min(1)).max(4),
  family: z.string().min(1).max(120).nullish(),
  splittable: z.boolean().default(false),
  after: z.array(z.strictObject({ operation: idSchema, lagMinutes: z.int().min(0).max(100_000).default(0) })).default([]),
  release: wallMinuteSchema.nullish(),
  started: wallMinuteSchema.nullish(),
  done: z.union([z.boolean(), wallMinuteSchema]).nullish(),
  on: z.array(idSchema).nullish(),
})

/** A book as it comes in: wall-clock minutes of one zone. */
export const bookSchema = z.strictObject({
  version: z.literal(1),
  now: wallMinuteSchema,
  zone: z.string().min(1),
  stations: z
    .array(
      z.strictObject({
        id: idSchema,
        kind: z.enum(stationKinds),
        hours: z.array(z.strictObject({ day: daySchema, from: clockSchema, to: clockSchema })),
        closed: z.array(closureSchema).default([]),
        setups: z.array(setUpSchema).default([]),
      }),
    )
    .min(1),
  orders: z.array(
    z.strictObject({
      id: idSchema,
      needBy: wallMinuteSchema,
      promised: wallMinuteSchema.nullish(),
      weight: z.number().min(0).max(1_000).default(1),
      operations: z.array(operationSchema).min(1),
    }),
  ),
})
export type BookRecord = z.infer<typeof bookSchema>
type OperationRecord = z.infer<typeof operationSchema>
type StationFile = BookRecord['stations'][number]

const axisOf = (zone: Zone, station: StationFile, range: Range): Axis => {
  const isWeekday = (day: string): boolean => dayWords.includes(day)
  const shifts = station.hours.flatMap((one) => {
    const day = weekdays.find((weekday) => weekday === one.day)
    return day === undefined ? [] : [{ ...one, day }]
  })
  const dated = station.hours.filter((one) => !isWeekday(one.day)).map((one) => ({ date: one.day, from: one.from, to: one.to }))
  return without(weekAxis(zone, { shifts, dated }, range), closedAxis(zone, station.closed))
}

/** Reads wall-clock times and remembers what was wrong with them, each by its path. */
const reader = (zone: Zone) => {
  const problems: Problem[] = []
  const read = (text: string, at: string): Minutes => {
    const reading = readLocal(zone, text)
    if (!reading.ok) {
      problems.push(...reading.problems.map((problem) => ({ ...problem, at })))
      return minutes(0)
    }
    if (reading.value.reading === 'lost-hour') {
      problems.push({
        code: 'time-in-lost-hour',
        at,
        severity: 'stop',
        facts: { text, readAs: writeLocal(zone, reading.value.at) },
      })
    }
    return reading.value.at
  }
  return { problems, read }
}
type Reader = ReturnType<typeof reader>

const optional = (times: Reader, text: string | null | undefined, at: string): Minutes | null =>
  text === null || text === undefined ? null : times.read(text, at)

const doneOf = (
  times: Reader,
  record: OperationRecord,
  where: { readonly at: string; readonly now: Minutes },
): Minutes | null => {
  if (record.done === true) return where.now
  return typeof record.done === 'string' ? times.read(record.done, `${where.at}/done`) : null
}

const operationOf = (
  times: Reader,
  record: OperationRecord,
  where: { readonly at: string; readonly now: Minutes },
): Operation => {
  const started = optional(times, record.started, `${where.at}/started`)
  if (started !== null && started > where.now) {
    const facts = { operation: record.id, started: record.started ?? '' }
    times.problems.push({ code: 'started-in-future', at: `${where.at}/started`, severity: 'stop', facts })
  }
  return {
    id: record.id,
    minutes: record.minutes,
    needs: record.needs,
    family: record.family ?? null,
    splittable: record.splittable,
    after: record.after,
    release: optional(times, record.release, `${where.at}/release`),
    started,
    done: doneOf(times, record, where),
    on: record.on ?? null,
  }
}

const orderOf = (
  times: Reader,
  record: BookRecord['orders'][number],
  where: { readonly at: string; readonly now: Minutes },
): BookOrder => {
  const needBy = times.read(record.needBy, `${where.at}/needBy`)
  if (needBy <= where.now) {
    const facts = { order: record.id, needByMinutes: needBy, nowMinutes: where.now }
    times.problems.push({ code: 'need-by-past', at: `${where.at}/needBy`, severity: 'caution', facts })
  }
  return {
    id: record.id,
    needBy,
    promised: optional(times, record.promised, `${where.at}/promised`),
    weight: record.weight,
    operations: record.operations.map((one, index) =>
      operationOf(times, one, { at: `${where.at}${pointer('operations', index)}`, now: where.now }),
    ),
  }
}

/** A book in epoch minutes with its zone, and what a person should be told of it. */
export type ReadBook = { readonly book: Book; readonly zone: Zone; readonly cautions: readonly Problem[] }

/** How far ahead the calendars are laid out: two years past the last wish. */
const daysAhead = 730

const malformed = (error: z.ZodError): readonly Problem[] =>
  error.issues.map((issue) => ({
    code: 'book-malformed',
    at: pointer(...issue.path.map((step) => (typeof step === 'symbol' ? String(step) : step))),
    severity: 'stop',
    facts: { reason: issue.message },
  }))

/** A book from what was in a file; refuses what is malformed, unknown zones and times that do not exist, each with its path. */
export const readBook = (input: unknown): Result<ReadBook> => {
  const parsed = bookSchema.safeParse(input)
  if (!parsed.success) return refuse(...malformed(parsed.error))
  const zone = zoneOf(parsed.data.zone)
  if (!zone.ok) return zone
  const times = reader(zone.value)
  const now = times.read(parsed.data.now, '/now')
  const orders = parsed.data.orders.map((order, index) => orderOf(times, order, { at: pointer('orders', index), now }))
  const stops = times.problems.filter((problem) => problem.severity === 'stop')
  if (stops.length > 0) return refuse(...stops)
  const first = orders
    .flatMap((order) => order.operations)
    .reduce<number>((least, one) => Math.min(least, one.started ?? now), now)
  const last = orders.reduce<number>((most, order) => Math.max(most, order.needBy), now)
  const range = { from: first, to: last + daysAhead * 1_440 }
  const stations = parsed.data.stations.map(
    (station): Station => ({
      id: station.id,
      kind: station.kind,
      axis: axisOf(zone.value, station, range),
      setups: station.setups,
    }),
  )
  return ok({ book: { now, stations, orders }, zone: zone.value, cautions: times.problems })
}
