import { setTimeout as pause } from 'node:timers/promises'
import { unpack } from '../../src/adapters/store/sql/packed.ts'
import { type ShopPlan, shopPlanFrom } from '../../src/desk/service/records/records.ts'
import type { Records } from './service-watch.ts'
import { type Shopfront, type SteadyCustomer, seenBy, welcome, wholeWish } from './steady-customer.ts'
import { until } from './until.ts'

/** How far every order is, by its id, looked at again and again in one question for all. */
export type Progress = {
  readonly has: (orderId: string, code: string) => boolean
  readonly many: (code: string) => number
  readonly close: () => Promise<void>
}

export const followOrders = (records: () => Records): Progress => {
  const seen = new Map<string, Set<string>>()
  const state = { stopped: false, last: 0 }
  const look = async (): Promise<void> => {
    // A number is given before its transaction is kept: a little of what was seen already is looked at again.
    const rows = await records().rows(
      'select event_id::int as id, order_id, code from platenpost.event where event_id > $1 order by event_id',
      state.last - 500,
    )
    for (const { id, order_id: order, code } of rows) {
      const codes = seen.get(String(order)) ?? new Set<string>()
      codes.add(String(code))
      seen.set(String(order), codes)
      state.last = Math.max(state.last, Number(id))
    }
  }
  const loop = async (): Promise<void> => {
    while (!state.stopped) {
      await look().catch(() => undefined)
      await pause(100)
    }
  }
  const ended = loop()
  return {
    has: (orderId, code) => seen.get(orderId)?.has(code) ?? false,
    many: (code) => [...seen.values()].filter((codes) => codes.has(code)).length,
    close: async () => {
      state.stopped = true
      await ended
    },
  }
}

export type Making = {
  readonly front: Shopfront
  readonly progress: Progress
  readonly many: number
  /** Customers at once. */
  readonly atOnce: number
  readonly first?: number
  /** What a customer does once the ticket is on the bench. */
  readonly after?: (customer: SteadyCustomer) => Promise<unknown>
}

const stepTimeout = 240_000

const untilHas = async (making: Making, customer: SteadyCustomer, code: string): Promise<void> => {
  const last = Date.now() + stepTimeout
  while (!making.progress.has(customer.orderId, code)) {
    if (Date.now() > last) throw new Error(`${customer.orderId} is never ${code}: ${await seenBy(making.front, customer)}`)
    await pause(50)
  }
}

/** One order from the first word to its ticket; a place that was lost meanwhile is signed for again. */
const makeOne = async (making: Making, number: number): Promise<string> => {
  const customer = await welcome(making.front, number)
  await customer.say(wholeWish(`Team ${number} Herons`, 40 + (number % 60)))
  await customer.say('all are 13 or older')
  await untilHas(making, customer, 'quoted')
  const last = Date.now() + stepTimeout
  while (!making.progress.has(customer.orderId, 'signed-off')) {
    if (Date.now() > last) throw new Error(`${customer.orderId} cannot be signed: ${await seenBy(making.front, customer)}`)
    await customer.sign()
    await pause(250)
  }
  await untilHas(making, customer, 'posted')
  await making.after?.(customer)
  return customer.orderId
}

/** The customer calls it off, so that it leaves the plan. */
export const callOff = async (progress: Progress, customer: SteadyCustomer): Promise<void> => {
  await customer.say('please cancel the order')
  await customer.say('yes')
  await until(`${customer.orderId} is called off`, () => progress.has(customer.orderId, 'cancelled'))
}

/** Brings so many orders to their tickets, a few customers at a time; answers with their ids. */
export const makeOrders = async (making: Making): Promise<readonly string[]> => {
  const state = { next: making.first ?? 0 }
  const last = state.next + making.many
  const made: string[] = []
  const till = async (): Promise<void> => {
    while (state.next < last) {
      const number = state.next
      state.next += 1
      made.push(await makeOne(making, number))
    }
  }
  await Promise.all(Array.from({ length: making.atOnce }, till))
  return made
}

export type Count = { readonly [name: string]: number }

