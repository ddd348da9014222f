import { describe, expect, it } from 'vitest'
import type { PressStep } from '../../../src/domain/press/press-plan.ts'
import { cautionCodes, lookForCodes, whyCodes } from '../../../src/domain/press/step-codes.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import { hazardCodes, hazards, signalWords } from '../../../src/domain/ticket/hazards.ts'
import { tenthsC } from '../../../src/domain/units/units.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { ticketWordsEs } from '../../../templates/ticket/es.ts'
import { everythingFacts } from './everything.builder.ts'
import { footballFacts, press1, rosterRow, sideSteps } from './facts.builder.ts'
import { blocksOf, textOf } from './ticket-text.ts'

const football = () => composeTicket(footballFacts(12), ticketWordsEn)

describe.each([
  ['English', ticketWordsEn],
  ['Spanish', ticketWordsEs],
])('the words of the paper in %s', (_language, words) => {
  it('say every code that a press step can carry', () => {
    for (const code of lookForCodes) expect(words.steps.lookFor[code]).not.toBe('')
    for (const code of whyCodes) expect(words.steps.why[code]).not.toBe('')
    for (const code of cautionCodes) expect(words.steps.cautions[code]).not.toBe('')
    for (const code of hazardCodes) expect(words.signs.hazards[code]).not.toBe('')
  })

  it('say no two codes alike', () => {
    for (const said of [words.steps.lookFor, words.steps.why, words.steps.cautions, words.signs.hazards]) {
      const all = Object.values(said)
      expect(new Set(all).size).toBe(all.length)
    }
  })
})

/** What a step must say, by the plain words of each of its facts. */
const mustSay = (step: PressStep): readonly string[] => {
  const { press, steps } = ticketWordsEn
  return [
    press.actions[step.action],
    ...(step.seconds === null ? [] : [`${step.seconds} s`]),
    ...(step.pressure === null ? [] : [press.pressures[step.pressure.word]]),
    ...(step.pressure === null || step.pressure.gauge === null ? [] : [`gauge ${step.pressure.gauge}`]),
    ...(step.peel === null ? [] : [press.peels[step.peel]]),
    ...(step.inside === 'none' ? [] : [press.insides[step.inside]]),
    ...(step.cover === 'none' ? [] : [press.overs[step.cover]]),
    step.machine ?? '',
    ...step.lookFor.map((code) => steps.lookFor[code]),
    ...step.cautions.map((code) => steps.cautions[code]),
  ]
}

describe('the press sequence on paper', () => {
  it('is the checked one, step for step', () => {
    const facts = everythingFacts()
    const paper = blocksOf(composeTicket(facts, ticketWordsEn), 'steps').flatMap((block) => block.steps)
    expect(paper.map((step) => step.no)).toEqual(facts.press.map((step) => String(step.no)))
    facts.press.forEach((step, at) => {
      const said = JSON.stringify(paper[at])
      for (const words of mustSay(step)) expect(said).toContain(words)
    })
  })

  it('shows a figure of heat only where the checked step has one', () => {
    const facts = footballFacts(12)
    const steps = blocksOf(composeTicket(facts, ticketWordsEn), 'steps').flatMap((block) => block.steps)
    const hot = steps.filter((step) => step.figures.some((figure) => figure.includes('°')))
    expect(hot.map((step) => step.no)).toEqual(facts.press.filter((step) => step.tenthsC !== null).map((step) => String(step.no)))
  })

  it('says what is joined and pressed together by the words of both places', () => {
    expect(textOf(football())).toContain('name + back number')
  })

  it('is a bug when a step names a layer that the ticket does not list', () => {
    expect(() => composeTicket({ ...footballFacts(3), layers: [] }, ticketWordsEn)).toThrow(RangeError)
  })
})

