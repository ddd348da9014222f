import type { ServedCrew } from '../../support/served-crew.ts'
import type { Figure } from '../bench.ts'
import { countMoved, leave, type Moved, measure, type Run, warmUp } from './measure.ts'
import { type NoOpFlow, openNoOpFlow } from './no-op-flow.ts'
import { type Office, openOffice } from './office.ts'

/**
 * One look at all of it. Orders, domain and floor come right after each other, because the machine's speed comes and goes. Besides, the
 * floor is looked at as orders meet it: at their pace, while the domain's work is done on the same machine.
 */
type Round = { readonly runs: readonly Run[]; readonly domain: number; readonly floor: number; readonly pacedFloor: number }

type Beside = { readonly office: Office; readonly nothing: NoOpFlow; readonly moved: Moved }

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const half = 10

/** Half of the orders, then the domain with the plan that they meet on average, then the other half. */
const lookOnce = async (crew: ServedCrew, { office, nothing, moved }: Beside, first: number): Promise<Round> => {
  const before = await measure(crew, { many: half, first })
  const domain = (await office.domain(half)) / half
  const floor = await nothing.run(moved, { orders: 4 * half, perMinute: null })
  const [pacedFloor] = await Promise.all([
    nothing.run(moved, { orders: 2 * half, perMinute: before.perMinute }),
    office.domain(2 * half),
  ])
  const runs = [before, await measure(crew, { many: half, first: first + half })]
  await leave(
    crew,
    runs.flatMap(({ customers }) => customers),
  )
  return { runs, domain, floor, pacedFloor }
}

const cpuOfRound = ({ runs }: Round): number => mean(runs.map(({ cpu }) => cpu))

const figuresOf = (rounds: readonly Round[], { jobs, transactions, bytes }: Moved): readonly Figure[] => {
  const runs = rounds.flatMap((round) => round.runs)
  const spent = (of: (run: Run) => number): number => mean(runs.map(of)) * 1_000
  const part = (of: (round: Round) => number): number => mean(rounds.map(of)) * 1_000
  const [all, domain, floor] = [part(cpuOfRound), part((round) => round.domain), part((round) => round.floor)]
  const paced = part((round) => round.pacedFloor)
  const ratios = rounds.map((round) => (cpuOfRound(round) - round.domain) / round.floor)
  return [
    { name: 'processor per order, all processes', value: all, unit: 'ms' },
    { name: '  service', value: spent((run) => run.spent.service), unit: 'ms' },
    { name: '  workers', value: spent((run) => run.spent.workers), unit: 'ms' },
    { name: '  PostgreSQL', value: spent((run) => run.spent.postgres), unit: 'ms' },
    { name: '  Redis', value: spent((run) => run.spent.redis), unit: 'ms' },
    { name: '  of which domain, paper and picture', value: domain, unit: 'ms' },
    { name: '  overhead', value: all - domain, unit: 'ms' },
    { name: 'floor: no-op flow, same jobs, transactions, bytes', value: floor, unit: 'ms' },
    { name: 'overhead over its floor', value: (all - domain) / floor, unit: '×', most: 1.5 },
    { name: '  in the lowest and', value: Math.min(...ratios), unit: '×' },
    { name: '  in the highest of the rounds', value: Math.max(...ratios), unit: '×' },
    { name: 'the floor at the orders’ pace, beside the domain', value: paced, unit: 'ms' },
    { name: 'overhead over that', value: (all - domain) / paced, unit: '×' },
    { name: 'jobs per order', value: jobs, unit: '' },
    { name: 'kept transactions per order', value: transactions, unit: '' },
    { name: 'bytes of the log per order', value: bytes / 1_024, unit: 'KB' },
  ]
}

/** Everybody is warm: what is done for the first times costs its compiling, in orders, domain and floor alike. */
const warmAll = async (crew: ServedCrew, beside: Omit<Beside, 'moved'>, orders: number): Promise<Moved> => {
  await warmUp(crew, { many: orders, first: 0 })
  const moved = await countMoved(crew, { many: Math.ceil(orders / 4), first: 2 * orders })
  const { customers } = await measure(crew, { many: half, first: 3 * orders })
  await beside.office.domain(orders / 2)
  await beside.nothing.run(moved, { orders, perMinute: null })
  await leave(crew, customers)
  return moved
}

/** The processor that orders take beside what the domain does, against a flow of nothing, in rounds. */
export const overhead = async (crew: ServedCrew, quick: boolean): Promise<readonly Figure[]> => {
  const [office, nothing] = await Promise.all([openOffice(crew), openNoOpFlow(crew)])
  try {
    const moved = await warmAll(crew, { office, nothing }, quick ? 10 : 200)
    const rounds: Round[] = []
    for (let round = 0; round < (quick ? 2 : 8); round += 1)
      rounds.push(await lookOnce(crew, { office, nothing, moved }, 1_000 + round * 100))
    return figuresOf(rounds, moved)
  } finally {
    await Promise.all([office.close(), nothing.close()])
  }
}
