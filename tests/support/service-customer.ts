import { createHash, randomUUID } from 'node:crypto'
import { ask, post } from './page-request.ts'
import type { Records } from './service-watch.ts'
import { until } from './until.ts'

/** A day so many days from now as people write it: "Friday December 18". */
export const dayAhead = (days: number): string => {
  const at = new Date(Date.now() + days * 86_400_000)
  const parts = new Intl.DateTimeFormat('en-US', { timeZone: 'UTC', weekday: 'long', month: 'long', day: 'numeric' })
  return parts.format(at).replace(',', '')
}

const families = [
  'Trent',
  'Lindqvist',
  'Banerjee',
  'Moss',
  'Vance',
  'Castellano',
  'Okoye',
  'Farrow',
  'Ibarra',
  'Quist',
  'Dorsey',
  'Hale',
]

/** What an invented coach writes in one message; everything but the ages. */
export const wordsFor = (team: string, players: number): string => {
  const roster = families.slice(0, players).map((name, index) => `${index * 3 + 1} ${name} ${['S', 'M', 'L'][index % 3]}`)
  return [
    `Hi, coach Dana Whitlow here, ${team}, girls volleyball. I need ${players} navy mesh jerseys, white numbers front and back,`,
    `4 inch on the front and 6 inch on the back, just regular vinyl, no names on them. Need them ${dayAhead(24)} by 5pm,`,
    `first match is ${dayAhead(26)}. I'll pick up.\n${roster.join('\n')}`,
  ].join(' ')
}

const patience = 60_000
const isAway = (cause: unknown): boolean =>
  cause instanceof Error && 'code' in cause && ['ECONNREFUSED', 'ECONNRESET', 'EPIPE'].includes(String(cause.code))

/** Undefined while nobody answers, so that it is asked again. */
const orAway = async <T>(asked: Promise<T>): Promise<T | undefined> => {
  try {
    return await asked
  } catch (cause) {
    if (isAway(cause)) return undefined
    throw cause
  }
}

/** A customer at the counter: where, and the way to their conversation. */
export type Customer = { readonly address: string; readonly base: string }

/** Says the words at the counter. */
export const arrive = async (address: string, words: string): Promise<Customer> => {
  const answer = await post(address, '/start', { fields: { id: randomUUID(), language: 'en', text: words } })
  const base = answer.headers.location
  if (base === undefined) throw new Error(`no conversation was opened: ${answer.status} ${answer.text.slice(0, 300)}`)
  return { address, base }
}

/** The id of the order of this conversation, there or to come. */
export const orderOf = async (records: Records, { base }: Customer): Promise<string> => {
  const hash = createHash('sha256').update(base.replace('/c/', '')).digest('hex')
  const [row] = await records.rows('select holder from platenpost.key where hash = $1', hash)
  return `o${String(row?.['holder']).slice(1)}`
}

export const pageOf = async ({ address, base }: Customer): Promise<string> => (await orAway(ask(address, base)))?.text ?? ''

/** Sends a form until it is taken, as the page does: always with the same id. */
const deed = async ({ address, base }: Customer, path: string, fields: { readonly [name: string]: string }): Promise<void> => {
  const form = { fields: { id: randomUUID(), ...fields }, headers: { accept: 'application/json' } }
  const answer = await until(`${path} is taken`, () => orAway(post(address, `${base}${path}`, form)), patience)
  if (answer.status !== 200) throw new Error(`${path} answered ${answer.status}: ${answer.text.slice(0, 300)}`)
}

const onPage = async (customer: Customer, what: string, shape: RegExp): Promise<string> => {
  const seen = { page: '' }
  const look = async (): Promise<string | undefined> => {
    seen.page = await pageOf(customer)
    return shape.exec(seen.page)?.[1]
  }
  try {
    return await until(what, look, patience)
  } catch (cause) {
    throw new Error(seen.page.replaceAll(/<[^>]+>|\s+/g, ' ').slice(-1_500), { cause })
  }
}

/** Answers the question for the ages, which is the last one before the quote. */
export const giveAges = async (customer: Customer): Promise<void> => {
  const value = await onPage(customer, 'the ages are asked for', /name="value" value="(all-13[^"]*)"/)
  await deed(customer, '/choose', { choice: 'c:choice', value })
}

/** Signs the proof as soon as it is shown. */
export const signOff = async (customer: Customer): Promise<void> => {
  const action = await onPage(customer, 'the proof is shown', /value="(c:sign-off:[^"]+)"/)
  await deed(customer, '/press', { action })
}

export const say = (customer: Customer, text: string): Promise<void> => deed(customer, '/say', { text })
