import type { Order } from '../../../domain/order/order.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { shopChannel } from '../desk.ts'
import { orderFrom } from './records.ts'
import { ticketName } from './ticket-names.ts'

/** Whom an order's document names: the team, its people, its players. */
const namesIn = ({ team, people, roster }: Order): readonly string[] => [
  team,
  ...Object.values(people).flatMap((name) => name ?? []),
  ...roster.flatMap(({ name }) => name ?? []),
]

/** The name as whole words: a part of a longer one is somebody else. */
const asWords = (name: string): RegExp =>
  new RegExp(`(?<![\\p{L}\\p{N}])${name.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&')}(?![\\p{L}\\p{N}])`, 'gu')

const inPlace = '–'

/** Every text of a message, each rewritten by itself. */
const rewritten = (part: unknown, text: (said: string) => string): unknown => {
  if (typeof part === 'string') return text(part)
  if (Array.isArray(part)) return part.map((one: unknown) => rewritten(one, text))
  if (typeof part !== 'object' || part === null) return part
  return Object.fromEntries(Object.entries(part).map(([key, one]) => [key, rewritten(one, text)]))
}

/**
 * Sheets and warnings in the owner's channel that tell of many orders stay, without this one's names: in every text that tells of the
 * order, by its team, its ticket or its id, a dash stands in their place.
 */
export const forgetNames = async (shop: ShopStore, orderId: string): Promise<void> => {
  const documents = (await shop.orders.revisions(orderId)).flatMap(({ document }) =>
    document === null ? [] : [orderFrom(document)],
  )
  const names = [...new Set(documents.flatMap(namesIn))].toSorted((a, b) => b.length - a.length).map(asWords)
  const tickets = (await shop.tickets.ofOrder(orderId)).map(({ number }) => ticketName(number))
  const marks = [...new Set([orderId, ...tickets, ...documents.map(({ team }) => team)])]
  const without = (said: string): string =>
    marks.some((mark) => said.includes(mark)) ? names.reduce((left, name) => left.replace(name, inPlace), said) : said
  const channel = shopChannel('owner')
  const told = await shop.messages.naming(channel, marks)
  for (const { nonce, body } of told) await shop.messages.say({ channel, nonce, by: 'bot', body: rewritten(body, without) })
  if (told.length > 0) await shop.tell('channel', channel)
}
