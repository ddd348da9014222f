import { once } from 'node:events'
import type { AddressInfo } from 'node:net'
import { openGateway } from './gateway.ts'
import { everyComponent } from './limits.ts'
import type { Call, Rules } from './rest.ts'
import { type Fault, openRest } from './server.ts'
import {
  type Asked,
  createWorld,
  type Guild,
  type Json,
  memberJson,
  messageJson,
  type Room,
  roomJson,
  type Stored,
  type Upload,
  type User,
  userJson,
} from './world.ts'

export const token = 'MTIz.stand-in.token'
const manageGuild = (1n << 5n).toString()

type Where = { readonly user: User; readonly room: Room }

const partOf = (message: Stored, customId: string): Json => {
  const found = everyComponent(message.body['components']).find((part) => part['custom_id'] === customId)
  if (found === undefined) throw new Error(`no component ${customId} on this message`)
  return found
}

const uploadsOf = (value: string | readonly string[] | readonly Upload[] | undefined): readonly Upload[] =>
  typeof value === 'object' ? value.filter((one): one is Upload => typeof one === 'object') : []

/** The whole platform on the loopback, and the people who use it. */
export const startStandIn = async (options: { readonly port?: number } = {}) => {
  const world = createWorld()
  const created: ((room: Room, message: Stored) => void)[] = []
  let port = 0
  const gatewayAddress = (): string => `ws://127.0.0.1:${port}`
  const rules: Rules = {
    nonceWindow: 5 * 60_000,
    sharded: 1,
    largestRequest: 25 * 1024 * 1024,
    gateway: gatewayAddress,
    created: (room, message) => {
      for (const listener of created) listener(room, message)
    },
  }
  const rest = openRest(world, rules, token)
  const gateway = openGateway(rest.server, world, gatewayAddress, token)
  rest.server.listen(options.port ?? 0, '127.0.0.1')
  await once(rest.server, 'listening')
  port = (rest.server.address() as AddressInfo).port

  const addGuild = (name: string, owner: User): Guild => {
    const guild: Guild = { id: world.nextId(), name, owner: owner.id, roles: [], members: new Map() }
    world.guilds.set(guild.id, guild)
    join(guild, owner, { permissions: '8' })
    join(guild, world.bot)
    return guild
  }
  const join = (
    guild: Guild,
    user: User,
    parts: { readonly roles?: readonly string[]; readonly permissions?: string } = {},
  ): void => {
    guild.members.set(user.id, { user: user.id, roles: parts.roles ?? [], permissions: parts.permissions ?? '0' })
  }
  const addRole = (guild: Guild, name: string): string => {
    const role = { id: world.nextId(), name }
    guild.roles.push(role)
    return role.id
  }
  const addChannel = (guild: Guild, name: string): Room => world.addRoom({ type: 0, name, guild: guild.id })
  const directRoom = (user: User): Room =>
    [...world.rooms.values()].find((room) => room.type === 1 && room.people.has(user.id)) ??
    world.addRoom({ type: 1, people: new Set([user.id]) })

  const ask = (where: Where, type: number, data: Json, source: Stored | null = null): Asked => {
    const { user, room } = where
    const asked: Asked = {
      id: world.nextId(),
      token: `aW50ZXJhY3Rpb24_${world.nextId()}`,
      user: user.id,
      room: room.id,
      guild: room.guild,
      source,
      at: world.now(),
      acknowledged: null,
      acknowledgedAt: null,
      modal: null,
      suggestions: [],
      private: [],
    }
    world.asked.set(asked.id, asked)
    gateway.dispatch('INTERACTION_CREATE', interactionJson(asked, where, { type, data }))
    return asked
  }
  const interactionJson = (asked: Asked, { user, room }: Where, { type, data }: { type: number; data: Json }): Json => {
    const guild = room.guild === null ? undefined : world.guilds.get(room.guild)
    return {
      id: asked.id,
      application_id: world.application,
      type,
      data,
      token: asked.token,
      version: 1,
      channel_id: room.id,
      channel: roomJson(world, room),
      ...(guild === undefined
        ? { user: userJson(user), context: 1 }
        : { guild_id: guild.id, member: memberJson(world, guild, user.id), guild_locale: 'en-US', context: 0 }),
      ...(asked.source === null ? {} : { message: messageJson(world, room, asked.source) }),
      locale: user.locale,
      app_permissions: '274878024704',
      attachment_size_limit: 20 * 1024 * 1024,
      entitlements: [],
      authorizing_integration_owners: {},
    }
  }
  const attachmentsOf = (room: Room, files: readonly Upload[]): readonly (Json & { readonly id: string })[] =>
    files.map((file) => {
      const id = world.nextId()
      stored.set(`/attachments/${room.id}/${id}/${file.name}`, file)
      return {
        id,
        filename: file.name,
        size: file.bytes.length,
        content_type: file.type,
        url: `https://cdn.discordapp.com/attachments/${room.id}/${id}/${file.name}`,
      }
    })
  const stored = new Map<string, Upload>()
  const resolved = (attachments: readonly (Json & { readonly id: string })[]): Json =>
    attachments.length === 0 ? {} : { resolved: { attachments: Object.fromEntries(attachments.map((one) => [one.id, one])) } }

  return {
    world,
    rules,
    gateway,
    calls: rest.calls,
    api: `http://127.0.0.1:${port}/api`,
    port,
    onMessage: (listener: (room: Room, message: Stored) => void) => created.push(listener),
    /** The next `times` calls that match meet this fault. */
    fail: (matches: (call: Call) => boolean, fault: Fault, times = 1) => rest.faults.push({ matches, fault, left: times }),
    /** What the platform's file host would give for an attachment's address. */
    download: (url: string): Upload | undefined => stored.get(new URL(url).pathname),
    addUser: world.addUser,
    addGuild,
    addRole,
    addChannel,
    join,
    directRoom,
    manageGuild,
    shown: (room: Room): readonly Stored[] => room.messages.filter((message) => !message.deleted),
    say: (where: Where, text: string, files: readonly Upload[] = []): string => {
      const { user, room } = where
      const guild = room.guild === null ? undefined : world.guilds.get(room.guild)
      const message: Stored = {
        id: world.nextId(),
        author: user.id,
        nonce: null,
        at: world.now(),
        body: { content: text },
        files: [],
        edits: 0,
        deleted: false,
      }
      room.messages.push(message)
      const member = guild === undefined ? null : memberJson(world, guild, user.id)
      gateway.dispatch('MESSAGE_CREATE', {
        ...messageJson(world, room, message),
        attachments: attachmentsOf(room, files),
        ...(guild === undefined ? { channel_type: room.type } : { guild_id: guild.id, member }),
      })
      return message.id
    },
    command: (where: Where, name: string, given: { readonly [option: string]: string | Upload } = {}): Asked => {
      const files = Object.entries(given).flatMap(([option, value]) => (typeof value === 'string' ? [] : [{ option, value }]))
      const attachments = attachmentsOf(
        where.room,
        files.map((file) => file.value),
      )
      const options = [
        ...Object.entries(given).flatMap(([option, value]) =>
          typeof value === 'string' ? [{ name: option, type: 3, value }] : [],
        ),
        ...files.map((file, at) => ({ name: file.option, type: 11, value: attachments[at]?.id })),
      ]
      return ask(where, 2, { id: world.nextId(), name, type: 1, options, ...resolved(attachments) })
    },
    type: (where: Where, name: string, option: { readonly name: string; readonly value: string }): Asked =>
      ask(where, 4, { id: world.nextId(), name, type: 1, options: [{ ...option, type: 3, focused: true }] }),
    press: (where: Where, message: Stored, customId: string): Asked => {
      partOf(message, customId)
      return ask(where, 3, { custom_id: customId, component_type: 2 }, message)
    },
    /** A press the platform itself would never send: the id is not on the message. */
    forge: (where: Where, message: Stored, customId: string): Asked =>
      ask(where, 3, { custom_id: customId, component_type: 2 }, message),
    choose: (where: Where, message: Stored, pick: { readonly customId: string; readonly values: readonly string[] }): Asked => {
      const part = partOf(message, pick.customId)
      const guild = world.guilds.get(where.room.guild ?? '')
      const channels = pick.values.flatMap((id) => world.rooms.get(id) ?? []).map((room) => [room.id, roomJson(world, room)])
      const roles = guild?.roles.filter((role) => pick.values.includes(role.id)).map((role) => [role.id, role]) ?? []
      const named = { channels: Object.fromEntries(channels), roles: Object.fromEntries(roles) }
      return ask(
        where,
        3,
        { custom_id: pick.customId, component_type: part['type'], values: pick.values, resolved: named },
        message,
      )
    },
    /** Fills the form that an earlier interaction was answered with. */
    submit: (
      where: Where,
      asked: Asked,
      given: { readonly [field: string]: string | readonly string[] | readonly Upload[] },
    ): Asked => {
      if (asked.modal === null) throw new Error('no form was shown')
      const named = everyComponent(asked.modal['components']).filter((part) => typeof part['custom_id'] === 'string')
      const files = named.flatMap((part) => attachmentsOf(where.room, uploadsOf(given[String(part['custom_id'])])))
      const components = named.map((part): Json => {
        const name = String(part['custom_id'])
        const value = given[name]
        if (part['type'] === 4)
          return { type: 18, component: { type: 4, custom_id: name, value: typeof value === 'string' ? value : '' } }
        const sent = files.filter((file) => uploadsOf(value).some((upload) => upload.name === file['filename']))
        const values = part['type'] === 19 ? sent.map((one) => one.id) : Array.isArray(value) ? value : []
        return { type: 18, component: { type: part['type'], custom_id: name, values } }
      })
      return ask(where, 5, { custom_id: asked.modal['custom_id'], components, ...resolved(files) }, asked.source)
    },
    /** The same event once more, as two sessions of one bot may see it. */
    again: (asked: Asked, where: Where, what: { readonly type: number; readonly data: Json }): void =>
      gateway.dispatch('INTERACTION_CREATE', interactionJson(asked, where, what)),
    stop: async (): Promise<void> => {
      gateway.stop()
      rest.server.closeAllConnections()
      rest.server.close()
      await once(rest.server, 'close')
    },
  }
}
export type StandIn = Awaited<ReturnType<typeof startStandIn>>
