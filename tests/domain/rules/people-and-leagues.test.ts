import { describe, expect, it } from 'vitest'
import type { Decoration, Row } from '../../../src/domain/order/order.ts'
import { contrastRatio } from '../../../src/domain/rules/contrast.ts'
import { decoration } from '../../support/orders.ts'
import { given, severityOf, stone, vinyl, waysOf } from './one-order.ts'

const aged = (age: Row['age'], parts: Partial<Row> = {}) => [{ age, ...parts }]

describe('children and stones (15 U.S.C. 1278a, read; 16 CFR 1501 and 1120, quoted)', () => {
  it('under three no stones, whatever the size; from three on they may', () => {
    expect(severityOf(given({ layers: [stone('SS10')], rows: aged('under-3', { size: 'L' }) }), 'stones-under-three')).toBe(
      'stop',
    )
    expect(severityOf(given({ layers: [stone('SS10')], rows: aged('3-12') }), 'stones-under-three')).toBeNull()
    expect(severityOf(given({ layers: [vinyl('glitter')], rows: aged('under-3') }), 'stones-under-three')).toBeNull()
  })

  it('twelve or younger no leaded crystal, thirteen and up may', () => {
    expect(severityOf(given({ layers: [stone('SS16')], rows: aged('3-12', { size: 'S' }) }), 'leaded-stones-child')).toBe('stop')
    expect(
      severityOf(given({ layers: [stone('SS16')], rows: aged('13-up', { fit: 'youth', size: 'S' }) }), 'leaded-stones-child'),
    ).toBeNull()
    expect(severityOf(given({ layers: [stone('SS10')], rows: aged('3-12') }), 'leaded-stones-child')).toBeNull()
  })

  it('lead-free stones want the certificate of their lot on children’s wear', () => {
    const missing = given({ layers: [stone('SS20')], rows: aged('3-12') })
    expect(severityOf(missing, 'certificate-missing')).toBe('needs-test')
    expect(missing.find((problem) => problem.code === 'certificate-missing')?.facts).toMatchObject({
      lot: 'SS20-2601',
      lines: [1],
    })
    expect(severityOf(given({ layers: [stone('SS10')], rows: aged('3-12') }), 'certificate-missing')).toBeNull()
    expect(severityOf(given({ layers: [stone('SS20')], rows: aged('13-up') }), 'certificate-missing')).toBeNull()
  })

  it('an unknown age is asked: a caution, and first of all where the cut is a child’s or the stones are leaded', () => {
    expect(severityOf(given({ layers: [stone('SS10')], rows: aged('unknown') }), 'age-unknown')).toBe('caution')
    expect(
      severityOf(given({ layers: [stone('SS10')], rows: aged('unknown', { fit: 'toddler', size: '2T' }) }), 'age-unknown'),
    ).toBe('needs-test')
    expect(severityOf(given({ layers: [stone('SS16')], rows: aged('unknown') }), 'age-unknown')).toBe('needs-test')
    expect(severityOf(given({ rows: aged('unknown') }), 'age-unknown')).toBeNull()
  })

  it('only the rows that wear the stones count', () => {
    const rows = [{ age: '13-up' as const }, { age: 'under-3' as const, without: ['back-number'], number: '2' }]
    expect(severityOf(given({ layers: [stone('SS10')], rows }), 'stones-under-three')).toBeNull()
  })

  it('children’s wear is noted with what the law wants of the seller', () => {
    expect(severityOf(given({ rows: aged('3-12') }), 'childrens-wear')).toBe('note')
    expect(severityOf(given({ rows: aged('13-up') }), 'childrens-wear')).toBeNull()
  })

  it('strings at hood or neck of a child’s garment are not pressed; a hood is looked into first', () => {
    expect(severityOf(given({ garment: { features: ['hood', 'strings'] }, rows: aged('3-12') }), 'strings-on-child')).toBe('stop')
    expect(severityOf(given({ garment: { features: ['hood'] }, rows: aged('3-12') }), 'strings-on-child')).toBe('needs-test')
    expect(severityOf(given({ garment: { features: ['hood', 'strings'] }, rows: aged('13-up') }), 'strings-on-child')).toBeNull()
    for (const features of [['hood' as const], ['hood' as const, 'strings' as const]]) {
      const young = given({ garment: { features }, rows: aged('unknown', { fit: 'youth' }) })
      expect(severityOf(young, 'strings-on-child')).toBe('needs-test')
      expect(severityOf(given({ garment: { features }, rows: aged('unknown') }), 'strings-on-child')).toBeNull()
    }
  })
})

