import { randomUUID } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { makeApp } from '../../../../src/adapters/chat/counter/app.ts'
import { readAssets } from '../../../../src/adapters/chat/counter/assets.ts'
import { deeds } from '../../../../src/adapters/chat/counter/incoming.ts'
import { makeLimits } from '../../../../src/adapters/chat/counter/limit.ts'
import { makeSessions } from '../../../../src/adapters/chat/counter/session.ts'
import { shopActs, ticketActs } from '../../../../src/domain/ticket/acts.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { root } from '../../../support/embedded.ts'
import { type Asked, ask } from '../../../support/page-request.ts'
import { marker, openTwoShops, type ShopAtWork, type TwoShops, type Victim } from '../../../support/two-shops.ts'

type Route = { readonly method: string; readonly path: string }

/** Every route of the counter, as the library lists them; middleware stands for all and is left out. */
const routesOf = ({ pages }: ShopAtWork): readonly Route[] => {
  const app = makeApp(
    {
      desk: pages,
      origin: 'http://127.0.0.1',
      sessions: makeSessions(new Uint8Array(32), Date.now),
      limits: makeLimits(Date.now),
      assets: readAssets(root),
      ready: async () => undefined,
      report: () => undefined,
      closing: new AbortController().signal,
    },
    { origins: new Set(), hosts: new Set() },
  )
  const all = app.routes.filter(({ method }) => method !== 'ALL').map(({ method, path }) => `${method} ${path}`)
  return [...new Set(all)].map((one) => ({ method: one.split(' ')[0] ?? '', path: one.split(' ')[1] ?? '' }))
}

/** What stands for each part of a path: the first shop's own. A new part without a line here fails. */
const partsOf = (victim: Victim): { readonly [name: string]: readonly string[] } => ({
  ':token': [victim.token],
  ':file': victim.files,
  ':link': [victim.link],
  ':deed': deeds,
  ':ticket': [victim.ticketId],
  ':table': ['orders.csv', 'stock.csv', 'remakes.csv'],
  ':secret': [`${victim.link}.ics`],
  ':name': ['counter.css'],
})

const filled = (path: string, victim: Victim): readonly string[] =>
  path.split('/').reduce<readonly string[]>(
    (ways, part) => {
      if (!part.startsWith(':')) return ways.map((way) => (part === '' ? way : `${way}/${part}`))
      const values = partsOf(victim)[part]
      if (values === undefined) throw new Error(`say in this test what stands for ${part} in ${path}`)
      return ways.flatMap((way) => values.map((value) => `${way}/${value}`))
    },
    [''],
  )

/** Every action there is, with the first shop's ids in it. */
const actionsOn = ({ orderId, ticketId, signOff }: Victim): readonly string[] => [
  ...ticketActs.map((act) => `t:${ticketId}:${act}`),
  ...shopActs.map((act) => `s:${act}`),
  ...['quote', 'plan', 'ticket', 'post'].map((step) => `o:${orderId}:again-${step}:1`),
  signOff,
]

const bodiesFor = (victim: Victim): readonly string[] => [
  ...actionsOn(victim).map((action) => new URLSearchParams({ id: randomUUID(), action }).toString()),
  new URLSearchParams({ id: randomUUID(), text: 'hello', name: 'Ines', code: victim.code, language: 'en' }).toString(),
  new URLSearchParams({ id: randomUUID(), choice: 'c:choice', value: 'all-13' }).toString(),
  new URLSearchParams({ id: randomUUID(), form: 'f', 'field.a': 'b' }).toString(),
]

