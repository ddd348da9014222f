import { Hono } from 'hono'
import type { Language } from '../../../domain/units/language.ts'
import { refuse, showPage, visitorLanguage, wordsOf } from './answer.ts'
import { addressOf, type Counter, type Door, type Visit } from './counter.ts'
import { readForm, type SentForm } from './form.ts'
import { type Signed, signIn, signOut } from './sign-in.ts'
import { type Made, ownerPage, peoplePage, signInPage } from './staff-pages.ts'
import { enter } from './staff-routes.ts'

const linkShape = /^[\w-]{16,200}$/
const mostName = 60

const homeOf = (role: 'owner' | 'staff'): string => (role === 'owner' ? '/morning' : '/bench')

const languageIn = (form: SentForm, counter: Counter): Language | undefined =>
  counter.desk.languages.find((one) => one === form.fields.get('language'))

const field = (form: SentForm, name: string): string => (form.fields.get(name) ?? '').trim().slice(0, mostName)

const staffIn = async (c: Visit, counter: Counter): Promise<Response> => {
  const form = await readForm(c.req.raw)
  if (!form.ok) return refuse(c, counter, { trouble: form.trouble, language: visitorLanguage(c, counter), back: '/sign-in' })
  const language = languageIn(form.form, counter) ?? visitorLanguage(c, counter)
  const name = field(form.form, 'name')
  const keys = [`a:${addressOf(c)}`, `n:${name.toLowerCase()}`]
  if (!keys.every(counter.limits.keys.take))
    return refuse(c, counter, { trouble: { code: 'too-many' }, language, back: '/sign-in' })
  const member = await counter.desk.staffByCode(name, field(form.form, 'code'))
  if (member === null) {
    const sentence = wordsOf(language).trouble['sign-in-failed']({ name, most: '' })
    return showPage(c, counter, { ...signInPage(language, sentence), status: 401 })
  }
  signIn(c, counter, { member, language })
  return c.redirect(homeOf(member.role), 303)
}

const ownerIn = async (c: Visit, counter: Counter): Promise<Response> => {
  const spoken = visitorLanguage(c, counter)
  if (!counter.limits.keys.take(`a:${addressOf(c)}`)) {
    return refuse(c, counter, { trouble: { code: 'too-many' }, language: spoken, back: '/' })
  }
  const form = await readForm(c.req.raw)
  const language = form.ok ? (languageIn(form.form, counter) ?? spoken) : spoken
  const link = c.req.param('link') ?? ''
  const member = linkShape.test(link) ? await counter.desk.ownerByLink(link) : null
  if (member === null) return refuse(c, counter, { trouble: { code: 'link-used' }, language, back: '/' })
  signIn(c, counter, { member, language })
  return c.redirect('/morning', 303)
}

const showPeople = async (
  c: Visit,
  counter: Counter,
  { signed, made }: { readonly signed: Signed; readonly made: Made | null },
): Promise<Response> => showPage(c, counter, peoplePage(counter, signed, { members: await counter.desk.members(), made }))

const remove = async (c: Visit, counter: Counter): Promise<Response> => {
  const signed = await enter(c, counter, { ownerOnly: true })
  if (signed instanceof Response) return signed
  const refused = { language: signed.language, back: '/people' }
  if (!counter.limits.words.take(`m:${signed.member.id}`))
    return refuse(c, counter, { trouble: { code: 'too-many' }, ...refused })
  const form = await readForm(c.req.raw)
  if (!form.ok) return refuse(c, counter, { trouble: form.trouble, ...refused })
  await counter.desk.removeMember(form.form.fields.get('member') ?? '')
  return c.redirect('/people', 303)
}

const calendar = async (c: Visit, counter: Counter, how: 'make' | 'end'): Promise<Response> => {
  const signed = await enter(c, counter, { ownerOnly: true })
  if (signed instanceof Response) return signed
  if (!counter.limits.words.take(`m:${signed.member.id}`))
    return refuse(c, counter, { trouble: { code: 'too-many' }, language: signed.language, back: '/people' })
  if (how === 'end') {
    await counter.desk.revokeCalendar(signed.member)
    return c.redirect('/people', 303)
  }
  const link = `${counter.origin}/calendar/${await counter.desk.newCalendar(signed.member)}.ics`
  return showPeople(c, counter, { signed, made: { kind: 'calendar', link } })
}

const makeKey = async (c: Visit, counter: Counter, kind: Exclude<Made['kind'], 'calendar'>): Promise<Response> => {
  const signed = await enter(c, counter, { ownerOnly: true })
  if (signed instanceof Response) return signed
  const refused = { language: signed.language, back: '/people' }
  if (!counter.limits.words.take(`m:${signed.member.id}`))
    return refuse(c, counter, { trouble: { code: 'too-many' }, ...refused })
  if (kind === 'link') {
    const link = `${counter.origin}/owner/${await counter.desk.newOwnerLink()}`
    return showPeople(c, counter, { signed, made: { kind, link } })
  }
  const form = await readForm(c.req.raw)
  if (!form.ok) return refuse(c, counter, { trouble: form.trouble, ...refused })
  const name = field(form.form, 'name')
  if (name === '') return refuse(c, counter, { trouble: { code: 'empty' }, ...refused })
  const { code } = await counter.desk.newPairingCode(name)
  return showPeople(c, counter, { signed, made: { kind, name, code } })
}

const changeLanguage = async (c: Visit, counter: Counter): Promise<Response> => {
  const signed = await enter(c, counter, { ownerOnly: false })
  if (signed instanceof Response) return signed
  const form = await readForm(c.req.raw)
  const language = (form.ok ? languageIn(form.form, counter) : undefined) ?? signed.language
  const back = form.ok ? (form.form.fields.get('back') ?? '') : ''
  signIn(c, counter, { member: signed.member, language })
  return c.redirect(
    ['/bench', '/press', '/shelf', '/morning', '/load', '/people'].includes(back) ? back : homeOf(signed.member.role),
    303,
  )
}

/** Ways in and out for the people of the shop, and where the owner makes their keys. */
export const doorRoutes = (counter: Counter): Hono<Door> => {
  const routes = new Hono<Door>()
  routes.get('/sign-in', (c) => showPage(c, counter, signInPage(visitorLanguage(c, counter), null)))
  routes.post('/sign-in', (c) => staffIn(c, counter))
  routes.post('/sign-out', (c) => {
    signOut(c, counter)
    return c.redirect('/sign-in', 303)
  })
  routes.get('/owner/:link', (c) => showPage(c, counter, ownerPage(visitorLanguage(c, counter), c.req.param('link'))))
  routes.post('/owner/:link', (c) => ownerIn(c, counter))
  routes.post('/language', (c) => changeLanguage(c, counter))
  routes.get('/people', async (c) => {
    const signed = await enter(c, counter, { ownerOnly: true })
    return signed instanceof Response ? signed : showPeople(c, counter, { signed, made: null })
  })
  routes.post('/people/code', (c) => makeKey(c, counter, 'code'))
  routes.post('/people/link', (c) => makeKey(c, counter, 'link'))
  routes.post('/people/remove', (c) => remove(c, counter))
  routes.post('/people/calendar', (c) => calendar(c, counter, 'make'))
  routes.post('/people/calendar/end', (c) => calendar(c, counter, 'end'))
  return routes
}
