import { beforeAll, describe, expect, it } from 'vitest'
import { emptyShopFloor } from '../../../src/desk/floor.ts'
import { type Made, makeJob } from '../../../src/desk/make-job.ts'
import { namedMoment } from '../../../src/domain/ticket/moment.ts'
import { openPress } from '../../../src/wiring/open-press.ts'
import { openWorkshop } from '../../../src/wiring/open-workshop.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { decoration, glitterWithStones, order, row } from '../../support/orders.ts'
import { flat, type ReadPdf, readPdf } from './read-pdf.ts'

const root = new URL('../../..', import.meta.url).pathname

const document = order({
  decorations: [
    decoration(),
    decoration({ id: 'front-number', place: 'front-number' }),
    decoration({ id: 'name', place: 'name', content: { kind: 'name' }, layers: glitterWithStones.slice(0, 1) }),
  ],
  roster: Array.from({ length: 12 }, (_row, at) =>
    row(at + 1, {
      size: (['S', 'M', 'L'] as const)[at % 3] ?? 'M',
      ...(at === 0 ? { name: 'WOJCIECHOWSKA-LINDQVIST' } : {}),
    }),
  ),
})

let made: Made
let read: ReadPdf
let text: string
let lots: ReadonlyMap<string, string>
beforeAll(async () => {
  const workshop = await openWorkshop(root, undefined)
  if (!workshop.ok) throw new Error(JSON.stringify(workshop.problems))
  lots = new Map(workshop.value.shop.stones.map(({ id, lot }) => [id, lot]))
  const identity = { ticket: 'T-1', order: 'O-1', revision: 1, replaces: null, link: null, changes: [], throwAway: [] }
  made = await makeJob(
    { document, now: '2026-11-02T09:00', job: 'T-1', floor: emptyShopFloor, identity },
    workshop.value,
    await openPress(root),
  )
  const ticket = made.files.find((file) => file.name === 'ticket.pdf')
  if (ticket === undefined) throw new Error('no ticket')
  read = await readPdf(ticket.bytes)
  text = joined(read)
}, 120_000)

const joined = (pdf: ReadPdf): string => pdf.text.replaceAll(/\s+/g, ' ')

const when = (minute: string): readonly string[] => {
  const moment = namedMoment(minute, 'en')
  return [ticketWordsEn.date(moment, 'month-first'), ticketWordsEn.shortDate(moment, 'month-first')]
}

const fahrenheit = (tenths: number): string => `${Math.round((tenths * 9) / 50 + 32)} °F`

describe('the ticket of a whole job against its result.json', () => {
  it('holds every garment with its sizes', () => {
    for (const garment of made.result.garments) {
      expect(text).toContain(garment.name)
      for (const size of garment.sizes) expect(text).toMatch(new RegExp(`adult ${size.size} × ${size.quantity}(\\D|$)`))
    }
  })

  it('tells in the roster which name is set lower than the others', () => {
    expect(text).toMatch(/line 1 #\S+ WOJCIECHOWSKA-LINDQVIST adult S: name [\d.]+ in high; name set narrower, \d+ %/)
  })

  it('holds stones per size and colour in pieces, spare and gross, and the lot of their material, in the words of people', () => {
    expect(made.result.stones.length).toBeGreaterThan(0)
    for (const stone of made.result.stones) {
      expect(text).toContain(`${stone.size} ${stone.colour}`)
      expect(text).toContain(`${stone.pieces} ${stone.spare} ${stone.gross} `)
      expect(text).toContain(`lot ${lots.get(stone.material)}`)
      expect(text).not.toContain(stone.material)
    }
  })

  it('holds every vinyl by colour and kind, how it reads, and its material', () => {
    for (const vinyl of made.result.vinyl) {
      expect(text).toContain(`${vinyl.colour} ${ticketWordsEn.pick.classes[vinyl.class]}`)
      expect(text).toContain(vinyl.material)
      expect(text).toContain(vinyl.reads === 'backwards' ? 'READS BACKWARDS' : 'READS RIGHT')
    }
  })

  it('holds every template with its holes and how often it is brushed', () => {
    for (const template of made.result.templates) expect(text).toContain(`${template.holes} ${template.brushed} ×`)
  })

  it('holds the press steps in their order with temperature, seconds and pressure', () => {
    const sequence = text.slice(text.indexOf('Press sequence'))
    let from = 0
    for (const step of made.result.press) {
      const at = sequence.indexOf(`${ticketWordsEn.press.actions[step.action]}: `, from)
      expect(at, `step ${step.no}`).toBeGreaterThanOrEqual(from)
      const here = sequence.slice(Math.max(0, at - 60), at + 700)
      if (step.tenthsC !== null && step.seconds !== null) expect(here).toContain(`${fahrenheit(step.tenthsC)} ${step.seconds} s`)
      if (step.pressure !== null) expect(here).toContain(ticketWordsEn.press.pressures[step.pressure.word])
      from = at + 1
    }
  })

  it('holds every caution of every step, and every gate', () => {
    for (const step of made.result.press) {
      for (const code of step.cautions) expect(text).toContain(ticketWordsEn.steps.cautions[code])
      for (const code of step.why) expect(text).toContain(ticketWordsEn.steps.why[code])
    }
    expect(made.result.gates.length).toBeGreaterThan(0)
    for (const gate of made.result.gates) expect(text).toContain(ticketWordsEn.gates[gate.code].title)
  })

  it('holds the plan: what is promised and every piece of work with its day', () => {
    const { plan } = made.result
    if (plan === null) throw new Error('no plan')
    expect(text).toContain(when(plan.promised)[0])
    for (const slot of plan.slots) for (const station of slot.stations) expect(text).toContain(station.replaceAll('-', ' '))
    for (const slot of plan.slots) expect(text).toContain(when(slot.start)[1])
  })

  it('holds every problem in its own words', () => {
    expect(made.result.problems.length).toBeGreaterThan(0)
    for (const problem of made.result.problems) expect(text).toContain(problem.text.replaceAll(/\s+/g, ' '))
  })

  it('holds no figure of its price', () => {
    const { price } = made.result
    if (price === null) throw new Error('no price')
    expect(text).not.toContain((price.total / 100).toFixed(2))
    expect(text).not.toContain(price.currency)
  })

  it('says one and the same setting everywhere', () => {
    const set = new Set(made.result.press.flatMap((step) => (step.tenthsC === null ? [] : [fahrenheit(step.tenthsC)])))
    const boxed = read.pages.flatMap((page) =>
      page.found.filter((one) => one.size > 20 && one.text.includes('°')).map((one) => one.text.trim()),
    )
    expect(boxed.length).toBeGreaterThan(2)
    for (const figure of boxed) expect([...set]).toContain(figure)
  })

  it('has a figure with words for the drawings', () => {
    const alternatives = flat(read.tags).flatMap((one) => (one.alt === undefined ? [] : [one.alt]))
    expect(alternatives.some((alternative) => alternative.includes('below the collar'))).toBe(true)
  })
})