describe('trespassing at the counter', () => {
  let shops: TwoShops
  beforeAll(async () => {
    shops = await openTwoShops()
  }, 120_000)
  afterAll(async () => {
    await shops.close()
    expect(shops.bugs).toEqual([])
  })

  const send = (
    shop: ShopAtWork,
    { method, path }: Route,
    how: { readonly cookie: string; readonly body: string },
  ): Promise<Asked> =>
    ask(shop.counter.address, path, {
      method,
      headers: {
        origin: shop.counter.address,
        ...(how.cookie === '' ? {} : { cookie: how.cookie }),
        ...(method === 'GET' ? {} : { 'content-type': 'application/x-www-form-urlencoded' }),
      },
      ...(method === 'GET' ? {} : { body: how.body }),
    })

  /** Each route with each way to fill it and each form there is. */
  const attacksOn = (routes: readonly Route[]): readonly (Route & { readonly body: string })[] =>
    routes.flatMap(({ method, path }) => {
      const bodies = method === 'GET' ? [''] : bodiesFor(shops.victim)
      return filled(path, shops.victim).flatMap((way) => bodies.map((body) => ({ method, path: way, body })))
    })

  const attackAll = async (shop: ShopAtWork, routes: readonly Route[], cookies: readonly string[]): Promise<readonly Asked[]> => {
    const answers: Asked[] = []
    for (const cookie of cookies) {
      for (const { body, ...route } of attacksOn(routes)) {
        // The tests stay below what one person may do in a minute.
        shops.clock.at = minutes(shops.clock.at + 1)
        answers.push(await send(shop, route, { cookie, body }))
      }
    }
    return answers
  }

  it('with another shop’s tokens, files, links, codes and actions gets and changes nothing, on any route', {
    timeout: 120_000,
  }, async () => {
    const { first, second } = shops
    const before = await shops.rowsOf(first.desk.shopId)
    const routes = routesOf(second).filter(({ path }) => !path.endsWith('/live') || path.includes(':token'))
    expect(routes.length).toBeGreaterThan(20)
    const answers = await attackAll(second, routes, ['', first.owner, first.staff, second.staff, second.owner])
    expect(answers.length).toBeGreaterThan(300)
    for (const { text, status } of answers) {
      expect(text).not.toContain(marker)
      expect(status).toBeLessThan(500)
    }
    expect(await shops.rowsOf(first.desk.shopId)).toEqual(before)
  })

  it('as nobody, or signed in at another shop, gets and changes nothing of staff and owner', { timeout: 120_000 }, async () => {
    const { first, second } = shops
    const before = await shops.rowsOf(first.desk.shopId)
    const open = /^\/($|up|ready|robots|assets|start|sign-in|sign-out|owner|c\/|calendar\/)/
    const guarded = routesOf(first).filter(({ path }) => !open.test(path))
    expect(
      guarded
        .map(({ path }) => path.split('/')[1])
        .filter((one, index, all) => all.indexOf(one) === index)
        .toSorted(),
    ).toEqual(expect.arrayContaining(['bench', 'language', 'morning', 'people']))
    const forged = `counter-${new URL(first.counter.address).port}=eyJtZW1iZXIiOiJvd25lciJ9.AAAA`
    const renamed = [second.owner, second.staff].map((cookie) => cookie.replace(/^[^=]+/, forged.split('=')[0] ?? ''))
    const answers = await attackAll(first, guarded, ['', second.owner, second.staff, ...renamed, forged])
    for (const { status, text } of answers) {
      expect([303, 401]).toContain(status)
      expect(text).not.toContain(marker)
    }
    expect(await shops.rowsOf(first.desk.shopId)).toEqual(before)
  })

  it('as staff does not see or do what is the owner’s alone', async () => {
    const { first } = shops
    const before = await shops.rowsOf(first.desk.shopId)
    const owners = routesOf(first).filter(({ path }) => /^\/(morning|people)/.test(path))
    expect(owners.length).toBeGreaterThan(5)
    for (const { status } of await attackAll(first, owners, [first.staff])) expect(status).toBe(403)
    expect(await shops.rowsOf(first.desk.shopId)).toEqual(before)
  })

  it('as another customer of the same shop sees no file, and signs, takes and presses nothing of the first one', async () => {
    const { first, victim } = shops
    const { token } = await first.pages.startConversation('en')
    const orders = async () => {
      const { order, ticket, finding, event, stock_move: stock } = await shops.rowsOf(first.desk.shopId)
      return { order, ticket, finding, event, stock }
    }
    const before = await orders()
    for (const file of victim.files) {
      const answer = await send(first, { method: 'GET', path: `/c/${token}/file/${file}` }, { cookie: '', body: '' })
      expect(answer.status).toBe(404)
    }
    for (const body of bodiesFor(victim)) {
      shops.clock.at = minutes(shops.clock.at + 1)
      const answer = await send(first, { method: 'POST', path: `/c/${token}/press` }, { cookie: '', body })
      expect([303, 400]).toContain(answer.status)
    }
    expect(await orders()).toEqual(before)
    const page = await send(first, { method: 'GET', path: `/c/${token}` }, { cookie: '', body: '' })
    expect(page.text).not.toContain(marker)
  })
})
