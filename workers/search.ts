/** Waits this long after the last call before it begins: a burst of orders is searched once. */
const quietMilliseconds = 2_000

export type Background = {
  /** Asks for a search of a shop's plan soon. */
  readonly wake: (shopId: string) => void
  readonly close: () => Promise<void>
}

/** One search at a time; a shop that is woken while it waits or is searched is searched once more, after it has been quiet. */
export const startBackground = (
  search: (shopId: string) => Promise<unknown>,
  report: (error: unknown) => void,
  quiet: number = quietMilliseconds,
): Background => {
  const timers = new Map<string, NodeJS.Timeout>()
  let running: Promise<void> = Promise.resolve()
  let closed = false
  const run = async (shopId: string): Promise<void> => {
    if (closed) return
    try {
      await search(shopId)
    } catch (error) {
      report(error)
    }
  }
  const begin = (shopId: string): void => {
    timers.delete(shopId)
    running = running.then(() => run(shopId))
  }
  return {
    wake: (shopId) => {
      if (closed) return
      clearTimeout(timers.get(shopId))
      timers.set(
        shopId,
        setTimeout(() => begin(shopId), quiet),
      )
    },
    close: async () => {
      closed = true
      for (const timer of timers.values()) clearTimeout(timer)
      await running
    },
  }
}