describe('limits of the law, as the findings carry them', () => {
  it('100 ppm lead: 15 U.S.C. 1278a (read)', () => {
    const leaded = given({ layers: [stone('SS16')], rows: aged('3-12') })
    expect(leaded.find((problem) => problem.code === 'leaded-stones-child')?.facts).toMatchObject({ leadPpmMost: 100 })
  })

  it('0.5 µg/cm² nickel a week and 0.05 % lead in parts that can be mouthed: REACH XVII 27 and 63 (quoted)', () => {
    const missing = given({ layers: [stone('SS20')], rows: aged('3-12') })
    const facts = missing.find((problem) => problem.code === 'certificate-missing')?.facts
    expect(facts).toMatchObject({ nickelNanogramsMost: 500, leadInMouthablePpmMost: 500 })
  })

  it('every stone of the scale up to SS48 fits the small-parts cylinder of 16 CFR 1501 (computed; SS48 is 11 mm, from memory)', () => {
    const small = given({ layers: [stone('SS10')], rows: aged('under-3') }).find(
      (problem) => problem.code === 'stones-under-three',
    )
    expect(small?.facts['smallPartsMicrometres']).toBeGreaterThan(11_000)
  })
})

describe('game wear', () => {
  const game = (rulebook: string, layers: NonNullable<Parameters<typeof given>[0]['layers']>) =>
    given({ layers, order: { use: 'game', rulebook } })

  it('stones on a game jersey: ask your league in writing (common practice)', () => {
    expect(severityOf(game('nfhs-football', [stone('SS10')]), 'stones-on-game-wear')).toBe('caution')
    expect(severityOf(given({ layers: [stone('SS10')] }), 'stones-on-game-wear')).toBeNull()
  })

  it('UEFA (2024, read) bans what reflects; elsewhere it is not banned', () => {
    expect(severityOf(game('uefa-soccer', [vinyl('reflective')]), 'reflective-banned')).toBe('stop')
    expect(severityOf(game('uefa-soccer', [vinyl('standard')]), 'reflective-banned')).toBeNull()
    expect(severityOf(game('nfhs-football', [vinyl('reflective')]), 'reflective-banned')).toBeNull()
  })

  it('NFHS baseball and softball (2016) have a clause on reflective ornaments', () => {
    expect(severityOf(game('nfhs-baseball', [stone('SS10')]), 'ornaments-clause')).toBe('caution')
    expect(severityOf(game('nfhs-softball', [vinyl('reflective')]), 'ornaments-clause')).toBe('caution')
    expect(severityOf(game('nfhs-baseball', [vinyl('standard')]), 'ornaments-clause')).toBeNull()
  })

  it('NFHS football (2024, quoted) wants one solid colour: glitter and stone-filled bodies are asked about', () => {
    expect(severityOf(game('nfhs-football', [vinyl('glitter')]), 'body-not-solid')).toBe('caution')
    expect(severityOf(game('nfhs-football', [stone('SS10', 'solid')]), 'body-not-solid')).toBe('caution')
    expect(severityOf(game('nfhs-football', [vinyl('standard'), stone('SS10')]), 'body-not-solid')).toBeNull()
    expect(severityOf(game('ncaa-football', [vinyl('glitter')]), 'body-not-solid')).toBeNull()
  })

  it('NFHS basketball (2013-14, quoted) takes three colours at most', () => {
    const bordered = (colours: readonly string[]) => colours.map((colour) => vinyl('standard', colour))
    expect(severityOf(game('nfhs-basketball', bordered(['white', 'gold', 'black'])), 'too-many-colours')).toBeNull()
    expect(severityOf(game('nfhs-basketball', bordered(['white', 'gold', 'black', 'red'])), 'too-many-colours')).toBe('stop')
  })

  it('a place that must carry the number is missed only where numbers are put on at all', () => {
    expect(severityOf(game('nfhs-football', [vinyl('standard')]), 'place-missing')).toBe('caution')
    const names = given({
      decoration: { place: 'name', content: { kind: 'name' } },
      order: { use: 'game', rulebook: 'nfhs-football' },
    })
    expect(severityOf(names, 'place-missing')).toBeNull()
  })

  it('a game without a rule book is said', () => {
    expect(severityOf(given({ order: { use: 'game' } }), 'no-rulebook')).toBe('note')
    expect(severityOf(given({}), 'no-rulebook')).toBeNull()
  })

  it('numbers that are hard to see are cautioned: 3 : 1 after W3C, WCAG 2.1', () => {
    expect(contrastRatio('#000000', '#ffffff')).toBeCloseTo(21, 6)
    expect(contrastRatio('#777777', '#777777')).toBe(1)
    const seen = (colour: string, body: string) =>
      severityOf(
        given({ garment: { colour }, layers: [vinyl('standard', body)], order: { use: 'game', rulebook: 'nfhs-soccer' } }),
        'low-contrast',
      )
    expect(seen('navy', 'white')).toBeNull()
    expect(seen('navy', 'black')).toBe('caution')
  })
})

