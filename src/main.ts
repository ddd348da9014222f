import { projectRoot } from './adapters/folder/root.ts'
import { readConfig } from './config.ts'
import { openBase } from './wiring/open-base.ts'
import { type Opened, orStop, runProgram } from './wiring/run-program.ts'
import { whenStopped } from './wiring/stop.ts'
import { reporter } from './wiring/trouble.ts'

/** The store's server starts while the rest of the program is being loaded, which takes as long. */
const start = async (opened: Opened): Promise<void> => {
  const root = projectRoot()
  const stopped = whenStopped()
  const config = orStop(readConfig(root))
  if (config.redis !== null) {
    const { checkRedis } = await import('./adapters/queue/bullmq/check-redis.ts')
    orStop(await checkRedis(config.redis))
  }
  const starting = openBase(config)
  // What goes wrong with it is told where it is awaited.
  starting.catch(() => undefined)
  const { serve } = await import('./wiring/serve.ts')
  await serve(opened, { root, config, starting, stopped })
}

if (process.argv.includes('--help')) {
  const { startUsage } = await import('../templates/desk/starting.ts')
  process.stdout.write(startUsage)
} else await runProgram(reporter('service'), start)
