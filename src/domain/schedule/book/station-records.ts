import * as z from 'zod'
import type { Axis } from '../../calendar/axis.ts'
import {
  closureSchema,
  type Hours,
  openTime,
  ownTime,
  peopleTime,
  type Range,
  shiftSchema,
  weekAxis,
} from '../../calendar/hours.ts'
import type { Zone } from '../../calendar/zone.ts'
import { type Station, stationKinds } from './operation.ts'

const idSchema = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/)

export const setUpSchema = z.strictObject({
  from: z.string().min(1).max(120),
  to: z.string().min(1).max(120),
  minutes: z.int().min(0).max(1_440),
})

/** What can do one thing at a time. Without own hours it works when the shop does; `does` says which stations a person serves. */
export const stationRecordSchema = z.strictObject({
  id: idSchema,
  kind: z.enum(stationKinds),
  does: z.array(z.enum(['cutter', 'press', 'bench'])).optional(),
  hours: z.array(shiftSchema).min(1).optional(),
  closed: z.array(closureSchema),
  setups: z.array(setUpSchema),
})
export const stationsSchema = z.array(stationRecordSchema).min(1)
export type StationRecord = z.infer<typeof stationRecordSchema>

const axisOf = (
  zone: Zone,
  record: Pick<StationRecord, 'kind' | 'hours' | 'closed'>,
  time: { readonly shop: Axis; readonly people: Axis; readonly range: Range },
): Axis => {
  const week = record.hours === undefined ? null : weekAxis(zone, { shifts: record.hours, dated: [] }, time.range)
  return ownTime(zone, record.kind === 'person' ? time.people : time.shop, { week, closed: record.closed })
}

/** The stations of the shop with their open time over a range: one that is out of service all the while has none. */
export const stationsOf = (zone: Zone, hours: Hours, records: readonly StationRecord[], range: Range): readonly Station[] => {
  const time = { shop: openTime(zone, hours, range), people: peopleTime(zone, hours, range), range }
  return records.map(({ id, kind, setups, ...record }) => ({ id, kind, setups, axis: axisOf(zone, { kind, ...record }, time) }))
}
