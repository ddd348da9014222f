import { renameSync, writeFileSync } from 'node:fs'
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

/**
 * Put into a process that is measured (`--import`): at the first SIGUSR2 it is sampled, at the next it says what its main thread did since.
 * Between them nothing is left of it.
 */
if (isMainThread && folder !== '') {
  const state: { session: Session | null } = { session: null }
  const begin = (): void => {
    const session = new Session()
    session.connect()
    session.post('Profiler.enable')
    session.post('Profiler.setSamplingInterval', { interval: everyMicroseconds })
    session.post('Profiler.start')
    state.session = session
    answer('sampling')
  }
  const end = (session: Session): void => {
    session.post('Profiler.stop', (error: Error | null, stopped: Profiler.StopReturnType) => {
      if (error !== null) throw error
      session.disconnect()
      state.session = null
      answer(shareOf(stopped.profile))
    })
  }
  process.on('SIGUSR2', () => (state.session === null ? begin() : end(state.session)))
}