describe('pressure on paper', () => {
  const kilopascals = { light: { least: 100, most: 200 }, medium: { least: 200, most: 300 }, firm: { least: 300, most: 400 } }
  const measured = { ...press1, kilopascals }
  const figures = (pressure: 'gauge' | 'psi' | 'bar', machine = press1): string => {
    const facts = footballFacts(3)
    const ticket = composeTicket({ ...facts, show: { ...facts.show, pressure }, machines: [machine] }, ticketWordsEn)
    return JSON.stringify([...blocksOf(ticket, 'press-box'), ...blocksOf(ticket, 'steps')])
  }

  it('is the gauge of the press that is named with it', () => {
    expect(figures('gauge')).toContain('medium (gauge 5)')
    expect(figures('gauge', { ...press1, gauge: { light: '20', medium: '40', firm: '60' } })).toContain('medium (gauge 40)')
  })

  it('is psi or bar where the shop writes so and has measured that press, rounded into what was measured', () => {
    expect(figures('psi', measured)).toContain('medium (30–43 psi)')
    expect(figures('bar', measured)).toContain('medium (2–3 bar)')
  })

  it('is the word alone where nothing was measured', () => {
    expect(figures('psi')).toContain('"medium"')
    expect(figures('psi')).not.toContain('psi')
  })
})

describe('the press box', () => {
  it('stands on the first page and again at every side that is pressed', () => {
    const boxes = blocksOf(football(), 'press-box')
    expect(boxes).toHaveLength(3)
    const figures = boxes.flatMap((box) => box.rows.map((row) => row.figures.map((figure) => figure.value).join(' ')))
    expect(new Set(figures)).toEqual(new Set(['325 °F 15 s medium (gauge 5) COLD pillow + sheet cover sheet press-1']))
  })

  it('puts the temperature first', () => {
    for (const box of blocksOf(football(), 'press-box')) for (const row of box.rows) expect(row.figures[0]?.value).toBe('325 °F')
  })

  it('shows the figure to set with the correction in it, and says so', () => {
    const facts = { ...footballFacts(3), machines: [{ ...press1, correctionTenthsC: 28 }] }
    const [box] = blocksOf(composeTicket(facts, ticketWordsEn), 'press-box')
    expect(box?.rows[0]?.figures[0]?.value).toBe('330 °F')
    expect(box?.rows[0]?.notes.join(' ')).toContain('+5 °F')
    expect(box?.rows[0]?.notes.join(' ')).toContain('platen 325 °F')
  })

  it('shows the unit of the dial first and the unit of the shop beside it', () => {
    const facts = { ...footballFacts(3), show: { ...footballFacts(3).show, temperature: 'C' as const } }
    const [box] = blocksOf(composeTicket(facts, ticketWordsEn), 'press-box')
    expect(box?.rows[0]?.figures.slice(0, 3).map((figure) => figure.value)).toEqual(['325 °F', '15 s', '162.8 °C'])
  })

  it('has a row of its own for every setting of a garment', () => {
    const facts = footballFacts(3)
    const hotter = sideSteps('front', [1, 2, 3], 12).map((step) =>
      step.tenthsC === null ? step : { ...step, tenthsC: tenthsC(1600) },
    )
    const [box] = blocksOf(
      composeTicket({ ...facts, press: [...sideSteps('back', [1, 2, 3], 1), ...hotter] }, ticketWordsEn),
      'press-box',
    )
    expect(box?.rows.map((row) => [row.covers, row.figures[0]?.value])).toEqual([
      ['name + back number', '325 °F'],
      ['front number', '320 °F'],
    ])
  })
})

describe('cautions', () => {
  it('stand on the first page, the greatest word first, each hazard once', () => {
    const [first] = composeTicket(everythingFacts(), ticketWordsEn).sheets
    const panels = first?.blocks.filter((block) => block.kind === 'signal') ?? []
    const words = panels.map((panel) => signalWords.indexOf(panel.word))
    expect(words).toEqual([...words].sort((a, b) => a - b))
    const texts = panels.flatMap((panel) => panel.items.map((item) => item.text))
    expect(new Set(texts).size).toBe(texts.length)
  })

  it('call what harms only the garment a NOTICE and what burns or crushes a WARNING', () => {
    expect(hazards['hot-platen'].word).toBe('warning')
    expect(hazards['hands-out-before-closing'].word).toBe('warning')
    expect(hazards['do-not-move-tape'].word).toBe('notice')
  })

  it('speak of children only when there are some', () => {
    const said = ticketWordsEn.signs.hazards['small-parts']
    expect(textOf(football())).not.toContain(said)
    expect(textOf(composeTicket(everythingFacts(), ticketWordsEn))).toContain(said)
  })
})

