import { Hono } from 'hono'
import { markupOf } from '../../../../templates/page/html.ts'
import type { Channel } from '../../../ports/chat.ts'
import type { Told } from '../../../ports/counter-desk.ts'
import { refuse, sendFile, showPage, visitorLanguage, wantsJson, wordsOf } from './answer.ts'
import type { Counter, Door, Visit } from './counter.ts'
import { readForm } from './form.ts'
import { deeds, readIncoming } from './incoming.ts'
import { liveStream } from './live.ts'
import { type Signed, signedIn, signIn } from './sign-in.ts'
import type { Place } from './slip.ts'
import { benchPage, morningPage, morningSheet, type Room } from './staff-pages.ts'
import type { Trouble } from './trouble.ts'

/** A page of the shop's own people: the channel it shows, and whether it is the owner's alone. */
type Post = { readonly name: 'bench' | 'morning' | 'press' | 'shelf'; readonly channel: Channel; readonly ownerOnly: boolean }

const bench: Post = { name: 'bench', channel: { kind: 'shop', name: 'bench' }, ownerOnly: false }
const morning: Post = { name: 'morning', channel: { kind: 'shop', name: 'owner' }, ownerOnly: true }

/** The page of a ticket at the press, at the form that an action opens. */
const formAt =
  (counter: Counter) =>
  (action: string): string | null => {
    const [kind, ticket = '', act = ''] = action.split(':')
    if (kind !== 't' || !counter.desk.needsForm(action)) return null
    return `/press/${encodeURIComponent(ticket)}#form-${encodeURIComponent(act)}`
  }

export const placeOf = (counter: Counter, signed: Signed, post: Pick<Post, 'name'>): Place => ({
  base: `/${post.name}`,
  formAt: formAt(counter),
  words: wordsOf(signed.language),
  locale: signed.language === 'es' ? 'es-US' : 'en-US',
  zone: counter.desk.zone,
  ...(post.name === 'bench' ? { foldsBefore: 0 } : {}),
  nameOf: (by) => {
    if (by.kind !== 'bot' && by.name !== '') return by.name
    return by.kind === 'customer' ? wordsOf(signed.language).customer : counter.desk.shopName
  },
})

/** Someone signed in, or the answer to someone who is not; an owner's page also refuses staff. */
export const enter = async (c: Visit, counter: Counter, who: { readonly ownerOnly: boolean }): Promise<Signed | Response> => {
  const signed = await signedIn(c, counter)
  const language = signed?.language ?? visitorLanguage(c, counter)
  if (signed === null) {
    const away = c.req.method !== 'GET' || wantsJson(c) || c.req.path.endsWith('/live')
    return away
      ? refuse(c, counter, { trouble: { code: 'signed-out' }, language, back: '/sign-in' })
      : c.redirect(`/sign-in?language=${language}`, 303)
  }
  if (!who.ownerOnly || signed.member.role === 'owner') return signed
  return refuse(c, counter, { trouble: { code: 'owner-only' }, language, back: '/bench' })
}

const showRoom = async (
  c: Visit,
  counter: Counter,
  seen: { readonly signed: Signed; readonly post: Post; readonly said: Told | null },
) => {
  const { signed, post, said } = seen
  const room: Room = { lines: await counter.desk.lines(post.channel, 0), place: placeOf(counter, signed, post), said }
  if (post.name === 'bench') return showPage(c, counter, benchPage(counter, signed, room))
  const sheet = await counter.desk.morning(signed.language)
  return showPage(c, counter, morningPage(counter, signed, { ...room, morning: sheet }))
}

type Acting = {
  readonly signed: Signed
  readonly post: Pick<Post, 'name'>
  /** The page again, with what was answered, for a form sent without script. */
  readonly show: (said: Told | null) => Response | Promise<Response>
}

export const actOf = async (c: Visit, counter: Counter, at: Acting): Promise<Response> => {
  const { member, language } = at.signed
  const refused = (trouble: Trouble) => refuse(c, counter, { trouble, language, back: `/${at.post.name}#newest` })
  if (!counter.limits.words.take(`m:${member.id}`)) return refused({ code: 'too-many' })
  const deed = deeds.find((one) => one === c.req.param('deed'))
  if (deed === undefined) return refused({ code: 'not-found' })
  const form = await readForm(c.req.raw)
  if (!form.ok) return refused(form.trouble)
  const read = await readIncoming(deed, form.form, counter.desk.keepShopFile)
  if (!read.ok) return refused(read.trouble)
  const said = await counter.desk.act(member, read.incoming)
  return wantsJson(c) ? c.json(said) : at.show(said)
}

/** Whose live page it is, and that they may still see it. */
export const seatOf = (counter: Counter, { member }: Signed) => ({
  seat: `m:${member.id}`,
  still: async () => (await counter.desk.member(member.id))?.role === member.role,
})

const watch = (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly post: Post }): Response => {
  const { signed, post } = at
  const sheet = async () => {
    const html = morningSheet(await counter.desk.morning(signed.language), signed.language)
    return { mark: markupOf(html), html }
  }
  return liveStream(c, counter, {
    channel: post.channel,
    place: placeOf(counter, signed, post),
    language: signed.language,
    ...seatOf(counter, signed),
    sheet: post.name === 'morning' ? sheet : null,
  })
}

const file = async (c: Visit, counter: Counter, at: { readonly signed: Signed; readonly post: Post }): Promise<Response> => {
  const found = await counter.desk.file(at.post.channel, c.req.param('file') ?? '')
  if (found !== null) return sendFile(c, found)
  return refuse(c, counter, { trouble: { code: 'not-found' }, language: at.signed.language, back: `/${at.post.name}` })
}

const postRoutes = (counter: Counter, post: Post): Hono<Door> => {
  const routes = new Hono<Door>()
  const signedOnly =
    (then: (c: Visit, at: { readonly signed: Signed; readonly post: Post }) => Response | Promise<Response>) =>
    async (c: Visit) => {
      const signed = await enter(c, counter, post)
      return signed instanceof Response ? signed : then(c, { signed, post })
    }
  routes.get(
    '/',
    signedOnly(async (c, at) => {
      // Used sessions are renewed, so a person who works here every week stays signed in.
      signIn(c, counter, at.signed)
      return showRoom(c, counter, { ...at, said: null })
    }),
  )
  routes.get(
    '/live',
    signedOnly((c, at) => watch(c, counter, at)),
  )
  routes.get(
    '/file/:file',
    signedOnly((c, at) => file(c, counter, at)),
  )
  routes.post(
    '/:deed',
    signedOnly((c, at) => actOf(c, counter, { ...at, show: (said) => showRoom(c, counter, { ...at, said }) })),
  )
  return routes
}

/** The bench for staff and owner, the morning sheet for the owner. */
export const staffRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  routes.route('/bench', postRoutes(counter, bench))
  routes.route('/morning', postRoutes(counter, morning))
  return routes
}
