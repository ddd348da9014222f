import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { localMinute } from '../support/desk.ts'
import { acts, makeAll, noor, openGates } from '../support/floor.ts'
import { openRealGround, type RealGround } from '../support/platform/ground.ts'
import {
  ages,
  awaitIn,
  benchText,
  customerAt,
  found,
  ordering,
  oursIn,
  press,
  sign,
  staffAt,
  submit,
  submitAt,
  until,
} from '../support/platform/real-job.ts'
import { openRealShops, type RealShops } from '../support/platform/real-shop.ts'
import { idsOf, textsOf, toldTo } from '../support/platform/shop-in-server.ts'
import type { Room } from '../support/platform/world.ts'

const tees = (team: string, make = '100% cotton, white vinyl numbers on the back'): string =>
  `3 practice tees, navy, ${make}. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

/** Words without the platform's own marks. */
const unmarked = (text: string): string => text.replaceAll(/[\\*]/g, '')
const textIn = (shops: RealShops, room: Room): string => unmarked(oursIn(shops, room).map(textsOf).join('\n'))

/** The platform's client, the desk over the store and one shop; closed whatever happens in between. */
const inShop = async (ground: RealGround, at: string, walk: (shops: RealShops) => Promise<void>): Promise<void> => {
  ground.clock.at = localMinute(at)
  const shops = await openRealShops(ground)
  try {
    await walk(shops)
    expect(shops.reports).toEqual([])
  } finally {
    await shops.close()
  }
}

const orders = async (shops: RealShops, words: string): Promise<string> => {
  for (const event of [ordering(words), ages, sign]) await event.play(shops)
  return found(shops, shops.ours.bench, /^t:[^:]+:take:/).id.split(':')[1] ?? ''
}

/** Who opens what is not the walk's own: by the desk, as the same member of the shop's people. */
const opensTheRest = async (shops: RealShops, ticket: string, leaveOut: readonly string[] = []): Promise<void> => {
  await acts(shops.ourDesk, ticket, { act: 'take', by: noor })
  await openGates(shops.ourDesk, ticket, leaveOut)
}

describe('the floor on the chat platform', () => {
  let ground: RealGround
  beforeAll(async () => {
    ground = await openRealGround((shop) => ({
      ...shop,
      stock: { ...shop.stock, supply: { ...shop.stock.supply, stoneDays: 6 } },
    }))
  }, 180_000)
  afterAll(() => ground.close())

  it(
    'floor: beaded drops close the ticket, the customer is shown vinyl in stock, signs, and a new ticket is posted',
    {
      timeout: 300_000,
    },
    () =>
      inShop(ground, '2026-11-25T09:00', async (shops) => {
        const words = tees('Beaded Bears', '100% nylon woven, white vinyl numbers on the back').replace(
          'tees',
          'tees that we bring ourselves',
        )
        const ticket = await orders(shops, words)
        await opensTheRest(shops, ticket, ['water-drops', 'test-press'])
        await awaitIn(shops, shops.ours.bench, /^t:[^:]+:water-drops:/)
        await submit(shops, staffAt(shops), { act: 'water-drops', given: { drops: '60 60 60 60 60' } })
        const { room } = customerAt(shops)
        await until(() => textIn(shops, room)).toContain('Low-temperature vinyl (white)')
        await awaitIn(shops, room, /^c:sign-off:2:/)
        const proof = found(shops, room, /^c:sign-off:2:/)
        expect(proof.message.files.map(({ type }) => type)).toContain('image/png')
        expect(textsOf(proof.message)).toMatch(/\$\d/)
        shops.platform.press(customerAt(shops), proof.message, proof.id)
        await until(() => oursIn(shops, shops.ours.bench).length).toBe(2)
        const [first, second] = oursIn(shops, shops.ours.bench)
        await until(() => textsOf(oursIn(shops, shops.ours.bench)[0])).toMatch(/replaced by revision 2/i)
        expect(idsOf(oursIn(shops, shops.ours.bench)[0]).filter((id) => id.startsWith('t:'))).toEqual([])
        expect(first?.id).not.toBe(second?.id)
        expect(textsOf(second)).toContain('r2')
      }),
  )

  it(
    'floor: stones counted short by 40 stand on the shopping list, and the promise moves when the owner has agreed',
    {
      timeout: 300_000,
    },
    () =>
      inShop(ground, '2026-12-07T09:00', async (shops) => {
        await orders(
          shops,
          tees('Short Shrikes', '100% cotton, white vinyl numbers with an SS10 crystal outline in two rows on the back'),
        )
        const { ourShop: shop, ours } = shops
        const need = (await shop.stock.needs()).find(({ item }) => item === 'stone-ss10-crystal')?.amount ?? 0
        const lot = (await shop.stock.lots()).find(({ item }) => item === 'stone-ss10-crystal')?.lot ?? ''
        const promised = () => shop.plan.read().then(({ body }) => shopPlanFrom(body).sold[0]?.promised)
        const before = await promised()
        const listed = shops.platform.command(staffAt(shops), 'tickets')
        const counting = () => listed.private.find((one) => idsOf(one).includes('s:counted'))
        await until(counting).toBeDefined()
        const message = counting()
        if (message === undefined) throw new Error('the list of tickets has no way to count')
        const given = { item: 'SS10 crystal', lot, amount: String(need - 40) }
        await submitAt(shops, staffAt(shops), { message, id: 's:counted', given })
        await awaitIn(shops, ours.office, /^o:[^:]+:promise-\d+:1$/)
        const office = { user: ours.owner, room: ours.office }
        const morning = shops.platform.command(office, 'morning')
        await until(() => unmarked(toldTo(morning))).toMatch(/SS10 crystal: .40 pieces; order (?:by|now).*144 pieces/)
        const move = found(shops, ours.office, /^o:[^:]+:promise-\d+:1$/)
        const tried = shops.platform.forge({ user: ours.staff, room: ours.office }, move.message, move.id)
        await until(() => tried.acknowledged).not.toBe(null)
        expect(await promised()).toBe(before)
        const asked = shops.platform.press(office, move.message, move.id)
        await until(() => asked.acknowledged).not.toBe(null)
        const sure = asked.private.find((one) => idsOf(one).length > 0)
        if (sure !== undefined) shops.platform.press(office, sure, idsOf(sure)[0] ?? '')
        await until(() => textIn(shops, customerAt(shops).room)).toContain('We have to move your order')
        expect(await promised()).toBeGreaterThan(before ?? 0)
      }),
  )

  it(
    'floor: a scorched garment becomes a remake with steps, stock and plan of its own, bagged before game day',
    {
      timeout: 300_000,
    },
    () =>
      inShop(ground, '2026-11-25T09:00', async (shops) => {
        const ticket = await orders(shops, tees('Scorch Storks'))
        await opensTheRest(shops, ticket)
        await acts(shops.ourDesk, ticket, { act: 'start', by: noor })
        await awaitIn(shops, shops.ours.bench, /^t:[^:]+:spoiled:/)
        const { ourShop: shop } = shops
        const tee = async () => (await shop.stock.needs()).find(({ item }) => /cotton-tee:navy:men:L$/.test(item))?.amount ?? 0
        const wanted = await tee()
        await submit(shops, staffAt(shops), {
          act: 'spoiled',
          given: { line: '2', quantity: '1', reason: 'scorched', whose: 'shop' },
        })
        await until(() => textIn(shops, shops.ours.office)).toContain('scorched')
        expect(await tee()).toBe(wanted + 1)
        const plan = shopPlanFrom((await shop.plan.read()).body)
        const again = plan.slots.filter(({ operation }) => operation.startsWith('remake-'))
        expect(again.length).toBeGreaterThan(2)
        expect(Math.max(...again.map(({ end }) => end))).toBeLessThanOrEqual(plan.sold[0]?.promised ?? 0)
        await awaitIn(shops, shops.ours.bench, /^t:[^:]+:remade:/)
        await submit(shops, staffAt(shops), { act: 'remade', given: {} })
        await until(() => unmarked(benchText(shops))).toContain('Remake bagged: #7 Bea')
        await makeAll(shops.ourDesk, ticket)
        await awaitIn(shops, shops.ours.bench, /^t:[^:]+:checked:/)
        for (const [act, shown] of [
          ['checked', 'Checked by'],
          ['bagged', 'Bagged by'],
        ] as const)
          await press(act, shown).play(shops)
        await until(() => textIn(shops, customerAt(shops).room)).toMatch(/ready/i)
        expect(ground.clock.at).toBeLessThan(plan.sold[0]?.needBy ?? 0)
      }),
  )

  it('floor: of two people who take a ticket at once one gets it, and the other reads who has it', { timeout: 300_000 }, () =>
    inShop(ground, '2026-11-25T09:00', async (shops) => {
      const ticket = await orders(shops, tees('Twice Terns'))
      const { ours, ourShop, platform } = shops
      const { message, id } = found(shops, ours.bench, /^t:[^:]+:take:/)
      const asked = [ours.staff, ours.owner].map((user) => platform.press({ user, room: ours.bench }, message, id))
      await until(() => benchText(shops)).toContain('Taken by')
      await until(() => asked.map(toldTo).join('')).toContain('Taken by')
      const takes = (await ourShop.tickets.findings(ticket)).filter(({ code }) => code === 'take')
      expect(takes).toHaveLength(1)
      expect(benchText(shops).match(/Taken by/g)).toHaveLength(1)
      expect(asked.filter((one) => toldTo(one).includes(`Taken by ${takes[0]?.by}`))).toHaveLength(1)
    }),
  )
})
