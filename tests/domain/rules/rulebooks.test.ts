import { describe, expect, it } from 'vitest'
import type { Extent } from '../../../src/domain/press/job.ts'
import type { Problem, Severity } from '../../../src/domain/result/result.ts'
import { decoration, order, row } from '../../support/orders.ts'
import { starter, workOut } from '../press/workbench.ts'

const inch = 25_400
const cm = 10_000

type Asked = {
  readonly book: string
  readonly place?: 'front-number' | 'back-number' | 'left-sleeve' | 'right-sleeve' | 'name'
  readonly fit?: 'men' | 'women'
  readonly numbers?: readonly string[]
  readonly height?: number
  readonly stroke?: number | null
  readonly surround?: number
  readonly jersey?: string
  readonly body?: string
  readonly gameDay?: string
}

const plainVinyl = (colour: string, surround: number) => [
  ...(surround > 0 ? [{ kind: 'vinyl' as const, class: 'standard' as const, colour: 'black', shape: { surround } }] : []),
  { kind: 'vinyl' as const, class: 'standard' as const, colour, shape: 'face' as const },
]

/** A game order under one rule book, with one number (or name) whose size is as asked. */
const under = (asked: Asked): readonly Problem[] => {
  const { book, place = 'back-number', fit = 'men', numbers = ['10'], height = 254_000, stroke = null } = asked
  const content = place === 'name' ? 'name' : 'number'
  const sport = starter.rulebooks.find((one) => one.id === book)?.sports[0] ?? ''
  const document = order({
    sport,
    rulebook: book,
    ...(asked.gameDay === undefined ? {} : { gameDay: asked.gameDay }),
    garments: order().garments.map(({ catalogue: _, ...garment }) => ({
      ...garment,
      from: 'customer',
      colour: asked.jersey ?? 'navy',
    })),
    decorations: [
      decoration({
        id: 'mark',
        place,
        content: { kind: content },
        layers: plainVinyl(asked.body ?? 'white', asked.surround ?? 0),
      }),
    ],
    roster: numbers.map((number, index) => row(index + 1, { number, fit })),
  })
  const extents: readonly Extent[] = numbers.map((text, index) => ({
    decoration: 'mark',
    line: index + 1,
    text,
    widthMicrometres: 100_000,
    heightMicrometres: height,
    aboveMicrometres: 0,
    strokeMicrometres: stroke,
    freeWidthMicrometres: null,
  }))
  return workOut(document, { extents }).problems
}

const severityOf = (problems: readonly Problem[], code: string): Severity | null =>
  problems.find((problem) => problem.code === code)?.severity ?? null

