import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { ok, refuse } from '../../../src/domain/result/result.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import type { News, ShopStore } from '../../../src/ports/store.ts'
import { openTestStore, type TestStore, unwrap } from '../../support/embedded.ts'
import { until } from '../../support/until.ts'

const statements: string[] = []
let test: TestStore
let shop: ShopStore
beforeAll(async () => {
  test = await openTestStore((text) => statements.push(text))
  shop = await test.store.openShop('shop-1')
})
afterAll(async () => {
  await test.close()
})

const at = minutes(29_000_000)
const order = async (): Promise<string> => {
  const orderId = randomUUID()
  unwrap(await shop.orders.add({ orderId, conversationId: null }))
  unwrap(await shop.orders.revise({ id: orderId, version: 1 }, { document: {}, hash: 'h' }))
  return orderId
}
const event = (orderId: string, code: string) => ({ code, orderId, ticketId: null, by: 'desk', at, facts: { of: code } })
const waitingFor = async (orderId: string): Promise<readonly string[]> =>
  (await test.store.outboxOf('shop-1').waiting(1_000)).flatMap(({ step }) =>
    'orderId' in step && step.orderId === orderId ? [step.step] : [],
  )

describe('what a transaction writes at its end', () => {
  it('is one statement of each kind, in the order it was said', async () => {
    const orderId = await order()
    const channel = `conversation:${orderId}`
    statements.length = 0
    unwrap(
      await test.store.together('shop-1', async (inside) => {
        for (const nth of [1, 2, 3]) {
          await inside.messages.say({ channel, nonce: `${orderId}-${nth}`, by: 'bot', body: { nth } })
          await inside.events.add(event(orderId, `happened-${nth}`))
          await inside.tell('channel', channel)
        }
        await inside.steps.want({ step: 'quote', orderId, revision: 1 })
        await inside.steps.want({ step: 'plan', orderId, revision: 1 })
        return ok(null)
      }),
    )
    expect(statements.filter((text) => text.includes('insert into message'))).toHaveLength(1)
    expect(statements.filter((text) => text.includes('insert into event'))).toHaveLength(1)
    expect(statements).toHaveLength(5)
    const said = await shop.messages.after(channel, 0)
    expect(said.map(({ body }) => body)).toEqual([{ nth: 1 }, { nth: 2 }, { nth: 3 }])
    expect(said.map(({ seq }) => seq)).toEqual(said.map(({ seq }) => seq).toSorted((one, other) => one - other))
    expect((await shop.events.ofOrder(orderId)).map(({ code }) => code)).toEqual(['happened-1', 'happened-2', 'happened-3'])
    expect(await waitingFor(orderId)).toEqual(['quote', 'plan'])
  })

  it('is seen by whatever looks at it inside', async () => {
    const orderId = await order()
    const [channel, key] = [`conversation:${orderId}`, { step: 'quote', orderId, revision: 1 } as const]
    unwrap(
      await test.store.together('shop-1', async (inside) => {
        await inside.events.add(event(orderId, 'asked'))
        expect(await inside.events.ofOrder(orderId)).toHaveLength(1)
        await inside.messages.say({ channel, nonce: orderId, by: 'bot', body: 'first' })
        expect((await inside.messages.of(orderId))?.body).toBe('first')
        await inside.messages.say({ channel, nonce: `${orderId}-2`, by: 'bot', body: 'second' })
        expect(await inside.messages.after(channel, 0)).toHaveLength(2)
        await inside.messages.say({ channel, nonce: `${orderId}-3`, by: 'bot', body: 'third' })
        expect(await inside.messages.naming(channel, ['third'])).toHaveLength(1)
        await inside.steps.want(key)
        expect((await inside.steps.read(key))?.state).toBe('due')
        await inside.steps.done(key)
        expect((await inside.steps.ofOrder(orderId)).map(({ state }) => state)).toEqual(['done'])
        return ok(null)
      }),
    )
  })

  it('keeps a message before one that is put after it, and the last of two bodies', async () => {
    const channel = `conversation:${randomUUID()}`
    const nonce = randomUUID()
    unwrap(
      await test.store.together('shop-1', async (inside) => {
        await inside.messages.say({ channel, nonce, by: 'bot', body: 'drawing' })
        await inside.messages.say({ channel, nonce, by: 'bot', body: 'drawn' })
        expect((await inside.messages.put({ channel, nonce: `${nonce}-2`, by: 'bot', body: 'ticket' })).outcome).toBe('posted')
        return ok(null)
      }),
    )
    expect((await shop.messages.after(channel, 0)).map(({ body, edits }) => [body, edits])).toEqual([
      ['drawn', 1],
      ['ticket', 0],
    ])
  })

  it('wants a step once, and one that is wanted and done at once is done', async () => {
    const orderId = await order()
    const key = { step: 'quote', orderId, revision: 1 } as const
    for (const _ of [1, 2]) {
      unwrap(
        await test.store.together('shop-1', async (inside) => {
          await inside.steps.want(key)
          await inside.steps.done(key)
          await inside.steps.done(key)
          return ok(null)
        }),
      )
    }
    expect((await shop.steps.read(key))?.state).toBe('done')
    expect(await waitingFor(orderId)).toEqual(['quote'])
  })

  it('is not there when the transaction is undone, and nobody hears of it', async () => {
    const orderId = await order()
    const heard: News[] = []
    const silence = await test.store.listen(['channel', 'outbox'], (news) => heard.push(news))
    await test.store.together('shop-1', async (inside) => {
      await inside.messages.say({ channel: 'shop:bench', nonce: orderId, by: 'bot', body: 'undone' })
      await inside.events.add(event(orderId, 'undone'))
      await inside.steps.want({ step: 'quote', orderId, revision: 1 })
      await inside.tell('channel', orderId)
      return refuse({ code: 'x', at: '', severity: 'stop', facts: {} })
    })
    await shop.tell('channel', `after ${orderId}`)
    await until('the news', () => heard.some(({ id }) => id === `after ${orderId}`))
    await silence()
    expect(heard).toEqual([{ shopId: 'shop-1', topic: 'channel', id: `after ${orderId}` }])
    expect(await shop.messages.of(orderId)).toBeNull()
    expect(await shop.events.ofOrder(orderId)).toEqual([])
    expect(await shop.steps.ofOrder(orderId)).toEqual([])
  })

  it('that the records refuse undoes the whole transaction', async () => {
    const orderId = await order()
    const work = test.store.together('shop-1', async (inside) => {
      await inside.events.add(event(orderId, 'refused'))
      await inside.steps.want({ step: 'quote', orderId: 'there is no such order', revision: 1 })
      return ok(null)
    })
    // SQLSTATE foreign_key_violation, PostgreSQL's appendix A.
    await expect(work).rejects.toMatchObject({ code: '23503' })
    expect(await shop.events.ofOrder(orderId)).toEqual([])
  })

  it('outside of a transaction is written at once', async () => {
    const orderId = await order()
    const key = { step: 'quote', orderId, revision: 1 } as const
    await shop.events.add(event(orderId, 'asked'))
    await shop.steps.want(key)
    await shop.messages.say({ channel: 'shop:bench', nonce: orderId, by: 'bot', body: 'posted' })
    const other = test.store.shop('shop-1')
    expect(await other.events.ofOrder(orderId)).toHaveLength(1)
    expect((await other.steps.read(key))?.state).toBe('due')
    expect((await other.messages.of(orderId))?.body).toBe('posted')
    await shop.steps.done(key)
    expect((await other.steps.read(key))?.state).toBe('done')
  })

  it.each([
    ['NUL', 'a\0b', 'a\ufffdb'],
    ['half a pair', 'a\ud83d', 'a\ufffd'],
    ['signs that look like either', '\\u0000 \\ud83d', '\\u0000 \\ud83d'],
    ['a whole pair', 'a😀', 'a😀'],
  ])('takes %s that somebody typed', async (_, typed, kept) => {
    const nonce = randomUUID()
    await shop.messages.say({ channel: 'shop:bench', nonce, by: 'customer', body: { text: typed } })
    expect((await shop.messages.of(nonce))?.body).toEqual({ text: kept })
  })
})
