import { afterAll, beforeAll, expect, test } from 'vitest'
import { shopChannel } from '../../src/desk/service/desk.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, openGates, rosa, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words =
  '2 fleece hoodies, navy, white vinyl numbers on the back. Team is the Hooded Herons, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. All are 10 years old.\n4 Abel, youth M\n7 Bea, youth L'

test('strings of a child’s hoodie: the owner hears of it, and nothing of it is pressed before the owner has looked', {
  timeout: 120_000,
}, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  await toProof(desk, 'c-strings', words)
  await sign(desk, 'c-strings')
  const ticket = await ticketOf(desk, 'c-strings')
  const told = (await desk.store.shop(desk.shopId).messages.after(shopChannel('owner'), 0)).flatMap(({ body }) =>
    messageFrom(body).blocks.flatMap((block) => ('text' in block ? [block.text] : [])),
  )
  expect(told.join('\n')).toMatch(/^T0001: children wear navy fleece hoodie, or may\. Look whether hood or neck has strings/m)
  await acts(desk, ticket, { act: 'take' })
  await openGates(desk, ticket, ['strings', 'first-piece'])
  const press = () => acts(desk, ticket, { act: 'tick', values: { step: '1', deed: 'done', lines: '1' } })
  expect(await press()).toBe('First: strings of a child’s garment.')
  const garment = (await lifeNow(desk, ticket)).gates.find(({ gate }) => gate.code === 'strings')?.gate.garment ?? ''
  const looks = (result: string, by?: typeof rosa) =>
    acts(desk, ticket, { act: 'strings', values: { garment, result }, ...(by === undefined ? {} : { by }) })
  expect(await looks('no-strings')).toContain('Only the owner')
  expect(await looks('strings', rosa)).toBeNull()
  expect((await lifeNow(desk, ticket)).gates.find(({ gate }) => gate.code === 'strings')).toMatchObject({
    is: 'shut',
    why: 'failed',
  })
  expect(await press()).toBe('First: strings of a child’s garment.')
  expect(await looks('no-strings', rosa)).toBeNull()
  expect(await press()).toBeNull()
})
