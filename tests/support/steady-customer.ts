import { createHash, randomUUID } from 'node:crypto'
import { type Asked, ask, post } from './page-request.ts'
import { dayAhead } from './service-customer.ts'
import type { Records } from './service-watch.ts'
import { until } from './until.ts'

/** A customer who does not give up: sends every form until it is taken, always with the same id, as a page does. */
export type SteadyCustomer = {
  readonly orderId: string
  readonly path: string
  /** Says everything the desk needs in one message. */
  readonly say: (words: string) => Promise<void>
  /** Signs the revision that is quoted now. */
  readonly sign: () => Promise<void>
}

/** One small order in a coach's words, needed in so many days; the desk asks how old the players are, and nothing else. */
export const wholeWish = (team: string, days: number): string =>
  [
    `Hi, coach Dana Whitlow here, ${team}, girls volleyball. I need 2 navy mesh jerseys, white numbers on the back,`,
    `6 inch, just regular vinyl, no names on them. Need them ${dayAhead(days)} by 5pm. I'll pick up.`,
    `\n4 Lindqvist M\n9 Banerjee L`,
  ].join(' ')

const patience = 300_000

/** Taken, refused for good, or to be sent again: nobody answered, or the shop says that it is broken just now. */
const outcome = async (asked: Promise<Asked>): Promise<Asked | undefined> => {
  try {
    const answer = await asked
    return answer.status >= 500 || answer.status === 429 ? undefined : answer
  } catch {
    return undefined
  }
}

const takenFrom = (asked: () => Promise<Asked>, what: string): Promise<Asked> => until(what, () => outcome(asked()), patience)

/** Everybody comes from an address of their own, as people do; the limits are per address. */
const addressOf = (number: number): string => `127.${1 + (number >> 16)}.${(number >> 8) & 255}.${1 + (number & 127)}`

export type Shopfront = { readonly address: () => string; readonly records: () => Records }

export const welcome = async ({ address, records }: Shopfront, number: number): Promise<SteadyCustomer> => {
  const from = addressOf(number)
  const opened = await takenFrom(
    () => post(address(), '/start', { fields: { id: randomUUID(), language: 'en', text: '' }, from }),
    'a conversation is opened',
  )
  const path = opened.headers.location
  if (path === undefined) throw new Error(`no conversation was opened: ${opened.status} ${opened.text.slice(0, 200)}`)
  const hash = createHash('sha256').update(path.replace('/c/', '')).digest('hex')
  const [row] = await records().rows('select holder from platenpost.key where hash = $1', hash)
  const orderId = `o${String(row?.['holder']).slice(1)}`
  const deed = async (name: string, fields: { readonly [name: string]: string }): Promise<void> => {
    const form = { fields: { id: randomUUID(), ...fields }, headers: { accept: 'application/json' }, from }
    const answer = await takenFrom(() => post(address(), `${path}/${name}`, form), `${name} is taken`)
    if (answer.status !== 200) throw new Error(`${name} answered ${answer.status}: ${answer.text.slice(0, 200)}`)
  }
  return {
    orderId,
    path,
    say: (text) => deed('say', { text }),
    sign: async () => {
      const revisions = 'select revision, hash from platenpost.order_revision where order_id = $1 order by revision desc limit 1'
      const [newest] = await records().rows(revisions, orderId)
      await deed('press', { action: `c:sign-off:${newest?.['revision']}:${newest?.['hash']}` })
    },
  }
}

/** What the customer's page says, for when something is not as it should be. */
export const seenBy = async ({ address }: Shopfront, { path }: SteadyCustomer): Promise<string> => {
  const answer = await outcome(ask(address(), path))
  return (answer?.text ?? 'nobody answers').replaceAll(/<[^>]+>|\s+/g, ' ').slice(-1_000)
}
