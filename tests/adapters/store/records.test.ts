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
let other: ShopStore

beforeAll(async () => {
  test = await openTestStore((text) => statements.push(text))
  shop = await test.store.openShop('shop-1')
  other = await test.store.openShop('shop-2')
})
afterAll(async () => {
  await test.close()
})

const at = minutes(29_000_000)
const fresh = (): string => randomUUID()
const codes = (result: { readonly ok: boolean; readonly problems?: readonly { readonly code: string }[] }): readonly string[] =>
  (result.problems ?? []).map(({ code }) => code)

/** An order with one revision; its version is 2 then. */
const order = async (of: ShopStore = shop, conversationId: string | null = null): Promise<string> => {
  const orderId = fresh()
  unwrap(await of.orders.add({ orderId, conversationId }))
  unwrap(await of.orders.revise({ id: orderId, version: 1 }, { document: { team: 'Herons' }, hash: 'h1' }))
  return orderId
}

describe('orders', () => {
  it('keep their revisions and raise their version with every change', async () => {
    const orderId = await order()
    const second = unwrap(await shop.orders.revise({ id: orderId, version: 2 }, { document: { team: 'Egrets' }, hash: 'h2' }))
    expect(second).toEqual({ orderId, revision: 2, hash: 'h2', document: { team: 'Egrets' }, signed: null })
    expect(await shop.orders.read(orderId)).toMatchObject({ revision: 2, version: 3, state: 'asked' })
    expect((await shop.orders.revisions(orderId)).map(({ hash }) => hash)).toEqual(['h1', 'h2'])
  })

  it('refuse a change by somebody who saw an older version, and name both', async () => {
    const orderId = await order()
    unwrap(await shop.orders.change({ id: orderId, version: 2 }, { state: 'quoted' }))
    const late = await shop.orders.change({ id: orderId, version: 2 }, { state: 'cancelled' })
    expect(late).toMatchObject({
      ok: false,
      problems: [{ code: 'store-version-changed', facts: { what: 'order', id: orderId, expected: 2, found: 3 } }],
    })
    expect((await shop.orders.read(orderId))?.state).toBe('quoted')
  })

  it('let one of two win that change the same version at once', async () => {
    const orderId = await order()
    const tries = await Promise.all(
      ['quoted', 'cancelled'].map((state) =>
        shop.orders.change({ id: orderId, version: 2 }, { state: state === 'quoted' ? 'quoted' : 'cancelled' }),
      ),
    )
    expect(tries.map((one) => one.ok).toSorted()).toEqual([false, true])
  })

  it('are missing when nobody added them and there when somebody did', async () => {
    const orderId = await order()
    expect(codes(await shop.orders.change({ id: fresh(), version: 1 }, { state: 'quoted' }))).toEqual(['store-missing'])
    expect(codes(await shop.orders.add({ orderId, conversationId: null }))).toEqual(['store-already-there'])
  })

  it('sign the newest revision alone', async () => {
    const orderId = await order()
    unwrap(await shop.orders.revise({ id: orderId, version: 2 }, { document: {}, hash: 'h2' }))
    unwrap(await shop.orders.sign({ id: orderId, version: 3 }, { by: 'c-1', at }))
    expect((await shop.orders.revisions(orderId)).map(({ signed }) => signed)).toEqual([null, { by: 'c-1', at }])
    expect((await shop.orders.read(orderId))?.state).toBe('signed-off')
  })

  it('are put on hold and taken off it', async () => {
    const orderId = await order()
    const hold = { why: 'no-answer', by: 'm-1', since: at } as const
    const held = unwrap(await shop.orders.change({ id: orderId, version: 2 }, { hold }))
    expect(held).toEqual({ id: orderId, version: 3 })
    expect(await shop.orders.read(orderId)).toMatchObject({ hold, version: 3 })
    unwrap(await shop.orders.change(held, { hold: null }))
    expect((await shop.orders.read(orderId))?.hold).toBeNull()
  })

  it('keep the state of each row of the roster', async () => {
    const orderId = await order()
    await shop.orders.setRows(orderId, [
      { line: 1, state: 'not-cut' },
      { line: 2, state: 'not-cut' },
    ])
    await shop.orders.setRows(orderId, [{ line: 2, state: 'cut' }])
    expect(await shop.orders.rows(orderId)).toEqual([
      { line: 1, state: 'not-cut' },
      { line: 2, state: 'cut' },
    ])
  })
})

