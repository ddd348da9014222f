import { failureOf } from './rest-failure.ts'

export type Clock = { readonly now: () => number; readonly pause: (milliseconds: number) => Promise<void> }

export const systemClock: Clock = {
  now: () => Date.now(),
  pause: (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds)),
}

const mostTries = 4
const longestPause = 30_000

/**
 * Makes a call that may be made twice: again after a pause when the platform says later or when nobody knows whether it was
 * done. Any other failure, and the last one, is thrown.
 */
export const withPatience = async <T>(clock: Clock, call: () => Promise<T>): Promise<T> => {
  for (let tries = 1; ; tries += 1) {
    try {
      return await call()
    } catch (error) {
      const failure = failureOf(error)
      const pause = failure?.kind === 'later' ? failure.milliseconds : failure?.kind === 'unknown' ? 200 * 2 ** tries : null
      if (pause === null || pause > longestPause || tries === mostTries) throw error
      await clock.pause(pause)
    }
  }
}