describe('a new revision', () => {
  it('says what it replaces, what changed and what is thrown away', () => {
    const text = textOf(composeTicket(everythingFacts(), ticketWordsEn))
    expect(text).toContain('REPLACES revision 2')
    expect(text).toContain('Line 7, name: was KOVACS, is now KOVÁCS')
    expect(text).toContain('Line 29 is dropped')
    expect(text).toContain('Throw away')
  })

  it('says none of it on a first ticket', () => {
    const text = textOf(football())
    expect(text).not.toMatch(/REPLACES|CHANGED|Throw away/)
  })
})

describe('the roster on paper', () => {
  it('lists every piece by garment and size and every line by name without regard to accents', () => {
    const tables = blocksOf(football(), 'table').filter((table) => table.style === 'strong')
    const [bySize, byName] = tables
    expect(bySize?.groups.flatMap((group) => group.rows)).toHaveLength(12)
    const names = byName?.groups.flatMap((group) => group.rows.map((row) => row[0]?.text)) ?? []
    expect(names.indexOf('ĐORĐEVIĆ')).toBe(names.indexOf('DE LA CRUZ') + 1)
    expect(names.indexOf('ŁUKASIK')).toBeLessThan(names.indexOf('McKAY'))
  })

  it('gives a row of twelve pieces twelve rows to tick, and a strip to every piece', () => {
    const facts = footballFacts(1, { roster: [rosterRow(1, { quantity: 12 })] })
    const ticket = composeTicket(facts, ticketWordsEn)
    const [bySize] = blocksOf(ticket, 'table').filter((table) => table.style === 'strong')
    expect(bySize?.groups.flatMap((group) => group.rows)).toHaveLength(12)
    expect(blocksOf(ticket, 'strips').flatMap((block) => block.strips)).toHaveLength(12)
  })

  it('says special rows in words', () => {
    const text = textOf(composeTicket(everythingFacts(), ticketWordsEn))
    expect(text).toContain('line 3 #3 NUÑEZ adult XL: plus left chest C')
    expect(text).toContain('line 4 #4 adult S: WITHOUT name')
  })
})

describe('the first wash on the ticket', () => {
  it('is counted from the last press, which is written by hand: a garment pressed late is not washed too early', () => {
    const { sheets } = football()
    const last = sheets.find((sheet) => sheet.title === ticketWordsEn.last.title)
    const [item] = (last?.blocks ?? []).flatMap((block) =>
      block.kind === 'checks' ? block.items.filter(({ title }) => title.startsWith('First wash')) : [],
    )
    expect(item).toMatchObject({
      title: 'First wash: not before 24 hours after the last press.',
      writes: ['last pressed: day, hour', 'first wash not before'],
    })
    expect(textOf(football())).not.toMatch(/[Ff]irst wash not before .*20\d\d/)
  })
})

describe('the head of the ticket', () => {
  const plan = footballFacts(1).plan
  const [promised, wanted] = ['Thursday, November 12, 2026, 4:00 pm', 'Thursday, November 12, 2026, 5:00 pm']

  it('is the promise, large, with the wanted hour beside it where that is another', () => {
    const [when] = blocksOf(football(), 'beside').flatMap((block) => block.left.filter((one) => one.kind === 'fields'))
    expect(when?.fields.map(({ label, value, style }) => [label, value, style])).toEqual([
      ['Promised', promised, 'large'],
      ['Wanted', wanted, 'strong'],
    ])
    expect(football().running).toContain('Promised Thu Nov 12 4:00 pm')
  })

  it('says one hour once', () => {
    const same = composeTicket(footballFacts(1, { needBy: '2026-11-12T16:00' }), ticketWordsEn)
    expect(textOf(same)).not.toContain('Wanted')
  })

  it('is the wanted hour where nothing is promised', () => {
    const open = composeTicket(footballFacts(1, { plan: { ...plan, promised: null } }), ticketWordsEn)
    expect(textOf(open)).not.toContain('Promised')
    expect(open.running).toContain('Wanted Thu Nov 12 5:00 pm')
  })
})

