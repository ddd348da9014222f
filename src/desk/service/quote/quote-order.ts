import { writeLocal } from '../../../domain/calendar/local-time.ts'
import type { Order } from '../../../domain/order/order.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { reckonedAt } from '../../../domain/schedule/work/learned-rates.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { OrderStep } from '../../../ports/queue.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredOrder } from '../../../ports/work-records.ts'
import { chargeLate, lateChanges } from '../../late-changes.ts'
import { forShop } from '../../quote.ts'
import { type Asked, piecesOf, workOut } from '../../work-out.ts'
import type { WorkerDesk } from '../desk.ts'
import { editTicketsOf } from '../floor/edit-tickets.ts'
import { isPlaceFree } from '../plan/keeps-place.ts'
import { withPace } from '../plan/learn-pace.ts'
import { floorFor, liveHolds } from '../plan/shop-plan.ts'
import { tellCannotPlan } from '../plan/tell-cannot-plan.ts'
import { keepPieces, knownPieces } from '../records/kept-pieces.ts'
import { orderFrom, type PlacedOrder, type QuoteBody, quoteFrom, type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { shopLanguage } from '../say/say-floor.ts'
import { showProgress } from '../say/show-progress.ts'
import { readShelf, withStock } from '../stock/shelf.ts'
import { hearQuote } from '../talk/hear-quote.ts'
import { type Asking, bodyOf } from './quote-body.ts'

const dayMinutes = 1_440

/** How often a quote is worked out again at once because its place was taken meanwhile. */
const mostTries = 5

/** The revision that was signed last before this one, and how far each of its lines has come. */
const signedBefore = async (shop: ShopStore, { orderId, revision }: OrderStep<'quote'>) => {
  const [revisions, rows] = await Promise.all([shop.orders.revisions(orderId), shop.orders.rows(orderId)])
  const last = revisions.findLast((one) => one.revision < revision && one.signed !== null && one.document !== null)
  if (last === undefined) return null
  const states = new Map(rows.map(({ line, state }) => [line, state]))
  return { before: orderFrom(last.document), progressOf: (line: number) => states.get(line) ?? ('not-cut' as const) }
}

/** A quote, and what only the shop can mend of what it found. */
type Quoted = {
  readonly body: QuoteBody
  readonly why: readonly Problem[]
  /** The version of the plan that it was worked out on; null when it was kept before. */
  readonly planVersion: number | null
}

/** The plan and the shelf that a quote is worked out on. */
const readPresent = async (shop: ShopStore, orderId: string) => {
  const [plan, shelf] = await Promise.all([shop.plan.read(), readShelf(shop, orderId)])
  return { plan, shelf }
}
type Present = Awaited<ReturnType<typeof readPresent>>

const workOutFor = async (asking: Asking, order: Order, { plan: read, shelf }: Present): Promise<Quoted> => {
  const { desk, step } = asking
  const shopStore = desk.store.shop(desk.shopId)
  const plan = shopPlanFrom(read.body)
  const keys = piecesOf(order, desk.workshop)
  const pieces = await knownPieces(shopStore, desk.ids, keys)
  const atPresent = withPace(withStock(desk.workshop, shelf), plan.pace)
  const workshop = { ...atPresent, cache: pieces }
  const asked: Asked = {
    document: order,
    now: writeLocal(desk.zone, desk.clock.now()),
    job: step.orderId,
    floor: (_, __, needBy) => floorFor(desk, plan, { orderId: step.orderId, needBy }),
    bench: shopLanguage(desk),
  }
  const worked = workOut(asked, workshop)
  await keepPieces(shopStore, desk.ids, { orderId: step.orderId, pieces, keys })
  const signed = step.revision === 1 ? null : await desk.store.look(desk.shopId, (shop) => signedBefore(shop, step))
  const late = signed === null ? [] : lateChanges({ ...asked, document: order }, workshop, signed)
  const body = await bodyOf(asking, chargeLate(worked, late), { workshop, reckoned: reckonedAt(plan.pace) })
  const why = forShop(worked.problems)
  const planVersion = read.version
  return { body: late.length === 0 ? body : { ...body, quote: { ...body.quote, late } }, why, planVersion }
}

/** The plan with this order's place held; older holds of it and holds that lapsed are let go. */
const heldPlan = (desk: WorkerDesk, plan: ShopPlan, placed: PlacedOrder): ShopPlan => {
  const now = desk.clock.now()
  const until = minutes(now + (desk.workshop.shop.profile.holdHours * dayMinutes) / 24)
  const others = liveHolds(plan, now).filter((held) => held.id !== placed.id)
  return { ...plan, held: [...others, { ...placed, until }] }
}

/** The plan under its lock, and the order as it is then. */
type HeldPlan = { readonly version: number; readonly plan: ShopPlan; readonly order: StoredOrder | null }

/** Whether the place was taken while the quote was worked out: by another proof, a sign-off, work that is made again. */
const isOvertaken = (desk: WorkerDesk, { body, planVersion }: Quoted, held: HeldPlan): Result<boolean, Problem> => {
  if (body.placed === null || planVersion === null || held.version === planVersion) return ok(false)
  const free = isPlaceFree(desk, held.plan, body.placed)
  return free.ok ? ok(!free.value) : free
}

type Shown = { readonly asking: Asking; readonly hash: string; readonly quoted: Quoted }
type Showing = Shown & { readonly held: HeldPlan }

/** Holds the order's place and marks it as quoted; a refused order holds nothing. */
const holdPlace = async ({ asking, held }: Showing, shop: ShopStore, placed: PlacedOrder): Promise<Result<null, Problem>> => {
  const written = await shop.plan.write(held.version, heldPlan(asking.desk, held.plan, placed))
  if (!written.ok) return written
  const { order } = held
  if (order === null || order.state !== 'asked') return ok(null)
  const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: 'quoted' })
  return changed.ok ? ok(null) : changed
}

