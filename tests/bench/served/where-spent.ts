import { mkdirSync, readFileSync, rmSync } from 'node:fs'
import type { Profiler } from 'node:inspector'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { startServedCrew } from '../../support/served-crew.ts'
import { measure, type Run } from './measure.ts'

/** Domain, paper, picture and packing: what `domainWork` does in a loop, and nothing of the desk's service, the store or the pages. */
const isDomain = (url: string): boolean => /\/\.build\/src\/(?:domain|adapters\/(?:printer|picture|archive))\//.test(url)

const idle = '(idle)'
const collector = '(garbage collector)'

/** Every node of the tree of calls, and whether something of the domain is in it or above it. */
const domainNodes = (nodes: readonly Profiler.ProfileNode[]): ReadonlySet<number> => {
  const byId = new Map(nodes.map((node) => [node.id, node]))
  const found = new Set<number>()
  const visit = (id: number, inside: boolean): void => {
    const node = byId.get(id)
    if (node === undefined) return
    const here = inside || isDomain(node.callFrame.url)
    if (here) found.add(id)
    for (const child of node.children ?? []) visit(child, here)
  }
  const [root] = nodes
  if (root !== undefined) visit(root.id, false)
  return found
}

/** What part of the time in which a process did something between two instants is the domain's; garbage that no stack owns goes by it. */
const domainShare = (profile: Profiler.Profile, { from, to }: Pick<Run, 'from' | 'to'>): number => {
  const nameOf = new Map(profile.nodes.map(({ id, callFrame }) => [id, callFrame.functionName]))
  const domain = domainNodes(profile.nodes)
  const sums = { domain: 0, other: 0 }
  let at = profile.startTime
  for (const [index, id] of (profile.samples ?? []).entries()) {
    at += profile.timeDeltas?.[index] ?? 0
    const name = nameOf.get(id)
    if (at < from || at > to || name === idle || name === collector) continue
    sums[domain.has(id) ? 'domain' : 'other'] += profile.timeDeltas?.[index + 1] ?? 0
  }
  return sums.domain / (sums.domain + sums.other)
}

const profileOf = (folder: string, pid: number): Profiler.Profile =>
  JSON.parse(readFileSync(join(folder, `${pid}.cpuprofile`), 'utf8'))

export type Shares = { readonly service: number; readonly worker: number }

/** The domain's share of service and worker, sampled in a run of its own, because sampling costs. */
export const domainShares = async (warm: number, many: number): Promise<Shares> => {
  const folder = join(tmpdir(), `profiles-${process.pid}`)
  mkdirSync(folder)
  const hook = pathToFileURL(join(process.cwd(), '.build/tests/bench/served/profile-hook.js')).href
  try {
    const crew = await startServedCrew(1, { NODE_OPTIONS: `--import ${hook}`, PROFILES: folder })
    const [service = 0, worker = 0] = crew.pids()
    const run = await (async () => {
      try {
        await measure(crew, warm, 0)
        return await measure(crew, many, 100)
      } finally {
        await crew.close()
      }
    })()
    const share = (pid: number): number => domainShare(profileOf(folder, pid), run)
    return { service: share(service), worker: share(worker) }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}
