import { writeLocal } from '../../domain/calendar/local-time.ts'
import type { Order } from '../../domain/order/order.ts'
import { ok, type Problem, type Result } from '../../domain/result/result.ts'
import { type Reckoned, reckonedAt } from '../../domain/schedule/work/learned-rates.ts'
import type { Shop } from '../../domain/shop/shop.ts'
import type { TicketFacts } from '../../domain/ticket/facts.ts'
import { minutes } from '../../domain/units/units.ts'
import type { OrderStep } from '../../ports/queue.ts'
import type { ShopStore } from '../../ports/store.ts'
import { chargeLate, lateChanges } from '../late-changes.ts'
import { archiveEntries, previewOf } from '../make-job.ts'
import { forShop, quoteOf } from '../quote.ts'
import { stockUses } from '../stock-uses.ts'
import { careCard, priceSlip } from '../ticket/slips.ts'
import { templatePrint } from '../ticket/template-print.ts'
import { ticketFacts } from '../ticket/ticket-facts.ts'
import { type Asked, piecesOf, type Work, type WorkedOut, type Workshop, workOut } from '../work-out.ts'
import { conversationChannel, orderFiles, type WorkerDesk } from './desk.ts'
import { hearQuote } from './hear-quote.ts'
import { isPlaceFree } from './keeps-place.ts'
import { keepPieces, knownPieces } from './kept-pieces.ts'
import { isDone } from './moot.ts'
import { withPace } from './plan/learn-pace.ts'
import { orderFrom, type PlacedOrder, type QuoteBody, quoteFrom, type ShopPlan, shopPlanFrom } from './records.ts'
import { readShelf, withStock } from './shelf.ts'
import { floorFor, liveHolds } from './shop-plan.ts'
import { showProgress } from './show-progress.ts'
import { tellCannotPlan } from './tell-cannot-plan.ts'

const dayMinutes = 1_440

/** How often a quote is worked out again at once because its place was taken meanwhile. */
const mostTries = 5

const placedOf = (work: Work, step: OrderStep<'quote'>, reckoned: Reckoned): PlacedOrder => ({
  id: step.orderId,
  revision: step.revision,
  needBy: work.promised.promised,
  promised: work.promised.promised,
  weight: 1,
  operations: work.operations,
  reckoned,
})

type Asking = { readonly desk: WorkerDesk; readonly step: OrderStep<'quote'>; readonly conversation: string | null }
type Present = { readonly workshop: Workshop; readonly reckoned: Reckoned }

type Papers = { readonly work: Work; readonly facts: TicketFacts; readonly shop: Shop }

/** Keeps the new templates one to one on paper, and the archive of everything for the cutter. */
const keepCutterFiles = async (
  { desk, step }: Asking,
  { work, facts, shop }: Papers,
  picture: Uint8Array,
): Promise<Pick<QuoteBody, 'cutArchive' | 'templatePrint'>> => {
  const keep = async (name: string, mime: string, bytes: Uint8Array): Promise<string> => {
    const hash = desk.ids.hash(bytes)
    await desk.store.shop(desk.shopId).files.keep(orderFiles(step.orderId), { hash, name, mime, bytes })
    return hash
  }
  const print = templatePrint(work, facts, shop)
  const templates = print === null ? null : (await desk.press.printer.print(print)).bytes
  const zip = desk.press.pack(archiveEntries(work, { picture, templates }))
  const called = `${step.orderId}-${step.revision}`
  return {
    cutArchive: await keep(`cut-${called}.zip`, 'application/zip', zip),
    templatePrint: templates === null ? null : await keep(`templates-${called}.pdf`, 'application/pdf', templates),
  }
}

/** Keeps picture and cut files, and gathers what the ticket will need. */
const bodyOf = async ({ desk, step, conversation }: Asking, worked: WorkedOut, present: Present): Promise<QuoteBody> => {
  const { workshop, reckoned } = present
  const { work, problems } = worked
  if (work === null) {
    return {
      version: 1,
      quote: quoteOf(worked, workshop.shop, null),
      placed: null,
      facts: null,
      stock: [],
      cutArchive: null,
      picture: null,
    }
  }
  const now = writeLocal(desk.zone, desk.clock.now())
  const blank = {
    ticket: '',
    order: step.orderId,
    revision: step.revision,
    replaces: null,
    link: null,
    changes: [],
    throwAway: [],
  }
  const facts = ticketFacts(work, workshop.shop, { identity: blank, problems, now })
  const files = desk.store.shop(desk.shopId).files
  const png = previewOf(facts, desk.press.picture)
  const picture = desk.ids.hash(png)
  const owner = conversation === null ? orderFiles(step.orderId) : conversationChannel(conversation)
  await files.keep(owner, { hash: picture, name: `proof-${step.revision}.png`, mime: 'image/png', bytes: png })
  const papers = { work, facts, shop: workshop.shop }
  const kept = await keepCutterFiles({ desk, step, conversation }, papers, png)
  return {
    version: 1,
    quote: quoteOf(worked, workshop.shop, picture),
    placed: placedOf(work, step, reckoned),
    facts,
    stock: stockUses(work, workshop.shop.auxiliaries),
    ...kept,
    slips: { price: priceSlip(work, facts, workshop.shop), care: careCard(facts) },
    picture,
  }
}

/** The revision that was signed last before this one, and how far each of its lines has come. */
const signedBefore = async (shop: ShopStore, { orderId, revision }: OrderStep<'quote'>) => {
  const revisions = await shop.orders.revisions(orderId)
  const last = revisions.findLast((one) => one.revision < revision && one.signed !== null && one.document !== null)
  if (last === undefined) return null
  const states = new Map((await shop.orders.rows(orderId)).map(({ line, state }) => [line, state]))
  return { before: orderFrom(last.document), progressOf: (line: number) => states.get(line) ?? ('not-cut' as const) }
}