describe('documents', () => {
  it('come back as they were given, with NUL and half surrogate pairs replaced', async () => {
    const orderId = fresh()
    unwrap(await shop.orders.add({ orderId, conversationId: null }))
    const document = { snake_case: 1, camelCase: [null, { deepKey: 'ñ 7️⃣' }], odd: 'a\0b\ud800c', text: "it's \\u0000" }
    unwrap(await shop.orders.revise({ id: orderId, version: 1 }, { document, hash: 'h' }))
    const kept = await shop.orders.revision(orderId, 1)
    expect(kept?.document).toEqual({ ...document, odd: 'a\ufffdb\ufffdc' })
  })
})

describe('quotes and pieces', () => {
  it('keep the first quote of a key', async () => {
    const key = { orderId: await order(), revision: 1, hash: 'h1' }
    await shop.quotes.put(key, { total: 1 })
    await shop.quotes.put(key, { total: 2 })
    expect(await shop.quotes.read(key)).toEqual({ total: 1 })
    expect(await shop.quotes.read({ ...key, hash: 'h2' })).toBeNull()
  })

  it('are found by hash; those not there are left out', async () => {
    const orderId = await order()
    await shop.pieces.put(orderId, [
      { hash: 'p1', body: [1] },
      { hash: 'p2', body: [2] },
    ])
    expect(await shop.pieces.read(['p2', 'p1', 'p3'])).toEqual(
      new Map([
        ['p1', [1]],
        ['p2', [2]],
      ]),
    )
  })
})

describe('tickets', () => {
  it('get the next number of their shop, one for each revision', async () => {
    const own = await test.store.openShop(`numbers-${fresh()}`)
    const orders = [await order(own), await order(own), await order(own)]
    const added = await Promise.all(
      orders.map((orderId) => own.tickets.add({ ticketId: `t-${orderId}`, orderId, revision: 1, body: {} })),
    )
    expect(added.map((ticket) => unwrap(ticket).number).toSorted()).toEqual([1, 2, 3])
    const [first = ''] = orders
    expect(codes(await own.tickets.add({ ticketId: fresh(), orderId: first, revision: 1, body: {} }))).toEqual([
      'store-already-there',
    ])
  })

  it('keep ticks by step and line and raise their version with them', async () => {
    const orderId = await order()
    const { ticketId } = unwrap(await shop.tickets.add({ ticketId: fresh(), orderId, revision: 1, body: { pages: 2 } }))
    unwrap(await shop.tickets.tick({ id: ticketId, version: 1 }, [{ step: 3, line: 1, state: 'taken', by: 'm-1' }]))
    unwrap(
      await shop.tickets.tick({ id: ticketId, version: 2 }, [
        { step: 3, line: 1, state: 'done', by: 'm-1' },
        { step: 3, line: 2, state: 'spoiled', by: 'm-2' },
      ]),
    )
    expect(await shop.tickets.ticks(ticketId)).toEqual([
      { step: 3, line: 1, state: 'done', by: 'm-1' },
      { step: 3, line: 2, state: 'spoiled', by: 'm-2' },
    ])
    expect(codes(await shop.tickets.tick({ id: ticketId, version: 2 }, []))).toEqual(['store-version-changed'])
  })

  it('keep what the shop found out and what replaced them', async () => {
    const orderId = await order()
    const { ticketId } = unwrap(await shop.tickets.add({ ticketId: fresh(), orderId, revision: 1, body: {} }))
    await shop.tickets.find(ticketId, { code: 'water-drops', facts: { seconds: 3 }, by: 'm-1', at })
    expect(await shop.tickets.findings(ticketId)).toEqual([{ code: 'water-drops', facts: { seconds: 3 }, by: 'm-1', at }])
    unwrap(await shop.tickets.change({ id: ticketId, version: 1 }, { state: 'replaced', replacedBy: 2 }))
    expect(await shop.tickets.read(ticketId)).toMatchObject({ state: 'replaced', replacedBy: 2, version: 2 })
    expect((await shop.tickets.ofOrder(orderId)).map((ticket) => ticket.ticketId)).toEqual([ticketId])
  })
})

