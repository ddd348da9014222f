import type { Deliver, Delivered, Form, Incoming, Message } from '../../../src/ports/chat.ts'
import type { StoredFile } from '../../../src/ports/counter-desk.ts'
import type {
  Actor,
  GuildSettings,
  Outcome,
  PlatformDesk,
  PlatformPerson,
  PostingTrouble,
  Talk,
} from '../../../src/ports/platform-desk.ts'
import { action, message, ticketActions } from './messages.ts'
import { memoryPostings } from './postings.ts'

type Heard = { readonly talk: Talk; readonly by: PlatformPerson; readonly incoming: Incoming }
type Acted = { readonly actor: Actor; readonly incoming: Incoming }
type Ticket = { readonly shop: string; readonly revision: number; takenBy: string | null; done: string[]; state: 'open' | 'done' }
export type RefusedRow = { readonly shop: string; readonly person: string; readonly what: string }

const done: Outcome = { outcome: 'done', said: null, shown: null }
const refused: Outcome = { outcome: 'refused', said: null, shown: null }

const whatOf = (incoming: Incoming): string =>
  incoming.kind === 'pressed' ? incoming.action : incoming.kind === 'filled' ? incoming.form : incoming.kind

/**
 * A small shop behind the platform: one order a conversation, its proof, sign-off and ticket. It plays the desk's part: each
 * delivery counts once, rights come from its own records, what people see goes through `deliver`.
 */
