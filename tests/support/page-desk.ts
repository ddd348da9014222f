import { randomUUID } from 'node:crypto'
import type { Language } from '../../src/domain/units/language.ts'
import type { Channel, Incoming, Message } from '../../src/ports/chat.ts'
import type { CounterDesk, Line, LoadSheet, Member, Morning, StoredFile } from '../../src/ports/counter-desk.ts'
import type { PressView, ShelfView } from '../../src/ports/floor-view.ts'
import { floorOfPages, pressAt17, shelfOfPages } from './page-floor.ts'

const nameOf = (channel: Channel): string => (channel.kind === 'conversation' ? `c:${channel.id}` : `s:${channel.name}`)

const noShares = { title: '', head: ['Station'], rows: [] }
const emptyLoad: LoadSheet = {
  title: 'Load',
  lead: 'No station is over nine tenths of its time.',
  narrowPicture: '<svg xmlns="http://www.w3.org/2000/svg"/>',
  picture: '<svg xmlns="http://www.w3.org/2000/svg"/>',
  pictureAlt: 'The load of the stations',
  stations: noShares,
  due: noShares,
  late: { title: 'Late or tight', none: 'Every promise is kept.', because: 'Why:', fixesTitle: 'What would mend it', jobs: [] },
  rates: { title: 'How long work takes here', lead: '', rates: [] },
  changesTitle: 'Why the plan was changed',
  changes: [],
}

/** A message with nothing in it but what is given. */
export const message = (parts: Partial<Message>): Message => ({
  language: 'en',
  blocks: [],
  picture: null,
  file: null,
  actions: [],
  choice: null,
  form: null,
  ...parts,
})

export const plainText = (text: string): Message => message({ blocks: [{ kind: 'text', text, tone: 'plain' }] })

type Heard = { readonly token: string; readonly incoming: Incoming }
type Acted = { readonly member: Member; readonly incoming: Incoming }

/** A desk in memory: it keeps what is said, shows it as lines, and posts what a test tells it to. */
export type PageDesk = CounterDesk & {
  readonly heard: readonly Heard[]
  readonly acted: readonly Acted[]
  readonly kept: ReadonlyMap<string, StoredFile>
  readonly post: (channel: Channel, by: Line['by'], body: Message) => Line
  readonly edit: (channel: Channel, id: string, body: Message) => void
  readonly putFile: (channel: Channel, id: string, file: StoredFile) => void
  readonly addMember: (member: Member) => void
  readonly setMorning: (morning: Morning) => void
  readonly setPress: (view: PressView) => void
  readonly setLoad: (sheet: Partial<LoadSheet>) => void
  readonly setShelf: (view: ShelfView) => void
  readonly answerWith: (said: string | null, isDone?: boolean) => void
  readonly breakOn: (text: string) => void
}

export const bench: Channel = { kind: 'shop', name: 'bench' }
export const ownerChannel: Channel = { kind: 'shop', name: 'owner' }
export const owner: Member = { id: 'owner-1', name: 'Rosa', role: 'owner' }