describe('events', () => {
  it('are read in the order they were added, by order and by time', async () => {
    const orderId = await order()
    const event = { orderId, ticketId: null, by: 'm-1', facts: { n: 1 } }
    await shop.events.add({ ...event, code: 'asked', at: minutes(100) })
    await shop.events.add({ ...event, code: 'quoted', at: minutes(101) })
    expect((await shop.events.ofOrder(orderId)).map(({ code }) => code)).toEqual(['asked', 'quoted'])
    expect((await shop.events.between(minutes(101), minutes(102))).map(({ code }) => code)).toEqual(['quoted'])
  })
})

describe('stock', () => {
  it('is the sum of its moves', async () => {
    const own = await test.store.openShop(`stock-${fresh()}`)
    await own.stock.move([
      { item: 'stone-ss10-crystal', amount: 5_000_000_000, kind: 'seed', orderId: null, at },
      { item: 'stone-ss10-crystal', amount: -1_440, kind: 'reserve', orderId: 'o-1', at },
      { item: 'vinyl-glitter-white', amount: 25_000_000, kind: 'seed', orderId: null, at },
    ])
    expect(await own.stock.sums()).toEqual(
      new Map([
        ['stone-ss10-crystal', 4_999_998_560],
        ['vinyl-glitter-white', 25_000_000],
      ]),
    )
    expect((await own.stock.ofOrder('o-1')).map(({ amount }) => amount)).toEqual([-1_440])
  })
})

describe('the plan', () => {
  it('is written only over the version its writer saw', async () => {
    const own = await test.store.openShop(`plan-${fresh()}`)
    expect(await own.plan.read()).toEqual({ version: 0, body: null })
    expect(unwrap(await own.plan.write(0, { slots: [] }))).toBe(1)
    expect(codes(await own.plan.write(0, { slots: [1] }))).toEqual(['store-version-changed'])
    expect(unwrap(await own.plan.write(1, { slots: [2] }))).toBe(2)
    expect(await own.plan.read()).toEqual({ version: 2, body: { slots: [2] } })
  })

  it('is read as it stands, also after a change that was taken back and another that was kept', async () => {
    const name = `plan-${fresh()}`
    const own = await test.store.openShop(name)
    unwrap(await own.plan.write(0, { slots: [] }))
    expect(await own.plan.read()).toEqual({ version: 1, body: { slots: [] } })
    const taken = await test.store.together(name, async (inside) => {
      unwrap(await inside.plan.write(1, { slots: ['taken back'] }))
      expect(await inside.plan.read()).toEqual({ version: 2, body: { slots: ['taken back'] } })
      return refuse({ code: 'too-late', at: '', severity: 'stop', facts: {} })
    })
    expect(taken.ok).toBe(false)
    expect(await own.plan.read()).toEqual({ version: 1, body: { slots: [] } })
    unwrap(await own.plan.write(1, { slots: ['kept'] }))
    const first = await own.plan.read()
    expect(first).toEqual({ version: 2, body: { slots: ['kept'] } })
    expect((await own.plan.read()).body).toBe(first.body)
  })

  it('is held by one transaction at a time', async () => {
    const seen: string[] = []
    const take = (name: string) =>
      test.store.together('shop-1', async (inside) => {
        await inside.plan.alone()
        seen.push(`${name} in`)
        await inside.orders.list(['asked'])
        seen.push(`${name} out`)
        return ok(undefined)
      })
    await Promise.all([take('a'), take('b'), take('c')])
    expect(seen.filter((_, place) => place % 2 === 0).map((word) => word.replace('in', 'out'))).toEqual(
      seen.filter((_, place) => place % 2 === 1),
    )
  })

  it('cannot be held outside a transaction', async () => {
    await expect(shop.plan.alone()).rejects.toThrow('inside a transaction')
  })
})

