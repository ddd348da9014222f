import { readFileSync, rmSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { temporaryFolder } from '../support/embedded.ts'
import { heldOf } from '../support/process-watch.ts'
import { type OpenService, startService } from '../support/service.ts'
import { workerOf } from '../support/service-watch.ts'
import { until } from '../support/until.ts'
import type { Bench, Figure } from './bench.ts'
import { cpuOf } from './served/cpu.ts'

type Started = {
  readonly service: OpenService
  /** Every process: the service, its worker and the store's server, which has a session of its own. */
  readonly roots: readonly number[]
  /** Seconds until customers are let in, until a worker takes steps, and of processor until then. */
  readonly open: number
  readonly works: number
  readonly cpu: number
}

const postmasterOf = (data: string): number =>
  Number(readFileSync(join(data, 'postgres', 'postmaster.pid'), 'utf8').split('\n')[0])

/** A worker touches its pulse as soon as it takes steps. */
const start = async (data: string, pulse: string): Promise<Started> => {
  rmSync(pulse, { force: true })
  const from = performance.now()
  const seconds = (): number => (performance.now() - from) / 1_000
  const service = await startService(data, { WORKER_PULSE: pulse })
  const open = seconds()
  await until('a worker takes steps', () => statSync(pulse, { throwIfNoEntry: false }) !== undefined, 60_000)
  const works = seconds()
  await workerOf(service.pid)
  const roots = [service.pid, postmasterOf(data)]
  return { service, roots, open, works, cpu: cpuOf(roots) }
}

const stop = async ({ service }: Started): Promise<void> => {
  await service.signal('SIGINT')
  await service.ended
}

const middle = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0

/** The service on the embedded store as `npm start` runs it: the first start makes the store, the later ones find it. */
export const bench: Bench = async ({ quick }): Promise<readonly Figure[]> => {
  const folder = temporaryFolder()
  const [data, pulse] = [join(folder.path, 'data'), join(folder.path, 'pulse')]
  try {
    const first = await start(data, pulse)
    await stop(first)
    const later: Started[] = []
    for (let round = quick ? 2 : 6; round > 0; round -= 1) {
      const again = await start(data, pulse)
      later.push(again)
      await stop(again)
    }
    const idle = await start(data, pulse)
    await pause(quick ? 5_000 : 60_000)
    const memory = idle.roots.reduce((sum, root) => sum + heldOf(root).memory, 0)
    await stop(idle)
    return [
      { name: 'first start, to open pages', value: first.open, unit: 's' },
      { name: 'later start, to open pages (median)', value: middle(later.map(({ open }) => open)), unit: 's', most: 2 },
      { name: 'later start, until a worker works (median)', value: middle(later.map(({ works }) => works)), unit: 's' },
      { name: 'processor of a later start, all processes', value: middle(later.map(({ cpu }) => cpu)), unit: 's' },
      { name: 'memory of all processes, idle', value: memory, unit: 'MiB', most: 350 },
    ]
  } finally {
    folder.remove()
  }
}
