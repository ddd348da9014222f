import type { ServedCrew } from '../../support/served-crew.ts'
import type { Figure } from '../bench.ts'
import type { Moved } from './count-moved.ts'
import { meteredDuring, type Shares } from './in-place.ts'
import { allOf, leave, measure, type Run, type Spent, warmUp } from './measure.ts'
import { type NoOpFlow, openNoOpFlow } from './no-op-flow.ts'
import { type Office, openOffice } from './office.ts'
import { type Recording, recordOrders } from './recording.ts'
import { openReplayFlow, type ReplayFlow } from './replay-flow.ts'
import type { Answered } from './replay-store.ts'

/**
 * One look at all of it. Orders, domain and floors come right after each other, because the machine's speed comes and goes. Besides, the
 * floors are looked at as orders meet them: at their pace, while the domain's work is done on the same machine.
 */
type Round = {
  readonly runs: readonly Run[]
  /** The domain's parts, metered while more orders are made. */
  readonly shares: Shares
  /** The domain's work done again, in a loop. */
  readonly again: number
  readonly replay: Spent
  readonly replayPaced: Spent
  readonly bare: number
  readonly barePaced: number
}

type Beside = {
  readonly office: Office
  readonly replay: ReplayFlow
  readonly bare: NoOpFlow
  readonly moved: Moved
  /** Where those who are metered leave what they say. */
  readonly meters: string
}

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

/** Orders one after the other in each look, eight customers at a time. */
type Row = { readonly many: number; readonly first: number }

/** The domain's part of an order, metered. */
const meteredIn = async (crew: ServedCrew, meters: string, row: Row) => {
  const runs: Run[] = []
  const shares = await meteredDuring(crew, meters, async () => runs.push(await measure(crew, row)))
  return { shares, customers: runs.flatMap(({ customers }) => customers) }
}

/** Orders that are called off afterwards. */
const measuredIn = async (crew: ServedCrew, row: Row): Promise<Run> => {
  const run = await measure(crew, row)
  await leave(crew, run.customers)
  return run
}

/** Orders, then some that are metered, then the domain and the floors with the plan that orders meet on average, then orders again. */
const lookOnce = async (
  crew: ServedCrew,
  { office, replay, bare, moved, meters }: Beside,
  { many, first }: Row,
): Promise<Round> => {
  const before = await measuredIn(crew, { many, first })
  const { shares, customers } = await meteredIn(crew, meters, { many, first: first + many })
  const half = many / 2
  await leave(crew, customers.slice(half))
  const again = (await office.domain(half)) / half
  const replayed = await replay.spend(null)
  const inserts = await bare.spend(moved, { orders: many, perMinute: null })
  const { perMinute } = before
  const [replayPaced] = await Promise.all([replay.spend(perMinute), office.domain(many)])
  const [barePaced] = await Promise.all([bare.spend(moved, { orders: many, perMinute }), office.domain(many)])
  await leave(crew, customers.slice(0, half))
  const after = await measuredIn(crew, { many, first: first + 2 * many })
  return { runs: [before, after], shares, again, replay: replayed, replayPaced, bare: inserts, barePaced }
}

const cpuOfRound = ({ runs }: Round): number => mean(runs.map(({ cpu }) => cpu))

/** Seconds of processor of the domain's functions in service and workers: their parts of what those take when nobody meters them. */
const domainOf = ({ runs, shares }: Round): number =>
  mean(runs.map(({ spent }) => shares.service * spent.service + shares.workers * spent.workers))

const countsOf = ({ jobs, transactions, bytes, traffic, requests }: Moved): readonly Figure[] => [
  { name: 'jobs per order', value: jobs, unit: '' },
  { name: 'customers’ requests per order', value: requests.many, unit: '' },
  { name: 'kept transactions per order', value: transactions, unit: '' },
  { name: '  of which begun, not single statements', value: traffic.begins, unit: '' },
  { name: 'statements per order', value: traffic.statements, unit: '' },
  { name: 'writes to PostgreSQL per order', value: traffic.writes, unit: '' },
  { name: 'bytes of the log per order', value: bytes / 1_024, unit: 'KB' },
  { name: 'bytes to PostgreSQL per order', value: traffic.bytesUp / 1_024, unit: 'KB' },
  { name: 'bytes from PostgreSQL per order', value: traffic.bytesDown / 1_024, unit: 'KB' },
]

const partsOf = (all: readonly Spent[]): readonly Figure[] => {
  const part = (of: (spent: Spent) => number): number => mean(all.map(of)) * 1_000
  return [
    { name: '  service', value: part(({ service }) => service), unit: 'ms' },
    { name: '  workers', value: part(({ workers }) => workers), unit: 'ms' },
    { name: '  PostgreSQL', value: part(({ postgres }) => postgres), unit: 'ms' },
    { name: '  Redis', value: part(({ redis }) => redis), unit: 'ms' },
  ]
}

