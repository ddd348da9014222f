import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { holderOf, openActs, openForms, stateAfter, type TicketLife } from '../../src/desk/service/records/ticket-life.ts'
import { type PlainAct, plainActs } from '../../src/domain/ticket/acts.ts'
import { minutes } from '../../src/domain/units/units.ts'

const life = (acts: readonly PlainAct[]): TicketLife => {
  const state = acts.map((act) => stateAfter[act]).findLast((one) => one !== null) ?? 'on-bench'
  return {
    ticket: {
      ticketId: 't1',
      orderId: 'o1',
      revision: 1,
      number: 1,
      state: acts.includes('collected') ? 'done' : 'open',
      replacedBy: null,
      body: null,
      version: 1,
    },
    order: { orderId: 'o1', conversationId: null, state, hold: null, revision: 1, version: 1, handedOverAt: null },
    findings: acts.map((code, at) => ({ code, facts: null, by: 'Noor', at: minutes(at) })),
    ticks: [],
    roster: [],
    steps: [],
    gates: [],
    changedPieces: false,
    openRemakes: 0,
  }
}

describe('the life of a ticket', () => {
  test('goes from taken to collected in one order', () => {
    const path: PlainAct[] = []
    for (const act of ['take', 'start', 'checked', 'bagged', 'collected'] as const) {
      expect(openActs(life(path))).toContain(act)
      path.push(act)
    }
    expect(openActs(life(path))).toEqual([])
  })

  test('begins when it stands on the bench: until then an earlier ticket may still have what is carried over to it', () => {
    const printed = life([])
    const waiting: TicketLife = { ...printed, order: { ...printed.order, state: 'ticketed' } }
    expect([openActs(waiting), openForms(waiting)]).toEqual([[], []])
    expect([openActs(printed), openForms(printed)]).toEqual([['take'], ['ask']])
  })

  test('can be taken by one person at a time, and again after it was handed on', () => {
    expect(openActs(life(['take']))).not.toContain('take')
    expect(holderOf(life(['take']).findings)?.by).toBe('Noor')
    expect(openActs(life(['take', 'hand-on']))).toEqual(['take'])
    expect(holderOf(life(['take', 'hand-on']).findings)).toBeNull()
  })

  test('never skips the check, the bag or the hand-over, whatever is pressed in whatever order', () => {
    const presses = fc.array(fc.constantFrom(...plainActs), { maxLength: 40 })
    fc.assert(
      fc.property(presses, (pressed) => {
        const done: PlainAct[] = []
        for (const act of pressed) if (openActs(life(done)).includes(act)) done.push(act)
        const first = (act: PlainAct) => (done.includes(act) ? done.indexOf(act) : Number.POSITIVE_INFINITY)
        expect(first('start')).toBeLessThanOrEqual(first('checked'))
        expect(first('checked')).toBeLessThanOrEqual(first('bagged'))
        expect(first('bagged')).toBeLessThanOrEqual(first('collected'))
        for (const act of ['checked', 'bagged', 'collected'] as const)
          expect(done.filter((one) => one === act).length).toBeLessThanOrEqual(1)
      }),
    )
  })
})
