import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as z from 'zod'
import type { Book } from '../../../../src/domain/schedule/book/operation.ts'
import { planModel } from '../../../../src/domain/schedule/search/plan.ts'
import { below, type Random, randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import type { Objective } from '../../../../src/domain/schedule/timeline/objective.ts'
import { slotsOf } from '../../../../src/domain/schedule/timeline/slots.ts'
import { verify } from '../../../../src/domain/schedule/verify/verify.ts'
import { flowShopBook, jobsBook, modelOf, objectives, taillardTimes } from '../../../support/scheduling.ts'
import { johnson, leastMakespan, leastTardiness, mooreHodgson, shortestFirst, smith } from './exact.reference.ts'

/** The general engine with nothing said but what to minimise. */
const solve = (book: Book, objective: Objective, budget = 3_000, keepsTurn = false): number => {
  const plan = planModel(modelOf(book), { seed: 1, budget, stop: () => false, objective, keepsTurn })
  expect(verify(book, slotsOf(plan.lines))).toEqual([])
  return plan.cost
}

const instances = process.env['LONG'] === undefined ? 25 : 1_000
const numbers = (random: Random, count: number, most: number): number[] =>
  Array.from({ length: count }, () => 1 + below(random, most))

const each = (seed: number, check: (random: Random) => { readonly found: number; readonly least: number }): void => {
  const random = randomFrom(seed)
  const missed: unknown[] = []
  for (let index = 0; index < instances; index += 1) {
    const answer = check(random)
    if (answer.found !== answer.least) missed.push({ index, ...answer })
  }
  expect(missed).toEqual([])
}

describe('the general engine on random instances', () => {
  it('reaches what Johnson 1954 proves best for two machines in a row', { timeout: 600_000 }, () => {
    each(1, (random) => {
      const jobs = 4 + below(random, 7)
      const [a, b] = [numbers(random, jobs, 30), numbers(random, jobs, 30)]
      return { found: solve(flowShopBook([a, b]), objectives.makespan), least: johnson(a, b) }
    })
  })

  it('leaves as few orders late as Moore and Hodgson 1968', { timeout: 600_000 }, () => {
    each(2, (random) => {
      const p = numbers(random, 5 + below(random, 8), 20)
      const d = p.map(() => 1 + below(random, 110))
      return { found: solve(jobsBook({ p, d }), objectives.lateOrders), least: mooreHodgson(p, d) }
    })
  })

  it('reaches the weighted completions of Smith 1956', { timeout: 600_000 }, () => {
    each(3, (random) => {
      const p = numbers(random, 5 + below(random, 8), 30)
      const w = numbers(random, p.length, 10)
      return { found: solve(jobsBook({ p, w }), objectives.completion), least: smith(p, w) }
    })
  })

  it('reaches the completions of shortest-work-first on three machines', { timeout: 600_000 }, () => {
    each(4, (random) => {
      const p = numbers(random, 5 + below(random, 8), 30)
      return { found: solve(jobsBook({ p }, 3), objectives.completion), least: shortestFirst(p, 3) }
    })
  })

  it('reaches the weighted tardiness of dynamic programming over subsets', { timeout: 600_000 }, () => {
    each(5, (random) => {
      const p = numbers(random, 6 + below(random, 5), 20)
      const w = numbers(random, p.length, 10)
      const d = p.map(() => below(random, 90))
      return { found: solve(jobsBook({ p, w, d }), objectives.tardiness), least: leastTardiness(p, w, d) }
    })
  })
})

const exampleSchema = z.strictObject({
  id: z.string(),
  problem: z.string(),
  p: z.union([z.array(z.number()), z.array(z.array(z.number()))]),
  w: z.array(z.number()).optional(),
  d: z.array(z.number()).optional(),
  optimum: z.number(),
  order: z.array(z.number()).optional(),
  identity_value: z.number().optional(),
  mark: z.string(),
})
const file = new URL('../../../fixtures/textbook/scheduling.json', import.meta.url)
const examples = z.array(exampleSchema).parse(JSON.parse(readFileSync(file, 'utf8')))

const rowsOf = (p: readonly number[] | readonly number[][]): number[][] =>
  p.flatMap((row) => (typeof row === 'number' ? [] : [row]))
const rowOf = (p: readonly number[] | readonly number[][]): number[] => p.flatMap((one) => (typeof one === 'number' ? [one] : []))

/** Textbook examples: Johnson 1954; Moore 1968; in the style of Pinedo. Optima by enumeration. */
describe.each(examples)('the textbook example $id ($problem)', (example) => {
  it('is solved to its optimum', () => {
    if (example.problem.startsWith('F')) {
      const rows = rowsOf(example.p)
      expect(leastMakespan(rows)).toBe(example.optimum)
      expect(solve(flowShopBook(rows), objectives.makespan, 1_500, true)).toBe(example.optimum)
      return
    }
    const jobs = { p: rowOf(example.p), ...(example.w ? { w: example.w } : {}), ...(example.d ? { d: example.d } : {}) }
    const objective = example.problem.includes('sumU') ? objectives.lateOrders : objectives.tardiness
    expect(solve(jobsBook(jobs), objective, 1_500)).toBe(example.optimum)
  })
})

const numbersIn = (name: string): number[] =>
  readFileSync(new URL(`../../../fixtures/wt/${name}`, import.meta.url), 'utf8')
    .split(/\s+/)
    .filter((word) => word !== '')
    .map(Number)

describe('published instances', () => {
  it('of OR-Library wt40 are solved to the published value, some of them', () => {
    const values = numbersIn('wt40.txt')
    const optima = numbersIn('wtopt40.txt')
    for (let index = 4; index < 125; index += 40) {
      const part = (from: number): number[] => values.slice(index * 120 + from, index * 120 + from + 40)
      const book = jobsBook({ p: part(0), w: part(40), d: part(80) })
      expect([index, solve(book, objectives.tardiness, 70_000)]).toEqual([index, optima[index]])
    }
  })

  it('of Taillard come from his generator, and a permutation flow shop lets nobody overtake', () => {
    const instanceSchema = z.looseObject({ seed: z.int(), p: z.array(z.array(z.int())), best_known: z.int() })
    const taillard = new URL('../../../fixtures/taillard/ta001-010.json', import.meta.url)
    const all = z.array(instanceSchema).parse(JSON.parse(readFileSync(taillard, 'utf8')))
    for (const one of all) expect(taillardTimes(20, 5, one.seed)).toEqual(one.p)
    const first = all[2]
    const found = solve(flowShopBook(first?.p ?? []), objectives.makespan, 35_000, true)
    expect(found).toBeGreaterThanOrEqual(first?.best_known ?? 0)
    expect(found).toBeLessThanOrEqual((first?.best_known ?? 0) * 1.01)
  })
})
