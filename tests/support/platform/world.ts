/** What the stand-in of the platform remembers: people, servers, channels, messages, interactions. Ids are 17-19 digits. */
export type Json = { readonly [name: string]: unknown }
export type Upload = { readonly name: string; readonly type: string; readonly bytes: Uint8Array }

export type User = {
  readonly id: string
  readonly name: string
  readonly bot: boolean
  directClosed: boolean
  readonly locale: string
}
export type Member = { readonly user: string; readonly roles: readonly string[]; readonly permissions: string }
export type Room = {
  readonly id: string
  readonly type: number
  readonly name: string
  readonly guild: string | null
  readonly parent: string | null
  readonly people: Set<string>
  readonly messages: Stored[]
  gone: boolean
  shut: boolean
}
export type Stored = {
  readonly id: string
  readonly author: string
  readonly nonce: string | null
  readonly at: number
  body: Json
  files: readonly (Upload & { readonly id: string })[]
  edits: number
  deleted: boolean
}
export type Guild = {
  readonly id: string
  readonly name: string
  readonly owner: string
  readonly roles: { readonly id: string; readonly name: string }[]
  readonly members: Map<string, Member>
}
/** An interaction: how it was answered, its private messages, and the message it came from. */
export type Asked = {
  readonly id: string
  readonly token: string
  readonly user: string
  readonly room: string
  readonly guild: string | null
  readonly source: Stored | null
  readonly at: number
  acknowledged: number | null
  acknowledgedAt: number | null
  modal: Json | null
  suggestions: readonly Json[]
  readonly private: Stored[]
}

const epoch = 1_420_070_400_000n

export const createWorld = () => {
  let offset = 0
  let serial = 0n
  const now = (): number => Date.now() + offset
  const nextId = (): string => {
    serial += 1n
    return (((BigInt(now()) - epoch) << 22n) | (serial & 0x3fffffn)).toString()
  }
  const users = new Map<string, User>()
  const guilds = new Map<string, Guild>()
  const rooms = new Map<string, Room>()
  const asked = new Map<string, Asked>()
  const commands = new Map<string, readonly Json[]>()

  const addUser = (name: string, parts: { readonly bot?: boolean; readonly locale?: string } = {}): User => {
    const user: User = { id: nextId(), name, bot: parts.bot ?? false, directClosed: false, locale: parts.locale ?? 'en-US' }
    users.set(user.id, user)
    return user
  }
  const addRoom = (parts: Partial<Room> & { readonly type: number }): Room => {
    const room: Room = {
      id: nextId(),
      name: '',
      guild: null,
      parent: null,
      people: new Set(),
      messages: [],
      gone: false,
      shut: false,
      ...parts,
    }
    rooms.set(room.id, room)
    return room
  }
  const bot = addUser('platenpost', { bot: true })
  return {
    now,
    nextId,
    advance: (milliseconds: number): void => {
      offset += milliseconds
    },
    application: nextId(),
    bot,
    users,
    guilds,
    rooms,
    asked,
    commands,
    addUser,
    addRoom,
  }
}
export type World = ReturnType<typeof createWorld>

export const userJson = (user: User): Json => ({
  id: user.id,
  username: user.name.toLowerCase().replaceAll(/[^a-z0-9_.]/g, '_'),
  global_name: user.name,
  discriminator: '0',
  avatar: null,
  bot: user.bot,
})

export const roomJson = (world: World, room: Room): Json => ({
  id: room.id,
  type: room.type,
  ...(room.guild === null
    ? { recipients: [...room.people].flatMap((id) => world.users.get(id) ?? []).map(userJson) }
    : { guild_id: room.guild, name: room.name, parent_id: room.parent, position: 0, permission_overwrites: [] }),
  ...(room.type === 12
    ? { thread_metadata: { archived: false, locked: false, auto_archive_duration: 10_080, invitable: false } }
    : {}),
})

export const memberJson = (world: World, guild: Guild, user: string): Json | null => {
  const member = guild.members.get(user)
  const person = world.users.get(user)
  if (member === undefined || person === undefined) return null
  return {
    user: userJson(person),
    roles: member.roles,
    permissions: member.permissions,
    joined_at: '2026-01-05T00:00:00.000Z',
    deaf: false,
    mute: false,
    flags: 0,
  }
}

const mentioned = (world: World, text: unknown): readonly Json[] =>
  typeof text === 'string'
    ? [...text.matchAll(/<@!?(\d+)>/g)].flatMap(([, id]) => world.users.get(id ?? '') ?? []).map(userJson)
    : []

export const messageJson = (world: World, room: Room, message: Stored): Json => {
  const author = world.users.get(message.author)
  return {
    id: message.id,
    channel_id: room.id,
    type: 0,
    author: author === undefined ? null : userJson(author),
    content: message.body['content'] ?? '',
    components: message.body['components'] ?? [],
    embeds: message.body['embeds'] ?? [],
    flags: message.body['flags'] ?? 0,
    attachments: message.files.map((file) => ({
      id: file.id,
      filename: file.name,
      size: file.bytes.length,
      content_type: file.type,
      url: `https://cdn.discordapp.com/attachments/${room.id}/${file.id}/${file.name}`,
      proxy_url: `https://media.discordapp.net/attachments/${room.id}/${file.id}/${file.name}`,
    })),
    mentions: mentioned(world, message.body['content']),
    mention_roles: [],
    mention_everyone: false,
    pinned: false,
    tts: false,
    timestamp: new Date(message.at).toISOString(),
    edited_timestamp: message.edits > 0 ? new Date(message.at).toISOString() : null,
  }
}
