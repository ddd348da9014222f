import { describe, expect, it } from 'vitest'
import { type Found, gateStates } from '../../../src/domain/press/gate-state.ts'
import type { Gate } from '../../../src/domain/press/press-plan.ts'

const day = 1_440
const gate: Gate = { code: 'bleed-test', garment: 'home', subject: 'home', blocks: 'pressing', waitMinutes: day }
type Seen = readonly [result: 'pressed' | 'clean' | 'bled' | 'skipped', at: number]

const stateAfter = (seen: readonly Seen[], now: number) => {
  const found = seen.map(([result, at]): Found => ({ code: 'bleed-test', by: 'Noor', at, garment: 'home', result }))
  const [state] = gateStates([gate], found, now)
  return [state?.is, state?.why, state?.lookAt]
}

describe('a bleed test after dye came through once', () => {
  it.each<readonly [string, readonly Seen[], number, readonly unknown[]]>([
    [
      'is shut while nothing else was pressed',
      [
        ['pressed', 0],
        ['bled', day],
      ],
      day + 1,
      ['shut', 'bled', null],
    ],
    [
      'waits anew from the piece that was pressed afterwards',
      [
        ['pressed', 0],
        ['bled', day],
        ['pressed', day + 60],
      ],
      day + 61,
      ['closed', 'waits', 2 * day + 60],
    ],
    [
      'is not clean before that wait is over',
      [
        ['pressed', 0],
        ['bled', day],
        ['pressed', day + 60],
        ['clean', day + 90],
      ],
      day + 91,
      ['closed', 'waits', 2 * day + 60],
    ],
    [
      'is clean after it',
      [
        ['pressed', 0],
        ['bled', day],
        ['pressed', day + 60],
        ['clean', 2 * day + 60],
      ],
      2 * day + 61,
      ['open', 'passed', null],
    ],
    [
      'is not clean without another piece',
      [
        ['pressed', 0],
        ['bled', day],
        ['clean', day + 1],
      ],
      day + 2,
      ['shut', 'bled', null],
    ],
    [
      'is not skipped',
      [
        ['pressed', 0],
        ['bled', day],
        ['skipped', day + 1],
      ],
      day + 2,
      ['shut', 'bled', null],
    ],
    [
      'is not skipped while another piece waits',
      [
        ['bled', day],
        ['pressed', day + 60],
        ['skipped', day + 61],
      ],
      day + 62,
      ['closed', 'waits', 2 * day + 60],
    ],
  ])('%s', (_, seen, now, state) => expect(stateAfter(seen, now)).toEqual(state))

  it.each<readonly [string, readonly Seen[], number, readonly unknown[]]>([
    [
      'counts from its first pressing where it was written down twice',
      [
        ['pressed', 0],
        ['pressed', 30],
        ['clean', day],
      ],
      day + 1,
      ['open', 'passed', null],
    ],
    ['may be skipped where none was seen to bleed', [['skipped', 5]], 6, ['open', 'skipped', null]],
  ])('a test without it %s', (_, seen, now, state) => expect(stateAfter(seen, now)).toEqual(state))
})
