import { writeFileSync } from 'node:fs'
import { Session } from 'node:inspector'
import { join } from 'node:path'
import { isMainThread } from 'node:worker_threads'

/** Loaded before a program of the bench: its profile is written into this folder when it ends in order. */
const folder = process.env['PROFILES']

if (isMainThread && folder !== undefined) {
  const session = new Session()
  session.connect()
  session.post('Profiler.enable')
  session.post('Profiler.setSamplingInterval', { interval: 500 })
  session.post('Profiler.start')
  process.on('exit', () => {
    session.post('Profiler.stop', (_, { profile }) => {
      writeFileSync(join(folder, `${process.pid}.cpuprofile`), JSON.stringify(profile))
    })
  })
}
