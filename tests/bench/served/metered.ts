import { openSync, readSync, renameSync, writeFileSync } from 'node:fs'
import { register } from 'node:module'
import { isMainThread } from 'node:worker_threads'
import { meter } from './meter.ts'

const folder = process.env['METERS'] ?? ''

/** Whoever asked waits for the file: it appears whole. */
const answer = (what: unknown): void => {
  const file = `${folder}/${process.pid}.json`
  writeFileSync(`${file}.new`, JSON.stringify(what))
  renameSync(`${file}.new`, file)
}

/**
 * Microseconds of processor that the main thread had so far (Linux, proc(5), schedstat). The kernel brings that account up to date at its
 * ticks and when it is asked for the process's (getrusage(2)), so that is asked first.
 */
const mainThread = (): (() => number) => {
  const account = openSync(`/proc/${process.pid}/task/${process.pid}/schedstat`, 'r')
  const bytes = Buffer.alloc(64)
  return () => {
    process.cpuUsage()
    const length = readSync(account, bytes, 0, bytes.length, 0)
    return Number(bytes.toString('latin1', 0, bytes.subarray(0, length).indexOf(' '))) / 1_000
  }
}

/**
 * Put into a process that is measured (`--import`): at the first SIGUSR2 its domain is metered, at the next it says what its main thread
 * did since, and how much of that was done within the domain.
 */
if (isMainThread && folder !== '') {
  const clock = mainThread()
  const { metered, start, stop } = meter(clock)
  Object.assign(globalThis, { platenpostMeter: metered })
  register(new URL('./boundary.js', import.meta.url))
  const state: { from: number | null } = { from: null }
  process.on('SIGUSR2', () => {
    if (state.from === null) {
      start()
      state.from = clock()
      answer('metered')
      return
    }
    const busy = clock() - state.from
    state.from = null
    answer({ busy, domain: stop().spent })
  })
}
