import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import { ok } from '../../../src/domain/result/result.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import type { ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'

let test: TestStore
let shop: ShopStore
let other: ShopStore
const statements: string[] = []
beforeAll(async () => {
  test = await openTestStore((text) => statements.push(text))
  shop = await test.store.openShop('shop-1')
  other = await test.store.openShop('shop-2')
})
afterAll(async () => {
  await test.close()
})
beforeEach(() => {
  statements.length = 0
})

const at = minutes(29_000_000)

/** An order of two revisions, the first of them signed, in a talk in Spanish. */
const orderInTalk = async (): Promise<{ readonly orderId: string; readonly conversationId: string }> => {
  const [orderId, conversationId] = [randomUUID(), randomUUID()]
  unwrap(await shop.conversations.add(conversationId, { language: 'es', draft: {} }))
  unwrap(await shop.orders.add({ orderId, conversationId }))
  unwrap(await shop.orders.revise({ id: orderId, version: 1 }, { document: { team: 'Herons' }, hash: 'h1' }))
  unwrap(await shop.orders.sign({ id: orderId, version: 2 }, { by: 'dana', at }))
  unwrap(await shop.orders.revise({ id: orderId, version: 3 }, { document: { team: 'Egrets' }, hash: 'h2' }))
  return { orderId, conversationId }
}

describe('what a step begins with', () => {
  it('is what four looks say, in one', async () => {
    const { orderId } = await orderInTalk()
    const key = { step: 'quote', orderId, revision: 1 } as const
    await shop.steps.want(key)
    statements.length = 0
    const about = await shop.steps.about(key)
    expect(statements).toHaveLength(1)
    expect(about).toEqual({
      isDone: false,
      order: await shop.orders.read(orderId),
      revision: await shop.orders.revision(orderId, 1),
      language: 'es',
    })
    expect(about.revision?.signed).toEqual({ by: 'dana', at })
    await shop.steps.done(key)
    expect((await shop.steps.about(key)).isDone).toBe(true)
    expect((await shop.steps.about({ ...key, revision: 2 })).isDone).toBe(false)
  })

  it('tells a hold, an order without a talk, a revision that is not there and an order that is not', async () => {
    const orderId = randomUUID()
    unwrap(await shop.orders.add({ orderId, conversationId: null }))
    const hold = { why: 'cloth', by: 'owner', since: at }
    unwrap(await shop.orders.change({ id: orderId, version: 1 }, { hold }))
    const held = await shop.orders.read(orderId)
    const key = { step: 'plan', orderId, revision: 1 } as const
    expect(await shop.steps.about(key)).toEqual({ isDone: false, order: held, revision: null, language: null })
    const none = { isDone: false, order: null, revision: null, language: null }
    expect(await shop.steps.about({ ...key, orderId: randomUUID() })).toEqual(none)
    expect(await other.steps.about(key)).toEqual(none)
  })

  it('sees what its own transaction has done', async () => {
    const { orderId } = await orderInTalk()
    const key = { step: 'quote', orderId, revision: 2 } as const
    await shop.steps.want(key)
    const seen = await test.store.together('shop-1', async (inside) => {
      await inside.steps.done(key)
      return ok((await inside.steps.about(key)).isDone)
    })
    expect(unwrap(seen)).toBe(true)
  })
})

