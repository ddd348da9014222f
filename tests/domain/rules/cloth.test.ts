import { describe, expect, it } from 'vitest'
import { plainShow } from '../../../src/domain/shop/plain-show.ts'
import { sayProblem } from '../../../templates/replies/say.ts'
import { starter } from '../press/workbench.ts'
import { given, severityOf, stone, vinyl, waysOf } from './one-order.ts'

const polyester = [{ fibre: 'polyester' as const, percent: 100 }]
const blend = (fibre: 'elastane' | 'nylon' | 'acrylic', percent: number) => [
  { fibre, percent },
  { fibre: 'polyester' as const, percent: 100 - percent },
]

describe('fibres', () => {
  it('nobody knows: the label is read at the count-in, nothing is refused', () => {
    const problems = given({ garment: { fibres: 'unknown' } })
    expect(severityOf(problems, 'fibre-unknown')).toBe('needs-test')
    expect(problems.filter((problem) => problem.severity === 'stop')).toEqual([])
    expect(severityOf(given({}), 'fibre-unknown')).toBeNull()
  })

  it("a tenth of a fibre the maker's sheet does not name wants a test press; less is left to the maker's word (common practice)", () => {
    expect(severityOf(given({ garment: { fibres: blend('nylon', 10) } }), 'fibre-not-on-sheet')).toBe('needs-test')
    expect(severityOf(given({ garment: { fibres: blend('nylon', 9) } }), 'fibre-not-on-sheet')).toBeNull()
  })

  it('offers the vinyl of the same colour whose sheet names the fibre', () => {
    expect(waysOf(given({ garment: { fibres: blend('nylon', 50) } }), 'fibre-not-on-sheet')).toContainEqual({
      way: 'another-class',
      subject: 'vinyl-low-temperature-white',
      inStock: 4_572_000,
    })
  })

  it('acrylic is pressed with low-temperature vinyl only (degrades above 150 °C, quoted)', () => {
    const acrylic = { fibres: blend('acrylic', 50) }
    const standard = given({ garment: acrylic })
    expect(severityOf(standard, 'no-common-heat')).toBe('stop')
    expect(waysOf(standard, 'no-common-heat')[0]).toMatchObject({ way: 'another-class', subject: 'vinyl-low-temperature-white' })
    expect(severityOf(given({ garment: acrylic, layers: [vinyl('low-temperature')] }), 'no-common-heat')).toBeNull()
  })

  it('a tenth of elastane wants stretch vinyl, and no solid stones (common practice)', () => {
    const stretchy = { fibres: blend('elastane', 10) }
    expect(severityOf(given({ garment: stretchy }), 'stretch-needs-stretch')).toBe('caution')
    expect(severityOf(given({ garment: stretchy, layers: [vinyl('stretch')] }), 'stretch-needs-stretch')).toBeNull()
    expect(severityOf(given({ garment: { fibres: blend('elastane', 9) } }), 'stretch-needs-stretch')).toBeNull()
    expect(severityOf(given({ garment: stretchy, layers: [stone('SS10', 'solid')] }), 'solid-stones-on-stretch')).toBe('caution')
    expect(severityOf(given({ garment: stretchy, layers: [stone('SS10')] }), 'solid-stones-on-stretch')).toBeNull()
  })
})

describe('care label (ISO 3758, 2012 edition, quoted)', () => {
  it('an unread label is said, one below the setting is a caution, never a stop', () => {
    expect(severityOf(given({}), 'care-label-unread')).toBe('note')
    const bodysuit = given({
      garment: {
        catalogue: 'cheer-bodysuit',
        fibres: 'unknown',
        knit: 'unknown',
        finish: 'unknown',
        dye: 'unknown',
        from: 'shop',
      },
      rows: [{ fit: 'women' }],
    })
    expect(severityOf(bodysuit, 'over-care-label')).toBe('caution')
    expect(bodysuit.filter((problem) => problem.severity === 'stop')).toEqual([])
    expect(bodysuit.find((problem) => problem.code === 'over-care-label')?.facts).toMatchObject({ dots: 1, ironTenthsC: 1100 })
  })
})

