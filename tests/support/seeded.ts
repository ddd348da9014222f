/** Numbers from 0 up to 1 that a seed decides (mulberry32, public domain). */
export const seeded = (seed: number): (() => number) => {
  const state = { at: seed }
  return () => {
    state.at = (state.at + 0x6d2b79f5) | 0
    let mixed = Math.imul(state.at ^ (state.at >>> 15), 1 | state.at)
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
