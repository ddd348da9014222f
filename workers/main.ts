import { projectRoot } from '../src/adapters/folder/root.ts'
import { openBench } from '../src/adapters/queue/bullmq/bull-bench.ts'
import { openQueue } from '../src/adapters/queue/bullmq/bull-queue.ts'
import { startReconciler } from '../src/adapters/queue/reconcile.ts'
import { startRelay } from '../src/adapters/queue/relay.ts'
import { readConfig } from '../src/config.ts'
import type { WorkerDesk } from '../src/desk/service/desk.ts'
import { tellGivenUp } from '../src/desk/service/give-up.ts'
import type { Handlers } from '../src/ports/queue.ts'
import { addressFor, openDesk, queuePlace } from '../src/wiring/open-place.ts'
import { openPress } from '../src/wiring/open-workshop.ts'
import { orStop } from '../src/wiring/or-stop.ts'
import { whenStopped } from '../src/wiring/stop.ts'
import { reporter } from '../src/wiring/trouble.ts'
import { plan } from './plan.ts'
import { post } from './post.ts'
import { quote } from './quote.ts'
import { remind } from './remind.ts'
import { ticket } from './ticket.ts'

const report = reporter('worker')

const handlersOf = (desk: WorkerDesk): Handlers => ({
  quote: quote(desk),
  plan: plan(desk),
  ticket: ticket(desk),
  post: post(desk),
  remind: remind(desk),
})

const root = projectRoot()
const config = orStop(readConfig(root))
const address = orStop(await addressFor(config))
const desk: WorkerDesk = { ...orStop(await openDesk(root, config, address)), press: await openPress(root) }
const place = queuePlace(config, address)
const queue = await openQueue(place, { onTrouble: report })
const bench = await openBench(place, {
  handlers: handlersOf(desk),
  onGivenUp: (givenUp) => tellGivenUp(desk, givenUp),
  onTrouble: report,
})
const relay = await startRelay({ store: desk.store, queue, onTrouble: report })
const reconciler = startReconciler({ store: desk.store, queue, onTrouble: report, minute: desk.clock.now })
process.stdout.write('worker ready\n')

await whenStopped()
await reconciler.close()
await bench.close()
await relay.close()
await queue.close()
await desk.store.close()
