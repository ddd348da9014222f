import { projectRoot } from './adapters/folder/root.ts'
import { machineClock } from './adapters/machine/machine.ts'
import { sessionKey } from './adapters/machine/session-key.ts'
import { readConfig } from './config.ts'
import { counterDesk, openNews } from './desk/service/counter-desk.ts'
import { openShop } from './desk/service/open-shop.ts'
import { openDoor } from './wiring/open-door.ts'
import { openGround } from './wiring/open-ground.ts'
import { openDesk } from './wiring/open-place.ts'
import { openPlatform } from './wiring/open-platform.ts'
import { openWatch } from './wiring/open-watch.ts'
import { openWorkshop } from './wiring/open-workshop.ts'
import { type Opened, orStop, runProgram } from './wiring/run-program.ts'
import { recordLines } from './wiring/say-problems.ts'
import { startBackups } from './wiring/start-backups.ts'
import { whenStopped } from './wiring/stop.ts'
import { reporter } from './wiring/trouble.ts'
import { watchWorker } from './wiring/watch-worker.ts'

const report = reporter('service')

/** Store first (the shop's records are read meanwhile), then the desk, the workers and the counter; closed in the opposite order. */
const serve = async ({ toClose }: Opened): Promise<void> => {
  const root = projectRoot()
  const stopped = whenStopped()
  const config = orStop(readConfig(root))
  const reading = openWorkshop(root, config.shop)
  // What goes wrong with it is told where it is awaited.
  reading.catch(() => undefined)
  const ground = orStop(await openGround(root, config))
  toClose(ground.close)
  const desk = orStop(await openDesk(config, reading, ground.service))
  toClose(desk.store.close)
  process.stderr.write(recordLines(desk.workshop.shop))
  await openShop(desk)
  const news = await openNews(desk)
  toClose(news.close)
  if (config.workers.own) toClose(watchWorker(report).stop)
  toClose(startBackups({ config, address: ground.service, root, report }).close)
  const pages = counterDesk(desk, news)
  const ready = () => desk.store.shopsOf(desk.shopId)
  const watch = orStop(await openWatch(config, { desk, queue: null, ready, report }))
  toClose(watch.close)
  const key = await sessionKey({ data: config.data, given: config.sessionKey, shopId: desk.shopId })
  const door = { desk: pages, root, ...config.counter, sessionKey: key, now: machineClock.milliseconds, ready, report }
  const counter = orStop(await openDoor(door))
  toClose(counter.close)
  process.on('unhandledRejection', report)
  toClose(await openPlatform(desk, config, report))
  process.stdout.write(`The counter is open: ${counter.address}
Owner, once: ${counter.address}/owner/${await pages.newOwnerLink()}
Stop with Ctrl-C.
`)
  const lost = ground.lost.then(() => {
    throw new Error('the connection that holds the data broke; start again')
  })
  await Promise.race([stopped, lost])
  process.stdout.write('Stopping: pages, workers, store.\n')
}

await runProgram(report, serve)
