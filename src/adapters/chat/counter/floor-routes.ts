import { Hono } from 'hono'
import { refuse, showPage, visitorLanguage } from './answer.ts'
import { addressOf, type Counter, type Door, type Visit } from './counter.ts'
import { asAttachment } from './file-name.ts'
import { pressListPage, pressPage } from './press-pages.ts'
import { shelfPage } from './shelf-page.ts'
import type { Signed } from './sign-in.ts'
import { actOf, enter, placeOf } from './staff-routes.ts'

const missing = (c: Visit, counter: Counter, signed: Signed): Response =>
  refuse(c, counter, { trouble: { code: 'not-found' }, language: signed.language, back: '/press' })

const showTicket = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly said: string | null }) => {
  const { signed, said } = at
  const id = c.req.param('ticket') ?? ''
  const view = await counter.desk.atPress(id)
  if (view === null) return missing(c, counter, signed)
  const place = { ...placeOf(counter, signed, { name: 'press' }), base: `/press/${encodeURIComponent(id)}` }
  return showPage(c, counter, pressPage(counter, signed, { view, place, said }))
}

const showShelf = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly said: string | null }) => {
  const place = placeOf(counter, at.signed, { name: 'shelf' })
  const view = await counter.desk.shelf()
  return showPage(c, counter, shelfPage(counter, at.signed, { view, place, said: at.said }))
}

/** The feed for calendar programs; the address is its only key, so a wrong one costs a try. */
const sendCalendar = async (c: Visit, counter: Counter): Promise<Response> => {
  const secret = (c.req.param('secret') ?? '').replace(/\.ics$/, '')
  const found = /^[\w-]{16,200}$/.test(secret) ? await counter.desk.calendar(secret) : null
  if (found !== null) return c.body(found, 200, { 'content-type': 'text/calendar; charset=utf-8' })
  const code = counter.limits.misses.take(addressOf(c)) ? 'not-found' : 'too-many'
  return refuse(c, counter, { trouble: { code }, language: visitorLanguage(c, counter), back: '/' })
}

const sendTable = async (c: Visit, counter: Counter, signed: Signed): Promise<Response> => {
  const file = c.req.param('table') ?? ''
  const table = await counter.desk.table(file.replace(/\.csv$/, ''))
  if (table === null) return missing(c, counter, signed)
  return c.body(table, 200, { 'content-type': 'text/csv; charset=utf-8', 'content-disposition': asAttachment(file) })
}

/** The press and the shelf for whoever works here, tables and the calendar feed. */
export const floorRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  const signedOnly =
    (then: (c: Visit, signed: Signed) => Response | Promise<Response>, ownerOnly = false) =>
    async (c: Visit) => {
      const signed = await enter(c, counter, { ownerOnly })
      return signed instanceof Response ? signed : then(c, signed)
    }
  const list = async (c: Visit, signed: Signed): Promise<Response> =>
    showPage(c, counter, pressListPage(counter, signed, await counter.desk.openTickets()))
  routes.get('/press', signedOnly(list))
  routes.get(
    '/press/:ticket',
    signedOnly((c, signed) => showTicket(c, counter, { signed, said: null })),
  )
  routes.post(
    '/press/:ticket/:deed',
    signedOnly((c, signed) =>
      actOf(c, counter, { signed, post: { name: 'press' }, show: (said) => showTicket(c, counter, { signed, said }) }),
    ),
  )
  routes.get(
    '/shelf',
    signedOnly((c, signed) => showShelf(c, counter, { signed, said: null })),
  )
  routes.post(
    '/shelf/:deed',
    signedOnly((c, signed) =>
      actOf(c, counter, { signed, post: { name: 'shelf' }, show: (said) => showShelf(c, counter, { signed, said }) }),
    ),
  )
  routes.get(
    '/tables/:table',
    signedOnly((c, signed) => sendTable(c, counter, signed), true),
  )
  routes.get('/calendar/:secret', (c) => sendCalendar(c, counter))
  return routes
}