describe('water drops (AATCC TM79, quoted; the slowest of five drops speaks for the cloth)', () => {
  const dropsSunk = (...seconds: readonly number[]) =>
    given({ garment: { finish: 'unknown' }, facts: { findings: [{ garment: 'home', seconds }] } })

  it('not done: a gate, no refusal', () => {
    const problems = given({ garment: { finish: 'unknown' } })
    expect(severityOf(problems, 'finish-unknown')).toBe('needs-test')
    expect(
      severityOf(
        given({ garment: { finish: 'unknown' }, facts: { findings: [{ garment: 'home', seconds: 'not-done' }] } }),
        'finish-unknown',
      ),
    ).toBe('needs-test')
  })

  it('sunk in 5 s: adequate', () => {
    const codes = dropsSunk(4, 5, 5, 3, 5).map((problem) => problem.code)
    expect(codes).not.toContain('drops-doubtful')
    expect(codes).not.toContain('finish-unknown')
  })

  it.each([
    ['just over 5 s', [5, 5, 5, 5, 6], 'drops-doubtful', 'needs-test'],
    ['just under 60 s', [59, 59, 59, 59, 59], 'drops-doubtful', 'needs-test'],
    ['one slow among quick ones', [2, 3, 2, 40, 2], 'drops-doubtful', 'needs-test'],
    ['one that sank among four that stand', [60, 60, 55, 60, 60], 'drops-beaded', 'stop'],
    ['one that stands among four that sank', [2, 2, 60, 3, 2], 'drops-beaded', 'stop'],
    ['still beaded at 60 s', [60, 60, 60, 60, 60], 'drops-beaded', 'stop'],
  ] as const)('%s', (_what, seconds, code, severity) => {
    expect(severityOf(dropsSunk(...seconds), code)).toBe(severity)
  })

  it('beaded: a vinyl made for coated cloth is not refused, it wants a test press; stones are refused', () => {
    const findings = [{ garment: 'home', seconds: [60] }]
    const coated = given({ garment: { finish: 'unknown' }, layers: [vinyl('low-temperature')], facts: { findings } })
    expect([severityOf(coated, 'drops-beaded'), severityOf(coated, 'finish-needs-test')]).toEqual([null, 'needs-test'])
    expect(
      severityOf(given({ garment: { finish: 'unknown' }, layers: [stone('SS10')], facts: { findings } }), 'drops-beaded'),
    ).toBe('stop')
  })

  it('a repellent finish said beforehand decides the same way', () => {
    expect(severityOf(given({ garment: { finish: 'repellent' } }), 'finish-repels')).toBe('stop')
    expect(severityOf(given({ garment: { finish: 'repellent' }, layers: [stone('SS10')] }), 'finish-repels')).toBe('stop')
    expect(
      severityOf(given({ garment: { finish: 'repellent' }, layers: [vinyl('low-temperature')] }), 'finish-repels'),
    ).toBeNull()
  })

  it('nylon and red polyester are suspected, red cotton is not (common practice)', () => {
    expect(severityOf(given({ garment: { fibres: [{ fibre: 'nylon', percent: 100 }] } }), 'repellence-suspected')).toBe('caution')
    expect(severityOf(given({ garment: { fibres: polyester, colour: 'red' } }), 'repellence-suspected')).toBe('caution')
    expect(severityOf(given({ garment: { colour: 'red' } }), 'repellence-suspected')).toBeNull()
  })
})

