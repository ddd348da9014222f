/** One figure of a benchmark; ratios are taken within one run, against a floor measured beside it. */
export type Figure = { readonly name: string; readonly value: number; readonly unit: string; readonly most?: number }

export type BenchOptions = { readonly quick: boolean }

/** A benchmark with words of its own on the command line; answers the exit code. */
export type Measure = (words: readonly string[]) => Promise<number>

export type Bench = (options: BenchOptions) => Promise<readonly Figure[]>

/** The middle of several timed rounds, in milliseconds. */
export const medianMs = (rounds: number, work: () => unknown): number => {
  const times: number[] = []
  for (let round = 0; round < rounds; round += 1) {
    const start = performance.now()
    work()
    times.push(performance.now() - start)
  }
  times.sort((a, b) => a - b)
  return times[Math.floor(times.length / 2)] ?? 0
}