describe('a transaction', () => {
  const trouble = { code: 'too-late', at: '', severity: 'stop', facts: {} } as const

  it('keeps everything when its work answers ok', async () => {
    const orderId = await order()
    unwrap(
      await test.store.together('shop-1', async (inside) => {
        const signed = await inside.orders.sign({ id: orderId, version: 2 }, { by: 'c-1', at })
        await inside.steps.want({ step: 'plan', orderId, revision: 1 })
        await inside.stock.move([{ item: 'x', amount: -1, kind: 'reserve', orderId, at }])
        return signed
      }),
    )
    expect((await shop.orders.read(orderId))?.state).toBe('signed-off')
    expect((await shop.steps.ofOrder(orderId)).map(({ step }) => step)).toEqual(['plan'])
  })

  it('keeps nothing when its work refuses or throws', async () => {
    const orderId = await order()
    const spoil = async (inside: ShopStore): Promise<void> => {
      await inside.orders.sign({ id: orderId, version: 2 }, { by: 'c-1', at })
      await inside.steps.want({ step: 'plan', orderId, revision: 1 })
      await inside.stock.move([{ item: 'x', amount: -1, kind: 'reserve', orderId, at }])
    }
    const refused = await test.store.together('shop-1', async (inside) => {
      await spoil(inside)
      return refuse(trouble)
    })
    expect(refused).toEqual({ ok: false, problems: [trouble] })
    const thrown = test.store.together('shop-1', async (inside) => {
      await spoil(inside)
      throw new Error('bug')
    })
    await expect(thrown).rejects.toThrow('bug')
    expect((await shop.orders.read(orderId))?.state).toBe('asked')
    expect(await shop.steps.ofOrder(orderId)).toEqual([])
    expect(await shop.stock.ofOrder(orderId)).toEqual([])
    expect(
      (await test.store.outboxOf('shop-1').waiting(1_000)).some(({ step }) => 'orderId' in step && step.orderId === orderId),
    ).toBe(false)
  })

  it('is tried again when two block each other', async () => {
    const [one, two] = [await order(), await order()]
    const tries: string[] = []
    const bothHold = (): boolean => tries.length >= 2
    const through = (first: string, second: string) =>
      test.store.together('shop-1', async (inside) => {
        await inside.orders.setRows(first, [{ line: 1, state: 'cut' }])
        tries.push(first)
        await until('both hold a row', bothHold)
        await inside.orders.setRows(second, [{ line: 1, state: 'pressed' }])
        return ok(undefined)
      })
    const both = await Promise.all([through(one, two), through(two, one)])
    expect(both.map((result) => result.ok)).toEqual([true, true])
    expect(tries).toHaveLength(3)
  })
})