/** Body and edition · place · limit in µm · how it is said below it. */
const leasts = [
  ['NFHS football 1-5-1c, 2024 (quoted)', 'nfhs-football', 'front-number', 8 * inch, 'stop'],
  ['NFHS football 1-5-1c, 2024 (quoted)', 'nfhs-football', 'back-number', 10 * inch, 'stop'],
  ['NCAA football 1-4, 2020 (quoted)', 'ncaa-football', 'front-number', 8 * inch, 'stop'],
  ['NCAA football 1-4, 2020 (quoted)', 'ncaa-football', 'back-number', 10 * inch, 'stop'],
  ['NFHS basketball 3-4-3, 2013-14 (quoted)', 'nfhs-basketball', 'front-number', 4 * inch, 'stop'],
  ['NFHS basketball 3-4-3 (from memory)', 'nfhs-basketball', 'back-number', 6 * inch, 'caution'],
  ['NCAA basketball 1-22.7, 2023-24 (quoted)', 'ncaa-basketball', 'front-number', 4 * inch, 'stop'],
  ['NCAA basketball 1-22.7 (from memory)', 'ncaa-basketball', 'back-number', 6 * inch, 'caution'],
  ['FIBA 4.3.2, older text (quoted)', 'fiba-basketball', 'front-number', 10 * cm, 'stop'],
  ['FIBA 4.3.2, older text (quoted)', 'fiba-basketball', 'back-number', 20 * cm, 'stop'],
  ['FIBA, current text (from memory)', 'fiba-basketball-current', 'front-number', 8 * cm, 'caution'],
  ['FIBA, current text (from memory)', 'fiba-basketball-current', 'back-number', 16 * cm, 'caution'],
  ['NFHS volleyball 4-2-4, 2022-23 (quoted)', 'nfhs-volleyball', 'front-number', 4 * inch, 'stop'],
  ['NFHS volleyball 4-2-4, 2022-23 (quoted)', 'nfhs-volleyball', 'back-number', 6 * inch, 'stop'],
  ['NCAA volleyball 7.1.2, 2020 (quoted)', 'ncaa-volleyball', 'front-number', 10 * cm, 'stop'],
  ['NCAA volleyball 7.1.2, 2020 (quoted)', 'ncaa-volleyball', 'back-number', 15 * cm, 'stop'],
  ['USA Volleyball 4.3.3, 2023-25 (quoted)', 'usa-volleyball', 'front-number', 10 * cm, 'stop'],
  ['USA Volleyball 4.3.3, 2023-25 (quoted)', 'usa-volleyball', 'back-number', 15 * cm, 'stop'],
  ['FIVB 4.3.3, 2016-era (quoted)', 'fivb-volleyball', 'front-number', 15 * cm, 'stop'],
  ['FIVB 4.3.3, 2016-era (quoted)', 'fivb-volleyball', 'back-number', 20 * cm, 'stop'],
  ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer', 'front-number', 10 * cm, 'stop'],
  ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer', 'back-number', 25 * cm, 'stop'],
  ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer', 'front-number', 10 * cm, 'stop'],
  ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer', 'back-number', 25 * cm, 'stop'],
  ['NFHS soccer 4-1-1, 2012 (quoted)', 'nfhs-soccer', 'front-number', 4 * inch, 'stop'],
  ['NFHS soccer 4-1-1, 2012 (quoted)', 'nfhs-soccer', 'back-number', 6 * inch, 'stop'],
  ['NFHS baseball 1-4-3, 2016 (quoted)', 'nfhs-baseball', 'back-number', 8 * inch, 'stop'],
  ['NFHS softball 3-2-2, 2016 (read)', 'nfhs-softball', 'back-number', 6 * inch, 'stop'],
  ['MLB 3.03(a) (quoted)', 'mlb-baseball', 'back-number', 6 * inch, 'stop'],
  ['NFHS ice hockey 2-1-2, 2016-17 (quoted)', 'nfhs-ice-hockey', 'back-number', 10 * inch, 'stop'],
  ['NFHS ice hockey 2-1-2, 2016-17 (read)', 'nfhs-ice-hockey', 'left-sleeve', 4 * inch, 'stop'],
  ['NFHS ice hockey 2-1-2, 2016-17 (read)', 'nfhs-ice-hockey', 'right-sleeve', 4 * inch, 'stop'],
  ['IHF handball, 2019 (quoted)', 'ihf-handball', 'front-number', 10 * cm, 'stop'],
  ['IHF handball, 2019 (quoted)', 'ihf-handball', 'back-number', 20 * cm, 'stop'],
] as const

describe('least heights of numbers', () => {
  it.each(leasts)('%s: %s %s passes at the limit and fails just under it', (...[, book, place, limit, severity]) => {
    expect(severityOf(under({ book, place, height: limit }), 'number-too-small')).toBeNull()
    expect(severityOf(under({ book, place, height: limit - 1 }), 'number-too-small')).toBe(severity)
  })

  it.each([
    ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer'],
    ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer'],
  ])('%s asks 20 cm of women and 25 cm of men on the back', (_source, book) => {
    expect(severityOf(under({ book, fit: 'women', height: 20 * cm }), 'number-too-small')).toBeNull()
    expect(severityOf(under({ book, fit: 'women', height: 20 * cm - 1 }), 'number-too-small')).toBe('stop')
    expect(severityOf(under({ book, fit: 'men', height: 20 * cm }), 'number-too-small')).toBe('stop')
  })

  it('100 mm passes a 10 cm rule and fails a 4 in rule, which is 101.6 mm (computed)', () => {
    expect(severityOf(under({ book: 'ncaa-volleyball', place: 'front-number', height: 100_000 }), 'number-too-small')).toBeNull()
    expect(severityOf(under({ book: 'nfhs-volleyball', place: 'front-number', height: 100_000 }), 'number-too-small')).toBe(
      'stop',
    )
  })
})

describe('greatest heights of numbers', () => {
  it.each([
    ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer', 'front-number', 15 * cm],
    ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer', 'back-number', 35 * cm],
    ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer', 'front-number', 15 * cm],
    ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer', 'back-number', 35 * cm],
  ] as const)('%s: %s %s passes at the limit and fails just over it', (_source, book, place, limit) => {
    expect(severityOf(under({ book, place, height: limit }), 'number-too-large')).toBeNull()
    expect(severityOf(under({ book, place, height: limit + 1 }), 'number-too-large')).toBe('stop')
  })

  it('trap: NCAA basketball is not "under 4 or over 8 in"; a 9 in number is no problem', () => {
    const codes = under({ book: 'ncaa-basketball', height: 9 * inch }).map((problem) => problem.code)
    expect(codes).not.toContain('number-too-large')
    expect(codes).not.toContain('number-too-small')
  })
})

