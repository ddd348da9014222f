/** Microseconds of processor so far. */
export type Clock = () => number

/** Calls from outside of what is metered, and the microseconds of processor within them. */
export type Read = { readonly calls: number; readonly spent: number }

export type Meter = {
  /** The same value; its functions, and those of what they answer, are metered. */
  readonly metered: (value: unknown) => unknown
  readonly start: () => void
  readonly stop: () => Read
}

type Call = (...values: unknown[]) => unknown

const isFunction = (value: unknown): value is Call => typeof value === 'function'

const isPlain = (value: unknown): value is object =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype

const blank: Call = () => undefined
const trials = 2_000

/**
 * Reads a clock where metered functions are entered from outside and left again; what they call of each other is within. What the clock itself
 * takes is tried at the start and taken off. Of a promise only what is done before it is given counts.
 */
export const meter = (clock: Clock): Meter => {
  const state = { reads: false, isInside: false, calls: 0, spent: 0, perCall: 0 }
  const enter = (call: Call, self: unknown, values: unknown[]): unknown => {
    const from = clock()
    state.isInside = true
    try {
      return Reflect.apply(call, self, values)
    } finally {
      state.isInside = false
      state.spent += clock() - from
      state.calls += 1
    }
  }
  const metered = (value: unknown): unknown => {
    if (isFunction(value)) return asCall(value)
    if (!isPlain(value) || !Object.values(value).some(isFunction)) return value
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, isFunction(part) ? asCall(part) : part]))
  }
  const asCall = (call: Call): Call =>
    function (this: unknown, ...values: unknown[]): unknown {
      const isEntered = state.reads && !state.isInside
      return metered(isEntered ? enter(call, this, values) : Reflect.apply(call, this, values))
    }
  const reset = (): void => {
    Object.assign(state, { calls: 0, spent: 0 })
  }
  return {
    metered,
    start: () => {
      const trial = asCall(blank)
      state.reads = true
      for (let nth = 0; nth < trials; nth += 1) trial()
      reset()
      for (let nth = 0; nth < trials; nth += 1) trial()
      state.perCall = state.spent / trials
      reset()
    },
    stop: () => {
      state.reads = false
      return { calls: state.calls, spent: state.spent - state.calls * state.perCall }
    },
  }
}
