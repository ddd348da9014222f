import { loadWords } from '../../../../templates/desk/load/languages.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Fix } from '../../../domain/schedule/bottleneck.ts'
import { type ExtraHours, extraHours } from '../../../domain/schedule/extra-hours.ts'
import type { Book } from '../../../domain/schedule/operation.ts'
import { budgetFor } from '../../../domain/schedule/plan.ts'
import { replanFor } from '../../../domain/schedule/replan.ts'
import { slotsOf } from '../../../domain/schedule/slots.ts'
import { brokenPromises, verify } from '../../../domain/schedule/verify.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { type PlanChange, type ShopPlan, shopPlanFrom, withChange } from '../records.ts'
import { bookOf } from '../shop-plan.ts'
import { askCustomer } from './ask-customer.ts'
import { jobName } from './job-names.ts'
import { durationText, planWords } from './plan-words.ts'
import { presentPlan } from './present-plan.ts'
import { type LateJob, lateJobs } from './tight-jobs.ts'

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

const addHours = (desk: Desk, plan: ShopPlan, { book, fixes }: { book: Book; fixes: readonly Fix[] }): Mended => {
  const crew = desk.workshop.shop.stations
  const { now } = book
  const extra = fixes.flatMap((fix) => {
    const by = fix.at ?? now
    if (fix.code === 'extra-minutes')
      return extraHours(book.stations, crew, { station: fix.subject, minutes: fix.minutes, by, now })
    return crew
      .filter(({ kind }) => kind !== 'person')
      .flatMap(({ id }) => extraHours(book.stations, crew, { station: id, minutes: fix.minutes, by, now }))
  })
  return withHours(plan, extra)
}

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

const changeFor = (desk: Desk, plan: ShopPlan, at: { book: Book; job: LateJob; code: Fix['code'] }): Mended | null => {
  const { book, job, code } = at
  const fixes = job.fixes.filter((fix) => fix.code === code)
  switch (code) {
    case 'extra-minutes':
    case 'open-longer':
      return addHours(desk, plan, { book, fixes })
    case 'earlier-delivery': {
      const delivered = deliveredBy(plan, job.orderId, fixes[0]?.at ?? minutes(book.now))
      const hours = job.fixes.filter((fix) => fix.code === 'extra-minutes')
      return job.fixes[0]?.code === code && hours.length > 0
        ? { ...addHours(desk, delivered.plan, { book, fixes: hours }), reason: delivered.reason }
        : delivered
    }
    case 'move-up':
    case 'go-before':
      return putFirst(plan, job.orderId)
    case 'drop-stones':
    case 'split-collection':
    case 'move-promise':
      return null
  }
}

type Tried = { readonly plan: ShopPlan; readonly lateBy: number; readonly sound: boolean }

/** Plans the changed book anew; sound when the job is in time and nobody is late who was not before. */
const planAnew = (desk: Desk, before: ShopPlan, mended: Mended & { readonly orderId: string }): Result<Tried, Problem> => {
  const book = bookOf(desk, mended.plan, desk.clock.now())
  if (!book.ok) return book
  const found = replanFor(book.value, before.slots, { seed, budget: budgetFor(searchSeconds), stop: () => false })
  if (!found.ok) return found
  const slots = slotsOf(found.value.lines)
  const lateBefore = new Set(brokenPromises(book.value, before.slots))
  const late = brokenPromises(book.value, slots)
  const due = mended.plan.sold.find(({ id }) => id === mended.orderId)
  const ready = Math.max(0, ...slots.filter(({ order }) => order === mended.orderId).map(({ end }) => end))
  const lateBy = Math.max(0, ready - (due?.promised ?? due?.needBy ?? 0))
  const sound = lateBy === 0 && late.every((id) => lateBefore.has(id)) && verify(book.value, slots).length === 0
  return ok({ plan: { ...mended.plan, slots }, lateBy, sound })
}

export type Mending = { readonly orderId: string; readonly code: string; readonly revision: string }

const tryMending = async (
  desk: Desk,
  shop: ShopStore,
  at: { plan: ShopPlan; version: number; job: LateJob; mended: Mended },
): Promise<Result<string, Problem>> => {
  const { orderId } = at.job
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const job = await jobName(shop, orderId)
  const said = planWords(desk, language, new Map([[orderId, job]]))
  const tried = planAnew(desk, at.plan, { ...at.mended, orderId })
  if (!tried.ok) return tried
  if (!tried.value.sound) return ok(said.words.notMended(job, durationText(said, tried.value.lateBy)))
  const now = desk.clock.now()
  const next = withChange(tried.value.plan, { reason: at.mended.reason, at: now, orderId })
  const written = await shop.plan.write(at.version, next)
  if (!written.ok) return written
  await shop.events.add({
    code: 'plan-mended',
    orderId,
    ticketId: null,
    by: 'owner',
    at: now,
    facts: { reason: at.mended.reason },
  })
  return ok(said.words.mended(job))
}

const mendNow = async (desk: Desk, shop: ShopStore, { orderId, code, revision }: Mending): Promise<Result<string, Problem>> => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const present = presentPlan(desk, plan)
  if (!present.ok) return present
  const sold = plan.sold.find((one) => one.id === orderId && `${one.revision}` === revision)
  const job = lateJobs(present.value).find((one) => one.orderId === orderId)
  const fix = job?.fixes.find((one) => one.code === code)
  if (sold === undefined || job === undefined || fix === undefined) return ok(loadWords[language].gone)
  const mended = changeFor(desk, plan, { book: present.value.book, job, code: fix.code })
  if (mended !== null) return tryMending(desk, shop, { plan, version: read.version, job, mended })
  return askCustomer(desk, shop, { plan, version: read.version, job, fix })
}

/**
 * One press of the owner on something that would mend a late job. Hours, deliveries and turns are planned at once and kept only if
 * the job is in time then and no other promise breaks; what the customer must agree to is asked of them. Answers with a sentence.
 */
export const mend = async (desk: Desk, member: Member, mending: Mending): Promise<string> => {
  if (member.role !== 'owner') return loadWords[desk.workshop.shop.profile.languages[0] ?? 'en'].ownerOnly
  const done = await desk.store.together(desk.shopId, (shop) => mendNow(desk, shop, mending))
  if (done.ok) return done.value
  throw new Error(`${mending.orderId} could not be mended: ${done.problems.map(({ code }) => code).join(', ')}`)
}
