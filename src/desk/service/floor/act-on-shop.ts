import * as z from 'zod'
import { morningCheck } from '../../../domain/press/morning-check.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { piecesOfWeight } from '../../../domain/stock/weigh.ts'
import type { ShopAct } from '../../../domain/ticket/acts.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { localOf, tellOwner, wordsFor } from '../say/say-floor.ts'
import { itemSaid } from '../stock/item-said.ts'
import { countStock, receiveStock, writeStockOff } from '../stock/keep-stock.ts'
import { supplyOf } from '../stock/supply-of.ts'
import { type Answered, readValues, type Values } from './deed.ts'
import { lookAtShorts } from './look-at-shorts.ts'
import { readLife } from './read-life.ts'
import { putTicketMessage } from './ticket-message.ts'

export type ShopDeed = {
  readonly desk: Desk
  readonly shop: ShopStore
  readonly act: ShopAct
  readonly by: Member
  readonly values: Values
}

const text = z.string().trim().max(200)
const optional = text.default('')
const micrometresPerMetre = 1_000_000
const dayMinutes = 1_440

/** °F or °C as the shop reads its probe, in tenths of °C. */
const tenthsOf = (desk: Desk, degrees: number): number =>
  Math.round(desk.workshop.shop.profile.units.temperature === 'F' ? ((degrees - 32) * 50) / 9 : degrees * 10)

const figures = text
  .transform((said) => said.split(/[^\d.]+/).flatMap((part) => (part === '' ? [] : [Number(part)])))
  .refine((all) => all.length === 5 && all.every((one) => Number.isFinite(one) && one > 0 && one < 1_000))

/** The day's tickets say at once what the press adds or that it is out. */
const editTickets = async ({ desk, shop }: ShopDeed): Promise<void> => {
  for (const ticket of await shop.tickets.list(['open'])) {
    const life = await readLife(desk, shop, ticket.ticketId)
    if (life !== null && life.order.state === 'on-bench') await putTicketMessage(desk, shop, life)
  }
}

const checkPress = async (deed: ShopDeed): Answered => {
  const { desk, shop, by } = deed
  const presses = desk.workshop.shop.presses.map(({ id }) => id)
  const schema = z.object({
    press: text.refine((id) => presses.includes(id)),
    set: z.coerce.number().positive(),
    readings: figures,
  })
  const read = readValues(deed, schema)
  if (!read.ok) return ok(read.said)
  const { press } = read.value
  const setTenths = tenthsOf(desk, read.value.set)
  const readings = read.value.readings.map((degrees) => tenthsOf(desk, degrees))
  const at = desk.clock.now()
  const day = localOf(desk, at).slice(0, 10)
  const check = morningCheck(setTenths, readings)
  await shop.floor.checkPress({ press, day, setTenths, readings, ...check, by: by.name, at })
  await shop.events.add({ code: 'press-check', orderId: null, ticketId: null, by: by.id, at, facts: { press, ...check } })
  if (check.verdict === 'not-fit')
    await tellOwner(desk, shop, { nonce: `press-${press}-${day}`, text: wordsFor(desk).ownerNote.pressShut(press) })
  await editTickets(deed)
  return ok(null)
}

const shelfSchema = z.object({
  item: text.min(1),
  lot: optional,
  amount: optional,
  weight: optional,
  certificate: optional,
  coming: optional,
})

const isRolled = (desk: Desk, item: string): boolean => {
  const { vinyl, auxiliaries } = desk.workshop.shop
  return vinyl.some(({ id }) => id === item) || auxiliaries.some(({ id, kind }) => id === item && kind === 'tape')
}

const isNumber = (said: string): boolean => /^\d+([.,]\d+)?$/.test(said)
const numberOf = (said: string): number => Number(said.replace(',', '.'))

