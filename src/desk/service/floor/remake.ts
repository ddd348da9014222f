import * as z from 'zod'
import { faultOwners, spoiledReasons } from '../../../../templates/desk/floor/floor-words.ts'
import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { deskWords } from '../../../../templates/desk/words.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { remakeOperations } from '../../../domain/schedule/work/remake-operations.ts'
import type { RosterFacts } from '../../../domain/ticket/facts.ts'
import { workSteps } from '../../../domain/ticket/work-steps.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Remake } from '../../../ports/floor-records.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StockUse } from '../../stock-uses.ts'
import { replanShop } from '../plan/replan-shop.ts'
import { quoteFrom, shopPlanFrom } from '../records/records.ts'
import { ticketName } from '../records/ticket-names.ts'
import { showOf, tellCustomer, tellOwner, wordsFor } from '../say/say-floor.ts'
import { byItem, takeStock, wantMore } from '../stock/keep-stock.ts'
import { usesOf } from '../stock/use-stock.ts'
import { type Answered, type Deed, readValues } from './deed.ts'
import { askAboutPromise, endOf, lookAtShorts } from './look-at-shorts.ts'
import { changePlan, withDone } from './mark-work.ts'
import { oneOf, rowText } from './row-text.ts'

const spoiledSchema = z.object({
  line: z.coerce.number().int().positive(),
  quantity: z.coerce.number().int().min(1).max(500).default(1),
  reason: z.enum(spoiledReasons),
  whose: z.enum(faultOwners),
  photo: z.string().max(200).default(''),
})

/** What the garments would be sold for: the order's price shared by its pieces (minor units). */
const costOf = async ({ shop, life, facts }: Deed, quantity: number): Promise<number> => {
  const { orderId, revision } = life.ticket
  const document = await shop.orders.revision(orderId, revision)
  const stored = document === null ? null : await shop.quotes.read({ orderId, revision, hash: document.hash })
  const total = stored === null || stored === undefined ? 0 : (quoteFrom(stored).quote.price?.total ?? 0)
  const pieces = facts.roster.reduce((sum, row) => sum + row.quantity, 0)
  return Math.round((total * quantity) / Math.max(1, pieces))
}

/** What one line takes from the shelf for so many of its garments. */
const shareOf = (uses: readonly StockUse[], row: RosterFacts, quantity: number): readonly StockUse[] =>
  uses
    .filter(({ line }) => line === row.line)
    .map((use) => ({ ...use, amount: Math.ceil((use.amount * quantity) / row.quantity) }))

const openRemakes = async (shop: ShopStore, orderId: string, line: number): Promise<readonly Remake[]> =>
  (await shop.floor.remakesOf(orderId)).filter((one) => one.line === line && one.doneAt === null)

const planRemake = async ({ shop, life, facts }: Deed, remake: Remake): Promise<void> => {
  const { orderId } = life.order
  const pieces = facts.roster.reduce((sum, row) => sum + row.quantity, 0)
  await changePlan(shop, (plan) => ({
    ...plan,
    sold: plan.sold.map((placed) => {
      if (placed.id !== orderId) return placed
      const own = placed.operations.filter(({ id }) => !id.startsWith('remake-'))
      const work = { name: remake.remakeId, pieces, quantity: remake.quantity, release: null }
      return { ...placed, operations: [...placed.operations, ...remakeOperations(own, work)] }
    }),
  }))
}

/** Work of the remake that no stock holds up and that still ends after the promise: the owner decides, as about a shortage. */
const askAboutRemake = async ({ desk, shop, life }: Deed, remake: Remake, line: string): Promise<void> => {
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const placed = plan.sold.find(({ id }) => id === life.order.orderId)
  if (placed === undefined || placed.waits !== undefined) return
  const end = endOf(plan, placed.id)
  if (end > (placed.promised ?? placed.needBy))
    await askAboutPromise(desk, shop, { placed, end, because: remake.remakeId, why: wordsFor(desk).lateFor.remake(line) })
}

/** The line's pressing is undone where all its garments are gone, at once or one after the other: what is made again is ticked again. */
const untick = async ({ shop, life, facts }: Deed, row: RosterFacts): Promise<Result<null, Problem>> => {
  const gone = (await openRemakes(shop, life.order.orderId, row.line)).reduce((sum, { quantity }) => sum + quantity, 0)
  if (gone < row.quantity) return ok(null)
  const steps = workSteps(facts).filter(({ lines }) => lines.includes(row.line))
  const ticket = await shop.tickets.read(life.ticket.ticketId)
  const seen = { id: life.ticket.ticketId, version: ticket?.version ?? 0 }
  const ticks = steps.map(({ no }) => ({ step: no, line: row.line, state: 'spoiled' as const, by: null }))
  const kept = await shop.tickets.tick(seen, ticks)
  if (!kept.ok) return kept
  await shop.orders.setRows(life.order.orderId, [{ line: row.line, state: 'not-cut' }])
  return ok(null)
}

const tellSpoiled = async (
  { desk, shop, life, facts }: Deed,
  { remakeId, reason, cost }: Remake,
  row: RosterFacts,
): Promise<void> => {
  const words = wordsFor(desk)
  const reasons: { readonly [reason: string]: string } = words.reasons
  const loss = {
    ticket: ticketName(life.ticket.number),
    line: rowText(desk, facts, oneOf(row)),
    reason: reasons[reason] ?? reason,
  }
  const isBrought = facts.garments.find(({ id }) => id === row.garment)?.from === 'customer'
  await tellOwner(desk, shop, {
    nonce: `spoiled-${life.ticket.ticketId}-${remakeId}`,
    text: isBrought ? words.ownerNote.spoiledOwn(loss) : words.ownerNote.spoiled({ ...loss, cost: showOf(desk).money(cost) }),
  })
}

