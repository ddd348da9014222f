import { Hono } from 'hono'
import type { Told } from '../../../ports/counter-desk.ts'
import { refuse, showPage, visitorLanguage } from './answer.ts'
import { addressOf, type Counter, type Door, type Visit } from './counter.ts'
import { asAttachment } from './file-name.ts'
import { type LiveSheet, liveStream, type Watch } from './live.ts'
import { pressList, pressListPage, pressPage, pressSheet } from './press-pages.ts'
import { shelfPage, shelfSheet } from './shelf-page.ts'
import type { Signed } from './sign-in.ts'
import type { Place } from './slip.ts'
import { actOf, enter, placeOf, seatOf } from './staff-routes.ts'

const missing = (c: Visit, counter: Counter, signed: Signed): Response =>
  refuse(c, counter, { trouble: { code: 'not-found' }, language: signed.language, back: '/press' })

const bench = { kind: 'shop', name: 'bench' } as const

const pressPlace = (counter: Counter, signed: Signed, id: string): Place => ({
  ...placeOf(counter, signed, { name: 'press' }),
  base: `/press/${encodeURIComponent(id)}`,
})

const showTicket = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly said: Told | null }) => {
  const { signed, said } = at
  const id = c.req.param('ticket') ?? ''
  const view = await counter.desk.atPress(id)
  if (view === null) return missing(c, counter, signed)
  const seen = { view, name: signed.member.name, place: pressPlace(counter, signed, id), said }
  return showPage(c, counter, pressPage(counter, signed, seen))
}

type Open = Pick<Watch, 'sheet'>

/** A page of the floor while it lies open: nothing but its sheet is replaced. */
const watch = (c: Visit, counter: Counter, at: Open & { readonly signed: Signed }): Response => {
  const { signed, sheet } = at
  return liveStream(c, counter, { channel: bench, place: null, language: signed.language, ...seatOf(counter, signed), sheet })
}

/** A ticket's page while it lies open; every act on a ticket edits its message on the bench, which is the news. */
const watchTicket = (c: Visit, counter: Counter, signed: Signed): Response => {
  const id = c.req.param('ticket') ?? ''
  const place = pressPlace(counter, signed, id)
  const sheet = async (): Promise<LiveSheet | null> => {
    const view = await counter.desk.atPress(id)
    const seen = view === null ? null : { view, name: signed.member.name, place, said: null }
    return seen === null ? null : { mark: JSON.stringify(seen.view), html: pressSheet(seen) }
  }
  return watch(c, counter, { signed, sheet })
}

const listOf = async (counter: Counter, signed: Signed): Promise<LiveSheet> => {
  const tickets = await counter.desk.openTickets()
  const html = pressList(tickets, signed.member.name, placeOf(counter, signed, { name: 'press' }))
  return { mark: JSON.stringify(tickets), html }
}

const showShelf = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly said: Told | null }) => {
  const place = placeOf(counter, at.signed, { name: 'shelf' })
  const view = await counter.desk.shelf()
  return showPage(c, counter, shelfPage(counter, at.signed, { view, place, said: at.said }))
}

const watchShelf = (c: Visit, counter: Counter, signed: Signed): Response => {
  const sheet = async (): Promise<LiveSheet> => {
    const view = await counter.desk.shelf()
    return { mark: JSON.stringify(view), html: shelfSheet(view, placeOf(counter, signed, { name: 'shelf' })) }
  }
  return watch(c, counter, { signed, sheet })
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

type Route = (c: Visit) => Response | Promise<Response>
type Then = (c: Visit, signed: Signed) => Response | Promise<Response>

const signedOnly =
  (counter: Counter, then: Then, ownerOnly = false): Route =>
  async (c) => {
    const signed = await enter(c, counter, { ownerOnly })
    return signed instanceof Response ? signed : then(c, signed)
  }

const pressRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  const to = (then: Then): Route => signedOnly(counter, then)
  const list = async (c: Visit, signed: Signed): Promise<Response> =>
    showPage(c, counter, pressListPage(counter, signed, (await listOf(counter, signed)).html))
  routes.get('/press', to(list))
  routes.get(
    '/press/live',
    to((c, signed) => watch(c, counter, { signed, sheet: () => listOf(counter, signed) })),
  )
  routes.get(
    '/press/:ticket/live',
    to((c, signed) => watchTicket(c, counter, signed)),
  )
  routes.get(
    '/press/:ticket',
    to((c, signed) => showTicket(c, counter, { signed, said: null })),
  )
  routes.post(
    '/press/:ticket/:deed',
    to((c, signed) =>
      actOf(c, counter, { signed, post: { name: 'press' }, show: (said) => showTicket(c, counter, { signed, said }) }),
    ),
  )
  return routes
}

/** The press and the shelf for whoever works here, tables and the calendar feed. */
export const floorRoutes = (counter: Counter): Hono<Door> => {
  const routes = pressRoutes(counter)
  routes.get(
    '/shelf',
    signedOnly(counter, (c, signed) => showShelf(c, counter, { signed, said: null })),
  )
  routes.get(
    '/shelf/live',
    signedOnly(counter, (c, signed) => watchShelf(c, counter, signed)),
  )
  routes.post(
    '/shelf/:deed',
    signedOnly(counter, (c, signed) =>
      actOf(c, counter, { signed, post: { name: 'shelf' }, show: (said) => showShelf(c, counter, { signed, said }) }),
    ),
  )
  routes.get(
    '/tables/:table',
    signedOnly(counter, (c, signed) => sendTable(c, counter, signed), true),
  )
  routes.get('/calendar/:secret', (c) => sendCalendar(c, counter))
  return routes
}