describe('strokes of numbers', () => {
  it.each([
    ['NFHS football 1-5-1c, 2024: about 1.5 in (quoted)', 'nfhs-football', 1.5 * inch, 'caution'],
    ['NCAA football 1-4, 2020 (quoted)', 'ncaa-football', 1.5 * inch, 'stop'],
    ['NFHS basketball 3-4-3, 2013-14 (quoted)', 'nfhs-basketball', 0.75 * inch, 'stop'],
    ['NCAA basketball 1-22.7 (from memory)', 'ncaa-basketball', 0.75 * inch, 'caution'],
    ['FIBA 4.3.2, older text (quoted)', 'fiba-basketball', 2 * cm, 'stop'],
    ['NFHS volleyball 4-2-4, 2022-23 (quoted)', 'nfhs-volleyball', 0.75 * inch, 'stop'],
    ['NCAA volleyball 7.1.2, 2020 (quoted)', 'ncaa-volleyball', 2 * cm, 'stop'],
    ['USA Volleyball 4.3.3 (from memory)', 'usa-volleyball', 2 * cm, 'caution'],
    ['FIVB 4.3.3, 2016-era (quoted)', 'fivb-volleyball', 2 * cm, 'stop'],
    ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer', 2 * cm, 'stop'],
    ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer', 3 * cm, 'stop'],
  ] as const)('%s: %s passes at the limit and fails just under it', (_source, book, limit, severity) => {
    expect(severityOf(under({ book, stroke: limit }), 'stroke-too-thin')).toBeNull()
    expect(severityOf(under({ book, stroke: limit - 1 }), 'stroke-too-thin')).toBe(severity)
  })

  it.each([
    ['UEFA Art. 10, 1 June 2024 (read)', 'uefa-soccer'],
    ['FIFA equipment regulations, 2014 (quoted)', 'fifa-soccer'],
  ])('%s: at most 5 cm', (_source, book) => {
    expect(severityOf(under({ book, stroke: 5 * cm }), 'stroke-too-thick')).toBeNull()
    expect(severityOf(under({ book, stroke: 5 * cm + 1 }), 'stroke-too-thick')).toBe('stop')
  })

  it('trap: the FIFA stroke is 3-5 centimetres, not millimetres', () => {
    const fifa = starter.rulebooks.find((book) => book.id === 'fifa-soccer')?.number
    expect([fifa?.strokeLeastMicrometres, fifa?.strokeMostMicrometres]).toEqual([30_000, 50_000])
    expect(severityOf(under({ book: 'fifa-soccer', stroke: 4_000 }), 'stroke-too-thin')).toBe('stop')
  })
})

describe('borders', () => {
  it('NFHS football (2024): the height includes the border, the stroke does not', () => {
    const height = 10 * inch - 10_000
    expect(severityOf(under({ book: 'nfhs-football', height, surround: 5_000 }), 'number-too-small')).toBeNull()
    expect(severityOf(under({ book: 'nfhs-football', height: height - 1, surround: 5_000 }), 'number-too-small')).toBe('stop')
    expect(severityOf(under({ book: 'nfhs-football', stroke: 38_099, surround: 5_000 }), 'stroke-too-thin')).toBe('caution')
  })

  it('UEFA (2024): the outline is not counted, neither towards the least nor the most', () => {
    expect(severityOf(under({ book: 'uefa-soccer', height: 25 * cm - 1, surround: 5_000 }), 'number-too-small')).toBe('stop')
    expect(severityOf(under({ book: 'uefa-soccer', height: 35 * cm, surround: 5_000 }), 'number-too-large')).toBeNull()
  })

  it('where nobody says whether it counts, a number that only its border saves is a caution', () => {
    expect(severityOf(under({ book: 'nfhs-soccer', height: 6 * inch - 1_000, surround: 500 }), 'number-too-small')).toBe(
      'caution',
    )
    expect(severityOf(under({ book: 'nfhs-soccer', height: 6 * inch - 1_001, surround: 500 }), 'number-too-small')).toBe('stop')
  })

  it.each([
    ['NFHS basketball 3-4-3: 1/4 in (quoted)', 'nfhs-basketball', 0.25 * inch],
    ['NFHS volleyball 4-2-4: 1/2 in (quoted)', 'nfhs-volleyball', 0.5 * inch],
    ['NCAA volleyball 7.1.2: shadow 1/2 in (quoted)', 'ncaa-volleyball', 0.5 * inch],
    ['NFHS baseball 1-4-3: 1/4 in (quoted)', 'nfhs-baseball', 0.25 * inch],
  ] as const)('%s: %s passes at the limit and fails just over it', (_source, book, limit) => {
    expect(severityOf(under({ book, surround: limit }), 'border-too-wide')).toBeNull()
    expect(severityOf(under({ book, surround: limit + 1 }), 'border-too-wide')).toBe('stop')
  })
})

