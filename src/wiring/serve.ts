import { machineClock } from '../adapters/machine/machine.ts'
import { sessionKey } from '../adapters/machine/session-key.ts'
import { housesAt } from '../adapters/store/sql/other-houses.ts'
import type { Config } from '../config.ts'
import { counterDesk, openNews } from '../desk/service/counter-desk.ts'
import { openShop } from '../desk/service/shop/open-shop.ts'
import type { Result } from '../domain/result/result.ts'
import type { Base } from './open-base.ts'
import { openDoor } from './open-door.ts'
import { openGround } from './open-ground.ts'
import { openDesk } from './open-place.ts'
import { openPlatform } from './open-platform.ts'
import { openWatch } from './open-watch.ts'
import { openWorkshop } from './open-workshop.ts'
import { type Opened, orStop } from './run-program.ts'
import { otherIdLines, recordLines } from './say-problems.ts'
import { startBackups } from './start-backups.ts'
import { reporter } from './trouble.ts'
import { watchWorker } from './watch-worker.ts'

const report = reporter('service')

export type Serving = {
  readonly root: string
  readonly config: Config
  /** The store's server, which may still be starting: the shop's records are read meanwhile. */
  readonly starting: Promise<Result<Base>>
  readonly stopped: Promise<unknown>
}

/** Store first, then the desk, the workers and the counter; closed in the opposite order. */
export const serve = async ({ toClose }: Opened, { root, config, starting, stopped }: Serving): Promise<void> => {
  const reading = openWorkshop(root, config.shop)
  // What goes wrong with it is told where it is awaited.
  reading.catch(() => undefined)
  const ground = orStop(await openGround(root, config, orStop(await starting)))
  toClose(ground.close)
  const desk = orStop(await openDesk(config, reading, ground.service))
  toClose(desk.store.close)
  process.stderr.write(recordLines(desk.workshop.shop))
  process.stderr.write(
    otherIdLines(orStop(await housesAt(ground.service)), { id: desk.shopId, embedded: config.databaseUrl === null }),
  )
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
  toClose(orStop(await openPlatform(desk, config, report)))
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
