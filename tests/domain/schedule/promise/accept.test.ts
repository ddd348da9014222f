import { expect, it } from 'vitest'
import { promise } from '../../../../src/domain/schedule/promise/promise.ts'
import { floorOf } from '../../../../src/domain/schedule/reserve/floor.ts'
import { budgetFor, planModel } from '../../../../src/domain/schedule/search/plan.ts'
import { randomFrom } from '../../../../src/domain/schedule/search/random.ts'
import { completionOf } from '../../../../src/domain/schedule/timeline/fit.ts'
import { lateWeight } from '../../../../src/domain/schedule/timeline/objective.ts'
import { minutes } from '../../../../src/domain/units/units.ts'
import { modelOf } from '../../../support/scheduling.ts'
import { minutesOfWork, randomOrder, shopBook } from '../../../support/shop-books.ts'

const long = process.env['LONG'] !== undefined
const orders = long ? 500 : 40
const requests = long ? 200 : 12
/** What a machine of our day searches in two seconds. */
const effort = { seed: 1, budget: budgetFor(long ? 2 : 0.2), stop: () => false }
const reachOf = (load: number): number => minutesOfWork(shopBook(orders, 1, 1_000).book, 2.6 * load)

it('accepts nearly everything that a search of two seconds accepts', { timeout: 3_600_000 }, () => {
  const { shop, book } = shopBook(orders, 2, reachOf(0.9))
  const { lines } = planModel(modelOf(book), { ...effort, budget: effort.budget / 2 })
  const floor = floorOf(lines)
  const kept = book.orders.map((order, index) => ({
    ...order,
    promised: minutes(Math.max(order.needBy, completionOf(lines, index))),
  }))
  const random = randomFrom(9)
  let ladder = 0
  let search = 0
  for (let index = 0; index < requests; index += 1) {
    const order = randomOrder(shop, random, { id: `asked-${index}`, within: reachOf(1) })
    const asked = promise(floor, order)
    if (!asked.ok || asked.value.alone) continue
    if (asked.value.feasible) ladder += 1
    else if (lateWeight(planModel(modelOf({ ...book, orders: [...kept, order] }), effort).lines) === 0) search += 1
  }
  console.info(`accepted ${ladder}, found by search alone ${search}`)
  expect(ladder).toBeGreaterThan(0)
  expect(ladder / (ladder + search)).toBeGreaterThanOrEqual(0.97)
})