describe('what the ticket calls things', () => {
  it('is never an id of the shop: lots of stones are called by size and colour', () => {
    const text = textOf(football())
    expect(text).toContain('Hole coupon · SS10 crystal')
    expect(text).not.toMatch(/stone-ss10|O-311/)
  })
})

describe('who decides', () => {
  it('stands in every press box', () => {
    for (const box of blocksOf(football(), 'press-box'))
      for (const row of box.rows) expect(row.notes.at(-1)).toMatch(/maker's sheet and the manual .* stop and ask/)
  })

  it('has the cautions of the order itself beside it on the first page, and leaves notes for the last', () => {
    const note = { code: 'letters-condensed', severity: 'note', text: 'LEE is set narrower.' } as const
    const facts = footballFacts(1)
    const { sheets } = composeTicket({ ...facts, problems: [...facts.problems, note] }, ticketWordsEn)
    const said = (at: number): string => JSON.stringify(sheets.at(at)?.blocks)
    expect(said(0)).toContain('Navy polyester under white may bleed')
    expect(said(0)).not.toContain(note.text)
    expect(said(-2)).toContain(note.text)
    expect(said(-2)).not.toContain('may bleed')
  })
})

describe('a text that is set lower or narrower to fit', () => {
  const fitted = { heightMicrometres: 28_702, percent: 85 }
  const row = rosterRow(1)
  const roster = [{ ...row, marks: row.marks.map((mark) => (mark.place === 'name' ? { ...mark, fitted } : mark)) }]
  const facts = footballFacts(1, { roster })
  const placements = facts.placements.map((one) => ({
    ...one,
    groups: one.groups.map((group) => (one.place === 'name' ? { ...group, lowestMicrometres: 28_702 } : group)),
  }))

  it('is told in the roster with its height and how narrow it is', () => {
    expect(textOf(composeTicket(facts, ticketWordsEn))).toContain('name 1.13 in high; name set narrower, 85 %')
  })

  it('leaves no height on the drawing that is not cut', () => {
    const text = textOf(composeTicket({ ...facts, placements }, ticketWordsEn))
    expect(text).toContain('1.13 in to 3 in high, by the roster')
    expect(text).not.toContain('\n3 in high')
  })
})

describe('what is left out', () => {
  it.each([
    ['English', ticketWordsEn, /stone|crystal/i],
    ['Spanish', ticketWordsEs, /piedra|cristal/i],
  ])('is every word of stones on an order without them, in %s', (_language, words, stone) => {
    const facts = footballFacts(2)
    const press = facts.press
      .filter(({ layers }) => !layers.some((id) => id.endsWith('-2')))
      .filter(({ action }) => action !== 'lift' && action !== 'cool' && action !== 'inspect')
      .map((step) => ({ ...step, why: step.why.filter((code) => code === 'record-says') }))
    const plain = { ...facts, press, stones: [], templates: [], layers: facts.layers.filter(({ kind }) => kind === 'vinyl') }
    const gates = facts.gates.filter(({ code }) => code !== 'coupon')
    expect(textOf(composeTicket({ ...plain, gates, rulebook: null }, words))).not.toMatch(stone)
  })

  it.each([
    ['English', ticketWordsEn, /vinyl|weed/i],
    ['Spanish', ticketWordsEs, /vinilo|depilar/i],
  ])('is every word of vinyl on an order without it, in %s', (_language, words, vinyl) => {
    const facts = footballFacts(2, { press: [], vinyl: [], problems: [], sources: [], rulebook: null, tally: [] })
    const plan = { ...facts.plan, slots: [] }
    expect(textOf(composeTicket({ ...facts, plan }, words))).not.toMatch(vinyl)
  })

  it('is every part that an order does not need', () => {
    const facts = footballFacts(1, { vinyl: [], tally: [], templates: [], stones: [], placements: [], gates: [], rulebook: null })
    const text = textOf(composeTicket(facts, ticketWordsEn))
    for (const said of [
      ...Object.values(ticketWordsEn.pick.titles),
      ticketWordsEn.place.title,
      ticketWordsEn.gateTitle,
      ticketWordsEn.last.rulebook,
    ]) {
      expect(text).not.toContain(said)
    }
  })
})
