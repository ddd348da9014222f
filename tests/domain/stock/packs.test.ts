import * as fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { packsFor } from '../../../src/domain/stock/packs.ts'
import { packsByTrying } from './packs.reference.ts'

/** Common practice: stones are sold in packs of 1, 2, 5, 10 and 100 gross. */
const usual = [1, 2, 5, 10, 100]
const sum = (packs: readonly number[]): number => packs.reduce((total, pack) => total + pack, 0)

describe('packs to order', () => {
  test('cover the need with whole packs, the largest first', () => {
    expect(packsFor(53, usual)).toEqual([10, 10, 10, 10, 10, 2, 1])
    expect(packsFor(300, usual)).toEqual([100, 100, 100])
    expect(packsFor(0, usual)).toEqual([])
  })

  test('leave as little over as the sizes allow', () => {
    expect(packsFor(8, [5])).toEqual([5, 5])
    expect(packsFor(9, [4, 7])).toEqual([7, 4])
    expect(packsFor(8, [4, 7])).toEqual([4, 4])
  })

  test('are none better than what trying everything finds', () => {
    const sizes = fc.uniqueArray(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 4 })
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), sizes, (needed, offered) => {
        const packs = packsFor(needed, offered)
        const best = packsByTrying(needed, offered)
        expect([sum(packs), packs.length]).toEqual([best.total, best.count])
      }),
    )
  })
})