export const makePageDesk = (now: () => number): PageDesk => {
  const conversations = new Map<string, { readonly id: string; readonly language: Language; readonly title: string }>()
  const channels = new Map<string, Line[]>()
  const changes = new Map<string, number>()
  const files = new Map<string, StoredFile>()
  const kept = new Map<string, StoredFile>()
  const listeners = new Set<(channel: Channel) => void>()
  const members = new Map<string, Member>([[owner.id, owner]])
  const links = new Set<string>(['the-first-owner-link'])
  const codes = new Map<string, string>()
  const seen = new Set<string>()
  const heard: Heard[] = []
  const acted: Acted[] = []
  const told = {
    morning: { date: '2026-03-09', sections: [] } as Morning,
    said: null as string | null,
    isDone: true,
    breaks: null as string | null,
    press: pressAt17,
    shelf: shelfOfPages,
    load: emptyLoad,
  }

  const news = (channel: Channel): void => {
    for (const listener of listeners) listener(channel)
  }
  const nextChange = (channel: Channel): number => {
    const next = (changes.get(nameOf(channel)) ?? 0) + 1
    changes.set(nameOf(channel), next)
    return next
  }
  const linesOf = (channel: Channel): Line[] => {
    const lines = channels.get(nameOf(channel)) ?? []
    channels.set(nameOf(channel), lines)
    return lines
  }
  const post = (channel: Channel, by: Line['by'], body: Message): Line => {
    const lines = linesOf(channel)
    const line = { id: randomUUID(), seq: lines.length + 1, change: nextChange(channel), by, at: now(), edited: 0, message: body }
    lines.push(line)
    news(channel)
    return line
  }
  const edit = (channel: Channel, id: string, body: Message): void => {
    const lines = linesOf(channel)
    const index = lines.findIndex((line) => line.id === id)
    const old = lines[index]
    if (old === undefined) throw new Error(`no line ${id}`)
    lines[index] = { ...old, change: nextChange(channel), edited: old.edited + 1, message: body }
    news(channel)
  }
  const isNew = (key: string): boolean => {
    if (seen.has(key)) return false
    seen.add(key)
    return true
  }

  return {
    shopName: 'Mesa Street Team Wear',
    zone: 'America/Chicago',
    languages: ['en', 'es'],
    heard,
    acted,
    kept,
    post,
    edit,
    putFile: (channel, id, file) => files.set(`${nameOf(channel)}/${id}`, file),
    addMember: (member) => members.set(member.id, member),
    setMorning: (morning) => {
      told.morning = morning
      news(ownerChannel)
    },
    setLoad: (sheet) => {
      told.load = { ...emptyLoad, ...sheet }
      news(ownerChannel)
    },
    setShelf: (view) => {
      told.shelf = view
      news(bench)
    },
    setPress: (view) => {
      told.press = view
      news(bench)
    },
    answerWith: (said, isDone = true) => {
      told.said = said
      told.isDone = isDone
    },
    breakOn: (text) => {
      told.breaks = text
    },
    startConversation: async (language) => {
      const token = `token-${randomUUID()}`
      const id = randomUUID()
      conversations.set(token, { id, language, title: language === 'es' ? 'Su pedido' : 'Your order' })
      return { token, id }
    },
    conversation: async (token) => conversations.get(token) ?? null,
    lines: async (channel, after) => linesOf(channel).filter((line) => line.change > after),
    hear: async (id, incoming) => {
      const [token] = [...conversations].find(([, conversation]) => conversation.id === id) ?? []
      if (token === undefined) return 'unknown'
      if (incoming.kind === 'said' && incoming.text === told.breaks) throw new Error('the desk fell over: secret detail')
      if (!isNew(`${token}/${incoming.id}`)) return 'heard'
      heard.push({ token, incoming })
      if (incoming.kind === 'said') {
        post({ kind: 'conversation', id }, { kind: 'customer', name: 'Coach' }, plainText(incoming.text))
      }
      return 'heard'
    },
    act: async (member, incoming) => {
      if (!isNew(`${member.id}/${incoming.id}`)) return { said: null, isDone: true }
      acted.push({ member, incoming })
      if (incoming.kind === 'said') post(bench, { kind: member.role, name: member.name }, plainText(incoming.text))
      return { said: told.said, isDone: told.isDone }
    },
    morning: async () => told.morning,
    load: async () => told.load,
    loadMark: async () => JSON.stringify(told.load),
    ...floorOfPages(
      () => told.press,
      () => told.shelf,
    ),
    keepShopFile: async (file) => {
      const id = `shop-${kept.size + 1}`
      kept.set(id, file)
      return { id }
    },
    file: async (channel, id) => files.get(`${nameOf(channel)}/${id}`) ?? null,
    keepFile: async (token, file) => {
      const id = `kept-${kept.size + 1}`
      kept.set(id, file)
      const conversation = conversations.get(token)
      if (conversation !== undefined) files.set(`c:${conversation.id}/${id}`, file)
      return { id }
    },
    ownerByLink: async (link) => (links.delete(link) ? owner : null),
    newOwnerLink: async () => {
      const link = `owner-link-${randomUUID()}`
      links.add(link)
      return link
    },
    newPairingCode: async (name) => {
      const code = `PAIR-${codes.size + 1}`
      codes.set(name, code)
      return { code }
    },
    staffByCode: async (name, code) => {
      if (codes.get(name) !== code) return null
      codes.delete(name)
      const member: Member = { id: `staff-${name}`, name, role: 'staff' }
      members.set(member.id, member)
      return member
    },
    member: async (id) => members.get(id) ?? null,
    members: async () => [...members.values()],
    removeMember: async (id) => {
      members.delete(id)
    },
    onNews: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}
