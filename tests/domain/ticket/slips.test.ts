import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  type CareCardFacts,
  composeCareCard,
  composePriceSlip,
  moneyText,
  type PriceSlipFacts,
} from '../../../src/domain/ticket/slips.ts'
import {
  composeTemplatePrint,
  type PrintedTemplate,
  type TemplatePrintFacts,
  windowsOf,
} from '../../../src/domain/ticket/template-print.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { ticketWordsEs } from '../../../templates/ticket/es.ts'
import { footballFacts, white } from './facts.builder.ts'
import { blocksOf, textOf } from './ticket-text.ts'

const base = footballFacts(1)
const about = {
  now: base.now,
  language: base.language,
  show: base.show,
  shop: base.shop,
  ticket: base.ticket,
  revision: 1,
  team: base.team,
}

const price: PriceSlipFacts = {
  ...about,
  currency: 'USD',
  minorDigits: 2,
  lines: [
    { text: 'number', quantity: 24, unit: 650, amount: 15_600 },
    { text: 'quantity break', quantity: 1, unit: -780, amount: -780 },
  ],
  total: 14_820,
  money: 'deposit',
  paid: 5_000,
  reference: null,
}

const care: CareCardFacts = {
  ...about,
  colours: [white],
  stones: true,
  restBeforeWashHours: 24,
}

describe('the price slip', () => {
  it('says every line, the total and what is still open', () => {
    const text = textOf(composePriceSlip(price, ticketWordsEn))
    for (const said of ['156.00 USD', '−7.80 USD', '148.20 USD', 'Paid: 50.00 USD. Still open: 98.20 USD.'])
      expect(text).toContain(said)
  })

  it('writes minor units with the digits of the currency (ISO 4217)', () => {
    expect(moneyText(5, { currency: 'USD', minorDigits: 2 })).toBe('0.05 USD')
    expect(moneyText(1500, { currency: 'JPY', minorDigits: 0 })).toBe('1500 JPY')
    expect(moneyText(-1234, { currency: 'KWD', minorDigits: 3 })).toBe('−1.234 KWD')
  })
})

describe('papers for the customer', () => {
  it('are called by the ticket, not by an id inside the shop', () => {
    for (const paper of [composePriceSlip(price, ticketWordsEn), composeCareCard(care, ticketWordsEn)]) {
      expect(`${paper.running} ${textOf(paper)}`).not.toContain(base.order)
      expect(paper.running).toContain(base.ticket)
    }
  })
})

describe('the care card', () => {
  it.each([
    ['English', ticketWordsEn],
    ['Spanish', ticketWordsEs],
  ])('counts the first wash from the true pressing in %s: a line to write it on, no date of the plan', (_language, words) => {
    const card = composeCareCard(care, words)
    expect(blocksOf(card, 'checks').flatMap((block) => block.items.flatMap((item) => item.writes))).toEqual(words.care.firstWash)
    expect(textOf(card)).not.toMatch(/20\d\d|\d:\d\d/)
  })

  it('says when to wash first and how, and speaks of stones only where there are some', () => {
    const text = textOf(composeCareCard(care, ticketWordsEn))
    expect(text).toContain('First wash: not before 24 hours after the last press.')
    expect(text).toContain('No softener')
    expect(text).toContain('small parts')
    expect(textOf(composeCareCard({ ...care, stones: false }, ticketWordsEn))).not.toContain('small parts')
  })
})

const template = (holes: PrintedTemplate['holes'], text = '8'): PrintedTemplate => ({
  text,
  stone: 'SS10 crystal',
  heightMicrometres: 254_000,
  holeMicrometres: 3_300,
  holes,
  paths: [],
})

const printOf = (templates: readonly PrintedTemplate[], paper: 'letter' | 'a4' = 'letter'): TemplatePrintFacts => ({
  now: base.now,
  language: 'en',
  show: { ...base.show, paper },
  of: base.ticket,
  revision: 1,
  templates,
})

const hole = fc.tuple(fc.integer({ min: -200_000, max: 200_000 }), fc.integer({ min: -400_000, max: 100_000 }))

describe('a template printed one to one', () => {
  it('shows every hole whole on at least one sheet, and none that is not there', () => {
    fc.assert(
      fc.property(fc.array(hole, { minLength: 1, maxLength: 200 }), fc.constantFrom('letter', 'a4'), (holes, paper) => {
        const windows = windowsOf(template(holes), paper)
        const shown = new Set<string>()
        blocksOf(composeTemplatePrint(printOf([template(holes)], paper), ticketWordsEn), 'plate').forEach((plate, sheet) => {
          const window = windows[sheet]
          if (window === undefined) throw new Error('a sheet without a window')
          for (const [x, y] of plate.circles.flatMap((circles) => circles.at)) shown.add(`${x + window.left} ${y + window.top}`)
        })
        expect(shown).toEqual(new Set(holes.map(([x, y]) => `${x} ${y}`)))
      }),
    )
  })

  it('has TOP, centre and baseline ticks, and crosses at the same spots on the sheets that it is split over', () => {
    const wide: PrintedTemplate['holes'] = [
      [0, -100_000],
      [300_000, -100_000],
      [0, 0],
      [300_000, 0],
    ]
    const ticket = composeTemplatePrint(printOf([template(wide, '20')]), ticketWordsEn)
    const [first, second, ...more] = blocksOf(ticket, 'plate')
    expect(more).toEqual([])
    const windows = windowsOf(template(wide, '20'), 'letter')
    const spots = [first, second].map((plate, sheet) => {
      const { left = 0, top = 0 } = windows[sheet] ?? {}
      return (plate?.ticks ?? []).map(({ from, to }) => [from[0] + left, from[1] + top, to[0] + left, to[1] + top])
    })
    const shared = (spots[0] ?? []).filter((one) => spots[1]?.some((other) => String(other) === String(one)))
    expect(shared).toHaveLength(4)
    for (const sheet of spots) expect(sheet.filter(([, from, , to]) => from === 0 && to === 0)).toHaveLength(2)
    expect(spots.flat().some(([from, , to]) => from === 150_000 && to === 150_000)).toBe(true)
    expect(textOf(ticket).match(/^TOP$/gm)).toHaveLength(2)
    expect(textOf(ticket)).toContain('so that the crosses meet')
  })

  it('says nothing of joining a template on one sheet', () => {
    const ticket = composeTemplatePrint(printOf([template([[0, 0]])]), ticketWordsEn)
    expect(textOf(ticket)).not.toContain('crosses')
  })

  it('carries a ruler, says to print at 100 % and that it reads right', () => {
    const ticket = composeTemplatePrint(printOf([template([[0, 0]])]), ticketWordsEn)
    const [ruler] = blocksOf(ticket, 'ruler')
    expect(ruler?.lengthMicrometres).toBe(6 * 25_400)
    expect(textOf(ticket)).toContain('Print at 100 %')
    expect(textOf(ticket)).toContain('READS RIGHT')
  })
})