describe('steps', () => {
  const key = async () => ({ step: 'quote' as const, orderId: await order(), revision: 1 })
  const sent = async (orderId: string) =>
    (await test.store.outboxOf('shop-1').waiting(1_000)).flatMap(({ step }) =>
      'orderId' in step && step.orderId === orderId ? [step.attempt] : [],
    )

  it('are wanted once, however often they are asked for', async () => {
    const wanted = await key()
    await shop.steps.want(wanted)
    await shop.steps.want(wanted)
    expect(await sent(wanted.orderId)).toEqual([1])
    expect(await shop.steps.read(wanted)).toEqual({ ...wanted, attempt: 1, state: 'due', reason: null })
  })

  it('are overdue until they are done or given up', async () => {
    const overdue = async () => (await shop.steps.overdue(0)).map(({ orderId }) => orderId)
    const [one, two] = [await key(), await key()]
    await shop.steps.want(one)
    await shop.steps.want(two)
    expect(await overdue()).toEqual(expect.arrayContaining([one.orderId, two.orderId]))
    expect(await shop.steps.overdue(600)).toEqual([])
    await shop.steps.done(one)
    await shop.steps.giveUp(two, 'the face is gone')
    expect(await overdue()).not.toEqual(expect.arrayContaining([one.orderId]))
    expect(await overdue()).not.toEqual(expect.arrayContaining([two.orderId]))
    expect(await shop.steps.givenUp()).toContainEqual({ ...two, attempt: 1, state: 'given-up', reason: 'the face is gone' })
  })

  it('go again under the next attempt, unless they are done', async () => {
    const wanted = await key()
    await shop.steps.want(wanted)
    await shop.steps.giveUp(wanted, 'no')
    await shop.steps.again(wanted)
    expect(await shop.steps.read(wanted)).toMatchObject({ attempt: 2, state: 'due', reason: null })
    await shop.steps.done(wanted)
    await shop.steps.again(wanted)
    await shop.steps.giveUp(wanted, 'too late')
    expect(await shop.steps.read(wanted)).toMatchObject({ attempt: 2, state: 'done' })
    expect(await sent(wanted.orderId)).toEqual([1, 2])
  })

  it('leave the outbox when they were sent', async () => {
    const wanted = await key()
    await shop.steps.want(wanted)
    const rows = (await test.store.outboxOf('shop-1').waiting(1_000)).filter(
      ({ step }) => 'orderId' in step && step.orderId === wanted.orderId,
    )
    await test.store.outboxOf('shop-1').sent(rows.map(({ outboxId }) => outboxId))
    expect(await sent(wanted.orderId)).toEqual([])
  })
})

describe('conversations and messages', () => {
  it('are saved only over the version that was read', async () => {
    const id = fresh()
    unwrap(await shop.conversations.add(id, { open: [] }))
    unwrap(await shop.conversations.save({ id, version: 1 }, { open: ['team'] }))
    expect(codes(await shop.conversations.save({ id, version: 1 }, {}))).toEqual(['store-version-changed'])
    expect(await shop.conversations.read(id)).toEqual({ conversationId: id, state: { open: ['team'] }, version: 2 })
  })

  it('post a nonce once and edit it in place', async () => {
    const channel = `shop:${fresh()}`
    const [one, two] = [fresh(), fresh()]
    const first = await shop.messages.put({ channel, nonce: one, by: 'bot', body: { text: 'a' } })
    await shop.messages.put({ channel, nonce: two, by: 'bot', body: { text: 'b' } })
    const same = await shop.messages.put({ channel, nonce: one, by: 'bot', body: { text: 'a' } })
    const edited = await shop.messages.put({ channel, nonce: one, by: 'bot', body: { text: 'c' } })
    expect([first, same, edited]).toEqual(
      ['posted', 'already-there', 'edited'].map((outcome) => ({ messageId: first.messageId, outcome })),
    )
    const all = await shop.messages.after(channel, 0)
    expect(all.map(({ body, edits }) => [body, edits])).toEqual([
      [{ text: 'c' }, 1],
      [{ text: 'b' }, 0],
    ])
    const newest = Math.max(...all.map(({ changed }) => changed))
    expect(await shop.messages.after(channel, newest)).toEqual([])
    expect((await shop.messages.after(channel, newest - 1)).map(({ body }) => body)).toEqual([{ text: 'c' }])
  })

  it('make one message of a nonce that many post at once', async () => {
    const channel = `shop:${fresh()}`
    const nonce = fresh()
    const posts = await Promise.all(
      Array.from({ length: 6 }, () => shop.messages.put({ channel, nonce, by: 'bot', body: { text: 'x' } })),
    )
    expect(posts.filter(({ outcome }) => outcome === 'posted')).toHaveLength(1)
    expect(await shop.messages.after(channel, 0)).toHaveLength(1)
  })

  it('note what another chat made of a nonce', async () => {
    const nonce = fresh()
    expect(await shop.posted.read(nonce)).toBeNull()
    await shop.posted.note(nonce, { messageId: '10', hash: 'a' })
    await shop.posted.note(nonce, { messageId: '10', hash: 'b' })
    expect(await shop.posted.read(nonce)).toEqual({ messageId: '10', hash: 'b' })
  })
})

