/** So many at once, then so many a minute. */
type Rate = { readonly burst: number; readonly perMinute: number }
type Bucket = { readonly left: number; readonly at: number }

export type Limit = { readonly take: (key: string) => boolean }

const minute = 60_000
const mostKeys = 10_000

const filled = (rate: Rate, bucket: Bucket, at: number): number =>
  Math.min(rate.burst, bucket.left + ((at - bucket.at) / minute) * rate.perMinute)

/** Counts per key; `take` is false when the key has used up its share. Full buckets are dropped when there are many. */
export const makeLimit = (rate: Rate, now: () => number): Limit => {
  const buckets = new Map<string, Bucket>()
  const sweep = (at: number): void => {
    for (const [key, bucket] of buckets) if (filled(rate, bucket, at) >= rate.burst) buckets.delete(key)
    for (const key of buckets.keys()) {
      if (buckets.size < mostKeys) return
      buckets.delete(key)
    }
  }
  return {
    take: (key) => {
      const at = now()
      const left = filled(rate, buckets.get(key) ?? { left: rate.burst, at }, at)
      if (buckets.size >= mostKeys && !buckets.has(key)) sweep(at)
      buckets.set(key, { left: left >= 1 ? left - 1 : left, at })
      return left >= 1
    },
  }
}

/** Each key may hold so many things open at a time. */
export type Seats = { readonly sit: (key: string) => (() => void) | null }

export const makeSeats = (most: number): Seats => {
  const taken = new Map<string, number>()
  return {
    sit: (key) => {
      const before = taken.get(key) ?? 0
      if (before >= most) return null
      taken.set(key, before + 1)
      return () => {
        const still = (taken.get(key) ?? 1) - 1
        if (still === 0) taken.delete(key)
        else taken.set(key, still)
      }
    },
  }
}

export type Limits = {
  readonly words: Limit
  readonly starts: Limit
  readonly keys: Limit
  readonly misses: Limit
  readonly live: Seats
}

/** Words: per customer or member. Starts and misses (addresses that lead nowhere): per address. Keys: sign-ins, per address and name. */
export const makeLimits = (now: () => number): Limits => ({
  words: makeLimit({ burst: 30, perMinute: 40 }, now),
  starts: makeLimit({ burst: 20, perMinute: 10 }, now),
  keys: makeLimit({ burst: 8, perMinute: 1 }, now),
  misses: makeLimit({ burst: 40, perMinute: 20 }, now),
  live: makeSeats(8),
})
