import { describe, expect, it } from 'vitest'
import { learnRate, rateFrom } from '../../../../src/domain/schedule/work/learn-rate.ts'

describe('a rate that learns', () => {
  it('comes to what the shop really takes', () => {
    const rate = Array.from({ length: 120 }).reduce<ReturnType<typeof rateFrom>>((now) => learnRate(now, 3), rateFrom(2))
    expect(rate.minutes).toBeGreaterThan(2.9)
    expect(rate.minutes).toBeLessThan(3.1)
  })

  it('is not thrown by one day that went wrong', () => {
    const usual = Array.from({ length: 30 }).reduce<ReturnType<typeof rateFrom>>((now) => learnRate(now, 2), rateFrom(2))
    expect(learnRate(usual, 90).minutes - usual.minutes).toBeLessThan(0.1)
  })

  it('stays where the owner froze it, and learns nothing from nothing', () => {
    const frozen = { ...rateFrom(2), frozen: true }
    expect(learnRate(frozen, 5)).toBe(frozen)
    expect(learnRate(rateFrom(2), 0)).toEqual(rateFrom(2))
  })
})