const figuresOf = (rounds: readonly Round[], moved: Moved): readonly Figure[] => {
  const runs = rounds.flatMap((round) => round.runs)
  const part = (of: (round: Round) => number): number => mean(rounds.map(of)) * 1_000
  const [all, domain] = [part(cpuOfRound), part(domainOf)]
  const over = (what: string, of: (round: Round) => number, most?: number): readonly Figure[] => {
    const ratios = rounds.map((round) => (cpuOfRound(round) - domainOf(round)) / of(round))
    return [
      { name: `floor: ${what}`, value: part(of), unit: 'ms' },
      { name: 'overhead over it', value: (all - domain) / part(of), unit: '×', ...(most === undefined ? {} : { most }) },
      { name: '  in the lowest and', value: Math.min(...ratios), unit: '×' },
      { name: '  in the highest of the rounds', value: Math.max(...ratios), unit: '×' },
    ]
  }
  return [
    { name: 'processor per order, all processes', value: all, unit: 'ms' },
    ...partsOf(runs.map(({ spent }) => spent)),
    { name: '  of which domain, paper and picture', value: domain, unit: 'ms' },
    { name: '    of the service, metered in it', value: 100 * mean(rounds.map(({ shares }) => shares.service)), unit: '%' },
    { name: '    of the workers, metered in them', value: 100 * mean(rounds.map(({ shares }) => shares.workers)), unit: '%' },
    { name: '    the same done again in a loop', value: part(({ again }) => again), unit: 'ms' },
    { name: '  overhead', value: all - domain, unit: 'ms' },
    ...over('no-op flow, the same transactions', (round) => allOf(round.replay), 1.5),
    ...partsOf(rounds.map(({ replay }) => replay)),
    ...over('that at the orders’ pace, beside the domain', (round) => allOf(round.replayPaced)),
    ...partsOf(rounds.map(({ replayPaced }) => replayPaced)),
    ...over('no-op flow, transactions of one insert', (round) => round.bare),
    ...over('that at the orders’ pace, beside the domain', (round) => round.barePaced),
    ...countsOf(moved),
  ]
}

/** A floor that was refused what the orders were not would be no floor. */
const likenessOf = ({ all, same, bytes }: Answered): readonly Figure[] => {
  if (same < 0.95 * all) throw new Error(`of ${all} statements only ${same} were answered as they were recorded`)
  return [
    { name: 'statements of the floor answered as recorded', value: (100 * same) / all, unit: '%' },
    { name: 'bytes from PostgreSQL in it per order', value: bytes / 1_024, unit: 'KB' },
  ]
}

/**
 * Orders that are looked at in a row. At a pause the engine throws away fast code, which it then compiles anew: in the threads beside the main
 * one that took 6 to 70 ms of each of ten orders after half a minute, and 5 to 20 ms of forty in a row.
 */
const inARow = 40

/** Stretches of the recording that are done before it is measured: a hundred orders, so that nothing is compiled or prepared any more. */
const warmStretches = 3

/**
 * The engine compiles what has become hot for hundreds of orders: looks after 200 to 2,000 of them found 2 to 9 ms of a service's order in
 * its compiling threads (perf), fewest after 500 to 900. The records of the floor are as large.
 */
const warmOrders = 600

/** Everybody is warm: what is done for the first times costs its compiling, in orders, domain and floors alike. */
const warmAll = async (crew: ServedCrew, { office, replay, bare, moved }: Beside, orders: number): Promise<void> => {
  await warmUp(crew, { many: orders, first: 0 })
  const { customers } = await measure(crew, { many: 10, first: 3 * orders })
  await office.domain(orders / 2)
  await bare.spend(moved, { orders, perMinute: null })
  for (let at = 0; at < warmStretches; at += 1) await replay.spend(null)
  await leave(crew, customers)
}

type Looked = { readonly recording: Recording; readonly meters: string; readonly rounds: number; readonly warm: number }

const lookAt = async (crew: ServedCrew, { recording, meters, rounds, warm }: Looked): Promise<readonly Figure[]> => {
  const { moved } = recording
  const [office, bare, replay] = await Promise.all([openOffice(crew), openNoOpFlow(crew), openReplayFlow(recording)])
  try {
    const beside = { office, replay, bare, moved, meters }
    await warmAll(crew, beside, warm)
    const looks: Round[] = []
    const many = recording.each
    for (let round = 0; round < rounds; round += 1)
      looks.push(await lookOnce(crew, beside, { many, first: 3_000 + round * 3 * many }))
    return [...figuresOf(looks, moved), ...likenessOf(replay.answered())]
  } finally {
    await Promise.all([office.close(), bare.close(), replay.close()])
  }
}

/**
 * The processor that orders take beside what the domain does, against flows of nothing, in rounds. `meters`: the folder that the crew was
 * made ready to be metered to.
 */
export const overhead = async (crew: ServedCrew, meters: string, quick: boolean): Promise<readonly Figure[]> => {
  const rounds = quick ? 2 : 6
  const [warm, counted, each] = quick ? [10, 5, 10] : [warmOrders, 50, inARow]
  const recording = await recordOrders({ warm, counted, each, stretches: warmStretches + 2 * rounds })
  try {
    return await lookAt(crew, { recording, meters, rounds, warm })
  } finally {
    await recording.close()
  }
}