/** Keeps the quote, holds its place, and shows it in the conversation. */
const keepAndShow = async (shop: ShopStore, showing: Showing): Promise<Result<null, Problem>> => {
  const { asking, hash, quoted } = showing
  const { desk, step, conversation } = asking
  const { body, why } = quoted
  const { orderId, revision } = step
  await shop.quotes.put({ orderId, revision, hash }, body)
  const [placed, heard] = await Promise.all([
    body.placed === null ? ok(null) : holdPlace(showing, shop, body.placed),
    conversation === null ? ok(null) : hearQuote(desk, shop, { conversation, step, hash, quote: body.quote }),
  ])
  if (!placed.ok) return placed
  if (!heard.ok) return heard
  if (heard.value !== null) await showProgress(shop, heard.value, { orderId, revision, stage: 'done' })
  await tellCannotPlan(desk, shop, { orderId, revision, why })
  if (showing.held.order?.state === 'on-bench') await editTicketsOf(desk, shop, orderId)
  const facts = { revision, refused: body.placed === null }
  await shop.events.add({ code: 'quoted', orderId, ticketId: null, by: 'desk', at: desk.clock.now(), facts })
  await shop.steps.done(step)
  return ok(null)
}

/** Under the shop's plan. False when the place was taken meanwhile: then it is worked out again. */
const showQuote = (shown: Shown): Promise<Result<boolean, Problem>> => {
  const { desk, step } = shown.asking
  return desk.store.together(desk.shopId, async (shop) => {
    const [{ version, body }, about] = await Promise.all([shop.plan.hold(), shop.steps.about(step)])
    if (about.isDone) return ok(true)
    const held = { version, plan: shopPlanFrom(body), order: about.order }
    const overtaken = isOvertaken(desk, shown.quoted, held)
    if (!overtaken.ok) return overtaken
    if (overtaken.value) return ok(false)
    const kept = await keepAndShow(shop, { ...shown, held })
    return kept.ok ? ok(true) : kept
  })
}

/**
 * The quote step: works a revision out once, keeps the result under (order, revision, hash), holds its place in the shop's plan
 * and shows it in the conversation. A newer revision makes it moot. May run twice.
 */
export const quoteOrder = async (desk: WorkerDesk, step: OrderStep<'quote'>): Promise<void> => {
  const look = <T>(at: (shop: ShopStore) => Promise<T>): Promise<T> => desk.store.look(desk.shopId, at)
  const present = (shop: ShopStore): Promise<Present> => readPresent(shop, step.orderId)
  const [{ isDone, order, revision }, known, first] = await look((shop) =>
    Promise.all([shop.steps.about(step), shop.quotes.ofRevision(step), present(shop)]),
  )
  if (isDone) return
  const document = revision?.document ?? null
  if (order === null || revision === null || document === null || order.revision !== step.revision) {
    await desk.store.shop(desk.shopId).steps.done(step)
    return
  }
  const asking = { desk, step, conversation: order.conversationId }
  const isNew = known === null || known === undefined
  for (let tries = 1; tries <= mostTries; tries += 1) {
    const quoted = isNew
      ? await workOutFor(asking, orderFrom(document), tries === 1 ? first : await look(present))
      : { body: quoteFrom(known), why: [], planVersion: null }
    const shown = await showQuote({ asking, hash: revision.hash, quoted })
    if (!shown.ok)
      throw new Error(`the quote of ${step.orderId} could not be kept: ${shown.problems.map((one) => one.code).join(', ')}`)
    if (shown.value) return
  }
  throw new Error(`the place of ${step.orderId}, revision ${step.revision} was taken ${mostTries} times while it was worked out`)
}