export const smallDesk = () => {
  const guilds = new Map<string, GuildSettings>()
  const talks = new Map<string, Talk>()
  const files = new Map<string, StoredFile>()
  const owners = new Map<string, string>()
  const tickets = new Map<string, Ticket>()
  const forms = new Map<string, Form>()
  const seen = new Set<string>()
  const heard: Heard[] = []
  const acted: Acted[] = []
  const refusals: RefusedRow[] = []
  const troubles: { readonly code: PostingTrouble; readonly nonce: string }[] = []
  const hints: string[] = []
  const postings = memoryPostings()
  const running = { deliver: null as Deliver | null, slow: 0, fails: 0 }

  const isNew = (incoming: Incoming): boolean => {
    if (seen.has(incoming.id)) return false
    seen.add(incoming.id)
    return true
  }
  const trouble = async (): Promise<void> => {
    if (running.slow > 0) await new Promise((resolve) => setTimeout(resolve, running.slow))
    if (running.fails > 0) {
      running.fails -= 1
      throw new Error('the store is away')
    }
  }
  const send = async (shop: string, conversation: string | null, nonce: string, said: Message): Promise<void> => {
    const channel =
      conversation === null ? ({ kind: 'shop', name: 'bench' } as const) : ({ kind: 'conversation', id: conversation } as const)
    const sent: Promise<Delivered> | undefined = running.deliver?.({ shop, channel, nonce, message: said })
    await sent
  }
  const refuse = (shop: string, person: string, incoming: Incoming): Outcome => {
    refusals.push({ shop, person, what: whatOf(incoming) })
    return refused
  }

  const signOff = async (talk: Talk): Promise<void> => {
    const id = `T-${talk.conversation}`
    const ticket: Ticket = tickets.get(id) ?? { shop: talk.shop, revision: 1, takenBy: null, done: [], state: 'open' }
    tickets.set(id, ticket)
    await send(
      talk.shop,
      talk.conversation,
      `order-${talk.conversation}`,
      message({ blocks: [{ kind: 'text', text: 'Signed off.', tone: 'good' }] }),
    )
    await showTicket(id, ticket)
  }
  const showTicket = async (id: string, ticket: Ticket): Promise<void> => {
    const text = [`Ticket ${id}`, ...(ticket.takenBy === null ? [] : [`taken by ${ticket.takenBy}`]), ...ticket.done].join('\n')
    await send(
      ticket.shop,
      null,
      `ticket-${id}-1`,
      message({ blocks: [{ kind: 'text', text, tone: 'plain' }], actions: ticketActions(id) }),
    )
  }
  const proof = async (talk: Talk, text: string): Promise<void> => {
    const actions = [
      action(`o:O-${talk.conversation}:sign-off:1`, 'Sign off'),
      action(`o:O-${talk.conversation}:change:1`, 'Change'),
    ]
    const said = message({ blocks: [{ kind: 'text', text: `You said: ${text}`, tone: 'plain' }], actions })
    await send(talk.shop, talk.conversation, `order-${talk.conversation}`, said)
  }

  const hear = async (talk: Talk, by: PlatformPerson, incoming: Incoming): Promise<Outcome> => {
    await trouble()
    if (!isNew(incoming)) return { ...done, outcome: 'known' }
    if (talk.person !== by.id) return refuse(talk.shop, by.id, incoming)
    const what = whatOf(incoming)
    if (incoming.kind === 'pressed' && !what.startsWith('c:') && what.split(':')[1] !== `O-${talk.conversation}`)
      return refuse(talk.shop, by.id, incoming)
    heard.push({ talk, by, incoming })
    if (incoming.kind === 'said') await proof(talk, incoming.text)
    if (what.includes(':sign-off:')) await signOff(talk)
    if (what === 'c:status') return { ...done, said: 'Your order is on the bench.' }
    return done
  }

  const ticketDeed = async (actor: Actor, incoming: Incoming): Promise<Outcome> => {
    const [, id = '', deed = ''] = whatOf(incoming).split(':')
    const ticket = tickets.get(id)
    if (ticket === undefined || ticket.shop !== actor.shop || actor.role === null)
      return refuse(actor.shop, actor.person.id, incoming)
    if (deed === 'take' && ticket.takenBy !== null) return { ...refused, said: `Already taken by ${ticket.takenBy}.` }
    if (deed === 'take') ticket.takenBy = actor.person.name
    else ticket.done.push(incoming.kind === 'filled' ? `${deed} ${Object.values(incoming.values).join(' ')}` : deed)
    acted.push({ actor, incoming })
    await showTicket(id, ticket)
    return done
  }
  const act = async (actor: Actor, incoming: Incoming): Promise<Outcome> => {
    await trouble()
    if (!isNew(incoming)) return { ...done, outcome: 'known' }
    const what = whatOf(incoming)
    if (what.startsWith('t:')) return await ticketDeed(actor, incoming)
    const ownersOnly = ['c:morning', 'c:load', 'c:setup'].includes(what)
    if (actor.role === null || (ownersOnly && actor.role !== 'owner')) return refuse(actor.shop, actor.person.id, incoming)
    acted.push({ actor, incoming })
    if (what === 'c:morning')
      return { ...done, shown: message({ blocks: [{ kind: 'list', title: 'Morning', items: ['press first'] }] }) }
    return done
  }

  const desk: PlatformDesk = {
    guild: async (guild) => guilds.get(guild) ?? null,
    setUp: async ({ id, name }, _by, change) => {
      const fresh: GuildSettings = {
        guild: id,
        shop: `shop-${id}`,
        name,
        language: 'en',
        talks: 'direct',
        bench: null,
        owner: null,
        orders: null,
        staffRoles: [],
        ownerRoles: [],
      }
      const settings = { ...(guilds.get(id) ?? fresh), ...change }
      guilds.set(id, settings)
      return settings
    },
    shopsOf: async (person) =>
      [...talks.values()]
        .filter((talk) => talk.person === person)
        .flatMap((talk) => [...guilds.values()].filter((one) => one.shop === talk.shop)),
    guilds: async () => [...guilds.values()],
    talkOf: async (person, shop) =>
      [...talks.values()].find((talk) => talk.person === person && (shop === null || talk.shop === shop)) ?? null,
    talkIn: async (channel) => [...talks.values()].find((talk) => talk.channel === channel) ?? null,
    openTalk: async (shop, person, channel) => {
      const before = [...talks.values()].find((talk) => talk.person === person.id && talk.shop === shop)
      const talk: Talk = {
        shop,
        conversation: before?.conversation ?? `C${talks.size + 1}`,
        person: person.id,
        channel,
        language: person.language,
        over: false,
      }
      talks.set(talk.conversation, talk)
      return talk
    },
    hear,
    act,
    opensForm: (id) => /^t:[^:]+:(water-drops|short|spoiled|ask):\d+$/.test(id),
    form: async (asker, id) => {
      await trouble()
      if ('role' in asker && asker.role === null) return null
      return forms.get(id) ?? forms.get(id.replace(/^t:[^:]+:([^:]+):.*$/, '$1')) ?? null
    },
    suggest: async (actor, { option, text }) =>
      actor.role === null ? [] : [...hints, `${option}-1`, `${option}-2`].filter((one) => one.includes(text)),
    keepFile: async (shop, _channel, file) => {
      files.set(`kept-${files.size + 1}`, file)
      owners.set(`kept-${files.size}`, shop)
      return { id: `kept-${files.size}` }
    },
    file: async (shop, _channel, id) => (owners.get(id) === shop ? (files.get(id) ?? null) : null),
    placeOf: async (shop, channel) => {
      const settings = [...guilds.values()].find((one) => one.shop === shop)
      const place = channel.kind === 'conversation' ? talks.get(channel.id)?.channel : settings?.[channel.name]
      return place === undefined || place === null ? null : { channel: place, language: settings?.language ?? 'en' }
    },
    troubled: async (_shop, { code, nonce }) => {
      troubles.push({ code, nonce })
      return { about: nonce }
    },
    postings,
  }
  return { desk, guilds, talks, files, owners, hints, tickets, forms, heard, acted, refusals, troubles, running }
}
export type SmallDesk = ReturnType<typeof smallDesk>
