import { startCounter } from './adapters/chat/counter/start-counter.ts'
import { projectRoot } from './adapters/folder/root.ts'
import { sessionKey } from './adapters/machine/session-key.ts'
import { readConfig } from './config.ts'
import { counterDesk, openNews } from './desk/service/counter-desk.ts'
import { openShop } from './desk/service/open-shop.ts'
import { openGround } from './wiring/open-ground.ts'
import { openDesk } from './wiring/open-place.ts'
import { orStop } from './wiring/or-stop.ts'
import { whenStopped } from './wiring/stop.ts'
import { reporter } from './wiring/trouble.ts'
import { watchWorker } from './wiring/watch-worker.ts'

const report = reporter('service')
const root = projectRoot()
const config = orStop(readConfig(root))
const stopped = whenStopped()

/** Store first, then the desk, the workers and the counter; stopped in the opposite order. */
const ground = orStop(await openGround(root, config))
const desk = orStop(await openDesk(root, config, ground.service))
await openShop(desk)
const worker = watchWorker(report)
const news = await openNews(desk)
const pages = counterDesk(desk, news)
const counter = await startCounter({
  desk: pages,
  root,
  ...config.counter,
  sessionKey: await sessionKey(config.data),
  now: desk.clock.milliseconds,
  report,
})
const link = await pages.newOwnerLink()
process.stdout.write(`The counter is open: ${counter.address}
Owner, once: ${counter.address}/owner/${link}
Stop with Ctrl-C.
`)

await Promise.race([stopped, ground.lost.then(() => report(new Error('the data folder was taken by another service')))])
process.stdout.write('Stopping: pages, workers, store.\n')
await counter.close()
await worker.stop()
await news.close()
await desk.store.close()
await ground.close()
