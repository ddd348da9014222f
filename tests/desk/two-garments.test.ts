import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import type { PressView } from '../../src/ports/floor-view.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, pim, sign, ticketOf, toProof } from '../support/floor.ts'

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
    expect(await acts(desk, ticket, { act: 'start' })).toBe('First: count-in (navy mesh jersey), count-in (white mesh jersey).')
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

  test('close and open each for itself: what one waits for keeps nothing of the other back', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
    const ticket = await onBench(desk, 'c-gate-each', 'Each Egrets')
    expect(await acts(desk, ticket, { act: 'take' })).toBeNull()
    const { roster, steps, gates } = await lifeNow(desk, ticket)
    const [navy = '', white = ''] = [...new Set(gates.map(({ gate }) => gate.garment ?? ''))]
    const linesOf = (garment: string) => roster.filter((row) => row.garment === garment).map(({ line }) => line)
    const tick = (step: number, line: number | undefined) =>
      acts(desk, ticket, { act: 'tick', values: { step: String(step), deed: 'done', lines: String(line) } })
    const [cut, weed] = steps.map(({ no }) => no)
    const [one, other] = linesOf(white)
    const [far] = linesOf(navy)
    await acts(desk, ticket, { act: 'count-in', values: { garment: white, missing: '0' } })
    expect(await tick(cut ?? 0, far)).toBe('First: count-in (navy mesh jersey).')
    for (const line of [one, other]) for (const step of [cut ?? 0, weed ?? 0]) expect(await tick(step, line)).toBeNull()
    await acts(desk, ticket, { act: 'test-press', values: { garment: white, result: 'held' } })
    const made = (garment: string) => acts(desk, ticket, { act: 'first-piece', values: { garment } })
    expect(await made(white)).toMatch(/^First: \d+ Pre-press, back · white mesh jersey; /)
    const pressing = steps.filter(({ press, lines }) => press !== null && lines.includes(one ?? 0)).map(({ no }) => no)
    for (const step of pressing) expect(await tick(step, one)).toBeNull()
    expect(await tick(pressing[0] ?? 0, other)).toContain(
      'First: first piece signed (white mesh jersey). white mesh jersey: One garment is made',
    )
    expect(await made(navy)).toMatch(/^First: Cut; Weed; \d+ Pre-press, back · navy mesh jersey; …/)
    const offered = (await viewOf(desk, ticket)).forms.find(({ title }) => title === 'First piece')?.fields[0]?.options
    expect(offered?.map(({ label }) => label)).toEqual(['white mesh jersey'])
    expect(await made(white)).toBeNull()
    await acts(desk, ticket, { act: 'second-look', by: pim, values: { garment: white, result: 'right' } })
    for (const step of pressing) expect(await tick(step, other)).toBeNull()
    const gateOf = (garment: string) => gates.filter(({ gate, is }) => gate.garment === garment && is !== 'open').length
    expect(gateOf(navy)).toBeGreaterThan(2)
  })
})