/** A quote, and what only the shop can mend of what it found. */
type Quoted = {
  readonly body: QuoteBody
  readonly why: readonly Problem[]
  /** The version of the plan that it was worked out on; null when it was kept before. */
  readonly planVersion: number | null
}

const workOutFor = async (asking: Asking, order: Order): Promise<Quoted> => {
  const { desk, step } = asking
  const shopStore = desk.store.shop(desk.shopId)
  const read = await shopStore.plan.read()
  const plan = shopPlanFrom(read.body)
  const keys = piecesOf(order, desk.workshop)
  const pieces = await knownPieces(shopStore, desk.ids, keys)
  const atPresent = withPace(withStock(desk.workshop, await readShelf(shopStore, step.orderId)), plan.pace)
  const workshop = { ...atPresent, cache: pieces }
  const asked: Asked = {
    document: order,
    now: writeLocal(desk.zone, desk.clock.now()),
    job: step.orderId,
    floor: (_, __, needBy) => floorFor(desk, plan, { orderId: step.orderId, needBy }),
  }
  const worked = workOut(asked, workshop)
  await keepPieces(shopStore, desk.ids, { orderId: step.orderId, pieces, keys })
  const signed = await signedBefore(shopStore, step)
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

/** Whether the place was taken while the quote was worked out: by another proof, a sign-off, work that is made again. */
const isOvertaken = async (
  desk: WorkerDesk,
  shop: ShopStore,
  { body, planVersion }: Quoted,
): Promise<Result<boolean, Problem>> => {
  if (body.placed === null || planVersion === null) return ok(false)
  const read = await shop.plan.read()
  if (read.version === planVersion) return ok(false)
  const free = isPlaceFree(desk, shopPlanFrom(read.body), body.placed)
  return free.ok ? ok(!free.value) : free
}

/** Holds the order's place and marks it as quoted; a refused order holds nothing. */
const holdPlace = async (desk: WorkerDesk, shop: ShopStore, placed: PlacedOrder): Promise<Result<null, Problem>> => {
  const read = await shop.plan.read()
  const written = await shop.plan.write(read.version, heldPlan(desk, shopPlanFrom(read.body), placed))
  if (!written.ok) return written
  const order = await shop.orders.read(placed.id)
  if (order === null || order.state !== 'asked') return ok(null)
  const changed = await shop.orders.change({ id: order.orderId, version: order.version }, { state: 'quoted' })
  return changed.ok ? ok(null) : changed
}

type Showing = { readonly asking: Asking; readonly hash: string; readonly quoted: Quoted }

/** Keeps the quote, holds its place, and shows it in the conversation. */
const keepAndShow = async (shop: ShopStore, { asking, hash, quoted }: Showing): Promise<Result<null, Problem>> => {
  const { desk, step, conversation } = asking
  const { body, why } = quoted
  const { orderId, revision } = step
  await shop.quotes.put({ orderId, revision, hash }, body)
  const held = body.placed === null ? ok(null) : await holdPlace(desk, shop, body.placed)
  if (!held.ok) return held
  if (conversation !== null) {
    const heard = await hearQuote(desk, shop, { conversation, step, hash, quote: body.quote })
    if (!heard.ok) return heard
    await showProgress(shop, heard.value, { orderId, revision, stage: 'done' })
  }
  await tellCannotPlan(desk, shop, { orderId, revision, why })
  const facts = { revision, refused: body.placed === null }
  await shop.events.add({ code: 'quoted', orderId, ticketId: null, by: 'desk', at: desk.clock.now(), facts })
  await shop.steps.done(step)
  return ok(null)
}

/** Under the shop's plan. False when the place was taken meanwhile: then it is worked out again. */
const showQuote = (showing: Showing): Promise<Result<boolean, Problem>> => {
  const { desk, step } = showing.asking
  return desk.store.together(desk.shopId, async (shop) => {
    await shop.plan.alone()
    if (await isDone(shop, step)) return ok(true)
    const overtaken = await isOvertaken(desk, shop, showing.quoted)
    if (!overtaken.ok) return overtaken
    if (overtaken.value) return ok(false)
    const shown = await keepAndShow(shop, showing)
    return shown.ok ? ok(true) : shown
  })
}

/**
 * The quote step: works a revision out once, keeps the result under (order, revision, hash), holds its place in the shop's plan
 * and shows it in the conversation. A newer revision makes it moot. May run twice.
 */
export const quoteOrder = async (desk: WorkerDesk, step: OrderStep<'quote'>): Promise<void> => {
  const shop = desk.store.shop(desk.shopId)
  if (await isDone(shop, step)) return
  const [order, revision] = await Promise.all([shop.orders.read(step.orderId), shop.orders.revision(step.orderId, step.revision)])
  const document = revision?.document ?? null
  if (order === null || revision === null || document === null || order.revision !== step.revision) {
    await shop.steps.done(step)
    return
  }
  const asking = { desk, step, conversation: order.conversationId }
  const known = await shop.quotes.read({ orderId: step.orderId, revision: step.revision, hash: revision.hash })
  const isNew = known === null || known === undefined
  for (let tries = 1; tries <= mostTries; tries += 1) {
    const quoted = isNew ? await workOutFor(asking, orderFrom(document)) : { body: quoteFrom(known), why: [], planVersion: null }
    const shown = await showQuote({ asking, hash: revision.hash, quoted })
    if (!shown.ok)
      throw new Error(`the quote of ${step.orderId} could not be kept: ${shown.problems.map((one) => one.code).join(', ')}`)
    if (shown.value) return
  }
  throw new Error(`the place of ${step.orderId}, revision ${step.revision} was taken ${mostTries} times while it was worked out`)
}
