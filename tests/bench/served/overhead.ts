import type { ServedCrew } from '../../support/served-crew.ts'
import type { Figure } from '../bench.ts'
import type { Moved } from './count-moved.ts'
import { leave, measure, type Run, warmUp } from './measure.ts'
import { type NoOpFlow, openNoOpFlow } from './no-op-flow.ts'
import { type Office, openOffice } from './office.ts'

/**
 * One look at all of it. Orders, domain and floor come right after each other, because the machine's speed comes and goes. Besides, the
 * floor is looked at as orders meet it: at their pace, while the domain's work is done on the same machine.
 */
type Round = {
  readonly runs: readonly Run[]
  readonly domain: number
  readonly bare: number
  readonly barePaced: number
  readonly full: number
  readonly fullPaced: number
}

type Beside = { readonly office: Office; readonly nothing: NoOpFlow; readonly moved: Moved }

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const half = 10

/** Half of the orders, then the domain with the plan that they meet on average, then the other half. */
const lookOnce = async (crew: ServedCrew, { office, nothing, moved }: Beside, first: number): Promise<Round> => {
  const before = await measure(crew, { many: half, first })
  const domain = (await office.domain(half)) / half
  const burst = { orders: 4 * half, perMinute: null }
  const [bare, full] = [await nothing.bare(moved, burst), await nothing.full(moved, burst)]
  const paced = { orders: 2 * half, perMinute: before.perMinute }
  const [barePaced] = await Promise.all([nothing.bare(moved, paced), office.domain(2 * half)])
  const [fullPaced] = await Promise.all([nothing.full(moved, paced), office.domain(2 * half)])
  const runs = [before, await measure(crew, { many: half, first: first + half })]
  await leave(
    crew,
    runs.flatMap(({ customers }) => customers),
  )
  return { runs, domain, bare, barePaced, full, fullPaced }
}

const cpuOfRound = ({ runs }: Round): number => mean(runs.map(({ cpu }) => cpu))

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

const figuresOf = (rounds: readonly Round[], moved: Moved): readonly Figure[] => {
  const runs = rounds.flatMap((round) => round.runs)
  const spent = (of: (run: Run) => number): number => mean(runs.map(of)) * 1_000
  const part = (of: (round: Round) => number): number => mean(rounds.map(of)) * 1_000
  const [all, domain] = [part(cpuOfRound), part((round) => round.domain)]
  const over = (what: string, of: (round: Round) => number, most?: number): readonly Figure[] => {
    const ratios = rounds.map((round) => (cpuOfRound(round) - round.domain) / of(round))
    return [
      { name: `floor: ${what}`, value: part(of), unit: 'ms' },
      { name: 'overhead over it', value: (all - domain) / part(of), unit: '×', ...(most === undefined ? {} : { most }) },
      { name: '  in the lowest and', value: Math.min(...ratios), unit: '×' },
      { name: '  in the highest of the rounds', value: Math.max(...ratios), unit: '×' },
    ]
  }
  return [
    { name: 'processor per order, all processes', value: all, unit: 'ms' },
    { name: '  service', value: spent((run) => run.spent.service), unit: 'ms' },
    { name: '  workers', value: spent((run) => run.spent.workers), unit: 'ms' },
    { name: '  PostgreSQL', value: spent((run) => run.spent.postgres), unit: 'ms' },
    { name: '  Redis', value: spent((run) => run.spent.redis), unit: 'ms' },
    { name: '  of which domain, paper and picture', value: domain, unit: 'ms' },
    { name: '  overhead', value: all - domain, unit: 'ms' },
    ...over('no-op flow, transactions of one insert', (round) => round.bare, 1.5),
    ...over('the same at the orders’ pace, beside the domain', (round) => round.barePaced),
    ...over('no-op flow, requests, statements and bytes too', (round) => round.full),
    ...over('that at the orders’ pace, beside the domain', (round) => round.fullPaced),
    ...countsOf(moved),
  ]
}

/** Everybody is warm: what is done for the first times costs its compiling, in orders, domain and floors alike. */
const warmAll = async (crew: ServedCrew, { office, nothing, moved }: Beside, orders: number): Promise<void> => {
  await warmUp(crew, { many: orders, first: 0 })
  const { customers } = await measure(crew, { many: half, first: 3 * orders })
  await office.domain(orders / 2)
  await nothing.bare(moved, { orders, perMinute: null })
  await nothing.full(moved, { orders, perMinute: null })
  await leave(crew, customers)
}

/** The processor that orders take beside what the domain does, against a flow of nothing, in rounds. */
export const overhead = async (crew: ServedCrew, moved: Moved, quick: boolean): Promise<readonly Figure[]> => {
  const [office, nothing] = await Promise.all([openOffice(crew), openNoOpFlow(crew)])
  try {
    await warmAll(crew, { office, nothing, moved }, quick ? 10 : 200)
    const rounds: Round[] = []
    for (let round = 0; round < (quick ? 2 : 8); round += 1)
      rounds.push(await lookOnce(crew, { office, nothing, moved }, 1_000 + round * 100))
    return figuresOf(rounds, moved)
  } finally {
    await Promise.all([office.close(), nothing.close()])
  }
}
