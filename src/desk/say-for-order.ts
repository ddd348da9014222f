import { sayProblem } from '../../templates/replies/say.ts'
import { ticketWords } from '../../templates/ticket/words.ts'
import type { Order } from '../domain/order/order.ts'
import type { Problem } from '../domain/result/result.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { showFor } from '../domain/shop/show.ts'

/** What people call a garment of an order ("red mesh jersey"); null where the order has no such garment of the shop's. */
const calledIn = (order: Order, shop: Shop, id: unknown): string | null => {
  const garment = order.garments.find((one) => one.id === id)
  const record = shop.garments.find((one) => one.id === garment?.catalogue)
  if (garment === undefined || record === undefined) return null
  const show = showFor(shop, order.language)
  return ticketWords[order.language].pick.vinylName(show.colour(garment.colour), record.name[order.language])
}

/** A problem of an order in words, its garment called as people call it and not by its id. */
export const sayForOrder = (problem: Problem, order: Order, shop: Shop): string => {
  const called = calledIn(order, shop, problem.facts['garment'])
  const facts = called === null ? problem.facts : { ...problem.facts, garment: called }
  return sayProblem({ ...problem, facts }, order.language, showFor(shop, order.language))
}