/** The plan of every shop in the records. */
export const plansIn = async (records: Records): Promise<readonly ShopPlan[]> =>
  (await records.rows('select body from platenpost.plan')).map(({ body }) => {
    if (!Buffer.isBuffer(body)) throw new Error('a plan is kept as bytes')
    return shopPlanFrom(unpack(body).document)
  })

const notOnce = (orderIds: readonly string[], plans: readonly ShopPlan[]): number => {
  const times = new Map<string, number>()
  for (const { id } of plans.flatMap(({ sold }) => sold)) times.set(id, (times.get(id) ?? 0) + 1)
  return orderIds.filter((id) => times.get(id) !== 1).length
}

/** What must hold of a shop whose orders were all brought to their tickets, whatever happened meanwhile; all 0 but `orders`. */
export const wrongsOf = async (records: Records, orderIds: readonly string[]): Promise<Count> => {
  const one = async (text: string): Promise<number> => Number((await records.rows(text, orderIds))[0]?.['number'])
  const codes = `array['asked','quoted','signed-off','planned','ticketed','posted']`
  return {
    orders: await one('select count(*) as number from platenpost."order" where order_id = any($1)'),
    'not on the bench': await one(
      `select count(*) as number from platenpost."order" where order_id = any($1) and state <> 'on-bench'`,
    ),
    'tickets too few or too many': await one(
      `select count(*) as number from unnest($1::text[]) o where (select count(*) from platenpost.ticket where order_id = o) <> 1`,
    ),
    'tickets not posted exactly once': await one(
      `select count(*) as number from platenpost.ticket t where order_id = any($1) and
        (select count(*) from platenpost.message m where m.channel = 'shop:bench' and m.nonce = t.ticket_id and m.shop_id = t.shop_id) <> 1`,
    ),
    'messages on the bench beside tickets': await one(
      `select count(*) as number from platenpost.message m where channel = 'shop:bench' and $1::text[] is not null
        and not exists (select from platenpost.ticket t where t.ticket_id = m.nonce and t.shop_id = m.shop_id)`,
    ),
    'ticket numbers used twice or left out': await one(
      `select max(number) - count(distinct number) as number from platenpost.ticket where $1::text[] is not null`,
    ),
    'event logs with a step missing, doubled or out of order': await one(
      `select count(*) as number from unnest($1::text[]) o where
        (select array_agg(code order by event_id) from platenpost.event e where e.order_id = o and code = any(${codes})) <> ${codes}`,
    ),
    'orders whose stock is not wanted exactly once': await one(
      `select count(*) as number from unnest($1::text[]) o where
        (select coalesce(jsonb_object_agg(item, amount), '{}') from (select item, sum(amount) as amount from platenpost.stock_need
          where order_id = o group by item) wanted)
        <> (select coalesce(jsonb_object_agg(item, amount), '{}') from (select s->>'item' as item, sum((s->>'amount')::bigint) as amount
          from platenpost.quote q join platenpost."order" r using (shop_id, order_id, revision), jsonb_array_elements(q.body->'stock') s
          where q.order_id = o group by 1) quoted)`,
    ),
    'items whose shelf is not what was there less what is reserved': await one(
      `select count(*) as number from (select item, sum(amount) filter (where kind = 'seed') as seeded,
          -sum(amount) filter (where order_id = any($1)) as reserved, sum(amount) as left_ from platenpost.stock_move group by item) s
        where left_ <> coalesce(seeded, 0) - coalesce(reserved, 0)`,
    ),
    'orders not sold exactly once in the plan': notOnce(orderIds, await plansIn(records)),
    'steps due or given up': await one(
      `select count(*) as number from platenpost.step where order_id = any($1) and state <> 'done'`,
    ),
    'rows left in the outbox': await one(
      'select count(*) as number from platenpost.outbox where order_id = any($1) and sent_at is null',
    ),
  }
}

/** The wrongs that are none, for comparison. */
export const nothingWrong = (orders: number, found: Count): Count =>
  Object.fromEntries(Object.keys(found).map((name) => [name, name === 'orders' ? orders : 0]))
