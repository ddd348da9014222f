import * as fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  countStock,
  type Hand,
  letStockGo,
  receiveStock,
  takeStock,
  wantMore,
  wantStock,
  writeStockOff,
} from '../../src/desk/service/stock/keep-stock.ts'
import { ok } from '../../src/domain/result/result.ts'
import { heldLots, lacking, pilesOf, type StockChange } from '../../src/domain/stock/ledger.ts'
import { minutes } from '../../src/domain/units/units.ts'
import type { ShopStore } from '../../src/ports/store.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const items = ['stone-a', 'vinyl-b'] as const
const lots = ['l1', 'l2'] as const
const orders = ['o1', 'o2', 'o3'] as const
const hand: Hand = { at: minutes(29_000_000), by: 'Noor', why: 'test' }

type Deed =
  | { readonly kind: 'sign' | 'remake' | 'use'; readonly order: string; readonly item: string; readonly amount: number }
  | { readonly kind: 'cancel'; readonly order: string }
  | { readonly kind: 'arrive' | 'count' | 'write-off'; readonly item: string; readonly lot: string; readonly amount: number }
  | { readonly kind: 'killed'; readonly of: Deed }

const amount = fc.integer({ min: 0, max: 300 })
const order = fc.constantFrom(...orders)
const item = fc.constantFrom(...items)
const lot = fc.constantFrom(...lots)
const plain: fc.Arbitrary<Deed> = fc.oneof(
  fc.record({ kind: fc.constantFrom('sign' as const, 'remake' as const, 'use' as const), order, item, amount }),
  fc.record({ kind: fc.constant('cancel' as const), order }),
  fc.record({ kind: fc.constantFrom('arrive' as const, 'count' as const, 'write-off' as const), item, lot, amount }),
)
const deed = fc.oneof({ weight: 6, arbitrary: plain }, fc.record({ kind: fc.constant('killed' as const), of: plain }))

const perform = (shop: ShopStore, done: Deed): Promise<void> => {
  switch (done.kind) {
    case 'sign':
      return wantStock(shop, { orderId: done.order, due: Number(done.order.slice(1)), uses: [done] }, hand)
    case 'remake':
      return wantMore(shop, { orderId: done.order, due: 9, uses: [done] }, hand)
    case 'use':
      return takeStock(shop, { orderId: done.order, uses: [done] }, hand)
    case 'cancel':
      return letStockGo(shop, done.order, hand)
    case 'arrive':
      return receiveStock(shop, done, hand)
    case 'count':
      return countStock(shop, done, hand)
    case 'write-off':
      return writeStockOff(shop, done, hand)
    case 'killed':
      return perform(shop, done.of)
  }
}

class Killed extends Error {}

/** One transaction each, as the desk does it; a killed one dies after its last statement. */
const run = (shopId: string, done: Deed): Promise<unknown> =>
  opened.store
    .together(shopId, async (shop) => {
      await perform(shop, done)
      if (done.kind === 'killed') throw new Killed()
      return ok(null)
    })
    .catch((error: unknown) => {
      if (!(error instanceof Killed)) throw error
    })

/** The shelf as a hand would know it: what came in, what was used, what was thrown away. */
type Hands = { in: number; used: number; off: number }

const shelfOf = (hands: Hands): number => hands.in - hands.used - hands.off

const byHand = (known: Map<string, Hands>, key: string): Hands => {
  const hands = known.get(key) ?? { in: 0, used: 0, off: 0 }
  known.set(key, hands)
  return hands
}

/** A slower twin: only physical events touch it, an item a time; lots are told apart by the ledger alone. */
const follow = (known: Map<string, Hands>, done: Deed, before: { readonly lot: number }): void => {
  if (done.kind === 'arrive') byHand(known, done.item).in += done.amount
  if (done.kind === 'count' && done.amount >= before.lot) byHand(known, done.item).in += done.amount - before.lot
  if (done.kind === 'count' && done.amount < before.lot) byHand(known, done.item).off += before.lot - done.amount
  if (done.kind === 'write-off') byHand(known, done.item).off += Math.min(done.amount, before.lot)
  if (done.kind === 'use') {
    const hands = byHand(known, done.item)
    hands.in += Math.max(0, done.amount - shelfOf(hands))
    hands.used += done.amount
  }
}

const lotOnShelf = async (shop: ShopStore, done: Deed): Promise<number> => {
  if (!('lot' in done)) return 0
  const of = (await shop.stock.ledger()).filter((move) => move.item === done.item && move.lot === done.lot)
  const pile = pilesOf(of).get(done.item)
  return pile === undefined ? 0 : pile.free + pile.reserved
}

