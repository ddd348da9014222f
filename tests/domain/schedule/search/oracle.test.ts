import { expect, it } from 'vitest'
import type { Book } from '../../../../src/domain/schedule/book/operation.ts'
import { budgetFor, planModel } from '../../../../src/domain/schedule/search/plan.ts'
import { below, type Random, randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { bookOrder, machine, modelOf, objectives, operation } from '../../../support/scheduling.ts'
import { leastTardinessOf } from './oracle.reference.ts'

/** Cutter, then a bench of two, then the press; garments arrive at different times. */
const smallBook = (random: Random, orders: number): Book => ({
  now: minutes(0),
  stations: ['cutter', 'bench-1', 'bench-2', 'press'].map((id) => machine(id)),
  orders: Array.from({ length: orders }, (_, index) => {
    const wait = (name: string) => [{ operation: name, lagMinutes: below(random, 3) * 5 }]
    return bookOrder(`o${index}`, {
      needBy: minutes(20 + below(random, 90)),
      weight: 1 + below(random, 5),
      operations: [
        operation('cut', { minutes: 3 + below(random, 12), needs: [['cutter']], release: minutes(below(random, 30)) }),
        operation('weed', { minutes: 5 + below(random, 25), needs: [['bench-1', 'bench-2']], after: wait('cut') }),
        operation('press', { minutes: 4 + below(random, 15), needs: [['press']], after: wait('weed') }),
      ],
    })
  }),
})

/** The solver takes seconds for a book of seven orders and up to three minutes for one of eight. */
const sizes: readonly number[] =
  process.env['LONG'] === undefined
    ? Array(6).fill(4)
    : [...Array(20).fill(5), ...Array(20).fill(6), ...Array(20).fill(7), ...Array(10).fill(8)]

it('finds the least weighted tardiness of small books nearly always, as an exact solver proves', {
  timeout: 3_600_000,
}, async () => {
  const random = randomFrom(21)
  const missed: unknown[] = []
  for (const orders of sizes) {
    const book = smallBook(random, orders)
    const plan = planModel(modelOf(book), { seed: 1, budget: budgetFor(1), stop: () => false, objective: objectives.tardiness })
    const least = await leastTardinessOf(book)
    expect(plan.cost).toBeGreaterThanOrEqual(least)
    if (plan.cost > least) missed.push({ orders, found: plan.cost, least })
  }
  console.info(`${sizes.length - missed.length} of ${sizes.length} optimal`, missed)
  expect(missed.length / sizes.length).toBeLessThanOrEqual(0.03)
})
