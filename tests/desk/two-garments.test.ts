import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import type { PressView } from '../../src/ports/floor-view.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const homeAndAway = (team: string): string =>
  `Home and away mesh jerseys, home navy with white vinyl numbers on the back, away white with navy vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n3 Abel, adult M\n7 Bea, adult L`

const onBench = async (desk: WorkerDesk, id: string, team: string): Promise<string> => {
  await toProof(desk, id, homeAndAway(team))
  await sign(desk, id)
  return ticketOf(desk, id)
}

const viewOf = async (desk: WorkerDesk, ticket: string): Promise<PressView> => {
  const view = await pressView(desk, ticket)
  if (view === null) throw new Error(`there is no ticket ${ticket}`)
  return view
}

describe('home and away on one ticket', () => {
  test('are told apart wherever the press reads or chooses a garment', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
    const ticket = await onBench(desk, 'c-apart', 'Apart Auks')
    expect(await acts(desk, ticket, { act: 'take' })).toBeNull()
    const view = await viewOf(desk, ticket)
    const tiles = view.steps.find(({ title }) => title === 'Cut')?.tiles.map(({ label }) => label) ?? []
    expect(tiles).toHaveLength(4)
    expect(tiles).toContain('#3 Abel M · navy mesh jersey')
    expect(tiles).toContain('#3 Abel M · white mesh jersey')
    const titles = view.steps.map(({ title }) => title.replace(/^\d+ /, ''))
    expect(titles.filter((title, at) => titles.indexOf(title) !== at)).toEqual([])
    expect(titles).toContain('Place, back: back number — white standard vinyl · navy mesh jersey')
    for (const form of view.forms)
      for (const { label, options } of form.fields)
        expect([form.title, label, new Set(options.map((one) => one.label)).size]).toEqual([form.title, label, options.length])
    const gates = view.gates.map(({ text }) => text)
    expect(gates).toContain('count-in (navy mesh jersey): not done')
    expect(gates).toContain('count-in (white mesh jersey): not done')
    expect(await acts(desk, ticket, { act: 'start' })).toBe('First: count-in (white mesh jersey), count-in (navy mesh jersey).')
  })

  test('and a single kind of garment is not named at every step', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
    const words = homeAndAway('Single Swifts').replace(
      /^Home .*? back, away .*? back\./,
      '2 navy mesh jerseys, white vinyl numbers on the back.',
    )
    await toProof(desk, 'c-single', words)
    await sign(desk, 'c-single')
    const { steps, gates } = await viewOf(desk, await ticketOf(desk, 'c-single'))
    expect(steps.find(({ title }) => title === 'Cut')?.tiles[0]?.label).toBe('#3 Abel M')
    expect([...steps.map(({ title }) => title), ...gates.map(({ text }) => text)].join('\n')).not.toContain('jersey')
  })
})
