import { describe, expect, it } from 'vitest'
import { makeLimit, makeSeats } from '../../../../src/adapters/chat/counter/limit.ts'

describe('a limit', () => {
  it('lets so many through at once, then so many a minute, for each key alone', () => {
    const clock = { at: 0 }
    const limit = makeLimit({ burst: 3, perMinute: 2 }, () => clock.at)
    expect([1, 2, 3, 4].map(() => limit.take('a'))).toEqual([true, true, true, false])
    expect(limit.take('b')).toBe(true)
    clock.at = 29_999
    expect(limit.take('a')).toBe(false)
    clock.at = 30_001
    expect(limit.take('a')).toBe(true)
    expect(limit.take('a')).toBe(false)
  })

  it('still refuses a busy key after very many others came by', () => {
    const limit = makeLimit({ burst: 1, perMinute: 1 }, () => 0)
    for (let n = 0; n < 9_000; n += 1) limit.take(`k${n}`)
    limit.take('busy')
    for (let n = 0; n < 2_000; n += 1) limit.take(`m${n}`)
    expect(limit.take('busy')).toBe(false)
  })
})

describe('seats', () => {
  it('are given until none is left, and again once one is free', () => {
    const seats = makeSeats(2)
    const first = seats.sit('a')
    expect(seats.sit('a')).not.toBeNull()
    expect(seats.sit('a')).toBeNull()
    expect(seats.sit('b')).not.toBeNull()
    first?.()
    expect(seats.sit('a')).not.toBeNull()
  })
})
