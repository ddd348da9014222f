import { describe, expect, it } from 'vitest'
import { fibreLimits, ironTenthsC } from '../../../src/domain/garment/fibre-limits.ts'
import { type Fibre, fibresSchema } from '../../../src/domain/garment/garment.ts'

const of = (fibre: Fibre) => fibreLimits.find((limit) => limit.fibre === fibre)

describe('what heat does to fibres', () => {
  it.each([
    ['polypropylene turns stiff from 120 °C (quoted)', 'polypropylene', 1200, 'quoted'],
    ['acrylic degrades above 150 °C (quoted)', 'acrylic', 1500, 'quoted'],
    ['elastane is harmed above 180 °C (quoted)', 'elastane', 1800, 'quoted'],
    ['PET melts at about 250 °C (quoted)', 'polyester', 2500, 'quoted'],
    ['nylon 6 melts from 213 °C (from memory)', 'nylon', 2130, 'memory'],
  ] as const)('%s', (_source, fibre, cap, mark) => {
    expect(of(fibre)).toMatchObject({ capTenthsC: cap, mark })
  })

  it('only polypropylene is a hard stop at any transfer temperature', () => {
    expect(fibreLimits.filter((limit) => limit.never).map((limit) => limit.fibre)).toEqual(['polypropylene'])
  })

  it('no limit from memory is ever a hard one', () => {
    expect(fibreLimits.filter((limit) => limit.mark === 'memory').every((limit) => !limit.never)).toBe(true)
  })

  it.each([
    [1, 1100],
    [2, 1500],
    [3, 2000],
  ] as const)('an iron of %d dots is %d tenths of °C (ISO 3758, 2012 edition, quoted)', (dots, tenths) => {
    expect(ironTenthsC[dots]).toBe(tenths)
  })

  it('every fibre on the list has its source', () => {
    expect(fibreLimits.every((limit) => /\((quoted|from memory)\)$/.test(limit.source))).toBe(true)
  })
})

describe('a content label', () => {
  it('adds up to 100 per cent', () => {
    const label = (cotton: number, polyester: number) => [
      { fibre: 'cotton', percent: cotton },
      { fibre: 'polyester', percent: polyester },
    ]
    expect(fibresSchema.safeParse(label(60, 40)).success).toBe(true)
    expect(fibresSchema.safeParse(label(60, 39)).success).toBe(false)
    expect(fibresSchema.safeParse('unknown').success).toBe(true)
  })
})
