import type { Profiler } from 'node:inspector'

/** Microseconds of a process's main thread: of its processor at all, and how long of that the domain's functions. */
export type Share = { readonly busy: number; readonly domain: number }

/** The domain, what the desk asks of it without the records, and the paper, picture and archive that are made of it. */
const domain = /\.build\/(?:src\/domain|src\/desk\/(?!service\/)|src\/adapters\/(?:printer|picture|archive)|templates\/ticket)\b/

/** What the sampler itself costs is nobody's. */
const sampler = /\.build\/tests\/bench\//

/**
 * Writes to a socket: the kernel wakes whoever is written to, often in place of the writer, and the sampler looks at the clock. They looked
 * seven times as long as their processor (perf: 8.2 ms an order beside 1.1).
 */
const writes: readonly string[] = ['writev', 'writeBuffer', 'writeLatin1String', 'writeUtf8String']

type Kind = 'domain' | 'other' | 'written' | 'idle' | 'garbage'

type Calls = { readonly nodes: ReadonlyMap<number, Profiler.ProfileNode>; readonly callers: ReadonlyMap<number, number> }

const callsOf = ({ nodes }: Profiler.Profile): Calls => ({
  nodes: new Map(nodes.map((node) => [node.id, node])),
  callers: new Map(nodes.flatMap(({ id, children }) => (children ?? []).map((child) => [child, id]))),
})

/** A sample belongs to the domain when any of its callers does. */
const kindOf = ({ nodes, callers }: Calls, id: number): Kind => {
  const name = nodes.get(id)?.callFrame.functionName ?? ''
  if (writes.includes(name)) return 'written'
  if (name === '(idle)' || name === '(root)') return 'idle'
  if (name === '(garbage collector)') return 'garbage'
  let isDomain = false
  for (let at: number | undefined = id; at !== undefined; at = callers.get(at)) {
    const url = nodes.get(at)?.callFrame.url ?? ''
    if (sampler.test(url)) return 'idle'
    isDomain ||= domain.test(url)
  }
  return isDomain ? 'domain' : 'other'
}

/**
 * What a sampled process did. Garbage is collected while somebody asks for memory, so that it is theirs whose sample came before it, as
 * developer tools show it (from memory). `processor`: microseconds that the main thread had meanwhile, by the kernel's account; what the
 * samples do not explain of it was written.
 */
export const shareOf = (profile: Profiler.Profile, processor: number): Share => {
  const calls = callsOf(profile)
  const kinds = new Map(profile.nodes.map(({ id }) => [id, kindOf(calls, id)]))
  const sums: { [kind in Kind]: number } = { domain: 0, other: 0, written: 0, idle: 0, garbage: 0 }
  let last: Kind = 'other'
  for (const [at, id] of (profile.samples ?? []).entries()) {
    const kind = kinds.get(id) ?? 'other'
    if (kind !== 'garbage') last = kind
    const whose = kind === 'garbage' && last !== 'domain' ? 'other' : last
    sums[whose] += profile.timeDeltas?.[at] ?? 0
  }
  return { busy: Math.max(processor, sums.domain + sums.other), domain: sums.domain }
}
