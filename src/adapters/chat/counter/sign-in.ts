import { getCookie, setCookie } from 'hono/cookie'
import type { Language } from '../../../domain/units/language.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { Counter, Visit } from './counter.ts'

export type Signed = { readonly member: Member; readonly language: Language }

const isSecure = (counter: Counter): boolean => counter.origin.startsWith('https:')
/**
 * The prefix binds the cookie to this host; browsers take it over https only. They send a host's cookies to all of its ports: a trial
 * place beside the real one has a name of its own.
 */
const nameOf = (counter: Counter): string => {
  const { port } = new URL(counter.origin)
  const name = port === '' ? 'counter' : `counter-${port}`
  return isSecure(counter) ? `__Host-${name}` : name
}

const put = (c: Visit, counter: Counter, value: string): void =>
  setCookie(c, nameOf(counter), value, {
    httpOnly: true,
    sameSite: 'Strict',
    secure: isSecure(counter),
    path: '/',
    maxAge: value === '' ? 0 : counter.sessions.seconds,
  })

export const signIn = (c: Visit, counter: Counter, signed: Signed): void =>
  put(c, counter, counter.sessions.seal({ member: signed.member.id, language: signed.language }))

export const signOut = (c: Visit, counter: Counter): void => put(c, counter, '')

/** Who is signed in; asked of the desk each time, so a person who was taken off the list is out at once. */
export const signedIn = async (c: Visit, counter: Counter): Promise<Signed | null> => {
  const sealed = getCookie(c, nameOf(counter))
  const session = sealed === undefined ? null : counter.sessions.open(sealed)
  if (session === null) return null
  const member = await counter.desk.member(session.member)
  return member === null ? null : { member, language: session.language }
}
