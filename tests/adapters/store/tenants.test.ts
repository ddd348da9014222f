import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { minutes } from '../../../src/domain/units/units.ts'
import type { ShopStore } from '../../../src/ports/store.ts'
import { marker, openTwoShops, type TwoShops, type Victim } from '../../support/two-shops.ts'

type Attack = (shop: ShopStore, victim: Victim, hash: string) => Promise<unknown>

const at = minutes(29_700_000)
const seen = (id: string) => ({ id, version: 1 })
const step = ({ orderId }: Victim) => ({ step: 'quote' as const, orderId, revision: 1 })
/** The first shop's server on the chat platform. */
const guild = '10000000000000001'
/** What lies in the first shop under the same names. */
const lot = { item: 'stone', lot: 'lot-1', certificate: null, grossMilligrams: null, bin: null }
const morning = {
  press: 'press-1',
  day: '2026-11-25',
  setTenths: 1_600,
  readings: [1_600, 1_590, 1_590, 1_600, 1_590],
  correctionTenths: 10,
  verdict: 'corrected',
  by: marker,
  at,
} as const
const remake = {
  remakeId: 'remake-1',
  line: 1,
  quantity: 1,
  reason: 'scorched',
  whose: 'shop',
  photo: null,
  cost: 0,
  at,
  doneAt: null,
}
const file = (hash: string) => ({ hash, name: 'a.pdf', mime: 'application/pdf', bytes: new Uint8Array([1]) })

