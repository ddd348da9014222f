import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { shopPlanFrom } from '../../src/desk/service/records/records.ts'
import { shoppingNow } from '../../src/desk/service/stock/shopping-now.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, makeAll, noor, openGates, pim } from '../support/floor.ts'
import { type FloorCounter, openFloorCounter } from '../support/floor-counter.ts'
import { needs } from '../support/needs.ts'
import { browserNames, type OpenBrowser, openBrowser } from '../support/page-browser.ts'

const patience = { timeout: 90_000 }
const phone = { width: 390, height: 844 }

const tees = (team: string, make = '100% cotton, white vinyl numbers on the back'): string =>
  `3 practice tees, navy, ${make}. Team is the ${team}, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S`

const seen = (page: Page, text: RegExp): Promise<void> => page.getByText(text).last().waitFor(patience)
const presses = (page: Page, name: RegExp): Promise<void> => page.getByRole('button', { name }).last().click(patience)

/** A coach with a phone, from the first words to the signed order. */
const orders = async (counter: FloorCounter, words: string): Promise<Page> => {
  const coach = await counter.person(phone)
  await coach.goto(counter.address)
  await coach.getByLabel('Tell us what your team needs').fill(words)
  await presses(coach, /Lay it on the counter/)
  await coach.waitForURL(/\/c\//)
  const sign = coach.getByRole('button', { name: /approve revision 1/i })
  const ages = coach.getByRole('button', { name: /13 or older/ })
  await sign.or(ages).last().waitFor(patience)
  if (await ages.isVisible()) await ages.click()
  await signs(coach, 1)
  return coach
}

const signs = async (coach: Page, revision: number): Promise<void> => {
  await presses(coach, new RegExp(`approve revision ${revision}`, 'i'))
  await seen(coach, new RegExp(`Revision ${revision} is signed`))
}

const ticketNow = async ({ desk }: FloorCounter, revision = 1): Promise<string> => {
  const shop = desk.store.shop(desk.shopId)
  const posted = async (): Promise<string> => {
    const [order] = await shop.orders.list(['on-bench'])
    const tickets = order === undefined ? [] : await shop.tickets.ofOrder(order.orderId)
    return tickets.find((one) => one.revision === revision && one.state === 'open')?.ticketId ?? ''
  }
  await expect.poll(posted, patience).not.toBe('')
  return posted()
}

const slipOf = (page: Page, text: RegExp) => page.locator('.slip', { hasText: text }).last()

/** Opens one of the forms of a page, fills it in and sends it; it is folded again or gone when it was written down. */
const fills = async (page: Page, act: string, given: (form: ReturnType<Page['locator']>) => Promise<unknown>): Promise<void> => {
  const form = page.locator(`#form-${act}`)
  if ((await form.getAttribute('open')) === null) await form.locator('summary').click(patience)
  await given(form)
  const sent = page.waitForResponse((answer) => answer.request().method() === 'POST')
  await form.getByRole('button', { name: 'Write it down' }).click()
  expect((await sent).status()).toBe(200)
  await expect.poll(() => page.locator(`#form-${act}[open]`).count(), patience).toBe(0)
}

const chooses = (form: ReturnType<Page['locator']>, label: RegExp, option: RegExp) =>
  form
    .getByLabel(label)
    .locator('option', { hasText: option })
    .first()
    .getAttribute('value')
    .then((value) => form.getByLabel(label).selectOption(value ?? ''))

describe.runIf(needs(...browserNames))('the floor at the counter', () => {
  let opened: TestStore
  let browser: OpenBrowser
  let counter: FloorCounter | null = null
  beforeAll(async () => {
    ;[opened, browser] = await Promise.all([openTestStore(), openBrowser()])
  }, 180_000)
  afterAll(async () => {
    await counter?.close()
    await browser.close()
    await opened.close()
  }, 180_000)
  const open = async (at: string, change?: Parameters<typeof openFloorCounter>[0]['change']): Promise<FloorCounter> => {
    await counter?.close()
    counter = await openFloorCounter({ opened, browser, at, ...(change === undefined ? {} : { change }) })
    return counter
  }

  it('floor: beaded drops close the ticket, the customer is shown vinyl in stock, signs, and a new ticket lies on the bench', {
    timeout: 300_000,
  }, async () => {
    const here = await open('2026-11-25T09:00')
    const words = tees('Beaded Bears', '100% nylon woven, white vinyl numbers on the back').replace(
      'tees',
      'tees that we bring ourselves',
    )
    const [coach, staff] = await Promise.all([orders(here, words), here.staff('Noor')])
    const ticket = await ticketNow(here)
    await acts(here.desk, ticket, { act: 'take', by: noor })
    await openGates(here.desk, ticket, ['water-drops', 'test-press'])
    const before = await coach.locator('.slip img').count()
    await staff.goto(`${here.address}/bench`)
    await slipOf(staff, /Beaded Bears/)
      .getByRole('link', { name: 'Water drops' })
      .click()
    await staff.waitForURL(/\/press\/.*#form-water-drops/)
    await fills(staff, 'water-drops', async (form) => {
      await chooses(form, /Garment/, /^(?!Choose)/)
      await form.getByLabel(/five drops/).fill('60 60 60 60 60')
    })
    await seen(coach, /Low-temperature vinyl \(white\)/)
    await expect.poll(() => coach.locator('.slip img').count(), patience).toBeGreaterThan(before)
    await seen(coach, /\$\d/)
    await signs(coach, 2)
    await ticketNow(here, 2)
    await staff.goto(`${here.address}/bench`)
    await seen(staff, /T0002 r2/)
    await seen(staff, /replaced by revision 2/i)
    expect(
      await slipOf(staff, /T0001 r1/)
        .getByRole('button')
        .count(),
    ).toBe(0)
    expect(here.bugs).toEqual([])
  })

  it('floor: stones counted short by 40 stand on the shopping list, and the promise moves when the owner has agreed', {
    timeout: 300_000,
  }, async () => {
    const here = await open('2026-12-07T09:00', (shop) => ({
      ...shop,
      stock: { ...shop.stock, supply: { ...shop.stock.supply, stoneDays: 6 } },
    }))
    const words = tees('Short Shrikes', '100% cotton, white vinyl numbers with an SS10 crystal outline in two rows on the back')
    const [coach, staff, owner] = await Promise.all([orders(here, words), here.staff('Noor'), here.owner()])
    await ticketNow(here)
    const shop = here.desk.store.shop(here.desk.shopId)
    const promised = () => shop.plan.read().then(({ body }) => shopPlanFrom(body).sold[0]?.promised)
    const before = await promised()
    const need = (await shop.stock.needs()).find(({ item }) => item === 'stone-ss10-crystal')?.amount ?? 0
    const lot = (await shop.stock.lots()).find(({ item }) => item === 'stone-ss10-crystal')?.lot ?? ''
    await staff.goto(`${here.address}/shelf`)
    await fills(staff, 'counted', async (form) => {
      await chooses(form, /What/, /SS10 crystal/)
      await form.getByLabel('Lot').fill(lot)
      await form.getByLabel(/How much/).fill(String(need - 40))
    })
    await seen(staff, /SS10 crystal: 144 pieces \(40 pieces\)/)
    expect((await shoppingNow(here.desk)).find(({ item }) => item === 'stone-ss10-crystal')?.missing).toBe(40)
    await owner.locator('summary', { hasText: 'Move the promise to' }).last().click(patience)
    expect(await promised()).toBe(before)
    await presses(owner, /Yes: Move the promise to/)
    await seen(coach, /We have to move your order/)
    expect(await promised()).toBeGreaterThan(before ?? 0)
    expect(here.bugs).toEqual([])
  })

  it('floor: a scorched garment becomes a remake with steps, stock and plan of its own, bagged before game day', {
    timeout: 300_000,
  }, async () => {
    const here = await open('2026-11-25T09:00')
    const [coach, staff, owner] = await Promise.all([orders(here, tees('Scorch Storks')), here.staff('Noor'), here.owner()])
    const ticket = await ticketNow(here)
    await acts(here.desk, ticket, { act: 'take', by: noor })
    await openGates(here.desk, ticket)
    await acts(here.desk, ticket, { act: 'start', by: noor })
    const shop = here.desk.store.shop(here.desk.shopId)
    const tee = async () => (await shop.stock.needs()).find(({ item }) => /cotton-tee:navy:men:L$/.test(item))?.amount ?? 0
    const wanted = await tee()
    await staff.goto(`${here.address}/press/${ticket}`)
    await fills(staff, 'spoiled', async (form) => {
      await chooses(form, /Player/, /#7 Bea/)
      await form.getByLabel('How many').fill('1')
      await chooses(form, /What happened/, /scorched/)
      await chooses(form, /Whose fault/, /ours/)
      await form.getByLabel('Photo').setInputFiles({ name: 'scorch.png', mimeType: 'image/png', buffer: onePixel })
    })
    await seen(owner, /#7 Bea.*scorched/)
    expect(await tee()).toBe(wanted + 1)
    const [remake] = await shop.floor.remakesOf((await shop.tickets.read(ticket))?.orderId ?? '')
    expect(remake).toMatchObject({ line: 2, quantity: 1, doneAt: null })
    expect(remake?.photo).not.toBeNull()
    const plan = shopPlanFrom((await shop.plan.read()).body)
    const again = plan.slots.filter(({ operation }) => operation.startsWith('remake-'))
    expect(again.length).toBeGreaterThan(2)
    expect(Math.max(...again.map(({ end }) => end))).toBeLessThanOrEqual(plan.sold[0]?.promised ?? 0)
    await staff.goto(`${here.address}/press/${ticket}`)
    await fills(staff, 'remade', (form) => chooses(form, /Which remake/, /#7 Bea.*scorched/))
    await makeAll(here.desk, ticket)
    for (const act of [/^Checked$/, /^Bagged$/]) {
      await staff.goto(`${here.address}/press/${ticket}`)
      await presses(staff, act)
      await expect.poll(() => staff.getByRole('button', { name: act }).count(), patience).toBe(0)
    }
    await seen(coach, /ready/i)
    const bagged = await shop.events.between(here.clock.at, minutes(here.clock.at + 1))
    expect(bagged.map(({ code }) => code)).toContain('bagged')
    expect(here.clock.at).toBeLessThan(plan.sold[0]?.needBy ?? 0)
    expect(here.bugs).toEqual([])
  })

  it('floor: whoever presses Done as the page stands makes one garment first, and runs the others once it is signed', {
    timeout: 300_000,
  }, async () => {
    const here = await open('2026-11-25T09:00')
    const [, staff, second] = await Promise.all([orders(here, tees('Follow Finches')), here.staff('Noor'), here.staff('Pim')])
    const ticket = await ticketNow(here)
    await acts(here.desk, ticket, { act: 'take', by: noor })
    await openGates(here.desk, ticket, ['first-piece'])
    await staff.goto(`${here.address}/press/${ticket}`)
    const now = staff.locator('.step.now')
    const chosen = now.locator('.tile input:checked')
    const isMade = () => staff.locator('#form-first-piece').count()
    const ahead: number[] = []
    while ((await isMade()) === 0 && ahead.length < 20) {
      const title = await now.getByRole('heading').textContent()
      ahead.push(await chosen.count())
      await now.getByRole('button', { name: 'Done' }).click(patience)
      const led = async () => (await isMade()) > 0 || (await now.getByRole('heading').textContent()) !== title
      await expect.poll(led, patience).toBe(true)
    }
    expect(ahead.slice(0, 3)).toEqual([3, 3, 1])
    expect(new Set(ahead.slice(2))).toEqual(new Set([1]))
    await now.getByText(/One garment is made: write it down under “First piece”/).waitFor(patience)
    await fills(staff, 'first-piece', (form) => chooses(form, /Garment/, /^(?!Choose)/))
    await now.getByText(/a second person looks at it and signs it under “Second signature”/).waitFor(patience)
    await second.goto(`${here.address}/press/${ticket}`)
    await fills(second, 'second-look', async (form) => {
      await chooses(form, /Garment/, /^(?!Choose)/)
      await chooses(form, /What you see/, /^right/)
    })
    await expect.poll(() => chosen.count(), patience).toBe(2)
    await now.getByRole('button', { name: 'Done' }).click(patience)
    await expect.poll(() => now.getByRole('heading').textContent(), patience).not.toMatch(/ 1 Pre-press/)
    expect(here.bugs).toEqual([])
  })

  it('floor: of two people who take a ticket at once one gets it, and the other reads who has it', {
    timeout: 300_000,
  }, async () => {
    const here = await open('2026-11-25T09:00')
    const [, first, second] = await Promise.all([orders(here, tees('Twice Terns')), here.staff('Noor'), here.staff('Pim')])
    const ticket = await ticketNow(here)
    for (const page of [first, second]) {
      // Both see it free: neither page hears of the other's press before its own.
      await page.route('**/live*', (route) => route.abort())
      await page.goto(`${here.address}/press/${ticket}`)
    }
    await Promise.all([first, second].map((page) => page.getByRole('button', { name: 'Take', exact: true }).first().click()))
    const shop = here.desk.store.shop(here.desk.shopId)
    const takes = async () => (await shop.tickets.findings(ticket)).filter(({ code }) => code === 'take')
    await expect.poll(async () => (await takes()).length, patience).toBe(1)
    const holder = (await takes())[0]?.by ?? ''
    const loser = holder === noor.name ? second : first
    await loser
      .getByRole('status')
      .getByText(new RegExp(`Taken by ${holder}`))
      .waitFor(patience)
    expect([noor.name, pim.name]).toContain(holder)
    expect(await takes()).toHaveLength(1)
    expect(here.bugs).toEqual([])
  })
})

const onePixel = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==',
  'base64',
)
