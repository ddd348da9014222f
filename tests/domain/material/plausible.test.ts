import { describe, expect, it } from 'vitest'
import type { Vinyl, VinylClass } from '../../../src/domain/material/material.ts'
import { oddEntries } from '../../../src/domain/material/plausible.ts'
import { fromFahrenheit } from '../../../src/domain/units/units.ts'
import { glitter, stones, windowOf } from '../press/builders.ts'
import { starter } from '../press/workbench.ts'

/** A class's range in °F and s, as makers' public sheets give it. */
const ranges: readonly (readonly [VinylClass, number, number, number, number, string])[] = [
  ['standard', 305, 330, 10, 15, "makers' public sheets (quoted)"],
  ['glitter', 305, 340, 10, 20, "makers' public sheets (quoted)"],
  ['low-temperature', 266, 302, 10, 15, "makers' public sheets (quoted), seconds common practice"],
  ['stretch', 305, 320, 10, 20, 'common practice'],
  ['flock', 305, 330, 15, 20, 'common practice'],
]

const inside = (least: number, most: number) => ({ least, most, usual: least })

const record = (of: VinylClass, tenthsC: Vinyl['window']['tenthsC'], seconds: Vinyl['window']['seconds']): Vinyl =>
  glitter({ class: of, window: windowOf(tenthsC, seconds) })

const fields = (vinyl: Vinyl): readonly string[] => oddEntries(vinyl).map((odd) => odd.field)

describe('records against what makers publish', () => {
  it.each(ranges)('%s: %d-%d °F, %d-%d s (%s)', (...[of, leastF, mostF, leastS, mostS]) => {
    const [least, most] = [Math.ceil(((leastF - 32) * 50) / 9), Math.floor(((mostF - 32) * 50) / 9)]
    expect(fields(record(of, inside(least, most), inside(leastS, mostS)))).toEqual([])
    expect(fields(record(of, inside(least - 1, most), inside(leastS, mostS)))).toContain('window/tenthsC/least')
    expect(fields(record(of, inside(least, most + 1), inside(leastS, mostS)))).toContain('window/tenthsC/most')
    expect(fields(record(of, inside(least, most), inside(leastS - 1, mostS)))).toContain('window/seconds/least')
    expect(fields(record(of, inside(least, most), inside(leastS, mostS + 1)))).toContain('window/seconds/most')
  })

  it("hot-fix stones: 248-338 °F is 120-170 °C, 10-25 s from the face, 10-15 s inside (a maker's sheet, quoted)", () => {
    expect([fromFahrenheit(248), fromFahrenheit(338)]).toEqual([1200, 1700])
    const odd = (parts: Parameters<typeof stones>[0]): readonly string[] => oddEntries(stones(parts)).map((one) => one.field)
    expect(odd({})).toEqual([])
    expect(odd({ window: windowOf(inside(1199, 1700), inside(10, 25)) })).toContain('window/tenthsC/least')
    expect(odd({ window: windowOf(inside(1200, 1701), inside(10, 25)) })).toEqual(['window/tenthsC/most'])
    expect(odd({ window: windowOf(inside(1200, 1700), inside(9, 25)) })).toContain('window/seconds/least')
    expect(odd({ window: windowOf(inside(1200, 1700), inside(10, 26)) })).toEqual(['window/seconds/most'])
    expect(odd({ insideSeconds: { least: 9, most: 16 } })).toEqual(['insideSeconds/least', 'insideSeconds/most'])
  })

  it('trap: a page that gives 180-200 °C for hot-fix contradicts the 170 °C cap and is flagged', () => {
    const fields_ = oddEntries(stones({ window: windowOf({ least: 1800, most: 2000, usual: 1900 }, inside(10, 25)) }))
    expect(fields_.map((odd) => odd.field)).toEqual(['window/tenthsC/least', 'window/tenthsC/usual', 'window/tenthsC/most'])
  })

  it('says nothing about classes nobody has published', () => {
    expect(fields(record('puff', inside(900, 2400), inside(1, 90)))).toEqual([])
  })

  it('finds no implausible entry in the starter shop', () => {
    const odd = [...starter.vinyls, ...starter.stones].flatMap((material) =>
      oddEntries(material).map(({ field }) => `${material.id} ${field}`),
    )
    expect(odd).toEqual([])
  })
})
