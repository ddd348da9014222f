import { setTimeout as pause } from 'node:timers/promises'

/** Waits until the question is answered with something other than undefined or false; gives up after the test's patience. */
export const until = async <T>(
  what: string,
  ask: () => Promise<T | undefined | false> | T | undefined | false,
  patience = 20_000,
): Promise<T> => {
  const last = Date.now() + patience
  for (;;) {
    const answer = await ask()
    if (answer !== undefined && answer !== false) return answer
    if (Date.now() > last) throw new Error(`waited in vain until ${what}`)
    await pause(10)
  }
}
