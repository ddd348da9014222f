import { projectRoot } from '../src/adapters/folder/root.ts'
import { startPulse } from '../src/adapters/machine/pulse.ts'
import { searchInThread } from '../src/adapters/machine/search-plan.ts'
import { openBench, type Ran } from '../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../src/adapters/queue/bullmq/bull-queue.ts'
import { startReconciler, startReminder } from '../src/adapters/queue/reconcile.ts'
import { startRelay } from '../src/adapters/queue/relay.ts'
import { type Config, readConfig } from '../src/config.ts'
import { type Tenants, tenantsOf } from '../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { searchBetterPlans } from '../src/desk/service/plan/better-plan.ts'
import { tellGivenUp } from '../src/desk/service/say/give-up.ts'
import type { GivenUp, Handlers, Queue } from '../src/ports/queue.ts'
import { addressFor, openDesk, queuePlace } from '../src/wiring/open-place.ts'
import { openDeliveries } from '../src/wiring/open-platform.ts'
import { openPress } from '../src/wiring/open-press.ts'
import { openWatch, type Watch } from '../src/wiring/open-watch.ts'
import { openWorkshop } from '../src/wiring/open-workshop.ts'
import { type Opened, orStop, runProgram } from '../src/wiring/run-program.ts'
import { whenStopped } from '../src/wiring/stop.ts'
import { aboutStep, onceAMinute, reporter, stepLogger } from '../src/wiring/trouble.ts'
import { plan } from './plan.ts'
import { post } from './post.ts'
import { price } from './price.ts'
import { quote } from './quote.ts'
import { remind } from './remind.ts'
import { type Background, startBackground } from './search.ts'
import { ticket } from './ticket.ts'

const report = reporter('worker')
/** What goes wrong beside any one step. */
const trouble = onceAMinute(report, () => performance.now())
const longestMilliseconds = 60_000

/** A server's new name or language is known to every job so much later at most. */
const trustMilliseconds = 5_000

const handlersOf = (tenants: Tenants<WorkerDesk>, background: Background): Handlers => ({
  quote: quote(tenants),
  price: price(tenants),
  plan: plan(tenants, background),
  ticket: ticket(tenants),
  post: post(tenants),
  remind: remind(tenants, background),
})

/** A worker that the service started is watched through it: two processes cannot listen at one port. */
const openWorkerWatch = async (config: Config, desk: WorkerDesk, queue: Queue): Promise<Watch> => {
  const own = process.send !== undefined ? { ...config, watch: null } : config
  const ready = () => Promise.all([desk.store.shopsOf(desk.shopId), queue.counts()])
  return orStop(await openWatch(own, { desk, queue: queue.counts, ready, report }))
}

/** Every run is counted; what threw is told with its order, and where it is asked for each run has its line. */
const noteRun = (config: Config, watch: Watch): ((ran: Ran) => void) => {
  const logStep = stepLogger('worker')
  return ({ step, milliseconds, cause }) => {
    const outcome = cause === null ? 'done' : 'failed'
    watch.ran(step.step, milliseconds / 1_000, outcome)
    if (cause !== null) report(cause, aboutStep(step))
    if (config.logsSteps) logStep({ step, milliseconds, outcome })
  }
}

/** The queue's side: steps in hand, the outbox, what is overdue. Closed in the opposite order. */
const work = async ({ toClose }: Opened): Promise<void> => {
  const root = projectRoot()
  const stopped = whenStopped()
  const config = orStop(readConfig(root))
  const { lockSeconds, overdueSeconds, pulse } = config.workers
  const address = orStop(await addressFor(config))
  const desk: WorkerDesk = {
    ...orStop(await openDesk(config, openWorkshop(root, config.shop), address)),
    press: await openPress(root),
  }
  const { store } = desk
  toClose(store.close)
  const place = queuePlace(config, address, desk)
  const queue = await openQueue(place, { onTrouble: trouble })
  toClose(queue.close)
  const relay = await startRelay({ store, house: desk.shopId, queue, onTrouble: trouble })
  toClose(relay.close)
  const watch = await openWorkerWatch(config, desk, queue)
  toClose(watch.close)
  const tenants = tenantsOf(desk, { milliseconds: trustMilliseconds, now: () => performance.now() })
  const onGivenUp = async (givenUp: GivenUp) => tellGivenUp(await tenants(givenUp.step.shopId), givenUp)
  const lockMilliseconds = lockSeconds * 1_000
  const onRan = noteRun(config, watch)
  const better = searchBetterPlans(searchInThread())
  const background = startBackground(async (shopId) => better(await tenants(shopId)), report)
  toClose(background.close)
  const handlers = handlersOf(tenants, background)
  const bench = await openBench(place, { handlers, onGivenUp, onTrouble: trouble, onRan, lockMilliseconds })
  toClose(bench.close)
  toClose(await openDeliveries(desk, config, report))
  const everyMilliseconds = Math.min(longestMilliseconds, overdueSeconds * 1_000)
  const looking = { store, house: desk.shopId, queue, onTrouble: trouble }
  toClose(startReconciler({ ...looking, everyMilliseconds, overdueSeconds }).close)
  toClose(startReminder({ ...looking, clock: desk.clock }).close)
  if (pulse !== null) toClose(startPulse({ file: pulse, lives: queue.counts, report: trouble }).close)
  process.stdout.write('worker ready\n')
  await stopped
}

if (process.argv.includes('--help')) {
  const { workerUsage } = await import('../templates/desk/starting.ts')
  process.stdout.write(workerUsage)
} else await runProgram(report, work)
