import type { Slot } from '../domain/schedule/book/operation.ts'
import type { Promised } from '../domain/schedule/promise/promise.ts'
import { type Minutes, minutes } from '../domain/units/units.ts'

const dayMinutes = 1_440
const quarter = 15

/** What must come from outside once the order is signed: days for garments and for vinyl or stones; null: it lies in the shop. */
export type Leads = {
  readonly garmentDays: number | null
  readonly materialDays: number | null
  readonly ownGarments: boolean
}

const needsMaterial = (slot: Slot): boolean => /^(cut-vinyl|brush|bleed-test|test-press|coupon)/.test(slot.operation)

const firstStart = (slots: readonly Slot[], of: (slot: Slot) => boolean): number =>
  Math.min(Number.POSITIVE_INFINITY, ...slots.filter(of).map((slot) => slot.start))

/**
 * What a promise hangs on, as the customer must hear it: the latest sign-off that still leaves the days in which ordered garments
 * and materials come, and, for garments of their own, the latest hour to bring them.
 */
export const hangsOn = (promised: Promised, leads: Leads): Promised['hangsOn'] =>
  promised.hangsOn.flatMap((item) => {
    if (item.code === 'garments') return leads.ownGarments ? [item] : []
    const garments = firstStart(promised.held, (slot) => slot.operation === 'count-in') - (leads.garmentDays ?? 0) * dayMinutes
    const materials = firstStart(promised.held, needsMaterial) - (leads.materialDays ?? 0) * dayMinutes
    const limits = [leads.garmentDays === null ? [] : garments, leads.materialDays === null ? [] : materials].flat()
    const last = Math.min(item.by, ...limits.filter(Number.isFinite))
    const by: Minutes = minutes(Math.floor(last / quarter) * quarter)
    return [{ code: item.code, by }]
  })
