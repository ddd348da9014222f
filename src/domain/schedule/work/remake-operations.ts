import type { Minutes } from '../../units/units.ts'
import type { Operation } from '../book/operation.ts'

/** The stages a garment goes through again, by the beginning of their operations' names. */
const stages = [
  { id: 'cut', of: /^cut-vinyl/ },
  { id: 'bench', of: /^(weed|brush)/ },
  { id: 'press', of: /^press-/ },
  { id: 'inspect', of: /^inspect/ },
] as const

/** What of a garment is made once more. */
export type RemakeWork = {
  /** Names the remake's operations apart from all others of the order. */
  readonly name: string
  /** Garments of the whole order, and how many of them are made again. */
  readonly pieces: number
  readonly quantity: number
  readonly release: Minutes | null
}

/**
 * The work of garments that are made again, as operations of their own: each stage takes its share of the order's minutes, one
 * after the other; nothing starts before `release`.
 */
export const remakeOperations = (operations: readonly Operation[], work: RemakeWork): readonly Operation[] => {
  const made: Operation[] = []
  for (const { id, of } of stages) {
    const alike = operations.filter((operation) => of.test(operation.id))
    const first = alike[0]
    if (first === undefined) continue
    const minutes = alike.reduce((sum, one) => sum + one.minutes, 0)
    const before = made.at(-1)
    made.push({
      ...first,
      id: `${work.name}-${id}`,
      minutes: Math.max(1, Math.ceil((minutes * work.quantity) / Math.max(1, work.pieces))),
      after: before === undefined ? [] : [{ operation: before.id, lagMinutes: 0 }],
      release: before === undefined ? work.release : null,
      started: null,
      done: null,
      on: null,
    })
  }
  return made
}
