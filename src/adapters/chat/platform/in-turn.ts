/** Lets at most so many pieces of work run at once; the others wait in the order in which they came. */
export const inTurn = (most: number): (<T>(work: () => Promise<T>) => Promise<T>) => {
  const waiting: (() => void)[] = []
  let running = 0
  return async (work) => {
    if (running >= most) await new Promise<void>((resolve) => waiting.push(resolve))
    else running += 1
    try {
      return await work()
    } finally {
      const next = waiting.shift()
      if (next === undefined) running -= 1
      else next()
    }
  }
}
