import type { ShopStore } from '../../../ports/store.ts'
import { eventsIn, planIn } from './books.ts'
import { figures } from './figures.ts'
import { filesIn } from './files.ts'
import { floorIn } from './floor.ts'
import { forget, toForget } from './forget.ts'
import { ordersIn } from './orders.ts'
import { noteNews, settle } from './pending.ts'
import { keysIn, membersIn } from './people.ts'
import { deliveryBookIn, heardIn, serverIn, talksIn } from './platform.ts'
import { piecesIn, quotesIn } from './quotes.ts'
import { stepsIn } from './steps.ts'
import { stockIn } from './stock.ts'
import type { Scope } from './tables.ts'
import { conversationsIn, messagesIn, postedIn } from './talk.ts'
import { ticketsIn } from './tickets.ts'

export const shopStore = (scope: Scope): ShopStore => ({
  shopId: scope.shopId,
  orders: ordersIn(scope),
  quotes: quotesIn(scope),
  pieces: piecesIn(scope),
  tickets: ticketsIn(scope),
  events: eventsIn(scope),
  stock: stockIn(scope),
  floor: floorIn(scope),
  plan: planIn(scope),
  steps: stepsIn(scope),
  conversations: conversationsIn(scope),
  messages: messagesIn(scope),
  posted: postedIn(scope),
  files: filesIn(scope),
  members: membersIn(scope),
  keys: keysIn(scope),
  server: serverIn(scope),
  talks: talksIn(scope),
  heard: heardIn(scope),
  deliveries: deliveryBookIn(scope),
  figures: async () => {
    await settle(scope)
    return figures(scope)
  },
  tell: (topic, id) => noteNews(scope, { topic, id }),
  toForget: (before) => toForget(scope, before),
  forget: async (orderId) => {
    await settle(scope)
    await forget(scope, orderId)
  },
})
