import { randomUUID } from 'node:crypto'
import { setTimeout as pause } from 'node:timers/promises'
import type { Desk } from '../../../src/desk/service/desk.ts'
import type { Member } from '../../../src/ports/counter-desk.ts'
import { type Asked, cookieOf, post } from '../page-request.ts'
import { until } from '../until.ts'
import type { Hands, Values } from './hands.ts'
import type { Crew } from './run-week.ts'

const patience = 120_000

/** What the counter answers; asked again, always with the same id, while nobody is there, it is busy or it asks to wait. */
const taken = (what: string, asked: () => Promise<Asked>): Promise<Asked> =>
  until(
    what,
    async () => {
      try {
        const answer = await asked()
        if (answer.status < 500 && answer.status !== 429) return answer
      } catch {
        // Nobody answers just now: the service was killed and comes back at the same address.
      }
      await pause(250)
      return undefined
    },
    patience,
  )

/** Everybody comes from an address of their own, as people do; the limits are per address. */
const addressOf = (number: number): string => `127.9.${number >> 7}.${1 + (number & 127)}`

type Fields = { readonly [name: string]: string }
type Door = { readonly address: string; readonly ownerLink: string; readonly desk: Desk }

const named = (name: string, answer: Asked): string => {
  const cookie = cookieOf(answer)
  if (cookie === '') throw new Error(`${name} was not let in: ${answer.status} ${answer.text.slice(0, 300)}`)
  return cookie
}

export type SignedIn = { readonly crew: Crew; readonly cookieFor: (member: Member) => string }

/** The owner by the one-time link, staff by name and the code the owner makes; each at the counter's own door. */
export const signInCrew = async ({ address, ownerLink, desk }: Door, names: readonly string[]): Promise<SignedIn> => {
  const owner = named('the owner', await post(address, new URL(ownerLink).pathname, { fields: {}, from: addressOf(9_000) }))
  const cookies = new Map<string, string>()
  for (const [at, name] of names.entries()) {
    const made = await post(address, '/people/code', { fields: { name }, headers: { cookie: owner } })
    const code = /<p class="key">([^<]+)<\/p>/.exec(made.text)?.[1] ?? ''
    cookies.set(name, named(name, await post(address, '/sign-in', { fields: { name, code }, from: addressOf(9_001 + at) })))
  }
  const members = await desk.store.shop(desk.shopId).members.list()
  const memberOf = (isIt: (one: Member) => boolean): Member => {
    const found = members.find(({ memberId: id, name, role }) => isIt({ id, name, role }))
    if (found === undefined) throw new Error('somebody who signed in is not on the list')
    return { id: found.memberId, name: found.name, role: found.role }
  }
  const crew = {
    owner: memberOf(({ role }) => role === 'owner'),
    staff: names.map((name) => memberOf((one) => one.name === name)),
  }
  return { crew, cookieFor: (member) => (member.role === 'owner' ? owner : (cookies.get(member.name) ?? '')) }
}

const saidIn = (text: string): string | null => {
  const answer: unknown = JSON.parse(text)
  return typeof answer === 'object' && answer !== null && 'said' in answer && typeof answer.said === 'string' ? answer.said : null
}

export type Counter = {
  readonly address: string
  readonly desk: Desk
  readonly cookieFor: SignedIn['cookieFor']
  /** A process dies and comes back. */
  readonly die: () => Promise<void>
}

/** The pages of a running service, as people's browsers send them; how far things are is read from the store. */
export const counterHands = ({ address, desk, cookieFor, die }: Counter): Hands => {
  const tokens = new Map<string, { readonly token: string; readonly from: string }>()
  const ofCustomer = async (conversation: string, deed: string, fields: Fields): Promise<void> => {
    const at = tokens.get(conversation)
    if (at === undefined) throw new Error(`nobody knows ${conversation}`)
    const form = { fields: { id: randomUUID(), ...fields }, headers: { accept: 'application/json' }, from: at.from }
    const answer = await taken(deed, () => post(address, `/c/${at.token}/${deed}`, form))
    if (answer.status !== 200) throw new Error(`${deed} answered ${answer.status}: ${answer.text.slice(0, 300)}`)
  }
  const ofMember = async (by: Member, deed: string, fields: Fields): Promise<string | null> => {
    const headers = { accept: 'application/json', cookie: cookieFor(by) }
    const form = { fields: { id: randomUUID(), ...fields }, headers }
    const answer = await taken(deed, () => post(address, `/bench/${deed}`, form))
    if (answer.status !== 200) throw new Error(`${deed} of ${by.name} answered ${answer.status}: ${answer.text.slice(0, 300)}`)
    return saidIn(answer.text)
  }
  const filled = (values: Values): Fields =>
    Object.fromEntries(Object.entries(values).map(([name, value]) => [`field.${name}`, value]))
  return {
    desk,
    arrive: async (number, words) => {
      const from = addressOf(number)
      const form = { fields: { id: randomUUID(), language: 'en', text: words }, from }
      const answer = await taken('a conversation is opened', () => post(address, '/start', form))
      const token = answer.headers.location?.replace('/c/', '') ?? ''
      const keys = desk.store.shop(desk.shopId).keys
      const id = await keys.read('customer', desk.ids.hash(token), desk.clock.real())
      if (id === null) throw new Error(`no conversation was opened: ${answer.status} ${answer.text.slice(0, 300)}`)
      tokens.set(id, { token, from })
      return id
    },
    say: (conversation, text) => ofCustomer(conversation, 'say', { text }),
    press: (conversation, action) => ofCustomer(conversation, 'press', { action }),
    act: (by, action, values) =>
      values === undefined ? ofMember(by, 'press', { action }) : ofMember(by, 'fill', { form: action, ...filled(values) }),
    die,
    goOn: () => pause(200),
  }
}
