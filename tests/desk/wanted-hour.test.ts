import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { emptyShopFloor } from '../../src/desk/floor.ts'
import { quoteOf } from '../../src/desk/quote.ts'
import { conversationChannel, shopChannel } from '../../src/desk/service/desk.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { type Workshop, workOut } from '../../src/desk/work-out.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import { showFor } from '../../src/domain/shop/show.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { sayProblem } from '../../templates/replies/say.ts'
import { localMinute, openTestDesk, says, work } from '../support/desk.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { order, row } from '../support/orders.ts'

let workshop: Workshop
let opened: TestStore
beforeAll(async () => {
  workshop = unwrap(await openWorkshop(projectRoot(), undefined))
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const always = { from: '2020-01-01T00:00', to: '2040-01-01T00:00' }
const shutDown = (shop: Shop): Shop => ({ ...shop, hours: { ...shop.hours, closed: [{ ...always, why: 'moving house' }] } })
const withoutPress1 = (shop: Shop): Shop => ({
  ...shop,
  stations: shop.stations.map((one) => (one.id === 'press-1' ? { ...one, closed: [{ ...always, why: 'repair' }] } : one)),
})

const quoted = (needBy: string, change: (shop: Shop) => Shop = (shop) => shop) => {
  const here = { ...workshop, shop: change(workshop.shop) }
  const asked = { document: order({ needBy }), now: '2026-11-25T09:00', job: 'o-1', floor: emptyShopFloor }
  return quoteOf(workOut(asked, here), here.shop, null)
}

const about = (needBy: string, change?: (shop: Shop) => Shop) =>
  quoted(needBy, change).problems.filter(({ at, code }) => at === '/needBy' || code === 'cannot-plan-now')
const said = (needBy: string, change?: (shop: Shop) => Shop): readonly string[] =>
  (['en', 'es'] as const).flatMap((language) =>
    about(needBy, change).map((problem) => sayProblem(problem, language, showFor(workshop.shop, language))),
  )

describe('the hour an order is wanted', () => {
  test('is promised without a word when the shop is open then', () => {
    expect([quoted('2026-12-22T10:00').promise?.promised, about('2026-12-22T10:00')]).toEqual(['2026-12-22T10:00', []])
  })

  test('is refused when it has passed, with the way out', () => {
    expect(about('2026-11-25T08:59')).toMatchObject([{ code: 'need-by-past', severity: 'stop' }])
    expect(said('2026-11-25T08:59')).toEqual([
      'The hour you need it has passed: say a day and hour to come.',
      'La hora en que lo necesita ya pasó: diga un día y una hora que vengan.',
    ])
  })

  test('on a holiday is brought forward to the last open hour, with the holiday’s name', () => {
    expect(quoted('2026-12-25T10:00').promise?.promised).toBe('2026-12-24T12:00')
    expect(said('2026-12-25T10:00')).toEqual([
      'We are closed on Friday, December 25, 10 am (Christmas Day); the last hour to collect before that is Thursday, December 24, 12 pm.',
      'El viernes 25 de diciembre, 10 a. m. está cerrado (Christmas Day); antes de eso, el jueves 24 de diciembre, 12 p. m. es la última hora para recoger.',
    ])
  })

  test('costs no hurry when the order cannot be there by then', () => {
    const hurried = (needBy: string, change?: (shop: Shop) => Shop) => {
      const { promise, price } = quoted(needBy, change)
      const codes = price?.parts.map(({ code }) => code) ?? []
      return { late: (promise?.promised ?? '') > needBy, codes: codes.filter((code) => code === 'rush') }
    }
    const inTenDays = (shop: Shop): Shop => ({ ...shop, prices: { ...shop.prices, rush: { withinDays: 10, percent: 25 } } })
    const away = { from: '2026-11-25T10:00', to: '2026-12-14T00:00', why: 'a fair' }
    const awayTillLater = (shop: Shop): Shop => ({ ...inTenDays(shop), hours: { ...shop.hours, closed: [away] } })
    expect(hurried('2026-12-04T16:00', inTenDays)).toEqual({ late: false, codes: ['rush'] })
    expect(hurried('2026-12-04T16:00', awayTillLater)).toEqual({ late: true, codes: [] })
  })

  test('in the hour that spring leaves out is read as the hour after, and says so', () => {
    const { hours } = workshop.shop
    const open = { date: '2027-03-14', from: '00:00', to: '12:00', why: 'the tournament' }
    const atNight = (shop: Shop): Shop => ({ ...shop, hours: { ...hours, special: [open] } })
    expect(about('2027-03-14T02:30', atNight)).toMatchObject([
      { code: 'time-in-lost-hour', severity: 'caution', facts: { readAs: '2027-03-14T03:30' } },
    ])
    expect(quoted('2027-03-14T02:30', atNight).promise?.promised).toBe('2027-03-14T03:30')
  })
})

describe('an order of which only a part can be ready at the wanted hour', () => {
  const many = (needBy: string, players: number) => {
    const roster = Array.from({ length: players }, (_, at) => row(at + 1, { name: `PLAYER ${at + 1}` }))
    const asked = { document: order({ needBy, roster }), now: '2026-11-25T09:00', job: 'o-1', floor: emptyShopFloor }
    return workOut(asked, workshop).problems.filter(({ code }) => code === 'late-for-need-by')
  }

  test('offers to collect in two parts, and says how many', () => {
    const [late] = many('2026-12-02T09:00', 60)
    expect(late?.facts).toMatchObject({ of: 60 })
    const ready = Number(late?.facts['ready'])
    expect(ready).toBeGreaterThan(0)
    expect(ready).toBeLessThan(60)
    if (late === undefined) throw new Error('nothing is said')
    const show = showFor(workshop.shop, 'en')
    expect(sayProblem(late, 'en', show)).toContain(
      `About ${ready} of the 60 garments could be ready in time: if you want to collect in two parts`,
    )
    expect(sayProblem(late, 'es', showFor(workshop.shop, 'es'))).toContain(
      `Unas ${ready} de las 60 prendas podrían estar a tiempo`,
    )
    expect(Number(many('2026-12-02T10:30', 60)[0]?.facts['ready'])).toBeGreaterThan(ready)
  })

  test('says nothing of two parts where no garment would be ready', () => {
    const [late] = many('2026-11-25T12:00', 60)
    expect(late?.facts).toMatchObject({ ready: 0, of: 60 })
    if (late === undefined) throw new Error('nothing is said')
    expect(sayProblem(late, 'en', showFor(workshop.shop, 'en'))).not.toContain('two parts')
  })
})

describe('a shop whose stations cannot do the work', () => {
  test('says so of an order that nothing open can make, and what of it only to itself', () => {
    expect(about('2026-12-22T10:00', shutDown)).toMatchObject([{ code: 'cannot-plan-now', severity: 'stop' }])
  })

  test('goes on with one press while the other is out of service', () => {
    expect(quoted('2026-12-22T10:00', withoutPress1).promise?.promised).toBe('2026-12-22T10:00')
  })

  test('has its owner told, once, while the customer is offered a person', async () => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-30T08:00') }, shutDown)
    const shop = desk.store.shop(desk.shopId)
    unwrap(await shop.conversations.add('c1', startConversation({ id: 'c1', person: { id: 'c1', name: null }, language: 'en' })))
    const words =
      '3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer. We need them Wednesday December 16 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'
    await says(desk, 'c1', words)
    await work(desk, 2)
    const told = async (channel: string) => (await shop.messages.after(channel, 0)).map(({ body }) => messageFrom(body))
    const owner = (await told(shopChannel('owner'))).filter(({ blocks }) =>
      JSON.stringify(blocks).includes('could not be planned'),
    )
    expect(owner).toHaveLength(1)
    expect(JSON.stringify(owner)).toContain('has no open hour in all the time that is planned')
    const answers = await told(conversationChannel('c1'))
    expect(answers.some(({ actions }) => actions.some(({ id }) => id.startsWith('c:person')))).toBe(true)
  })
})

describe('a promise in the conversation', () => {
  test.each([
    [
      'en',
      '3 practice tees, navy, 100% cotton, white vinyl numbers on the back. We bring our own tees. Team is the Lantern Hill Lynx, sport is soccer. We need them Wednesday December 16 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S',
      /Ready Wednesday, December 16, 5 pm if you sign off by .* and your garments are here by .*\. Changes to the list are free until /,
    ],
    [
      'es',
      '3 camisetas de practica, azul marino, 100% algodon, numeros de vinil blanco atras. Nosotros traemos las camisetas. El equipo es Lantern Hill Lynx, soccer. Las necesitamos el miércoles 16 de diciembre a las 5 de la tarde. Me llamo Imke Dahl. Todos tienen 13 o más.\n4 Abel, adulto M\n7 Bea, adulto G\n9 Cid, adulto S',
      /Listo el miércoles 16 de diciembre, 5 p\. m\. si usted aprueba .* y sus prendas están aquí .* Los cambios en la lista no cuestan hasta /,
    ],
  ] as const)('says in %s the hour, what it hangs on, and until when the list may change', async (language, words, told) => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-30T08:00') })
    const shop = desk.store.shop(desk.shopId)
    unwrap(await shop.conversations.add('c1', startConversation({ id: 'c1', person: { id: 'c1', name: null }, language })))
    await says(desk, 'c1', words)
    await work(desk)
    const bodies = await shop.messages.after(conversationChannel('c1'), 0)
    const texts = bodies.flatMap(({ body }) =>
      messageFrom(body).blocks.flatMap((block) => (block.kind === 'text' ? [block.text] : [])),
    )
    expect(texts).toContainEqual(expect.stringMatching(told))
  })
})
