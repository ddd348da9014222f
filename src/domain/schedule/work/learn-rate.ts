/**
 * What the shop has learned about one rate: minutes a piece now stands for, the usual distance of what happened from it, and how often
 * it was seen. A frozen rate stays as the owner set it.
 */
export type LearnedRate = { readonly minutes: number; readonly spread: number; readonly seen: number; readonly frozen: boolean }

/** A rate as the shop set it: a fifth of it is taken for its spread until something is seen. */
export const rateFrom = (minutes: number): LearnedRate => ({ minutes, spread: minutes / 5, seen: 0, frozen: false })

const leastGain = 0.05
const outlying = 2

/**
 * The rate after one more piece of work was seen: a running mean whose steps shrink, in which one day that went badly wrong counts
 * as no more than two usual distances (after Huber 1964).
 */
export const learnRate = (rate: LearnedRate, seenMinutes: number): LearnedRate => {
  if (rate.frozen || seenMinutes <= 0) return rate
  const seen = rate.seen + 1
  const gain = Math.max(leastGain, 1 / (seen + 4))
  const most = outlying * rate.spread
  const distance = Math.min(most, Math.max(-most, seenMinutes - rate.minutes))
  const least = rate.minutes / 50
  return {
    minutes: rate.minutes + gain * distance,
    spread: Math.max(least, rate.spread + gain * (Math.min(2 * most, Math.abs(seenMinutes - rate.minutes)) - rate.spread)),
    seen,
    frozen: false,
  }
}
