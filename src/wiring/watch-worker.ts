import { type ChildProcess, fork } from 'node:child_process'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { projectRoot } from '../adapters/folder/root.ts'

const firstPause = 500
const longestPause = 30_000
const patience = 40_000

export type Watched = { readonly stop: () => Promise<void> }

const ended = (child: ChildProcess): Promise<string> =>
  new Promise((resolve) => {
    child.once('exit', (code, signal) => resolve(String(code ?? signal)))
    child.once('error', (cause) => resolve(cause.message))
  })

/** In a session of its own, so that Ctrl-C reaches the service alone and the service stops it in order. */
const startWorker = (): ChildProcess =>
  fork(join(projectRoot(), '.build', 'workers', 'main.js'), {
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    detached: process.platform !== 'win32',
  })

/** Runs workers/main as a child and starts it again with growing pauses when it dies; stopping waits for the step in hand. */
export const watchWorker = (report: (cause: unknown) => void): Watched => {
  const state: { stopping: boolean; child: ChildProcess | null } = { stopping: false, child: null }
  const wake = new AbortController()
  const run = async (): Promise<void> => {
    let wait = firstPause
    while (!state.stopping) {
      const began = performance.now()
      const child = startWorker()
      state.child = child
      const why = await ended(child)
      if (state.stopping) return
      if (performance.now() - began > longestPause) wait = firstPause
      report(new Error(`the worker ended (${why}); it starts again in ${wait} ms`))
      await pause(wait, undefined, { signal: wake.signal }).catch(() => undefined)
      wait = Math.min(longestPause, wait * 2)
    }
  }
  const running = run()
  return {
    stop: async () => {
      state.stopping = true
      wake.abort()
      const { child } = state
      child?.kill('SIGTERM')
      const force = setTimeout(() => child?.kill('SIGKILL'), patience)
      await running
      clearTimeout(force)
    },
  }
}
