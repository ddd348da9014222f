import { describe, expect, test } from 'vitest'
import { consume } from '../../../src/domain/stock/allot.ts'
import { lacking, type Need, pileOf, type StockChange } from '../../../src/domain/stock/ledger.ts'

const needs: readonly Need[] = [
  { orderId: 'soon', item: 'stone', amount: 40, due: 100 },
  { orderId: 'late', item: 'stone', amount: 60, due: 900 },
  { orderId: 'here', item: 'stone', amount: 70, due: 500 },
]

const shelf: readonly StockChange[] = [
  { item: 'stone', lot: 'a', amount: 100, kind: 'arrive', orderId: null },
  { item: 'stone', lot: 'a', amount: -40, kind: 'reserve', orderId: 'soon' },
  { item: 'stone', lot: 'a', amount: -60, kind: 'reserve', orderId: 'late' },
]

describe('what an order used', () => {
  test('comes out of what others hold when nothing is free, the last due first, and nothing is made up', () => {
    const after = [...shelf, ...consume(shelf, needs, { orderId: 'here', item: 'stone', amount: 70 })]
    expect(pileOf(after, 'stone')).toEqual({ free: 0, reserved: 30, used: 70, received: 100, writtenOff: 0 })
    expect(needs.slice(0, 2).map((need) => lacking(after, need))).toEqual([10, 60])
  })

  test('is found on the shelf when the books had less than the hand', () => {
    const after = [...shelf, ...consume(shelf, needs, { orderId: 'here', item: 'stone', amount: 105 })]
    expect(pileOf(after, 'stone')).toEqual({ free: 0, reserved: 0, used: 105, received: 105, writtenOff: 0 })
  })
})
