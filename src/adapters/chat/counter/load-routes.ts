import { Hono } from 'hono'
import type { Told } from '../../../ports/counter-desk.ts'
import { refuse, showPage, wantsJson, wordsOf } from './answer.ts'
import type { Counter, Door, Visit } from './counter.ts'
import { readForm } from './form.ts'
import { readIncoming } from './incoming.ts'
import { type LiveSheet, liveStream } from './live.ts'
import { loadPage, loadSheetPart } from './load-page.ts'
import { type Signed, signIn } from './sign-in.ts'
import { enter, seatOf } from './staff-routes.ts'
import type { Trouble } from './trouble.ts'

const owners = { kind: 'shop', name: 'owner' } as const

const show = async (
  c: Visit,
  counter: Counter,
  seen: { readonly signed: Signed; readonly said: Told | null },
): Promise<Response> => {
  const sheet = await counter.desk.load(seen.signed.language)
  return showPage(c, counter, loadPage(counter, seen.signed, { sheet, said: seen.said }))
}

/** The page while it lies open; the load is worked out again only when it shows something else. */
const watch = (c: Visit, counter: Counter, signed: Signed): Response => {
  const { language } = signed
  const last: { sheet: LiveSheet | null } = { sheet: null }
  const sheet = async (): Promise<LiveSheet> => {
    const mark = await counter.desk.loadMark()
    if (last.sheet?.mark === mark) return last.sheet
    const fresh = { mark, html: loadSheetPart(await counter.desk.load(language), wordsOf(language)) }
    last.sheet = fresh
    return fresh
  }
  return liveStream(c, counter, { channel: owners, place: null, language, ...seatOf(counter, signed), sheet })
}

const press = async (c: Visit, counter: Counter, signed: Signed): Promise<Response> => {
  const { member, language } = signed
  const refused = (trouble: Trouble) => refuse(c, counter, { trouble, language, back: '/load' })
  if (!counter.limits.words.take(`m:${member.id}`)) return refused({ code: 'too-many' })
  const form = await readForm(c.req.raw)
  if (!form.ok) return refused(form.trouble)
  const read = await readIncoming('press', form.form, null)
  if (!read.ok) return refused(read.trouble)
  const said = await counter.desk.act(member, read.incoming)
  return wantsJson(c) ? c.json(said) : show(c, counter, { signed, said })
}

type Drawing = 'picture' | 'narrowPicture'

/** The drawing of the load; it is drawn anew each time and holds no script. */
const picture = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly as: Drawing }): Promise<Response> => {
  const svg = (await counter.desk.load(at.signed.language))[at.as]
  c.header('content-type', 'image/svg+xml; charset=utf-8')
  c.header('content-security-policy', "sandbox; default-src 'none'")
  return c.body(svg)
}

/** The owner's load page: what is late and what mends it, the load of the stations, how long work takes here. */
export const loadRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  const ownerOnly =
    (then: (c: Visit, signed: Signed) => Promise<Response>) =>
    async (c: Visit): Promise<Response> => {
      const signed = await enter(c, counter, { ownerOnly: true })
      return signed instanceof Response ? signed : then(c, signed)
    }
  routes.get(
    '/load',
    ownerOnly(async (c, signed) => {
      signIn(c, counter, signed)
      return show(c, counter, { signed, said: null })
    }),
  )
  routes.get(
    '/load/picture',
    ownerOnly((c, signed) => picture(c, counter, { signed, as: 'picture' })),
  )
  routes.get(
    '/load/narrow',
    ownerOnly((c, signed) => picture(c, counter, { signed, as: 'narrowPicture' })),
  )
  routes.get(
    '/load/live',
    ownerOnly(async (c, signed) => watch(c, counter, signed)),
  )
  routes.post(
    '/load/press',
    ownerOnly((c, signed) => press(c, counter, signed)),
  )
  return routes
}