describe('dye that wanders (from 138 °C / 280 °F, quoted)', () => {
  const bleed = (
    garment: Parameters<typeof given>[0]['garment'],
    layers = [vinyl('standard')] as NonNullable<Parameters<typeof given>[0]['layers']>,
  ) => severityOf(given({ garment: { fibres: polyester, ...garment }, layers }), 'bleed-risk')

  it.each(['navy', 'red', 'heather-grey', 'black'])('%s polyester under white is a caution, never a stop', (colour) => {
    expect(bleed({ colour })).toBe('caution')
  })

  it('a sublimated body needs the test under any vinyl', () => {
    expect(bleed({ dye: 'sublimated' })).toBe('needs-test')
    expect(bleed({ dye: 'sublimated', colour: 'white' }, [vinyl('standard', 'black')])).toBe('needs-test')
  })

  it('white or cotton cloth, a dark vinyl and a blocker below give no risk', () => {
    expect(bleed({ colour: 'white' })).toBeNull()
    expect(bleed({ fibres: [{ fibre: 'cotton', percent: 100 }] })).toBeNull()
    expect(bleed({}, [vinyl('standard', 'black')])).toBeNull()
    expect(bleed({}, [vinyl('blocker', 'white'), vinyl('standard')])).toBeNull()
  })

  it('low-temperature vinyl that stays below 138 °C with the swing gives none either', () => {
    expect(bleed({}, [vinyl('low-temperature')])).toBeNull()
  })

  it('names the bleed test, a blocker and a low-temperature vinyl of the colour as ways out', () => {
    expect(waysOf(given({ garment: { fibres: polyester } }), 'bleed-risk')).toEqual([
      { way: 'bleed-test', subject: null, inStock: null },
      { way: 'blocker', subject: 'vinyl-blocker-white', inStock: 4_572_000 },
      { way: 'low-temperature-vinyl', subject: 'vinyl-low-temperature-white', inStock: 4_572_000 },
      { way: 'customer-signs', subject: null, inStock: null },
    ])
  })
})

describe('what sticks on what', () => {
  it.each(['glitter', 'flock', 'reflective'] as const)('nothing goes on %s (common practice)', (below) => {
    expect(severityOf(given({ layers: [vinyl(below), vinyl('standard', 'gold')] }), 'not-on-top')).toBe('stop')
  })

  it('standard takes standard and, as its sheet says so, stones', () => {
    expect(severityOf(given({ layers: [vinyl('standard'), vinyl('standard', 'gold')] }), 'not-on-top')).toBeNull()
    expect(severityOf(given({ layers: [vinyl('standard'), stone('SS10', 'solid')] }), 'not-on-top')).toBeNull()
  })

  it('stones beside glitter are fine, on glitter they are refused with the outline as a way out', () => {
    expect(severityOf(given({ layers: [vinyl('glitter'), stone('SS10')] }), 'not-on-top')).toBeNull()
    const on = given({ layers: [vinyl('glitter'), stone('SS10', 'solid')] })
    expect(severityOf(on, 'not-on-top')).toBe('stop')
    expect(waysOf(on, 'not-on-top')).toContainEqual({ way: 'outline-instead', subject: null, inStock: null })
  })

  it('three layers of vinyl are the most (common practice)', () => {
    const stack = (count: number) => Array.from({ length: count }, () => vinyl('standard'))
    expect(severityOf(given({ layers: stack(3) }), 'too-many-layers')).toBeNull()
    expect(severityOf(given({ layers: stack(4) }), 'too-many-layers')).toBe('caution')
  })
})

describe('cloth under the platen', () => {
  it('mesh is said to let glue through, fleece to take marks', () => {
    expect(severityOf(given({ garment: { knit: 'mesh' } }), 'perforated-cloth')).toBe('note')
    expect(severityOf(given({}), 'perforated-cloth')).toBeNull()
  })

  it.each([
    ['mesh', 'has holes', 'tiene agujeros'],
    ['unknown', 'Nobody has said', 'Nadie ha dicho'],
  ] as const)('holes are said of cloth somebody named alone; a pad goes inside all the same (%s)', (knit, english, spanish) => {
    const found = given({ garment: { knit } }).find(({ code }) => code === 'perforated-cloth')
    if (found === undefined) throw new Error('nothing was said')
    for (const [language, words] of [
      ['en', english],
      ['es', spanish],
    ] as const)
      expect(sayProblem(found, language, plainShow)).toContain(words)
    expect(sayProblem(found, 'en', plainShow)).toContain('pad goes inside')
    expect(/has holes:/.test(sayProblem(found, 'en', plainShow))).toBe(knit === 'mesh')
    expect(severityOf(given({ garment: { knit: 'fleece' } }), 'press-marks')).toBe('caution')
    expect(severityOf(given({}), 'press-marks')).toBeNull()
  })

  it('a fabric of the shop has its own record of what it is', () => {
    expect(starter.fabrics.find((fabric) => fabric.id === 'poly-mesh')).toMatchObject({ perforated: true, knit: 'mesh' })
  })
})
