import { describe, expect, it } from 'vitest'
import { quoteFrom, ticketFrom } from '../../src/desk/service/records/records.ts'
import { composeTicket } from '../../src/domain/ticket/compose.ts'
import { ticketWordsEn } from '../../templates/ticket/en.ts'
import { footballFacts, templatesOf } from '../domain/ticket/facts.builder.ts'
import { textOf } from '../domain/ticket/ticket-text.ts'

/** Facts as they were kept when a template had one place, the bare texts it is brushed for, and no number. */
const unnumbered = () => {
  const templates = templatesOf(3).map(({ no: _no, places: _places, on: _on, ...same }, at) => ({
    ...same,
    place: at === 2 ? 'front-number' : 'back-number',
    on: at === 1 ? ['12', '20'] : [],
  }))
  return { ...footballFacts(3), templates }
}

const kept = { version: 1, pdf: 'abc' }

describe('a ticket or a quote that was kept before templates were numbered', () => {
  it('prints its templates with a number, its place and what each is brushed for', () => {
    const { facts } = ticketFrom({ ...kept, facts: unnumbered() })
    expect(facts.templates.map(({ no, places, on }) => ({ no, places, on }))).toEqual([
      { no: 1, places: ['back-number'], on: [] },
      { no: 2, places: ['back-number'], on: [{ place: 'back-number', texts: ['12', '20'] }] },
      { no: 3, places: ['front-number'], on: [] },
    ])
    expect(textOf(composeTicket(facts, ticketWordsEn))).toContain('12, 20')
    expect(quoteFrom({ ...kept, facts: unnumbered() }).facts?.templates).toEqual(facts.templates)
  })

  it('leaves a later one as it is, and a quote without facts too', () => {
    const facts = footballFacts(3)
    expect(ticketFrom({ ...kept, facts }).facts).toEqual(facts)
    expect(quoteFrom({ ...kept, facts: null }).facts).toBeNull()
  })
})