/** Who was told already that all is bagged hears that it is not, and again when it is. */
const tellOnceBagged = async ({ shop, life }: Deed, nonce: string, text: (language: Language) => string): Promise<void> => {
  if (life.order.state === 'bagged') await tellCustomer(shop, life.order, { nonce: `${nonce}-${life.order.orderId}`, text })
}

/** A spoiled garment: written down with reason, whose and photo, and made again with steps, stock and plan of its own. */
export const spoil = async (deed: Deed): Answered => {
  const read = readValues(deed, spoiledSchema)
  if (!read.ok) return ok(read.said)
  const { desk, shop, life, facts, by } = deed
  const words = wordsFor(desk)
  const row = facts.roster.find(({ line }) => line === read.value.line)
  if (row === undefined) return ok(words.badForm(words.fields.line))
  const { reason, whose, photo } = read.value
  const quantity = Math.min(read.value.quantity, row.quantity)
  const at = desk.clock.now()
  const known = await shop.floor.remakesOf(life.order.orderId)
  const remake: Remake = {
    remakeId: `remake-${known.length + 1}`,
    orderId: life.order.orderId,
    ticketId: life.ticket.ticketId,
    line: row.line,
    quantity,
    reason,
    whose,
    photo: photo === '' ? null : photo,
    cost: await costOf(deed, quantity),
    by: by.name,
    at,
    doneAt: null,
  }
  await shop.floor.addRemake({ ...remake, remakeId: `${life.order.orderId}-${remake.remakeId}` })
  const uses = shareOf(await usesOf(shop, life.ticket), row, quantity)
  await wantMore(shop, { orderId: life.order.orderId, due: at, uses }, { at, by: by.name, why: `remake: ${reason}` })
  const unticked = await untick(deed, row)
  if (!unticked.ok) return unticked
  await planRemake(deed, remake)
  const planned = await replanShop(desk, shop)
  if (!planned.ok) return planned
  const facts2 = { line: row.line, quantity, reason, whose }
  await shop.tickets.find(life.ticket.ticketId, { code: 'spoiled', facts: facts2, by: by.name, at })
  await tellSpoiled(deed, remake, row)
  if (known.every(({ doneAt }) => doneAt !== null))
    await tellOnceBagged(deed, `wait-${remake.remakeId}`, (language) => floorWords[language].notReadyYet)
  const looked = await lookAtShorts(desk, shop)
  if (looked.ok) await askAboutRemake(deed, remake, rowText(desk, facts, { ...row, quantity }))
  return looked
}

/** The last remake of a line that was all gone brings its ticks back; a line of which some were good has kept them. */
const tickAgain = async ({ shop, life, facts, by }: Deed, { line }: RosterFacts): Promise<Result<null, Problem>> => {
  const spoiled = life.ticks.filter((tick) => tick.line === line && tick.state === 'spoiled')
  if (spoiled.length === 0 || (await openRemakes(shop, life.order.orderId, line)).length > 0) return ok(null)
  const ticket = await shop.tickets.read(life.ticket.ticketId)
  const ticks = workSteps(facts)
    .filter(({ lines }) => lines.includes(line))
    .map(({ no }) => ({ step: no, line, state: 'done' as const, by: by.name }))
  const kept = await shop.tickets.tick({ id: life.ticket.ticketId, version: ticket?.version ?? 0 }, ticks)
  if (kept.ok) await shop.orders.setRows(life.order.orderId, [{ line, state: 'bagged' }])
  return kept.ok ? ok(null) : kept
}

/** The garment was made again and bagged: what it wanted is used, its work is over. */
export const finishRemake = async (deed: Deed): Answered => {
  const read = readValues(deed, z.object({ remake: z.string().min(1).max(200) }))
  if (!read.ok) return ok(read.said)
  const { desk, shop, life, facts, by } = deed
  const words = wordsFor(desk)
  const remake = (await shop.floor.remakesOf(life.order.orderId)).find(
    ({ remakeId, doneAt }) => remakeId === read.value.remake && doneAt === null,
  )
  const row = facts.roster.find(({ line }) => line === remake?.line)
  if (remake === undefined || row === undefined) return ok(words.badForm(words.fields.remake))
  const at = desk.clock.now()
  const uses = byItem(shareOf(await usesOf(shop, life.ticket), row, remake.quantity))
  await takeStock(shop, { orderId: remake.orderId, uses }, { at, by: by.name, why: 'remade' })
  await shop.floor.finishRemake(remake.remakeId, at)
  const name = remake.remakeId.slice(remake.orderId.length + 1)
  await changePlan(shop, (plan) => withDone(plan, remake.orderId, { isOver: (id) => id.startsWith(`${name}-`), at }))
  const ticked = await tickAgain(deed, row)
  if (!ticked.ok) return ticked
  await shop.tickets.find(life.ticket.ticketId, { code: 'remade', facts: { line: row.line }, by: by.name, at })
  if ((await shop.floor.remakesOf(remake.orderId)).every(({ doneAt }) => doneAt !== null))
    await tellOnceBagged(deed, `ready-${name}`, (language) => deskWords[language].ready[facts.handOver])
  return ok(null)
}
