/** A seeded source of whole numbers from 0 to 2³² − 1; the same seed gives the same numbers on every machine. */
export type Random = () => number

/** Mulberry32 (T. Ettinger, public domain). */
export const randomFrom = (seed: number): Random => {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return (mixed ^ (mixed >>> 14)) >>> 0
  }
}

/** A whole number from 0 to `count` − 1. */
export const below = (random: Random, count: number): number => Math.floor((random() / 4_294_967_296) * count)

/** About −ln u of an even u: the patience of an annealer, without a logarithm that machines round differently. */
export const patience = (random: Random): number => {
  const bits = random()
  const zeros = Math.clz32(bits)
  const fraction = zeros >= 31 ? 0 : ((bits << (zeros + 1)) >>> 0) / 4_294_967_296
  return Math.LN2 * (zeros + 1 - fraction)
}