describe('files, members and keys', () => {
  it('show a file to its owners alone', async () => {
    const [mine, theirs] = [`order:${fresh()}`, `order:${fresh()}`]
    const bytes = Uint8Array.from([0, 255, 10, 13])
    await shop.files.keep(mine, { hash: 'f1', name: 'roster.csv', mime: 'text/csv', bytes })
    expect(await shop.files.read(theirs, 'f1')).toBeNull()
    await shop.files.show(theirs, 'f1')
    const shown = await shop.files.read(theirs, 'f1')
    expect({ ...shown, bytes: [...(shown?.bytes ?? [])] }).toEqual({
      name: 'roster.csv',
      mime: 'text/csv',
      bytes: [0, 255, 10, 13],
    })
    expect(await shop.files.ofOwner(mine)).toEqual([{ hash: 'f1', name: 'roster.csv', mime: 'text/csv' }])
  })

  it('let a key in once when it is used up, and not after its time', async () => {
    await shop.keys.add({ kind: 'pairing', hash: 'k1', holder: 'm-1', until: minutes(100) })
    expect(await shop.keys.read('pairing', 'k1', minutes(99))).toBe('m-1')
    expect(await shop.keys.read('pairing', 'k1', minutes(100))).toBeNull()
    expect(await shop.keys.read('session', 'k1', minutes(99))).toBeNull()
    const used = await Promise.all([1, 2, 3].map(() => shop.keys.use('pairing', 'k1', minutes(99))))
    expect(used.filter((holder) => holder !== null)).toEqual(['m-1'])
  })

  it('know members by id', async () => {
    const member = { memberId: fresh(), name: 'Ana', role: 'staff' } as const
    unwrap(await shop.members.add(member))
    expect(await shop.members.read(member.memberId)).toEqual(member)
    expect(codes(await shop.members.add(member))).toEqual(['store-already-there'])
  })

  it('take a member off the list with every key of theirs, and nobody else', async () => {
    const [gone, staying] = [fresh(), fresh()]
    for (const memberId of [gone, staying]) {
      unwrap(await shop.members.add({ memberId, name: 'Ana', role: 'staff' }))
      await shop.keys.add({ hash: `code-${memberId}`, kind: 'pairing', holder: memberId, until: null })
    }
    await shop.members.remove(gone)
    await shop.members.remove('nobody')
    expect(await shop.members.read(gone)).toBeNull()
    expect(await shop.keys.use('pairing', `code-${gone}`, minutes(1))).toBeNull()
    expect((await shop.members.list()).map(({ memberId }) => memberId)).toContain(staying)
    expect(await shop.keys.use('pairing', `code-${staying}`, minutes(1))).toBe(staying)
  })
})

