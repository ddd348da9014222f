import { describe, expect, it } from 'vitest'
import { namesIn } from '../bench/served/boundary.ts'
import { meter } from '../bench/served/meter.ts'

/** A clock that goes on by itself a little with each look, and by hand. */
const handClock = (perLook: number) => {
  const state = { now: 0 }
  const spend = (microseconds: number): void => {
    state.now += microseconds
  }
  const clock = (): number => {
    spend(perLook)
    return state.now
  }
  return { clock, spend }
}

type Hearing = { readonly hear: (microseconds: number) => number }

const shopOf = (perLook: number) => {
  const { clock, spend } = handClock(perLook)
  const { metered, start, stop } = meter(clock)
  const read = metered((microseconds: number) => spend(microseconds)) as (microseconds: number) => void
  const hear = metered((microseconds: number): number => {
    read(microseconds)
    spend(microseconds)
    return microseconds
  }) as Hearing['hear']
  const open = metered((): Hearing => ({ hear: (microseconds) => hear(microseconds) })) as () => Hearing
  return { spend, read, hear, open, start, stop, metered }
}

describe('a meter', () => {
  it('has what was spent within calls from outside, and none of what was spent between them', () => {
    const { spend, read, hear, start, stop } = shopOf(0)
    start()
    hear(100)
    spend(1_000)
    read(7)
    expect(stop()).toEqual({ calls: 2, spent: 207 })
  })

  it('takes off what its own looks at the clock cost', () => {
    const { hear, start, stop } = shopOf(3)
    start()
    for (let nth = 0; nth < 50; nth += 1) hear(10)
    expect(stop().calls).toBe(50)
    hear(10)
    start()
    hear(10)
    const { spent } = stop()
    expect(spent).toBeCloseTo(20, 6)
  })

  it('meters what a metered function answers: functions, and those of a plain object', () => {
    const { open, spend, start, stop } = shopOf(0)
    const { hear } = open()
    start()
    expect(hear(30)).toBe(30)
    spend(500)
    expect(stop()).toEqual({ calls: 1, spent: 60 })
  })

  it('counts a call that throws, and goes on', () => {
    const { metered, spend, hear, start, stop } = shopOf(0)
    const fails = metered(() => {
      spend(40)
      throw new Error('refused')
    }) as () => never
    start()
    expect(fails).toThrow('refused')
    hear(5)
    expect(stop()).toEqual({ calls: 2, spent: 50 })
  })

  it('leaves alone what is no function, and reads nothing before it is started', () => {
    const { metered, hear, start, stop } = shopOf(0)
    const table = { widths: [1, 2] }
    expect(metered(table)).toBe(table)
    expect(metered('word')).toBe('word')
    hear(100)
    start()
    expect(stop()).toEqual({ calls: 0, spent: 0 })
  })
})

describe('the names of a built module', () => {
  it('are its constants', () => {
    expect(namesIn(`import x from 'y';\nexport const one = 1;\nconst two = 2;\nexport const three = () => two;\n`)).toEqual([
      'one',
      'three',
    ])
    expect(namesIn('export {};')).toEqual([])
  })

  it.each([
    'export function four() {}',
    'export default 5',
    "export * from './six.js'",
    'export { seven }',
    'export const { eight } = nine',
  ])('are refused in %s', (source) => {
    expect(() => namesIn(`export const one = 1;\n${source};\n`)).toThrow('not a constant')
  })
})
