import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import * as z from 'zod'
import { parseOrder } from '../../src/domain/order/parse-order.ts'
import { freshFolder, type Ran, runCompiled } from '../support/command.ts'
import { pdfPages } from '../support/pdf-text.ts'

const folder = freshFolder('talk')
afterAll(folder.remove)

const roster = [
  'Ortega, 4, M',
  'Lindqvist, 7, L',
  "O'Hara, 12, L",
  'Nguyen, 15, M',
  'Abara, 21, L',
  'De la Cruz, 22, XL',
  'Petrov, 30, M',
  'Santos, 33, L',
  'Willoughby, 07, S',
  'Kapoor, 52, 2XL',
  'McBride, 66, M',
  'Núñez, 88, L',
]

const says = [
  'Hi, we need 12 football jerseys, navy mesh, 100% polyester, for the Cedar Flats Herons. White glitter numbers front and back with an SS10 crystal outline in two rows, names above the back number. We need them Friday December 11 at 5 pm, game on Saturday.',
  roster.join('\\n'),
  'Nobody is under 13',
  'My name is Dana Ybarra',
]

const lineSchema = z.looseObject({ text: z.string(), asks: z.string().optional() })
const lastSchema = z.looseObject({ order: z.unknown(), missing: z.array(z.unknown()), understood: z.array(z.unknown()) })

const linesOf = ({ out }: Ran): readonly unknown[] =>
  out
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))

describe('talk, the conversation on standard input', () => {
  let ran: Ran
  let order: unknown

  beforeAll(() => {
    ran = runCompiled('talk', ['--json', '--now', '2026-11-25T09:00'], `${says.join('\n')}\n`)
    order = lastSchema.parse(linesOf(ran).at(-1)).order
  }, 60_000)

  test('understands a team’s usual wishes in four messages and ends with a whole order document', () => {
    expect(ran.err).toBe('')
    expect(ran.status).toBe(0)
    expect(lastSchema.parse(linesOf(ran).at(-1)).missing).toEqual([])
    const parsed = parseOrder(order)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const { team, sport, needBy, gameDay, garments, decorations, roster: rows } = parsed.value
    expect([team, sport, needBy, gameDay]).toEqual(['Cedar Flats Herons', 'football', '2026-12-11T17:00', '2026-12-12'])
    expect(garments.map(({ colour, knit, fibres }) => [colour, knit, fibres])).toEqual([
      ['navy', 'mesh', [{ fibre: 'polyester', percent: 100 }]],
    ])
    const numbers = decorations.filter(({ content }) => content.kind === 'number')
    expect(numbers.map(({ place }) => place).sort()).toEqual(['back-number', 'front-number'])
    for (const { layers } of numbers) {
      expect(layers).toEqual([
        { kind: 'vinyl', class: 'glitter', colour: 'white', shape: 'face' },
        { kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'outline', rows: 2, contours: 'both' } },
      ])
    }
    expect(rows.map(({ name, number, size }) => `${name}, ${number}, ${size}`)).toEqual(roster)
  })

  test('asks only what nobody said, one question at a time, and shows a price and a promise', () => {
    const replies = linesOf(ran)
      .slice(0, -1)
      .map((line) => lineSchema.parse(line))
    const asked = replies.flatMap(({ asks }) => asks ?? [])
    expect(asked.length).toBeLessThanOrEqual(3)
    expect(asked).not.toContain('ask-team')
    expect(asked).not.toContain('ask-day')
    expect(replies.at(-1)?.text).toMatch(/\$\d+\.\d\d/)
    expect(replies.at(-1)?.text).toContain('Friday, December 11')
  })

  test('gives a document that make turns into a ticket with every roster line', async () => {
    const file = join(folder.path, 'order.json')
    writeFileSync(file, JSON.stringify(order))
    const made = runCompiled('make', [file, '--out', join(folder.path, 'job'), '--now', '2026-11-25T09:00'])
    expect(made.status).toBe(0)
    const text = (await pdfPages(readFileSync(join(folder.path, 'job', 'ticket.pdf')))).join('\n')
    for (const line of roster) {
      const [name = '', number = ''] = line.split(', ')
      expect(text).toContain(name)
      expect(text).toContain(number)
    }
    expect(text).toContain('Bleed test')
  }, 60_000)

  test('ends with a ticket in a folder when the shown revision is signed, and not when a change comes along', () => {
    const proof = linesOf(ran)
      .map((line) => lineSchema.parse({ text: '', ...Object(line) }))
      .findLast(({ text }) => text.includes('$'))
    const revision = /[Rr]evision (\d+)/.exec(proof?.text ?? '')?.[1]
    const sign = (words: string, out: string) =>
      runCompiled('talk', ['--now', '2026-11-25T09:00', '--out', join(folder.path, out)], `${[...says, words].join('\n')}\n`)
    expect(sign(`I approve revision ${revision}`, 'signed').status).toBe(0)
    expect(existsSync(join(folder.path, 'signed', 'ticket.pdf'))).toBe(true)
    sign(`I approve revision ${revision} but make Petrov a large`, 'changed')
    expect(existsSync(join(folder.path, 'changed'))).toBe(false)
  }, 90_000)
})
