import { loadWords } from '../../../../templates/desk/load/languages.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Book } from '../../../domain/schedule/book/operation.ts'
import type { Fix } from '../../../domain/schedule/explain/bottleneck.ts'
import { type ExtraHours, extraHours } from '../../../domain/schedule/explain/extra-hours.ts'
import { replanFor } from '../../../domain/schedule/replan/replan.ts'
import { budgetFor } from '../../../domain/schedule/search/plan.ts'
import { slotsOf } from '../../../domain/schedule/timeline/slots.ts'
import { brokenPromises, verify } from '../../../domain/schedule/verify/verify.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Member, Told } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { type PlanChange, type ShopPlan, shopPlanFrom, withChange } from '../records/records.ts'
import { doneSaying, toldWhy } from '../say/told.ts'
import { askCustomer } from './ask-customer.ts'
import { jobName } from './job-names.ts'
import { durationText, planWords } from './plan-words.ts'
import { presentPlan } from './present-plan.ts'
import { bookOf } from './shop-plan.ts'
import { type LateJob, lateJobs } from './tight-jobs.ts'

/** Each change is looked at shortly; only the last, when none was enough, is searched for long: the shop's plan waits meanwhile. */
const lookSeconds = 0.02
const searchSeconds = 0.5
const seed = 1
/** A job that the owner puts first counts like this many. */
const firstWeight = 10

/** What a fix changes in the book before it is planned anew; null for one that a person has to agree to. */
type Mended = { readonly plan: ShopPlan; readonly reason: PlanChange['reason'] }

const withHours = (plan: ShopPlan, extra: readonly ExtraHours[]): Mended => ({
  plan: { ...plan, extra: [...plan.extra, ...extra] },
  reason: 'extra-hours',
})

/** Tried one after the other, so that nobody stays longer than it takes. */
const hoursToTry = [30, 60, 90, 120, 180, 240, 360, 540] as const

type Needed = { readonly book: Book; readonly fixes: readonly Fix[] }

/** So many minutes more, on the day of each fix and before it, at the stations it names: one station, or the whole shop. */
const hoursFor = (desk: Desk, { book, fixes }: Needed, most: number): readonly ExtraHours[] => {
  const crew = desk.workshop.shop.stations
  const { now } = book
  return fixes.flatMap((fix) => {
    const by = fix.at ?? now
    const named = fix.code === 'extra-minutes' ? [fix.subject] : crew.filter(({ kind }) => kind !== 'person').map(({ id }) => id)
    return named.flatMap((station) => extraHours(book.stations, crew, { station, minutes: most, by, now }))
  })
}

const addHours = (desk: Desk, plan: ShopPlan, needed: Needed): readonly Mended[] =>
  hoursToTry
    .map((most) => hoursFor(desk, needed, most))
    .filter(({ length }) => length > 0)
    .map((extra) => withHours(plan, extra))

/** Work that waits for a delivery waits until then at most. */
const deliveredBy = (plan: ShopPlan, orderId: string, by: Minutes): Mended => ({
  plan: {
    ...plan,
    sold: plan.sold.map((order) =>
      order.id === orderId
        ? {
            ...order,
            operations: order.operations.map((one) => (one.release !== null && one.release > by ? { ...one, release: by } : one)),
          }
        : order,
    ),
  },
  reason: 'earlier-delivery',
})

const putFirst = (plan: ShopPlan, orderId: string): Mended => ({
  plan: { ...plan, sold: plan.sold.map((order) => (order.id === orderId ? { ...order, weight: firstWeight } : order)) },
  reason: 'put-first',
})

/** Changes of the plan to try one after the other; null where a person has to agree. */
const changesFor = (
  desk: Desk,
  plan: ShopPlan,
  at: { book: Book; job: LateJob; code: Fix['code'] },
): readonly Mended[] | null => {
  const { book, job, code } = at
  const fixes = job.fixes.filter((fix) => fix.code === code)
  switch (code) {
    case 'extra-minutes':
    case 'open-longer':
      return addHours(desk, plan, { book, fixes })
    case 'earlier-delivery': {
      const delivered = deliveredBy(plan, job.orderId, fixes[0]?.at ?? minutes(book.now))
      const hours = job.fixes.filter((fix) => fix.code === 'extra-minutes')
      return [
        delivered,
        ...addHours(desk, delivered.plan, { book, fixes: hours }).map((one) => ({ ...one, reason: delivered.reason })),
      ]
    }
    case 'move-up':
    case 'go-before':
      return [putFirst(plan, job.orderId)]
    case 'drop-stones':
    case 'split-collection':
    case 'move-promise':
      return null
  }
}

type Tried = { readonly plan: ShopPlan; readonly lateBy: number; readonly sound: boolean }