const expectConserved = async (shop: ShopStore, known: ReadonlyMap<string, Hands>): Promise<void> => {
  const ledger = await shop.stock.ledger()
  const needs = await shop.stock.needs()
  for (const [name, pile] of pilesOf(ledger)) {
    const hands = known.get(name) ?? { in: 0, used: 0, off: 0 }
    expect([pile.received, pile.used, pile.writtenOff]).toEqual([hands.in, hands.used, hands.off])
    expect(pile.reserved + pile.free + pile.used).toBe(pile.received - pile.writtenOff)
    expect(Math.min(pile.reserved, pile.free, pile.used, pile.received, pile.writtenOff)).toBeGreaterThanOrEqual(0)
    for (const place of lots) {
      const one = pilesOf(ledger.filter((move) => move.item === name && move.lot === place)).get(name)
      if (one !== undefined) expect(Math.min(one.free, one.reserved)).toBeGreaterThanOrEqual(0)
    }
    // Nobody goes short while something lies free, and nobody holds what they do not want.
    const short = needs.some((need) => need.item === name && lacking(ledger, need) > 0)
    if (short) expect(pile.free).toBe(0)
    for (const orderId of orders) {
      const held = heldLots(ledger, { orderId, item: name }).reduce((sum, one) => sum + one.amount, 0)
      const wanted = needs.find((need) => need.orderId === orderId && need.item === name)?.amount ?? 0
      expect(held).toBeLessThanOrEqual(wanted)
    }
  }
}

const ofHolder = (rows: readonly StockChange[], holder: string | null) => {
  const sums = new Map<string, number>()
  for (const { orderId, item: name, lot: place, kind, amount: much } of rows) {
    const key = [name, place, kind, much < 0].join(' ')
    if (orderId === holder) sums.set(key, (sums.get(key) ?? 0) + much)
  }
  return new Map([...sums].filter(([, much]) => much !== 0).toSorted())
}

/** What the moves keep beside the ledger says what the whole ledger says, added up here once more. */
const expectKeptSums = async (shop: ShopStore): Promise<void> => {
  const ledger = await shop.stock.ledger()
  const free = new Map<string, number>()
  for (const { item: name, amount: much } of ledger) free.set(name, (free.get(name) ?? 0) + much)
  expect(await shop.stock.sums()).toEqual(free)
  for (const holder of orders) {
    const part = await shop.stock.ledger({ items: [items[0]], holders: [holder] })
    const whole = ledger.filter((move) => move.item === items[0])
    expect(ofHolder(part, holder)).toEqual(ofHolder(whole, holder))
    const others = whole.map((move) => ({ ...move, orderId: move.orderId === holder ? holder : null }))
    expect(ofHolder(part, null)).toEqual(ofHolder(others, null))
  }
  const short = (await shop.stock.needs()).filter((need) => lacking(ledger, need) > 0)
  expect(await shop.stock.lacking(items)).toEqual(short)
}

const runs = process.env['LONG'] === 'floor' ? 400 : 12

describe('stock on the real store', () => {
  test('is conserved over orders, changes, cancels, remakes, counts, write-offs and killed transactions; nothing goes below zero', {
    timeout: 600_000,
  }, async () => {
    let shops = 0
    await fc.assert(
      fc.asyncProperty(fc.array(deed, { maxLength: 30 }), async (deeds) => {
        shops += 1
        const shop = await opened.store.openShop(`stock-${shops}`)
        const known = new Map<string, Hands>()
        for (const done of deeds) {
          const before = { lot: await lotOnShelf(shop, done) }
          await run(shop.shopId, done)
          if (done.kind !== 'killed') follow(known, done, before)
          await expectConserved(shop, known)
          await expectKeptSums(shop)
        }
      }),
      { numRuns: runs, seed: 7 },
    )
  })

  test('has one hand at a time: orders that are signed at once never reserve a stone twice', { timeout: 60_000 }, async () => {
    const shop = await opened.store.openShop('stock-at-once')
    await run('stock-at-once', { kind: 'arrive', item: 'stone-a', lot: 'l1', amount: 100 })
    await Promise.all(orders.map((one) => run('stock-at-once', { kind: 'sign', order: one, item: 'stone-a', amount: 60 })))
    const pile = pilesOf(await shop.stock.ledger()).get('stone-a')
    expect(pile).toMatchObject({ free: 0, reserved: 100, received: 100 })
    expect((await shop.stock.needs()).length).toBe(3)
    await run('stock-at-once', { kind: 'cancel', order: 'o1' })
    expect(pilesOf(await shop.stock.ledger()).get('stone-a')).toMatchObject({ free: 0, reserved: 100 })
  })
})
