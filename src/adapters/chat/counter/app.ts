import { setTimeout as pause } from 'node:timers/promises'
import { Hono } from 'hono'
import { refuse, visitorLanguage } from './answer.ts'
import type { Counter, Door, Visit } from './counter.ts'
import { customerRoutes } from './customer-routes.ts'
import { doorRoutes } from './door-routes.ts'
import { floorRoutes } from './floor-routes.ts'
import { type Doors, guardDoors, safeHeaders } from './guard.ts'
import { loadRoutes } from './load-routes.ts'
import { staffRoutes } from './staff-routes.ts'

const forGood = 'public, max-age=31536000, immutable'
const forToday = 'public, max-age=3600'

const patienceMs = 3_000

/** Whether the store answers in time; a page that shows only errors is not ready, though the process lives. */
const ready = async (c: Visit, counter: Counter): Promise<Response> => {
  const answers = counter.ready().then(
    () => true,
    () => false,
  )
  const late = new AbortController()
  const isReady = await Promise.race([answers, pause(patienceMs, false, { signal: late.signal }).catch(() => false)])
  late.abort()
  return isReady && !counter.closing.aborted ? c.text('ready') : c.text('not ready', 503)
}

/** The counter as a function from request to answer. */
export const makeApp = (counter: Counter, doors: Doors): Hono<Door> => {
  const app = new Hono<Door>()
  app.use(safeHeaders)
  app.use(guardDoors(counter, doors))
  app.get('/up', (c) => c.text('up'))
  app.get('/ready', (c) => ready(c, counter))
  app.get('/robots.txt', (c) => c.text('User-agent: *\nDisallow: /\n'))
  app.get('/assets/:name', (c) => {
    const asset = counter.assets.find(c.req.param('name'))
    if (asset === null) return c.notFound()
    const named = c.req.query('v') !== undefined
    return c.body(asset.bytes, 200, { 'content-type': asset.mime, 'cache-control': named ? forGood : forToday })
  })
  app.route('/', customerRoutes(counter))
  app.route('/', doorRoutes(counter))
  app.route('/', staffRoutes(counter))
  app.route('/', loadRoutes(counter))
  app.route('/', floorRoutes(counter))
  app.notFound((c) => refuse(c, counter, { trouble: { code: 'not-found' }, language: visitorLanguage(c, counter), back: '/' }))
  app.onError((error, c) => {
    counter.report(error)
    return refuse(c, counter, { trouble: { code: 'broken' }, language: visitorLanguage(c, counter), back: '/' })
  })
  return app
}
