import { writeFile } from 'node:fs/promises'
import { setTimeout as pause } from 'node:timers/promises'

const everyMilliseconds = 5_000

export type PulseSettings = {
  readonly file: string
  /** Throws when the process is not able to work. */
  readonly lives: () => Promise<unknown>
  readonly report: (cause: unknown) => void
}

/** Touches a file as long as the process is able to work, so that others can see from its age that it is. */
export const startPulse = ({ file, lives, report }: PulseSettings): { readonly close: () => Promise<void> } => {
  const stop = new AbortController()
  const beat = async (): Promise<void> => {
    await lives()
    await writeFile(file, '')
  }
  const loop = async (): Promise<void> => {
    while (!stop.signal.aborted) {
      await beat().catch(report)
      await pause(everyMilliseconds, undefined, { signal: stop.signal }).catch(() => undefined)
    }
  }
  const ended = loop()
  return {
    close: async () => {
      stop.abort()
      await ended
    },
  }
}
