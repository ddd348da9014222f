import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { type Profiler, Session } from 'node:inspector'
import { isMainThread } from 'node:worker_threads'
import { shareOf } from './share.ts'

/** Half a millisecond, in microseconds. */
const everyMicroseconds = 500

const folder = process.env['SAMPLES'] ?? ''

/** Whoever asked waits for the file: it appears whole. */
const answer = (what: unknown): void => {
  const file = `${folder}/${process.pid}.json`
  writeFileSync(`${file}.new`, JSON.stringify(what))
  renameSync(`${file}.new`, file)
}

/** Microseconds of processor that the main thread had so far (Linux, proc(5), schedstat). */
const processor = (): number =>
  Number(readFileSync(`/proc/${process.pid}/task/${process.pid}/schedstat`, 'utf8').split(' ')[0]) / 1_000

/**
 * Put into a process that is measured (`--import`): at the first SIGUSR2 it is sampled, at the next it says what its main thread did since.
 * Between them nothing is left of it.
 */
if (isMainThread && folder !== '') {
  const state: { session: Session | null; from: number } = { session: null, from: 0 }
  const begin = (): void => {
    const session = new Session()
    session.connect()
    session.post('Profiler.enable')
    session.post('Profiler.setSamplingInterval', { interval: everyMicroseconds })
    session.post('Profiler.start')
    Object.assign(state, { session, from: processor() })
    answer('sampling')
  }
  const end = (session: Session): void => {
    const spent = processor() - state.from
    session.post('Profiler.stop', (error: Error | null, stopped: Profiler.StopReturnType) => {
      if (error !== null) throw error
      session.disconnect()
      state.session = null
      answer(shareOf(stopped.profile, spent))
    })
  }
  process.on('SIGUSR2', () => (state.session === null ? begin() : end(state.session)))
}
