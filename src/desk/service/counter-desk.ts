import { ok } from '../../domain/result/result.ts'
import { minutes } from '../../domain/units/units.ts'
import type { Channel } from '../../ports/chat.ts'
import type { CounterDesk, Line, Member, StoredFile } from '../../ports/counter-desk.ts'
import { channelTopic, type ShopStore } from '../../ports/store.ts'
import type { StoredMember, StoredMessage } from '../../ports/talk-records.ts'
import { channelFrom, channelName, conversationChannel, type Desk, shopChannel } from './desk.ts'
import { floorSide } from './floor-side.ts'
import { morningSheet } from './morning/morning-sheet.ts'
import { pressAndTell } from './press-action.ts'
import { conversationFrom, messageFrom } from './records/records.ts'
import { saidFiles } from './records/said-files.ts'
import { loadMark, loadSheet } from './shop/load-sheet.ts'
import { hearCustomer } from './talk/hear-customer.ts'
import { withAnswered } from './talk/open-choice.ts'
import { startTalk } from './talk/start-talk.ts'
import { noteOnBench } from './ticket/note-on-bench.ts'

const ownerLinkMinutes = 7 * 1_440
const pairingMinutes = 1_440
const newestShown = 200

const speakers = { customer: 'customer', bot: 'bot', staff: 'staff', owner: 'owner' } as const
type Speaker = keyof typeof speakers
const isSpeaker = (by: string): by is Speaker => Object.hasOwn(speakers, by)

const lineOf = (stored: StoredMessage, shopName: string): Line => {
  const kind = isSpeaker(stored.by) ? stored.by : 'staff'
  return {
    id: stored.messageId,
    seq: stored.seq,
    change: stored.changed,
    by: { kind, name: kind === 'bot' ? shopName : isSpeaker(stored.by) ? '' : stored.by },
    at: stored.at,
    edited: stored.edits,
    message: messageFrom(stored.body),
  }
}

const memberOf = ({ memberId, name, role }: StoredMember): Member => ({ id: memberId, name, role })

/** Everything a customer's page asks. */
const customerSide = (
  desk: Desk,
  shop: ShopStore,
): Pick<CounterDesk, 'startConversation' | 'conversation' | 'hear' | 'keepFile'> => {
  const idOf = (token: string) => shop.keys.read('customer', desk.ids.hash(token), desk.clock.real())
  return {
    startConversation: async (language) => {
      const token = desk.ids.secret()
      const id = desk.ids.fresh('c')
      const started = await desk.store.together(desk.shopId, async (inside) => {
        await startTalk(desk, inside, { id, language })
        await inside.keys.add({ hash: desk.ids.hash(token), kind: 'customer', holder: id, until: null })
        return ok({ token, id })
      })
      if (!started.ok) throw new Error(`the conversation ${id} was not started`)
      return started.value
    },
    conversation: async (token) => {
      const opened = await shop.conversations.openedBy(desk.ids.hash(token), desk.clock.real())
      if (opened === null) return null
      return { id: opened.conversationId, language: opened.language, title: desk.workshop.shop.profile.name }
    },
    hear: async (id, incoming) => {
      const files = incoming.kind === 'said' ? await saidFiles(desk, id, incoming.files) : []
      const heard = await hearCustomer(desk, id, { incoming, files })
      if (heard.ok) return 'heard'
      if (heard.problems.some(({ code, facts }) => code === 'store-missing' && facts['what'] === 'conversation')) return 'unknown'
      throw new Error(`a turn of ${id} was not kept: ${heard.problems.map((one) => one.code).join(', ')}`)
    },
    keepFile: async (token, file) => {
      const id = await idOf(token)
      if (id === null) throw new Error('a file came in for a conversation that does not exist')
      const hash = desk.ids.hash(file.bytes)
      await shop.files.keep(conversationChannel(id), { ...file, hash })
      return { id: hash }
    },
  }
}

/** Links and codes that let the owner and staff in; each works once. */
const doors = (
  desk: Desk,
  shop: ShopStore,
): Pick<
  CounterDesk,
  'ownerByLink' | 'newOwnerLink' | 'newPairingCode' | 'staffByCode' | 'member' | 'members' | 'removeMember'