describe('legal numbers', () => {
  const legal: readonly (readonly [string, string, readonly string[], readonly string[], Severity])[] = [
    ['NFHS football, 2024 (quoted)', 'nfhs-football', ['0', '1', '9', '10', '99'], ['00', '01', '07', '100'], 'stop'],
    ['NCAA football, 2020 (quoted)', 'ncaa-football', ['0', '99'], ['00', '100'], 'stop'],
    [
      'NFHS basketball 3-4-3, 2013-14 (quoted)',
      'nfhs-basketball',
      ['0', '1', '5', '10', '15', '20', '25', '30', '35', '40', '45', '50', '55'],
      ['6', '9', '16', '19', '26', '36', '46', '56', '60', '68', '01'],
      'stop',
    ],
    ['NCAA basketball, 2023-24 (quoted)', 'ncaa-basketball', ['0', '00', '6', '99'], ['100'], 'stop'],
    ['FIBA, current text (from memory)', 'fiba-basketball-current', ['0', '00', '1', '99'], ['100', '01'], 'caution'],
    ['NFHS volleyball, 2022-23 (quoted)', 'nfhs-volleyball', ['0', '00', '99'], ['100', '07'], 'stop'],
    ['NCAA volleyball, 2020 (from memory)', 'ncaa-volleyball', ['0', '99'], ['100'], 'caution'],
    ['USA Volleyball, 2023-25 (quoted)', 'usa-volleyball', ['1', '99'], ['0', '00', '100'], 'stop'],
    ['FIVB, 2016-era (from memory)', 'fivb-volleyball', ['1', '99'], ['0', '100'], 'caution'],
    ['UEFA, 1 June 2024 (read)', 'uefa-soccer', ['1', '99'], ['0', '100'], 'stop'],
    ['IHF handball, 2019 (quoted)', 'ihf-handball', ['1', '99'], ['0', '00', '100'], 'stop'],
  ]
  it.each(legal)('%s: %s', (...[, book, allowed, refused, severity]) => {
    for (const number of allowed)
      expect([number, severityOf(under({ book, numbers: [number] }), 'illegal-number')]).toEqual([number, null])
    for (const number of refused)
      expect([number, severityOf(under({ book, numbers: [number] }), 'illegal-number')]).toEqual([number, severity])
  })

  it('NFHS basketball lists 37 numbers (computed from 3-4-3)', () => {
    expect(starter.rulebooks.find((book) => book.id === 'nfhs-basketball')?.legal?.numbers).toHaveLength(37)
  })

  it('NFHS basketball does not take both 0 and 00, each alone is fine', () => {
    expect(severityOf(under({ book: 'nfhs-basketball', numbers: ['0', '00'] }), 'numbers-clash')).toBe('stop')
    expect(severityOf(under({ book: 'nfhs-basketball', numbers: ['0', '10'] }), 'numbers-clash')).toBeNull()
  })

  it('NFHS volleyball loses 00 with the 2028-29 season and keeps 0', () => {
    const book = 'nfhs-volleyball'
    expect(severityOf(under({ book, numbers: ['00'], gameDay: '2028-06-30' }), 'illegal-number')).toBeNull()
    expect(severityOf(under({ book, numbers: ['00'], gameDay: '2028-07-01' }), 'illegal-number')).toBe('stop')
    expect(severityOf(under({ book, numbers: ['0'], gameDay: '2028-09-01' }), 'illegal-number')).toBeNull()
  })

  it('NFHS softball counts 0 and 00 as the same number (read)', () => {
    expect(severityOf(under({ book: 'nfhs-softball', numbers: ['0', '00'] }), 'number-twice')).toBe('stop')
    expect(severityOf(under({ book: 'nfhs-softball', numbers: ['0', '10'] }), 'number-twice')).toBeNull()
  })

  it.each([
    ['USA Volleyball, 2023-25: no duplicates (quoted)', 'usa-volleyball', 'stop'],
    ['NFHS soccer, 2012: all different (quoted)', 'nfhs-soccer', 'stop'],
    ['NFHS baseball, 2016: no identical numbers (quoted)', 'nfhs-baseball', 'stop'],
    ['NFHS football: the text seen says nothing, so it is asked', 'nfhs-football', 'caution'],
  ])('%s', (_source, book, severity) => {
    expect(severityOf(under({ book, numbers: ['7', '7'] }), 'number-twice')).toBe(severity)
    expect(severityOf(under({ book, numbers: ['7', '8'] }), 'number-twice')).toBeNull()
  })

  it('names the nearest legal numbers that nobody wears yet', () => {
    const problem = under({ book: 'nfhs-basketball', numbers: ['68', '55'] }).find((one) => one.code === 'illegal-number')
    expect(problem?.facts).toMatchObject({ number: '68', line: 1, nearest: ['54', '53', '52'] })
  })

  it('UEFA keeps number 1 for a goalkeeper', () => {
    expect(severityOf(under({ book: 'uefa-soccer', numbers: ['1'] }), 'goalkeeper-number')).toBe('note')
    expect(severityOf(under({ book: 'uefa-soccer', numbers: ['2'] }), 'goalkeeper-number')).toBeNull()
  })
})