/** Plans the changed book anew; sound when the job is in time and nobody is late who was not before. */
const planAnew = (
  desk: Desk,
  before: ShopPlan,
  mended: Mended & { readonly orderId: string; readonly seconds: number },
): Result<Tried, Problem> => {
  const book = bookOf(desk, mended.plan, desk.clock.now())
  const found = replanFor(book, before.slots, { seed, budget: budgetFor(mended.seconds), stop: () => false })
  if (!found.ok) return found
  const slots = slotsOf(found.value.lines)
  const lateBefore = new Set(brokenPromises(book, before.slots))
  const late = brokenPromises(book, slots)
  const due = mended.plan.sold.find(({ id }) => id === mended.orderId)
  const ready = Math.max(0, ...slots.filter(({ order }) => order === mended.orderId).map(({ end }) => end))
  const lateBy = Math.max(0, ready - (due?.promised ?? due?.needBy ?? 0))
  const sound = lateBy === 0 && late.every((id) => lateBefore.has(id)) && verify(book, slots).length === 0
  return ok({ plan: { ...mended.plan, slots }, lateBy, sound })
}

/** One press: the order, the code of the fix, and the revision that the owner was looking at. */
export type Mending = { readonly orderId: string; readonly code: string; readonly revision: string }

/** The first change that is sound, or the last that was tried; null when there was none. */
const firstSound = (
  desk: Desk,
  before: ShopPlan,
  at: { readonly orderId: string; readonly changes: readonly Mended[] },
): Result<(Tried & { readonly reason: PlanChange['reason'] }) | null, Problem> => {
  let last: (Tried & { readonly reason: PlanChange['reason'] }) | null = null
  const looks = at.changes.map((change) => ({ ...change, seconds: lookSeconds }))
  const searches = at.changes.slice(-1).map((change) => ({ ...change, seconds: searchSeconds }))
  for (const change of [...looks, ...searches]) {
    const tried = planAnew(desk, before, { ...change, orderId: at.orderId })
    if (!tried.ok) return tried
    last = { ...tried.value, reason: change.reason }
    if (last.sound) break
  }
  return ok(last)
}

const tryMending = async (
  desk: Desk,
  shop: ShopStore,
  at: { plan: ShopPlan; version: number; job: LateJob; changes: readonly Mended[] },
): Promise<Result<Told, Problem>> => {
  const { orderId } = at.job
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const job = await jobName(shop, orderId)
  const said = planWords(desk, language, new Map([[orderId, job]]))
  const tried = firstSound(desk, at.plan, { orderId, changes: at.changes })
  if (!tried.ok) return tried
  const found = tried.value
  if (found === null || !found.sound)
    return ok(toldWhy(said.words.notMended(job, durationText(said, found?.lateBy ?? at.job.minutes))))
  const now = desk.clock.now()
  const written = await shop.plan.write(at.version, withChange(found.plan, { reason: found.reason, at: now, orderId }))
  if (!written.ok) return written
  await shop.events.add({ code: 'plan-mended', orderId, ticketId: null, by: 'owner', at: now, facts: { reason: found.reason } })
  return ok(doneSaying(said.words.mended(job)))
}

const mendNow = async (desk: Desk, shop: ShopStore, { orderId, code, revision }: Mending): Promise<Result<Told, Problem>> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const present = presentPlan(desk, plan)
  if (!present.ok) return present
  const sold = plan.sold.find((one) => one.id === orderId && `${one.revision}` === revision)
  const job = lateJobs(present.value).find((one) => one.orderId === orderId)
  const fix = job?.fixes.find((one) => one.code === code)
  if (sold === undefined || job === undefined || fix === undefined) return ok(toldWhy(loadWords[language].gone))
  const changes = changesFor(desk, plan, { book: present.value.book, job, code: fix.code })
  if (changes !== null) return tryMending(desk, shop, { plan, version: read.version, job, changes })
  return askCustomer(desk, shop, { plan, version: read.version, job, fix })
}

/**
 * One press of the owner on something that would mend a late job. Hours, deliveries and turns are planned at once and kept only if
 * the job is in time then and no other promise breaks; what the customer must agree to is asked of them. Answers with a sentence.
 */
export const mend = async (desk: Desk, member: Member, mending: Mending): Promise<Told> => {
  if (member.role !== 'owner') return toldWhy(loadWords[desk.workshop.shop.profile.languages[0] ?? 'en'].ownerOnly)
  const done = await desk.store.together(desk.shopId, (shop) => mendNow(desk, shop, mending))
  if (done.ok) return done.value
  throw new Error(`${mending.orderId} could not be mended: ${done.problems.map(({ code }) => code).join(', ')}`)
}
