import { type ChildProcess, fork } from 'node:child_process'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { projectRoot } from '../adapters/folder/root.ts'

const firstPause = 500
const longestPause = 30_000
const patience = 40_000

export type Watched = { readonly stop: () => Promise<void> }

const ended = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) resolve()
    child.once('exit', () => resolve())
  })

/** Runs workers/main as a child and starts it again with growing pauses when it dies; stopping waits for the step in hand. */
export const watchWorker = (report: (cause: unknown) => void): Watched => {
  const state: { stopping: boolean; child: ChildProcess | null } = { stopping: false, child: null }
  const wake = new AbortController()
  const run = async (): Promise<void> => {
    let wait = firstPause
    while (!state.stopping) {
      const began = Date.now()
      const child = fork(join(projectRoot(), '.build', 'workers', 'main.js'), { stdio: ['ignore', 'ignore', 'inherit', 'ipc'] })
      state.child = child
      await ended(child)
      if (state.stopping) return
      if (Date.now() - began > longestPause) wait = firstPause
      report(new Error(`the worker ended (${child.exitCode ?? child.signalCode}); it starts again in ${wait} ms`))
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