describe('names', () => {
  it('UEFA (2024, read): at most 7.5 cm', () => {
    expect(severityOf(under({ book: 'uefa-soccer', place: 'name', height: 75_000 }), 'name-too-large')).toBeNull()
    expect(severityOf(under({ book: 'uefa-soccer', place: 'name', height: 75_001 }), 'name-too-large')).toBe('stop')
  })

  it('FIFA (2014, quoted): 5-7.5 cm', () => {
    expect(severityOf(under({ book: 'fifa-soccer', place: 'name', height: 50_000 }), 'name-too-small')).toBeNull()
    expect(severityOf(under({ book: 'fifa-soccer', place: 'name', height: 49_999 }), 'name-too-small')).toBe('stop')
    expect(severityOf(under({ book: 'fifa-soccer', place: 'name', height: 75_001 }), 'name-too-large')).toBe('stop')
  })
})

describe('colours', () => {
  it.each([
    ['purple', 'black'],
    ['dark-green', 'black'],
    ['navy', 'black'],
    ['light-yellow', 'white'],
    ['maroon', 'navy'],
  ])('USA Volleyball 4.3.3 (2023-25, quoted): %s and %s fail, either way round', (jersey, body) => {
    expect(severityOf(under({ book: 'usa-volleyball', jersey, body }), 'failing-pair')).toBe('stop')
    expect(severityOf(under({ book: 'usa-volleyball', jersey: body, body: jersey }), 'failing-pair')).toBe('stop')
    expect(severityOf(under({ book: 'usa-volleyball', jersey: 'grey', body: 'white' }), 'failing-pair')).toBeNull()
  })

  it('NFHS basketball (2024-25, quoted): not the jersey’s own colour even with a border', () => {
    expect(
      severityOf(under({ book: 'nfhs-basketball', jersey: 'white', body: 'white', surround: 5_000 }), 'own-colour-number'),
    ).toBe('stop')
    expect(severityOf(under({ book: 'nfhs-basketball', jersey: 'navy', body: 'white' }), 'own-colour-number')).toBeNull()
  })

  it('a body that names nothing still gets a caution for a number in the jersey’s own colour', () => {
    expect(severityOf(under({ book: 'nfhs-soccer', jersey: 'white', body: 'white' }), 'own-colour-number')).toBe('caution')
  })
})

describe('every row of the table', () => {
  it('carries body, clause, edition and mark', () => {
    for (const book of starter.rulebooks) {
      expect(book.clause.length).toBeGreaterThan(0)
      expect(book.edition.length).toBeGreaterThan(0)
      expect(['read', 'quoted', 'memory']).toContain(book.mark)
    }
    expect(new Set(starter.rulebooks.map((book) => book.body)).size).toBe(17)
  })

  it('says “old edition” only when it is more than three years old', () => {
    expect(severityOf(under({ book: 'nfhs-football' }), 'old-edition')).toBeNull()
    expect(severityOf(under({ book: 'usa-volleyball' }), 'old-edition')).toBeNull()
    expect(severityOf(under({ book: 'nfhs-volleyball' }), 'old-edition')).toBe('caution')
    expect(severityOf(under({ book: 'nfhs-football' }), 'ask-your-league')).toBe('note')
  })

  it('leaves fan and cheer wear alone', () => {
    const document = order({
      use: 'fan',
      roster: [row(1, { number: '007' })],
      decorations: [decoration({ height: { micrometres: 50_000 } })],
    })
    expect(workOut(document).problems.filter((problem) => problem.severity === 'stop')).toEqual([])
  })
})
