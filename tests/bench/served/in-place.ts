import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { engineOptions, type ServedCrew } from '../../support/served-crew.ts'
import type { Settings } from '../../support/service.ts'
import { until } from '../../support/until.ts'

/** Microseconds of a process's main thread: of its processor at all, and within the domain's functions. */
type Share = { readonly busy: number; readonly domain: number }

/** Parts of what a process did that the domain's functions did. */
export type Shares = { readonly service: number; readonly workers: number }

/** What makes processes ready to be metered; as long as nobody asks it costs them a call more for each of the domain's. */
export const metersTo = (folder: string): Settings => ({
  METERS: folder,
  NODE_OPTIONS: `${engineOptions} --import ${pathToFileURL(join(import.meta.dirname, 'metered.js')).href}`,
})

const answerOf = (folder: string, pid: number): Promise<unknown> => {
  const file = join(folder, `${pid}.json`)
  return until(`process ${pid} answers its signal`, () => {
    try {
      const said: unknown = JSON.parse(readFileSync(file, 'utf8'))
      rmSync(file)
      return said
    } catch {
      return undefined
    }
  })
}

const isShare = (said: unknown): said is Share => typeof said === 'object' && said !== null && 'busy' in said

const ring = (folder: string, pids: readonly number[]): Promise<readonly unknown[]> => {
  for (const pid of pids) process.kill(pid, 'SIGUSR2')
  return Promise.all(pids.map((pid) => answerOf(folder, pid)))
}

const partOf = (shares: readonly Share[]): number => {
  const sum = (of: (share: Share) => number): number => shares.reduce((all, share) => all + of(share), 0)
  return sum(({ domain }) => domain) / sum(({ busy }) => busy)
}

/** The domain's part of what service and workers do meanwhile, metered in them. */
export const meteredDuring = async (crew: ServedCrew, folder: string, work: () => Promise<unknown>): Promise<Shares> => {
  const pids = crew.pids()
  await ring(folder, pids)
  await work()
  const [service, ...workers] = (await ring(folder, pids)).filter(isShare)
  if (service === undefined || workers.length !== pids.length - 1) throw new Error('a process did not say what it did')
  return { service: partOf([service]), workers: partOf(workers) }
}