/** Each function of a shop's store, called by another shop with the ids of the first one's order. */
const attacks: { readonly [name: string]: Attack } = {
  'orders.add': (shop, { orderId, conversationId }) => shop.orders.add({ orderId, conversationId }),
  'orders.read': (shop, { orderId }) => shop.orders.read(orderId),
  'orders.list': (shop) => shop.orders.list(['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'on-bench', 'cancelled']),
  'orders.revise': (shop, { orderId }) => shop.orders.revise(seen(orderId), { document: {}, hash: 'h' }),
  'orders.revision': (shop, { orderId }) => shop.orders.revision(orderId, 1),
  'orders.revisions': (shop, { orderId }) => shop.orders.revisions(orderId),
  'orders.newest': (shop, { orderId }) => shop.orders.newest(orderId),
  'orders.change': (shop, { orderId }) => shop.orders.change(seen(orderId), { state: 'cancelled' }),
  'orders.sign': (shop, { orderId }) => shop.orders.sign(seen(orderId), { by: 'thief', at }),
  'orders.rows': (shop, { orderId }) => shop.orders.rows(orderId),
  'orders.setRows': (shop, { orderId }) => shop.orders.setRows(orderId, [{ line: 1, state: 'pressed' }]),
  'quotes.put': (shop, { orderId }, hash) => shop.quotes.put({ orderId, revision: 1, hash }, {}),
  'quotes.read': (shop, { orderId }, hash) => shop.quotes.read({ orderId, revision: 1, hash }),
  'quotes.ofRevision': (shop, { orderId }) => shop.quotes.ofRevision({ orderId, revision: 1 }),
  'pieces.put': (shop, { orderId }, hash) => shop.pieces.put(orderId, [{ hash, body: {} }]),
  'pieces.use': (shop, { orderId }, hash) => shop.pieces.use(orderId, [hash]),
  'pieces.read': (shop, _victim, hash) => shop.pieces.read([hash]),
  'tickets.add': (shop, { ticketId, orderId }) => shop.tickets.add({ ticketId, orderId, revision: 1, body: {} }),
  'tickets.read': (shop, { ticketId }) => shop.tickets.read(ticketId),
  'tickets.record': (shop, { ticketId }) => shop.tickets.record(ticketId),
  'tickets.ofOrder': (shop, { orderId }) => shop.tickets.ofOrder(orderId),
  'tickets.list': (shop) => shop.tickets.list(['open', 'closed', 'done', 'replaced', 'cancelled']),
  'tickets.change': (shop, { ticketId }) => shop.tickets.change(seen(ticketId), { state: 'done' }),
  'tickets.ticks': (shop, { ticketId }) => shop.tickets.ticks(ticketId),
  'tickets.tick': (shop, { ticketId }) => shop.tickets.tick(seen(ticketId), [{ step: 1, line: 1, state: 'done', by: 'thief' }]),
  'tickets.find': (shop, { ticketId }) => shop.tickets.find(ticketId, { code: 'take', facts: {}, by: 'thief', at }),
  'tickets.findings': (shop, { ticketId }) => shop.tickets.findings(ticketId),
  'events.add': (shop, { orderId, ticketId }) =>
    shop.events.add({ code: 'posted', orderId, ticketId, by: 'thief', at, facts: {} }),
  'events.ofOrder': (shop, { orderId }) => shop.events.ofOrder(orderId),
  'events.between': (shop) => shop.events.between(minutes(0), minutes(2_000_000_000)),
  'stock.move': (shop, { orderId }) => shop.stock.move([{ item: 'theirs', amount: 1, kind: 'count', orderId, at }]),
  'stock.sums': (shop) => shop.stock.sums(),
  'stock.ofOrder': (shop, { orderId }) => shop.stock.ofOrder(orderId),
  'stock.ledger': (shop, { orderId }) => Promise.all([shop.stock.ledger(), shop.stock.ledger({ holders: [orderId] })]),
  'stock.wantedBy': (shop, { orderId }) => shop.stock.wantedBy(orderId),
  'stock.lacking': (shop) => shop.stock.lacking(['theirs', 'vinyl-standard-white', 'stone-a']),
  'stock.needs': (shop) => shop.stock.needs(),
  'stock.want': (shop, { orderId }) => shop.stock.want(orderId, [{ item: 'theirs', amount: 1, due: at }]),
  'stock.lots': (shop) => shop.stock.lots(),
  'stock.putLot': (shop) => shop.stock.putLot({ ...lot, certificate: 'theirs', bin: 'theirs' }),
  'stock.coming': (shop) => shop.stock.coming(),
  'stock.order': (shop) => shop.stock.order({ comingId: 'other', item: 'theirs', amount: 1, due: at, by: 'thief' }),
  'stock.arrived': (shop) => shop.stock.arrived('coming-1'),
  'stock.templates': (shop) => shop.stock.templates(),
  'stock.putTemplate': (shop) => shop.stock.putTemplate({ key: 'a-template', box: 'theirs', made: '2026-11-25', brushed: 1 }),
  'stock.dropTemplate': (shop) => shop.stock.dropTemplate('a-template'),
  'floor.checkPress': (shop) => shop.floor.checkPress({ ...morning, by: 'thief' }),
  'floor.pressChecks': (shop) => shop.floor.pressChecks(morning.day),
  'floor.addRemake': (shop, { orderId, ticketId }) =>
    shop.floor.addRemake({ ...remake, remakeId: 'other', orderId, ticketId, by: 'thief' }),
  'floor.remakes': (shop) => shop.floor.remakes(minutes(0)),
  'floor.remakesOf': (shop, { orderId }) => shop.floor.remakesOf(orderId),
  'floor.finishRemake': (shop) => shop.floor.finishRemake('remake-1', at),
  'plan.read': (shop) => shop.plan.read(),
  'plan.write': (shop) => shop.plan.write(1, {}),
  'plan.alone': (shop) => shop.plan.alone(),
  'plan.hold': (shop) => shop.plan.hold(),
  'steps.want': (shop, victim) => shop.steps.want(step(victim)),
  'steps.renew': (shop, victim) => shop.steps.renew(step(victim)),
  'steps.done': (shop, victim) => shop.steps.done(step(victim)),
  'steps.giveUp': (shop, victim) => shop.steps.giveUp(step(victim), 'thief'),
  'steps.again': (shop, victim) => shop.steps.again(step(victim)),
  'steps.read': (shop, victim) => shop.steps.read(step(victim)),
  'steps.about': (shop, victim) => shop.steps.about(step(victim)),
  'steps.ofOrder': (shop, { orderId }) => shop.steps.ofOrder(orderId),
  'steps.overdue': (shop) => shop.steps.overdue(0),
  'steps.givenUp': (shop) => shop.steps.givenUp(),
  'conversations.add': (shop, { conversationId }) => shop.conversations.add(conversationId, {}),
  'conversations.read': (shop, { conversationId }) => shop.conversations.read(conversationId),
  'conversations.save': (shop, { conversationId }) => shop.conversations.save(seen(conversationId), {}),
  'conversations.language': (shop, { conversationId }) => shop.conversations.language(conversationId),
  'conversations.openedBy': (shop, _victim, hash) => shop.conversations.openedBy(hash, at),
  'messages.put': (shop, { ticketId }) => shop.messages.put({ channel: 'shop:bench', nonce: ticketId, by: 'bot', body: {} }),
  'messages.say': (shop, { ticketId }) => shop.messages.say({ channel: 'shop:bench', nonce: ticketId, by: 'bot', body: {} }),
  'messages.of': (shop, { ticketId }) => shop.messages.of(ticketId),
  'messages.naming': (shop) => shop.messages.naming('shop:bench', ['']),
  'messages.after': (shop, { conversationId }) => shop.messages.after(`conversation:${conversationId}`, 0),
  'posted.read': (shop, { ticketId }) => shop.posted.read(ticketId),
  'posted.note': (shop, { ticketId }) => shop.posted.note(ticketId, { messageId: 'm', hash: 'h' }),
  'files.keep': (shop, { orderId }, hash) => shop.files.keep(`order:${orderId}`, file(`other-${hash}`)),
  'files.show': (shop, { orderId }, hash) => shop.files.show(`order:${orderId}`, hash),
  'files.hide': (shop, { orderId }, hash) => shop.files.hide(`order:${orderId}`, hash),
  'files.read': (shop, { orderId }, hash) => shop.files.read(`order:${orderId}`, hash),
  'files.ofOwner': (shop, { orderId }) => shop.files.ofOwner(`order:${orderId}`),
  'files.mark': (shop, { orderId }, hash) => shop.files.mark(`order:${orderId}`, hash),
  'files.share': (shop, { orderId }, hash) => shop.files.share(`order:${orderId}`, hash, { owner: 'shop:bench', name: 'theirs' }),
  'members.add': (shop) => shop.members.add({ memberId: 'owner', name: 'thief', role: 'owner' }),
  'members.read': (shop) => shop.members.read('owner'),
  'members.list': (shop) => shop.members.list(),
  'members.remove': (shop) => shop.members.remove('owner'),
  'keys.add': (shop, _victim, hash) => shop.keys.add({ hash, kind: 'session', holder: 'thief', until: null }),
  'keys.read': (shop, _victim, hash) => shop.keys.read('customer', hash, at),
  'keys.use': (shop, _victim, hash) => shop.keys.use('owner-link', hash, at),
  'keys.drop': (shop, _victim, hash) => shop.keys.drop('customer', hash),
  'keys.revoke': (shop) => shop.keys.revoke('session', 'owner'),
  'keys.sweep': (shop) => shop.keys.sweep(minutes(2_000_000_000)),
  'server.read': (shop) => shop.server.read(),
  'server.save': (shop) =>
    shop.server.save({
      guild,
      name: 'theirs',
      language: 'en',
      talks: 'direct',
      bench: null,
      owner: null,
      orders: null,
      staffRoles: [],
      ownerRoles: [],
    }),
  'talks.of': (shop, { conversationId }) => shop.talks.of(conversationId),
  'talks.ofPerson': (shop) => shop.talks.ofPerson(marker),
  'talks.alone': (shop) => shop.talks.alone(marker),
  'talks.use': (shop, { conversationId }) =>
    shop.talks.use({ conversation: conversationId, person: 'thief', channel: 'c', language: 'en' }),
  'heard.isNew': (shop) => shop.heard.isNew('delivery-1'),
  'heard.clear': (shop) => shop.heard.clear(0),
  'heard.count': (shop) => shop.heard.count(),
  'deliveries.again': (shop, { ticketId }) => shop.deliveries.again(ticketId),
  figures: (shop) => shop.figures(),
  tell: (shop, { orderId }) => shop.tell('channel', orderId),
  toForget: (shop) => shop.toForget(minutes(2_000_000_000)),
  forget: (shop, { orderId }) => shop.forget(orderId),
}

/** `orders.add`, `tell`: every function of the store by its way. */
const functionsOf = (shop: ShopStore): readonly string[] =>
  Object.entries(shop).flatMap(([name, part]) => {
    if (typeof part === 'function') return [name]
    return typeof part === 'object' ? Object.keys(part).map((inner) => `${name}.${inner}`) : []
  })

const plain = (value: unknown): string =>
  JSON.stringify(value, (_key, inner: unknown) => (inner instanceof Map ? [...inner] : inner)) ?? ''

describe('another shop on the same store', () => {
  let shops: TwoShops
  let thief: ShopStore
  beforeAll(async () => {
    shops = await openTwoShops()
    thief = shops.store.store.shop(shops.second.desk.shopId)
  }, 120_000)
  afterAll(() => shops.close())

  it('has a case below for each function there is', () => {
    expect(functionsOf(thief).toSorted()).toEqual(Object.keys(attacks).toSorted())
  })

  it('has no other way round its own: what spans shops is known by name', () => {
    const { platform, ...store } = shops.store.store
    expect(Object.keys(store).toSorted()).toEqual([
      'close',
      'listen',
      'look',
      'openShop',
      'outboxOf',
      'place',
      'shop',
      'shopsOf',
      'together',
    ])
    // The platform's own ids of servers, channels and messages; none of them is a customer's to choose.
    expect(Object.keys(platform).toSorted()).toEqual([
      'deliveries',
      'postings',
      'servers',
      'shopOf',
      'shopOfMessage',
      'talksIn',
      'talksOf',
    ])
  })

  it('can be robbed of something: the first shop’s rows are there and full of its words', async () => {
    const rows = await shops.rowsOf(shops.first.desk.shopId)
    const empty = Object.entries(rows).filter(([, all]) => all.length === 0)
    expect(empty.map(([table]) => table)).toEqual([])
    expect(plain(rows)).toContain(marker)
    expect(shops.victim.files.length).toBeGreaterThan(1)
  })

  it.each(Object.keys(attacks))('gets and changes nothing by %s', async (name) => {
    const { first, victim } = shops
    const before = await shops.rowsOf(first.desk.shopId)
    const hashes = [...victim.files, first.desk.ids.hash(victim.token), first.desk.ids.hash(victim.link)]
    shops.statements.length = 0
    const answers: string[] = []
    for (const hash of hashes) {
      const answer = await attacks[name]?.(thief, victim, hash).catch((cause: unknown) => String(cause))
      answers.push(plain(answer))
    }
    const apart = (text: string): boolean => /shop_id|pg_notify|advisory/.test(text) || /^(begin|commit|rollback)/i.test(text)
    expect(shops.statements.filter((text) => !apart(text))).toEqual([])
    expect(answers.join('\n')).not.toContain(marker)
    expect(await shops.rowsOf(first.desk.shopId)).toEqual(before)
  })
})
