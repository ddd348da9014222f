import { sayProblem } from '../../templates/replies/say.ts'
import { ticketWords } from '../../templates/ticket/words.ts'
import type { Order } from '../domain/order/order.ts'
import type { Facts, FactValue, Problem } from '../domain/result/result.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { showFor } from '../domain/shop/show.ts'

/** What people call a garment of an order ("red mesh jersey"); null where the order has no such garment of the shop's. */
export const garmentCalled = (order: Order, shop: Shop, id: unknown): string | null => {
  const garment = order.garments.find((one) => one.id === id)
  const record = shop.garments.find((one) => one.id === garment?.catalogue)
  if (garment === undefined || record === undefined) return null
  const show = showFor(shop, order.language)
  return ticketWords[order.language].pick.vinylName(show.colour(garment.colour), record.name[order.language])
}

/** What people call a vinyl or a stone of the shop ("white standard vinyl" is its colour and class); null for an id the shop has not. */
export const materialCalled = (shop: Shop, { language }: Pick<Order, 'language'>, id: unknown): string | null => {
  const words = ticketWords[language].pick
  const { colour } = showFor(shop, language)
  const vinyl = shop.vinyl.find((one) => one.id === id)
  if (vinyl !== undefined) return words.vinylName(colour(vinyl.colour), words.classes[vinyl.class])
  const stone = shop.stones.find((one) => one.id === id)
  return stone === undefined ? null : `${stone.size} ${colour(stone.colour)}`
}

const calledSo = (problem: Problem, order: Order, shop: Shop): Problem => {
  const called = garmentCalled(order, shop, problem.facts['garment'])
  return called === null ? problem : { ...problem, facts: { ...problem.facts, garment: called } }
}

/** Where a decoration of the order goes ("back number"); null for an id the order has not. */
const decorationCalled = (order: Order, id: unknown): string | null => {
  const decoration = order.decorations.find((one) => one.id === id)
  return decoration === undefined ? null : ticketWords[order.language].place.ids[decoration.place]
}

const isRecord = (value: FactValue): value is Facts => typeof value === 'object' && value !== null && !Array.isArray(value)

/** A fact with every material in it called as people call it: one id, a list of them, or a way out with its subject. */
const materialsCalled = (fact: FactValue, order: Order, shop: Shop): FactValue => {
  if (Array.isArray(fact)) return fact.map((one) => materialsCalled(one, order, shop))
  if (!isRecord(fact)) return materialCalled(shop, order, fact) ?? fact
  return 'subject' in fact ? { ...fact, subject: materialsCalled(fact['subject'] ?? null, order, shop) } : fact
}

/** A problem with its garment, materials and decorations called as people call them. */
export const calledForCustomer = (problem: Problem, order: Order, shop: Shop): Problem => {
  const named = calledSo(problem, order, shop)
  const called = Object.entries(named.facts).map(([fact, value]): readonly [string, FactValue] => {
    const place = ['first', 'second', 'decoration'].includes(fact) ? decorationCalled(order, value) : null
    return [fact, place ?? materialsCalled(value, order, shop)]
  })
  return { ...named, facts: Object.fromEntries(called) }
}

/** A problem of an order in words, with nothing in it called by its id. */
export const sayForOrder = (problem: Problem, order: Order, shop: Shop): string =>
  sayProblem(calledForCustomer(problem, order, shop), order.language, showFor(shop, order.language))
