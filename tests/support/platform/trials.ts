import type { RealGround } from './ground.ts'
import { benchText, type Event, oursIn } from './real-job.ts'
import type { RealShops } from './real-shop.ts'
import type { Call } from './rest.ts'
import type { Fault } from './server.ts'

/** A play of the whole job in which something goes wrong again and again: `kind` is what, `meets` where. */
export type Trial = {
  readonly kind: string
  readonly prepare: (shops: RealShops) => void
  readonly between: Event['play']
  /** The places of the calls that met the fault. */
  readonly met: Set<number>
}

/** What became of the tickets and of the plays with one kind of trouble. */
export type Count = { plays: number; once: number; lost: number; twice: number; met: number; readonly failures: string[] }

const keyOf = ({ method, path, body }: Call): string => `${method} ${path} ${JSON.stringify(body)}`

/** The fault at every call whose place leaves `first` when divided by `apart`. A call that is made again keeps its place. */
export const faultAt = (fault: Fault, first: number, apart: number): Trial => {
  const met = new Set<number>()
  const broken = new Set<string>()
  let calls = 0
  const meets = (call: Call): boolean => {
    if (broken.delete(keyOf(call))) return false
    const place = calls
    calls += 1
    if (place % apart !== first) return false
    met.add(place)
    broken.add(keyOf(call))
    return true
  }
  const kind = fault.kind === 'too-many' && fault.global === true ? 'too-many, global' : fault.kind
  const prepare = ({ platform }: RealShops): void => void platform.fail(meets, fault, Number.POSITIVE_INFINITY)
  return { kind, prepare, between: async () => undefined, met }
}

export const troubleBetween = (kind: string, between: Event['play']): Trial => ({
  kind,
  prepare: () => undefined,
  between,
  met: new Set(),
})

const ticketsIn = (shops: RealShops): number => oursIn(shops, shops.ours.bench).length

type Play = (ground: RealGround, trial: Trial, after: (shops: RealShops) => void) => Promise<void>

/** Plays every trial, as many side by side as there are grounds, and counts what came of each kind. */
export const playTrials = async (
  grounds: readonly RealGround[],
  trials: readonly Trial[],
  { play, tell }: { readonly play: Play; readonly tell: (counts: ReadonlyMap<string, Count>) => void },
): Promise<ReadonlyMap<string, Count>> => {
  const counts = new Map<string, Count>()
  const waiting = [...trials]
  const lane = async (ground: RealGround): Promise<void> => {
    for (let trial = waiting.shift(); trial !== undefined; trial = waiting.shift()) {
      const { kind, met } = trial
      const count = counts.get(kind) ?? { plays: 0, once: 0, lost: 0, twice: 0, met: 0, failures: [] }
      counts.set(kind, count)
      const see = (shops: RealShops): void => {
        const tickets = ticketsIn(shops)
        count[tickets === 1 ? 'once' : tickets === 0 ? 'lost' : 'twice'] += 1
        if ((benchText(shops).match(/Taken by/g) ?? []).length > 1) count.failures.push('taken by two')
      }
      await play(ground, trial, see).catch((error: unknown) => {
        count.failures.push(
          `${error instanceof Error ? `${error.message} ${String(error.cause ?? '')}` : String(error)} at ${[...met].join(' ')}`,
        )
      })
      count.plays += 1
      count.met += met.size
      tell(counts)
    }
  }
  await Promise.all(grounds.map(lane))
  return counts
}

/** One line for each kind of trouble, for the record. */
export const countsText = (counts: ReadonlyMap<string, Count>): string =>
  [...counts]
    .map(
      ([kind, { plays, met, once, lost, twice, failures }]) =>
        `${kind}: ${plays} plays, ${met} calls met it, tickets posted once ${once}, lost ${lost}, twice ${twice}, failed ${failures.length}`,
    )
    .join('\n')