> => {
  const admit = async (memberId: string | null): Promise<Member | null> => {
    const stored = memberId === null ? null : await shop.members.read(memberId)
    return stored === null ? null : memberOf(stored)
  }
  const addMember = async (name: string, role: 'owner' | 'staff'): Promise<string> => {
    const memberId = role === 'owner' ? 'owner' : desk.ids.fresh('m')
    await shop.members.add({ memberId, name, role })
    return memberId
  }
  return {
    newOwnerLink: async () => {
      const link = desk.ids.secret()
      const holder = await addMember(desk.workshop.shop.profile.name, 'owner')
      const until = minutes(desk.clock.real() + ownerLinkMinutes)
      await shop.keys.add({ hash: desk.ids.hash(link), kind: 'owner-link', holder, until })
      return link
    },
    ownerByLink: async (link) => admit(await shop.keys.use('owner-link', desk.ids.hash(link), desk.clock.real())),
    newPairingCode: async (name) => {
      const code = desk.ids.secret().slice(0, 10)
      const holder = await addMember(name, 'staff')
      const until = minutes(desk.clock.real() + pairingMinutes)
      await shop.keys.add({ hash: desk.ids.hash(`${name} ${code}`), kind: 'pairing', holder, until })
      return { code }
    },
    staffByCode: async (name, code) => admit(await shop.keys.use('pairing', desk.ids.hash(`${name} ${code}`), desk.clock.real())),
    member: (id) => admit(id),
    members: async () => (await shop.members.list()).map(memberOf).toSorted((a, b) => a.name.localeCompare(b.name)),
    removeMember: async (id) => {
      if ((await shop.members.read(id))?.role !== 'staff') return
      await shop.members.remove(id)
      // Pages that lie open look again at who they belong to.
      await shop.tell('channel', shopChannel('bench'))
    },
  }
}

const files = (shop: ShopStore): Pick<CounterDesk, 'file'> => ({
  file: async (channel, id): Promise<StoredFile | null> => shop.files.read(channelName(channel), id),
})

/** What staff and owner do in the shop's channels; the id of an action carries no authority, the member does. */
const benchSide = (desk: Desk): Pick<CounterDesk, 'act'> => ({
  act: async (member, incoming) => {
    if (incoming.kind === 'pressed') return pressAndTell(desk, member, { action: incoming.action })
    if (incoming.kind === 'filled') return pressAndTell(desk, member, { action: incoming.form, values: incoming.values })
    if (incoming.kind === 'said') await noteOnBench(desk, member, incoming)
    return { said: null, isDone: true }
  },
})

export type News = { readonly onNews: CounterDesk['onNews']; readonly close: () => Promise<void> }

/** Live news of this shop's channels from the store, for every page that is open. */
export const openNews = async (desk: Desk): Promise<News> => {
  const listeners = new Set<(channel: Channel) => void>()
  const close = await desk.store.listen([channelTopic], ({ shopId, id }) => {
    const channel = shopId === desk.shopId ? channelFrom(id) : null
    if (channel !== null) for (const listener of listeners) listener(channel)
  })
  return {
    onNews: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    close,
  }
}

/** The desk as the counter's pages see it. */
export const counterDesk = (desk: Desk, news: News): CounterDesk => {
  const shop = desk.store.shop(desk.shopId)
  const { profile } = desk.workshop.shop
  return {
    shopName: profile.name,
    zone: profile.zone,
    languages: profile.languages,
    ...customerSide(desk, shop),
    ...doors(desk, shop),
    ...files(shop),
    ...benchSide(desk),
    ...floorSide(desk, shop),
    lines: async (channel, after) => {
      const stored = await shop.messages.after(channelName(channel), after)
      const shown = after === 0 ? stored.slice(-newestShown) : stored
      const lines = shown.map((message) => lineOf(message, profile.name))
      if (channel.kind !== 'conversation' || lines.every(({ message }) => message.choice === null)) return lines
      const talk = await shop.conversations.read(channel.id)
      return talk === null ? lines : withAnswered(lines, conversationFrom(talk.state).asked)
    },
    morning: (language) => morningSheet(desk, language),
    load: (language) => loadSheet(desk, language),
    loadMark: () => loadMark(desk),
    onNews: news.onNews,
  }
}
