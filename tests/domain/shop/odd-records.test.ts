import { expect, it } from 'vitest'
import { oddRecords } from '../../../src/domain/shop/odd-records.ts'
import type { Shop } from '../../../src/domain/shop/shop.ts'
import { showFor } from '../../../src/domain/shop/show.ts'
import { sayProblem } from '../../../templates/replies/say.ts'
import { starterShop } from '../understanding/starter-shop.ts'

const starter = await starterShop()

const withSlip = (shop: Shop): Shop => ({
  ...shop,
  stones: shop.stones.map((stone, index) =>
    index === 2 ? { ...stone, window: { ...stone.window, tenthsC: { least: 1200, most: 2000, usual: 1683 } } } : stone,
  ),
})

it('finds nothing odd in the starter shop', () => {
  expect(oddRecords(starter)).toEqual([])
})

it('names file, record and field of an entry outside the trade’s ranges, as a caution', () => {
  expect(oddRecords(withSlip(starter))).toEqual([
    expect.objectContaining({
      code: 'implausible-record',
      severity: 'caution',
      at: 'stones.json#/2/window/tenthsC/most',
      facts: expect.objectContaining({ material: 'stone-ss6-gold', value: 2000, least: 1200, most: 1700 }),
    }),
  ])
})

it('says it in the shop’s own unit', () => {
  const shop = withSlip(starter)
  const [odd] = oddRecords(shop)
  if (odd === undefined) throw new Error('nothing odd')
  expect(sayProblem(odd, 'en', showFor(shop, 'en'))).toContain('gives 392 °F (window/tenthsC/most)')
  expect(sayProblem(odd, 'es', showFor(shop, 'es'))).toContain('392 °F')
})
