import { describe, expect, it } from 'vitest'
import type { Machine } from '../../../src/domain/press/machine.ts'
import { otherPresses, pressBoxes } from '../../../src/domain/ticket/heat.ts'
import { ticketWords } from '../../../templates/ticket/words.ts'
import { everythingFacts } from './everything.builder.ts'
import { press1 } from './facts.builder.ts'

const press2: Machine = { ...press1, id: 'press-2', gauge: { light: '1', medium: '4', firm: '7' } }
const slot = (station: string) => ({
  work: 'press 1-1',
  stations: [station, 'person 2'],
  start: '2026-12-01T14:25',
  end: '2026-12-01T14:52',
  setUpMinutes: 12,
})

const notesWith = (second: Machine, station: string, words = ticketWords.en): readonly string[] => {
  const facts = everythingFacts()
  const planned = { ...facts, machines: [press1, second], plan: { ...facts.plan, slots: [slot(station)] } }
  const scene = { facts: planned, words }
  const full = planned.press.find(({ action, machine }) => action === 'press' && machine === 'press-1')
  if (full === undefined) throw new Error('nothing is pressed at press-1')
  const boxes = pressBoxes(scene, planned.press).flatMap(({ rows }) => rows.flatMap(({ notes }) => notes))
  const others = otherPresses(scene, full)
  for (const note of others) expect(boxes).toContain(note)
  return others
}

describe('a press box of a job that the plan gives to another press', () => {
  it('says the pressure as the gauge of that press shows it', () => {
    expect(notesWith(press2, 'press 2')).toEqual([
      'The plan names press-2, too: there 325 °F · 15 s · medium (gauge 4); only what fits its platen, and with a first piece of its own.',
    ])
    expect(notesWith(press2, 'press 2', ticketWords.es)[0]).toContain('media (man. 4)')
  })

  it('says nothing where the plan names the press of the setting alone', () => {
    expect(notesWith(press2, 'press 1')).toEqual([])
  })

  it.each<readonly [string, Partial<Machine>]>([
    ['strays further', { swingTenthsC: 80 }],
    ['has a coarser dial', { step: { unit: 'F', degrees: 10 } }],
    ['is marked in the other unit', { step: { unit: 'C', degrees: 1 } }],
    ['does not get so hot', { maxTenthsC: 1500 }],
    ['was corrected this morning', { correctionTenthsC: 30 }],
    ['cannot be threaded', { threads: false }],
  ])('sends nobody to a press that %s', (_, odd) => {
    expect(notesWith({ ...press2, ...odd }, 'press 2')).toEqual([
      'The plan names press-2, too: this setting was not worked out for it. Press at press-1, or stop and ask.',
    ])
  })
})