/** Pieces or µm from what was written; stones may be weighed instead, by the weight of a gross of their own lot. */
const amountOf = async (deed: ShopDeed, filled: z.output<typeof shelfSchema>): Promise<number | null> => {
  const { desk, shop } = deed
  if (isNumber(filled.weight)) {
    const lot = (await shop.stock.lots()).find((one) => one.item === filled.item && one.lot === filled.lot)
    const record = desk.workshop.shop.stones.find(({ id }) => id === filled.item)
    const gross = lot?.grossMilligrams ?? record?.grossMilligrams ?? 0
    return gross > 0 ? piecesOfWeight(numberOf(filled.weight) * 1_000, gross) : null
  }
  if (!isNumber(filled.amount)) return null
  const amount = numberOf(filled.amount)
  if (isRolled(desk, filled.item)) return Math.round(amount * micrometresPerMetre)
  return Number.isInteger(amount) ? amount : null
}

const moved = async (deed: ShopDeed, shelf: { item: string; lot: string; amount: number }): Promise<Result<null, Problem>> => {
  const { desk, shop, act, by } = deed
  const at = desk.clock.now()
  const hand = { at, by: by.name, why: act }
  if (act === 'received') await receiveStock(shop, shelf, hand)
  if (act === 'counted') await countStock(shop, shelf, hand)
  if (act === 'written-off') await writeStockOff(shop, shelf, hand)
  if (act === 'ordered') {
    const due = minutes(at + supplyOf(desk.workshop.shop)(shelf.item).days * dayMinutes)
    await shop.stock.order({ comingId: desk.ids.fresh('d'), item: shelf.item, amount: shelf.amount, due, by: by.name })
  }
  await shop.events.add({ code: act, orderId: null, ticketId: null, by: by.id, at, facts: shelf })
  return lookAtShorts(desk, shop)
}

const moveShelf = async (deed: ShopDeed): Answered => {
  const read = readValues(deed, shelfSchema)
  if (!read.ok) return ok(read.said)
  const { shop, desk, act } = deed
  const { lot, certificate, coming } = read.value
  const fields = wordsFor(desk).fields
  const item = await itemSaid(desk, shop, read.value.item)
  if (item === null) return ok(wordsFor(desk).badForm(fields.item))
  const amount = await amountOf(deed, { ...read.value, item })
  if (amount === null || (amount === 0 && act !== 'counted')) return ok(wordsFor(desk).badForm(fields.amount))
  await shop.plan.alone()
  if (act === 'received') {
    const known = certificate === '' ? null : certificate
    await shop.stock.putLot({ item, lot, certificate: known, grossMilligrams: null, bin: null })
    const first = (await shop.stock.coming()).find((one) => one.comingId === coming || (coming === '' && one.item === item))
    if (first !== undefined) await shop.stock.arrived(first.comingId)
  }
  return moved(deed, { item, lot, amount })
}

const keepTemplate = async (deed: ShopDeed): Answered => {
  const read = readValues(deed, z.object({ key: text.min(1), box: text }))
  if (!read.ok) return ok(read.said)
  const { key, box } = read.value
  const known = (await deed.shop.stock.templates()).find((one) => one.key === key)
  if (known === undefined) return ok(wordsFor(deed.desk).badForm(wordsFor(deed.desk).fields.key))
  if (box === '') await deed.shop.stock.dropTemplate(key)
  else await deed.shop.stock.putTemplate({ ...known, box })
  return ok(null)
}

const actNow = (deed: ShopDeed): Answered => {
  if (deed.act === 'press-check') return checkPress(deed)
  return deed.act === 'template' ? keepTemplate(deed) : moveShelf(deed)
}

/**
 * Something done with the shop's own things: a press probed, stock received, counted, written off or ordered, a template moved; and
 * news of it for every page of the shop that lies open.
 */
export const actOnShop = async (deed: ShopDeed): Answered => {
  const done = await actNow(deed)
  if (done.ok && done.value === null) await deed.shop.tell('channel', shopChannel('bench'))
  return done
}
