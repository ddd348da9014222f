import type { IncomingMessage, Server } from 'node:http'
import { type WebSocket, WebSocketServer } from 'ws'
import { type Json, memberJson, roomJson, userJson, type World } from './world.ts'

type Session = { readonly id: string; readonly intents: number; readonly sent: Json[]; seq: number; socket: WebSocket | null }

const intent = { guilds: 1, guildMessages: 1 << 9, directMessages: 1 << 12, content: 1 << 15 } as const

const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)

/** The event as this session may see it: null when its intents leave it out, without content where it may not read. */
const seenBy = (session: Session, world: World, name: string, data: Json): Json | null => {
  if (name !== 'MESSAGE_CREATE') return data
  const direct = data['guild_id'] === undefined
  if ((session.intents & (direct ? intent.directMessages : intent.guildMessages)) === 0) return null
  const mentions = Array.isArray(data['mentions']) && data['mentions'].some((user) => isJson(user) && user['id'] === world.bot.id)
  if (direct || mentions || (session.intents & intent.content) !== 0) return data
  return { ...data, content: '', attachments: [], components: [], embeds: [] }
}

const guildJson = (world: World, id: string): Json => {
  const guild = world.guilds.get(id)
  if (guild === undefined) return { id, unavailable: true }
  const rooms = [...world.rooms.values()].filter((room) => room.guild === id && !room.gone)
  return {
    id,
    name: guild.name,
    owner_id: guild.owner,
    roles: [
      { id, name: '@everyone', permissions: '0', position: 0 },
      ...guild.roles.map((role) => ({ ...role, permissions: '0', position: 1 })),
    ],
    channels: rooms.filter((room) => room.type !== 12).map((room) => roomJson(world, room)),
    threads: rooms.filter((room) => room.type === 12).map((room) => roomJson(world, room)),
    members: [memberJson(world, guild, world.bot.id)].filter((member) => member !== null),
    member_count: guild.members.size,
    features: [],
    emojis: [],
    stickers: [],
    stage_instances: [],
    voice_states: [],
    presences: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
    large: false,
    premium_tier: 0,
    system_channel_flags: 0,
    preferred_locale: 'en-US',
    joined_at: '2026-01-05T00:00:00.000Z',
  }
}

export type Gateway = {
  /** Sends an event to every session that may see it; a session without a socket gets it when it resumes. */
  readonly dispatch: (name: string, data: Json) => void
  /** Closes every socket with this code, or cuts it when no code is given. */
  readonly close: (code?: number) => void
  /** Asks every client to reconnect. */
  readonly reconnect: () => void
  readonly forgetSessions: () => void
  /** The bot was just added to this server, which posts its notices in this channel. */
  readonly join: (guild: string, notices: string) => void
  readonly stop: () => void
  readonly sessions: () => number
  readonly resumed: () => number
  readonly identified: () => number
}

/** HELLO, IDENTIFY, READY, RESUME, heartbeats and dispatches over JSON without compression. */
export const openGateway = (server: Server, world: World, address: () => string, token: string): Gateway => {
  const sockets = new WebSocketServer({ noServer: true })
  const sessions = new Map<string, Session>()
  let resumed = 0
  let identified = 0
  const onUpgrade = (request: IncomingMessage, socket: import('node:stream').Duplex, head: Buffer): void => {
    sockets.handleUpgrade(request, socket, head, (open) => accept(open))
  }
  server.on('upgrade', onUpgrade)

  const push = (session: Session, name: string, data: Json): void => {
    session.seq += 1
    const packet = { op: 0, s: session.seq, t: name, d: data }
    session.sent.push(packet)
    session.socket?.send(JSON.stringify(packet))
  }

  const identify = (socket: WebSocket, data: Json): void => {
    if (data['token'] !== token) {
      socket.close(4004, 'Authentication failed')
      return
    }
    identified += 1
    const session: Session = { id: world.nextId(), intents: Number(data['intents']), sent: [], seq: 0, socket }
    sessions.set(session.id, session)
    push(session, 'READY', {
      v: 10,
      user: userJson(world.bot),
      guilds: [...world.guilds.keys()].map((id) => ({ id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: address(),
      application: { id: world.application, flags: 0 },
      shard: data['shard'] ?? [0, 1],
    })
    for (const id of world.guilds.keys()) push(session, 'GUILD_CREATE', guildJson(world, id))
  }

  const resume = (socket: WebSocket, data: Json): void => {
    const session = sessions.get(String(data['session_id']))
    if (session === undefined || data['token'] !== token) {
      socket.send(JSON.stringify({ op: 9, d: false }))
      return
    }
    resumed += 1
    session.socket = socket
    for (const packet of session.sent.filter((one) => Number(one['s']) > Number(data['seq']))) socket.send(JSON.stringify(packet))
    push(session, 'RESUMED', {})
  }

  const accept = (socket: WebSocket): void => {
    socket.on('error', () => undefined)
    socket.on('message', (raw) => {
      const packet: unknown = JSON.parse(String(raw))
      if (!isJson(packet)) return
      const data = isJson(packet['d']) ? packet['d'] : {}
      if (packet['op'] === 1) socket.send(JSON.stringify({ op: 11, d: null }))
      if (packet['op'] === 2) identify(socket, data)
      if (packet['op'] === 6) resume(socket, data)
    })
    socket.on('close', (code) => {
      for (const session of sessions.values()) {
        if (session.socket !== socket) continue
        session.socket = null
        if (code === 1000 || code === 1001) sessions.delete(session.id)
      }
    })
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: 41_250 } }))
  }

  const open = (): readonly WebSocket[] => [...sockets.clients]
  return {
    dispatch: (name, data) => {
      for (const session of sessions.values()) {
        const seen = seenBy(session, world, name, data)
        if (seen !== null) push(session, name, seen)
      }
    },
    close: (code) => {
      for (const socket of open()) code === undefined ? socket.terminate() : socket.close(code)
    },
    reconnect: () => {
      for (const socket of open()) socket.send(JSON.stringify({ op: 7, d: null }))
    },
    forgetSessions: () => sessions.clear(),
    join: (guild, notices) => {
      for (const session of sessions.values())
        push(session, 'GUILD_CREATE', { ...guildJson(world, guild), system_channel_id: notices })
    },
    stop: () => {
      for (const socket of sockets.clients) socket.terminate()
      sockets.close()
    },
    sessions: () => [...sessions.values()].filter((session) => session.socket !== null).length,
    resumed: () => resumed,
    identified: () => identified,
  }
}