describe('what fits', () => {
  const wide = (widthMicrometres: number) =>
    given({
      facts: {
        extents: [
          {
            decoration: 'back-number',
            line: 1,
            text: '1',
            widthMicrometres,
            heightMicrometres: 200_000,
            aboveMicrometres: 0,
            strokeMicrometres: null,
            freeWidthMicrometres: 300_000,
          },
        ],
      },
    })

  it('a number as wide as the free cloth fits, one µm more does not, and smaller is a way out', () => {
    expect(severityOf(wide(300_000), 'wider-than-free')).toBeNull()
    expect(severityOf(wide(300_001), 'wider-than-free')).toBe('stop')
    expect(waysOf(wide(300_001), 'wider-than-free')).toContainEqual({ way: 'smaller', subject: null, inStock: null })
  })

  it('two decorations that run into each other are said', () => {
    const both = (place: 'nape' | 'front-number') =>
      given({ order: { decorations: [{ ...decorationOf('one', 'name') }, { ...decorationOf('two', place) }] } })
    expect(severityOf(both('nape'), 'places-collide')).toBeNull()
    const twice = given({ order: { decorations: [decorationOf('one', 'back-number'), decorationOf('two', 'back-number')] } })
    expect(severityOf(twice, 'places-collide')).toBe('caution')
  })

  it('accents stand above the place of a name, tails hang below it: only tails run into the number', () => {
    const tall = (aboveMicrometres: number) => {
      const extent = {
        line: 1,
        text: 'Íñiguez',
        widthMicrometres: 200_000,
        strokeMicrometres: null,
        freeWidthMicrometres: 300_000,
      }
      return given({
        order: { decorations: [decorationOf('one', 'name'), decorationOf('two', 'back-number')] },
        facts: {
          extents: [
            { ...extent, decoration: 'one', heightMicrometres: 140_000, aboveMicrometres },
            { ...extent, decoration: 'two', heightMicrometres: 200_000, aboveMicrometres: 0 },
          ],
        },
      })
    }
    expect(severityOf(tall(76_500), 'places-collide')).toBeNull()
    expect(severityOf(tall(0), 'places-collide')).toBe('caution')
  })
})

const decorationOf = (id: string, place: 'name' | 'nape' | 'front-number' | 'back-number'): Decoration =>
  decoration({ id, place, layers: [vinyl('standard')] })