describe('one look', () => {
  it('tells an order and its newest revision', async () => {
    const { orderId } = await orderInTalk()
    statements.length = 0
    const newest = await shop.orders.newest(orderId)
    expect(statements).toHaveLength(1)
    expect(newest).toEqual({ order: await shop.orders.read(orderId), revision: await shop.orders.revision(orderId, 2) })
    expect(await other.orders.newest(orderId)).toBeNull()
    const unrevised = randomUUID()
    unwrap(await shop.orders.add({ orderId: unrevised, conversationId: null }))
    expect(await shop.orders.newest(unrevised)).toBeNull()
  })

  it('tells the quote of a revision as it was asked for, and none in another make', async () => {
    const { orderId } = await orderInTalk()
    const key = { orderId, revision: 1 }
    await shop.quotes.put({ ...key, hash: 'of another make' }, { version: 2 })
    await shop.quotes.put({ orderId, revision: 2, hash: 'h2' }, { version: 3 })
    expect(await shop.quotes.ofRevision(key)).toBeNull()
    await shop.quotes.put({ ...key, hash: 'h1' }, { version: 1 })
    statements.length = 0
    expect(await shop.quotes.ofRevision(key)).toEqual({ version: 1 })
    expect(statements).toHaveLength(1)
    expect(await other.quotes.ofRevision(key)).toBeNull()
    expect(await shop.quotes.ofRevision({ ...key, revision: 3 })).toBeNull()
  })

  it('tells a ticket, its order and what was done with it', async () => {
    const { orderId } = await orderInTalk()
    const ticketId = `${orderId}-1`
    unwrap(await shop.tickets.add({ ticketId, orderId, revision: 1, body: { version: 1 } }))
    const bare = await shop.tickets.record(ticketId)
    expect(bare).toMatchObject({ findings: [], ticks: [], openRemakes: 0 })
    for (const code of ['take', 'start']) await shop.tickets.find(ticketId, { code, facts: { of: code }, by: 'noor', at })
    unwrap(
      await shop.tickets.tick({ id: ticketId, version: 1 }, [
        { step: 2, line: 1, state: 'taken', by: 'noor' },
        { step: 1, line: 2, state: 'done', by: null },
      ]),
    )
    const remake = {
      orderId,
      ticketId,
      line: 1,
      quantity: 1,
      reason: 'scorched',
      whose: 'shop',
      photo: null,
      cost: 0,
      by: 'noor',
      at,
    }
    for (const remakeId of [`${orderId}-a`, `${orderId}-b`]) await shop.floor.addRemake({ ...remake, remakeId, doneAt: null })
    await shop.floor.finishRemake(`${orderId}-a`, at)
    statements.length = 0
    const record = await shop.tickets.record(ticketId)
    expect(statements).toHaveLength(1)
    expect(record).toEqual({
      ticket: await shop.tickets.read(ticketId),
      order: await shop.orders.read(orderId),
      findings: await shop.tickets.findings(ticketId),
      ticks: await shop.tickets.ticks(ticketId),
      openRemakes: 1,
    })
    expect(record?.findings.map(({ code }) => code)).toEqual(['take', 'start'])
    expect(await other.tickets.record(ticketId)).toBeNull()
  })

  it('tells the talk that a customer’s key opens while it does', async () => {
    const { conversationId } = await orderInTalk()
    const [hash, ended] = [randomUUID(), randomUUID()]
    await shop.keys.add({ hash, kind: 'customer', holder: conversationId, until: null })
    await shop.keys.add({ hash: ended, kind: 'customer', holder: conversationId, until: at })
    await shop.keys.add({ hash: `${hash} of staff`, kind: 'session', holder: conversationId, until: null })
    expect(await shop.conversations.openedBy(hash, at)).toEqual({ conversationId, language: 'es' })
    expect(await shop.conversations.openedBy(ended, minutes(at - 1))).toEqual({ conversationId, language: 'es' })
    expect(await shop.conversations.openedBy(ended, at)).toBeNull()
    expect(await shop.conversations.openedBy(`${hash} of staff`, at)).toBeNull()
    expect(await other.conversations.openedBy(hash, at)).toBeNull()
    expect(await shop.conversations.language(conversationId)).toBe('es')
    expect(await other.conversations.language(conversationId)).toBeNull()
  })

  it('holds the plan and tells it', async () => {
    unwrap(await shop.plan.write((await shop.plan.read()).version, { sold: ['one'] }))
    const order: string[] = []
    const first = test.store.together('shop-1', async (inside) => {
      const { version, body } = await inside.plan.hold()
      order.push('first holds it')
      const waiting = test.store.together('shop-1', async (second) => {
        const seen = await second.plan.hold()
        order.push('second holds it')
        return ok(seen)
      })
      unwrap(await inside.plan.write(version, { sold: ['one', 'two'] }))
      order.push('first writes it')
      return ok({ body, waiting })
    })
    const { body, waiting } = unwrap(await first)
    expect(body).toEqual({ sold: ['one'] })
    expect(unwrap(await waiting).body).toEqual({ sold: ['one', 'two'] })
    expect(order).toEqual(['first holds it', 'first writes it', 'second holds it'])
    await expect(shop.plan.hold()).rejects.toThrow('inside a transaction')
  })

  it('shares a file under another name without sending its bytes', async () => {
    const hash = randomUUID()
    await shop.files.keep('order:1', { hash, name: 'cut.zip', mime: 'application/zip', bytes: new Uint8Array(1_234) })
    statements.length = 0
    const shared = await shop.files.share('order:1', hash, { owner: 'shop:bench', name: 'T0001-cut.zip' })
    expect(statements).toHaveLength(1)
    expect(shared).toEqual({ mime: 'application/zip', size: 1_234 })
    expect((await shop.files.read('shop:bench', hash))?.name).toBe('T0001-cut.zip')
    expect(await shop.files.mark('shop:bench', hash)).toEqual(shared)
    expect(await shop.files.share('order:2', hash, { owner: 'shop:owner', name: 'x' })).toBeNull()
    expect(await shop.files.read('shop:owner', hash)).toBeNull()
    expect(await other.files.mark('shop:bench', hash)).toBeNull()
    expect(await other.files.share('order:1', hash, { owner: 'shop:bench', name: 'x' })).toBeNull()
  })
})