describe('forgetting', () => {
  it('takes the words, files and pieces of an order and leaves its events and what others use', async () => {
    const conversationId = fresh()
    unwrap(await shop.conversations.add(conversationId, { words: 'Ana' }))
    const gone = await order(shop, conversationId)
    const stays = await order()
    await shop.messages.put({ channel: `conversation:${conversationId}`, nonce: fresh(), by: 'customer', body: { text: 'Ana' } })
    await shop.pieces.put(gone, [
      { hash: 'ana', body: 1 },
      { hash: 'seven', body: 7 },
    ])
    await shop.pieces.use(stays, ['seven'])
    await shop.files.keep(`order:${gone}`, { hash: 'photo', name: 'a.png', mime: 'image/png', bytes: new Uint8Array(4) })
    await shop.quotes.put({ orderId: gone, revision: 1, hash: 'h1' }, { total: 1 })
    await shop.events.add({ code: 'collected', orderId: gone, ticketId: null, by: 'm-1', at, facts: {} })
    unwrap(await shop.orders.change({ id: gone, version: 2 }, { state: 'collected', handedOverAt: minutes(1_000) }))

    expect(await shop.toForget(minutes(999))).toEqual([])
    expect(await shop.toForget(minutes(1_000))).toEqual([gone])
    await shop.forget(gone)

    expect(await shop.toForget(minutes(1_000))).toEqual([])
    expect((await shop.orders.revision(gone, 1))?.document).toBeNull()
    expect(await shop.conversations.read(conversationId)).toBeNull()
    expect(await shop.messages.after(`conversation:${conversationId}`, 0)).toEqual([])
    expect([...(await shop.pieces.read(['ana', 'seven'])).keys()]).toEqual(['seven'])
    expect(await shop.files.read(`order:${gone}`, 'photo')).toBeNull()
    expect(await shop.quotes.read({ orderId: gone, revision: 1, hash: 'h1' })).toBeNull()
    expect(await shop.events.ofOrder(gone)).toHaveLength(1)
  })

  it('keeps a conversation that another order still needs', async () => {
    const conversationId = fresh()
    unwrap(await shop.conversations.add(conversationId, {}))
    const [one, two] = [await order(shop, conversationId), await order(shop, conversationId)]
    await shop.forget(one)
    expect(await shop.conversations.read(conversationId)).not.toBeNull()
    await shop.forget(two)
    expect(await shop.conversations.read(conversationId)).toBeNull()
  })
})

describe('shops', () => {
  it('do not see each other', async () => {
    const orderId = await order()
    await shop.pieces.put(orderId, [{ hash: 'apart', body: 1 }])
    expect(await other.orders.read(orderId)).toBeNull()
    expect(await other.orders.revisions(orderId)).toEqual([])
    expect(codes(await other.orders.change({ id: orderId, version: 2 }, { state: 'cancelled' }))).toEqual(['store-missing'])
    expect(await other.pieces.read(['apart'])).toEqual(new Map())
    await other.forget(orderId)
    expect((await shop.orders.revision(orderId, 1))?.document).toEqual({ team: 'Herons' })
  })

  it('are named in every statement on their records', () => {
    const records = statements.filter((text) => /\b(from|into|update|join) "?(?!shop"? \(|pg_)[a-z_"]+/.test(text))
    const acrossShops =
      /^select id from place$|from "outbox" where "sent_at" is null|update "outbox" set "sent_at"|select "shop_id" from "shop" (?:where "house" = \$1 )?order by/
    expect(records.length).toBeGreaterThan(200)
    expect(records.filter((text) => !acrossShops.test(text) && !/"?shop_id"?( =|,|\))/.test(text))).toEqual([])
  })
})

describe('news', () => {
  it('reach every listener, with the transaction when there is one', async () => {
    const heard: News[] = []
    const silence = await test.store.listen(['channel'], (news) => heard.push(news))
    await test.store.together('shop-1', async (inside) => {
      await inside.tell('channel', 'undone')
      return refuse({ code: 'x', at: '', severity: 'stop', facts: {} })
    })
    await shop.tell('channel', 'bench')
    await until('the news', () => heard.some(({ id }) => id === 'bench'))
    expect(heard).toEqual([{ shopId: 'shop-1', topic: 'channel', id: 'bench' }])
    await silence()
  })

  it('of a topic wake nobody who listens to another', async () => {
    const heard: News[] = []
    const orderId = await order()
    const silence = await test.store.listen(['outbox'], (news) => heard.push(news))
    await shop.tell('channel', 'bench')
    await shop.steps.want({ step: 'quote', orderId, revision: 1 })
    await until('the news', () => heard.length > 0)
    expect(heard).toEqual([{ shopId: 'shop-1', topic: 'outbox', id: orderId }])
    await silence()
  })
})
