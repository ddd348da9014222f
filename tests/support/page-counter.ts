import { type RunningCounter, startCounter } from '../../src/adapters/chat/counter/start-counter.ts'
import { makePageDesk, type PageDesk } from './page-desk.ts'

const root = new URL('../..', import.meta.url).pathname

export type TestCounter = RunningCounter & {
  readonly desk: PageDesk
  readonly bugs: readonly unknown[]
  readonly moveClock: (ms: number) => void
}

/** A running counter on a free port with a desk in memory; its clock starts on Monday, March 16, 2026, 7 am in Chicago. */
export const openCounter = async (
  settings: { readonly port?: number | null; readonly url?: string; readonly host?: string } = {},
): Promise<TestCounter> => {
  const clock = { at: Date.UTC(2026, 2, 16, 12, 0) }
  const now = (): number => clock.at
  const desk = makePageDesk(now)
  const bugs: unknown[] = []
  const counter = await startCounter({
    desk,
    root,
    port: settings.port === undefined ? 0 : settings.port,
    host: settings.host ?? '127.0.0.1',
    url: settings.url ?? null,
    sessionKey: new Uint8Array(32).fill(7),
    now,
    ready: async () => undefined,
    report: (error) => bugs.push(error),
  })
  return {
    ...counter,
    desk,
    bugs,
    moveClock: (ms) => {
      clock.at += ms
    },
  }
}
