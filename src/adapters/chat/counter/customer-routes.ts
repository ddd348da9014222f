import { Hono } from 'hono'
import type { Language } from '../../../domain/units/language.ts'
import type { Channel } from '../../../ports/chat.ts'
import { type Refusal, refuse, sendFile, showPage, visitorLanguage, wantsJson, wordsOf } from './answer.ts'
import { addressOf, type Counter, type Door, type Visit } from './counter.ts'
import { conversationPage, startPage } from './customer-pages.ts'
import { readForm } from './form.ts'
import { deeds, readIncoming } from './incoming.ts'
import { liveStream } from './live.ts'
import type { Place } from './slip.ts'

type Open = { readonly token: string; readonly id: string; readonly language: Language; readonly title: string }

const tokenShape = /^[\w-]{16,200}$/

const channelOf = (open: Open): Channel => ({ kind: 'conversation', id: open.id })

const placeOf = (counter: Counter, open: Open): Place => {
  const words = wordsOf(open.language)
  return {
    base: `/c/${open.token}`,
    words,
    locale: open.language === 'es' ? 'es-US' : 'en-US',
    zone: counter.desk.zone,
    nameOf: (by) => {
      if (by.kind === 'customer') return words.you
      return by.kind === 'bot' || by.name === '' ? counter.desk.shopName : by.name
    },
  }
}

/** The conversation a token opens, or the answer to someone without one. */
const open = async (c: Visit, counter: Counter): Promise<Open | Response> => {
  const token = c.req.param('token') ?? ''
  const found = tokenShape.test(token) ? await counter.desk.conversation(token) : null
  if (found !== null) return { token, ...found }
  const code = counter.limits.misses.take(addressOf(c)) ? 'no-conversation' : 'too-many'
  return refuse(c, counter, { trouble: { code }, language: visitorLanguage(c, counter), back: '/' })
}

const start = async (c: Visit, counter: Counter): Promise<Response> => {
  const refused = (trouble: Refusal['trouble'], language: Language) => refuse(c, counter, { trouble, language, back: '/' })
  const spoken = visitorLanguage(c, counter)
  if (!counter.limits.starts.take(addressOf(c))) return refused({ code: 'too-many' }, spoken)
  const form = await readForm(c.req.raw)
  if (!form.ok) return refused(form.trouble, spoken)
  const asked = form.form.fields.get('language')
  const language = counter.desk.languages.find((one) => one === asked) ?? spoken
  const said = await readIncoming('say', { fields: form.form.fields, files: [] }, null)
  if (!said.ok && said.trouble.code !== 'empty') return refused(said.trouble, language)
  const { token, id } = await counter.desk.startConversation(language)
  if (said.ok) await counter.desk.hear(id, said.incoming)
  return c.redirect(`/c/${token}`, 303)
}

const hear = async (c: Visit, counter: Counter): Promise<Response> => {
  const opened = await open(c, counter)
  if (opened instanceof Response) return opened
  const { token, id, language } = opened
  const back = `/c/${token}#newest`
  if (!counter.limits.words.take(`c:${token}`)) return refuse(c, counter, { trouble: { code: 'too-many' }, language, back })
  const deed = deeds.find((one) => one === c.req.param('deed'))
  if (deed === undefined) return refuse(c, counter, { trouble: { code: 'not-found' }, language, back })
  const form = await readForm(c.req.raw)
  if (!form.ok) return refuse(c, counter, { trouble: form.trouble, language, back })
  const read = await readIncoming(deed, form.form, (file) => counter.desk.keepFile(token, file))
  if (!read.ok) return refuse(c, counter, { trouble: read.trouble, language, back })
  const heard = await counter.desk.hear(id, read.incoming)
  if (heard === 'unknown') return refuse(c, counter, { trouble: { code: 'no-conversation' }, language, back: '/' })
  return wantsJson(c) ? c.json({ said: null, isDone: true }) : c.redirect(back, 303)
}

const watch = async (c: Visit, counter: Counter): Promise<Response> => {
  const opened = await open(c, counter)
  if (opened instanceof Response) return opened
  return liveStream(c, counter, {
    channel: channelOf(opened),
    place: placeOf(counter, opened),
    language: opened.language,
    seat: `c:${opened.token}`,
    still: async () => (await counter.desk.conversation(opened.token)) !== null,
    sheet: null,
  })
}

const file = async (c: Visit, counter: Counter): Promise<Response> => {
  const opened = await open(c, counter)
  if (opened instanceof Response) return opened
  const found = await counter.desk.file(channelOf(opened), c.req.param('file') ?? '')
  if (found !== null) return sendFile(c, found)
  return refuse(c, counter, { trouble: { code: 'not-found' }, language: opened.language, back: `/c/${opened.token}` })
}

/** The customer's side: starting, and the one conversation a token opens. */
export const customerRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  routes.get('/', (c) => showPage(c, counter, startPage(counter, visitorLanguage(c, counter))))
  routes.post('/start', (c) => start(c, counter))
  routes.get('/c/:token', async (c) => {
    const opened = await open(c, counter)
    if (opened instanceof Response) return opened
    const lines = await counter.desk.lines(channelOf(opened), 0)
    return showPage(c, counter, conversationPage(opened, lines, placeOf(counter, opened)))
  })
  routes.get('/c/:token/live', (c) => watch(c, counter))
  routes.get('/c/:token/file/:file', (c) => file(c, counter))
  routes.post('/c/:token/:deed', (c) => hear(c, counter))
  return routes
}
