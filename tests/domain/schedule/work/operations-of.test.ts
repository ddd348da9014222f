import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { stationsSchema } from '../../../../src/domain/schedule/book/station-records.ts'
import { loadPicture, narrowLoadPicture } from '../../../../src/domain/schedule/load/load-picture.ts'
import { inOrder } from '../../../../src/domain/schedule/timeline/model.ts'
import type { JobFacts } from '../../../../src/domain/schedule/work/job-facts.ts'
import { ratesSchema } from '../../../../src/domain/schedule/work/rates.ts'
import { jobFacts, operationsFor } from '../../../support/shop-books.ts'

const starter = (name: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../../templates/shop/${name}.json`, import.meta.url), 'utf8'))
const minutesOf = (facts: JobFacts, of: RegExp): number =>
  operationsFor(facts)
    .filter((one) => of.test(one.id))
    .reduce((sum, one) => sum + one.minutes, 0)

const stoned = jobFacts({
  templates: Array.from({ length: 10 }, () => ({ holes: 400 })),
  stones: { small: 0, usual: 15_000 },
  tapes: 24,
  sides: [{ side: 'back', family: 't160', garments: 12, plainPlaces: 2, twoColourPlaces: 0, stoned: true }],
})

describe('the operations of a job', () => {
  it('count in before anything is cut, and inspect last, cold', () => {
    const operations = operationsFor(jobFacts())
    expect(operations.map((one) => one.id)).toEqual([
      'count-in',
      'cut-vinyl-1',
      'weed-1-1',
      'first-piece',
      'press-1-1',
      'inspect-1',
    ])
    expect(operations.at(-1)?.after).toEqual([{ operation: 'press-1-1', lagMinutes: 30 }])
    expect(operations[1]?.after).toEqual([{ operation: 'count-in', lagMinutes: 0 }])
  })

  it('keep the first piece a day behind the bleed test', () => {
    const operations = operationsFor(jobFacts({ bleedTest: true, waterDrops: true }))
    expect(operations.find((one) => one.id === 'first-piece')?.after).toContainEqual({
      operation: 'bleed-test',
      lagMinutes: 1_440,
    })
  })

  it('cut templates and brush stones only for a job with stones', () => {
    expect(minutesOf(jobFacts(), /^(cut-templates|plugs|brush)/)).toBe(0)
    expect(minutesOf(stoned, /^cut-templates/)).toBe(100)
    expect(minutesOf(stoned, /^plugs/)).toBe(75)
    const brush = (15_000 / 150) * 1.2 + 24 * 2.5
    expect(Math.abs(minutesOf(stoned, /^brush/) - brush * 1.045)).toBeLessThanOrEqual(2)
  })

  it('share long stages between colleagues in equal batches', () => {
    const large = jobFacts({
      garments: 60,
      vinyl: [{ colour: 'white', names: 60, numbers: 120, marks: 0, glitter: true, over: false }],
    })
    const weeds = operationsFor(large).filter((one) => one.id.startsWith('weed-1-'))
    expect(weeds.length).toBeGreaterThan(3)
    expect(Math.max(...weeds.map((one) => one.minutes))).toBeLessThanOrEqual(150)
    expect(new Set(weeds.map((one) => one.minutes)).size).toBe(1)
  })

  it('ask a person who may do it at a station of the kind', () => {
    const press = operationsFor(jobFacts()).find((one) => one.id === 'press-1-1')
    expect(press?.needs).toEqual([
      ['press-1', 'press-2'],
      ['person-1', 'person-2', 'person-3', 'person-5'],
    ])
  })

  it('take longer for glitter, and less for a colour that lies on another', () => {
    const vinyl = (over: object) =>
      jobFacts({ vinyl: [{ colour: 'white', names: 12, numbers: 24, marks: 0, glitter: false, over: false, ...over }] })
    const plain = minutesOf(vinyl({}), /^weed/)
    expect(minutesOf(vinyl({ glitter: true }), /^weed/) / plain).toBeCloseTo(1.3, 1)
    expect(minutesOf(vinyl({ over: true }), /^weed/) / plain).toBeCloseTo(0.7, 1)
  })

  it('wait for one another without a circle', () => {
    const operations = operationsFor({
      ...stoned,
      waterDrops: true,
      bleedTest: true,
      testPress: true,
      coupon: true,
      proof: 'first',
    })
    expect(inOrder(operations).length).toBe(operations.length)
  })

  it('come from records of the starter shop that are well formed', () => {
    expect(ratesSchema.safeParse(starter('rates')).success).toBe(true)
    expect(stationsSchema.safeParse(starter('stations')).success).toBe(true)
  })
})

describe('the picture of the load', () => {
  it('shows each station and day with its share, and marks what is tight', () => {
    const load = [
      { station: 'press-1', day: '2026-08-03', busy: 540, open: 570 },
      { station: 'a<b', day: '2026-08-03', busy: 57, open: 570 },
    ]
    const due = [{ kind: 'press', day: '2026-08-05', due: 660, open: 600, percent: 110 }]
    const plain = (text: string): string => text
    const svg = loadPicture(load, due, {
      title: 'Load',
      dueTitle: 'Due',
      day: (day) => ['Mon', day],
      station: plain,
      kind: plain,
    })
    expect(svg).toContain('>110</text>')
    expect(svg).toContain('>95</text>')
    expect(svg).toContain('>10</text>')
    expect(svg).toContain('a&lt;b')
    expect(svg.match(/#eda46c/g)?.length).toBe(2)
  })

  it('is as narrow as a phone where a few days stand in a band, and says the same', () => {
    const days = Array.from({ length: 11 }, (_, n) => `2026-08-${String(n + 3).padStart(2, '0')}`)
    const load = days.flatMap((day, n) => [
      { station: 'press-1', day, busy: 57 * n, open: 570 },
      { station: 'bench-1', day, busy: 560 - n, open: 570 },
    ])
    const due = [{ kind: 'press', day: '2026-08-05', due: 660, open: 600, percent: 110 }]
    const plain = (text: string): string => text
    const dueTitle = 'Due by each day, in percent of what can be done by then'
    const words = { title: 'Load', dueTitle, day: (day: string) => ['Mon', day] as const, station: plain, kind: plain }
    const [wide, narrow] = [loadPicture(load, due, words), narrowLoadPicture(load, due, words)]
    const widthOf = (svg: string): number => Number(/width="(\d+)"/.exec(svg)?.[1])
    const figures = (svg: string) =>
      [...svg.matchAll(/text-anchor="middle" font-size="1[23]"[^>]*>([^<]+)</g)].map(([, one]) => one).sort()
    expect(widthOf(wide)).toBeGreaterThan(700)
    expect(widthOf(narrow)).toBeLessThanOrEqual(390)
    expect(figures(narrow)).toEqual(figures(wide))
    const titles = [...narrow.matchAll(/font-size="15"[^>]*>([^<]+)</g)].map(([, title = '']) => title)
    expect(titles.join(' ')).toBe(`Load ${dueTitle}`)
    expect(Math.max(...titles.map((title) => title.length))).toBeLessThanOrEqual(42)
    const height = Number(/height="(\d+)"/.exec(narrow)?.[1])
    const lowest = Math.max(...[...narrow.matchAll(/ y="(\d+)"/g)].map(([, y]) => Number(y)))
    expect(lowest).toBeLessThan(height)
  })
})
