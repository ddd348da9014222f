import { commandTroubles, messageTroubles, modalTroubles } from './limits.ts'
import {
  type Asked,
  type Json,
  memberJson,
  messageJson,
  type Room,
  roomJson,
  type Stored,
  type Upload,
  userJson,
  type World,
} from './world.ts'

export type Call = {
  readonly method: string
  readonly path: string
  readonly query: URLSearchParams
  readonly body: Json
  readonly list: readonly Json[] | null
  readonly files: readonly Upload[]
  readonly at: number
}
export type Answer = { readonly status: number; readonly body: unknown }

const ok = (body: unknown): Answer => ({ status: 200, body })
const none: Answer = { status: 204, body: null }
export const fault = (status: number, code: number, message: string): Answer => ({ status, body: { code, message } })
const invalid = (troubles: readonly string[]): Answer => ({
  status: 400,
  body: { code: 50_035, message: `Invalid Form Body: ${troubles.join('; ')}`, errors: {} },
})

type Context = { readonly world: World; readonly call: Call; readonly rules: Rules }
export type Rules = {
  nonceWindow: number
  sharded: number
  largestRequest: number
  gateway: () => string
  created: (room: Room, message: Stored) => void
}
type Handler = (context: Context, ids: readonly string[]) => Answer

const flagsOf = (body: Json): number => Number(body['flags'] ?? 0)
const isJson = (value: unknown): value is Json => typeof value === 'object' && value !== null && !Array.isArray(value)

const storeMessage = ({ world, call }: Context, body: Json): Stored => ({
  id: world.nextId(),
  author: world.bot.id,
  nonce: body['nonce'] === undefined ? null : String(body['nonce']),
  at: world.now(),
  body,
  files: call.files.map((file) => ({ ...file, id: world.nextId() })),
  edits: 0,
  deleted: false,
})

const roomFault = (world: World, room: Room | undefined): Answer | null => {
  if (room === undefined || room.gone) return fault(404, 10_003, 'Unknown Channel')
  if (room.shut) return fault(403, 50_001, 'Missing Access')
  const closed = room.type === 1 && [...room.people].some((id) => world.users.get(id)?.directClosed === true)
  return closed ? fault(403, 50_007, 'Cannot send messages to this user') : null
}

const sizeFault = ({ call, rules }: Context): Answer | null => {
  const size = call.files.reduce((sum, file) => sum + file.bytes.length, 0)
  return size > rules.largestRequest ? fault(413, 40_005, 'Request entity too large') : null
}

const knownNonce = (context: Context, room: Room): Answer | null => {
  const { call, world, rules } = context
  if (call.body['enforce_nonce'] !== true || call.body['nonce'] === undefined) return null
  const nonce = String(call.body['nonce'])
  const found = room.messages.find(
    (one) => one.author === world.bot.id && one.nonce === nonce && world.now() - one.at < rules.nonceWindow,
  )
  if (found === undefined) return null
  return found.deleted ? fault(404, 10_008, 'Unknown Message') : ok(messageJson(world, room, found))
}

const postMessage: Handler = (context, [channel = '']) => {
  const { world, call, rules } = context
  const room = world.rooms.get(channel)
  const refused = roomFault(world, room) ?? sizeFault(context)
  if (refused !== null || room === undefined) return refused ?? fault(404, 10_003, 'Unknown Channel')
  const troubles = messageTroubles(
    call.body,
    call.files.map((file) => file.name),
  )
  if (troubles.length > 0) return invalid(troubles)
  const known = knownNonce(context, room)
  if (known !== null) return known
  const message = storeMessage(context, call.body)
  room.messages.push(message)
  rules.created(room, message)
  return ok(messageJson(world, room, message))
}

const withMessage = (
  { world }: Context,
  [channel = '', id = '']: readonly string[],
  then: (room: Room, message: Stored) => Answer,
): Answer => {
  const room = world.rooms.get(channel)
  if (room === undefined || room.gone) return fault(404, 10_003, 'Unknown Channel')
  if (room.shut) return fault(403, 50_001, 'Missing Access')
  const message = room.messages.find((one) => one.id === id && !one.deleted)
  return message === undefined ? fault(404, 10_008, 'Unknown Message') : then(room, message)
}

const editInto = (context: Context, message: Stored): readonly string[] => {
  const { call, world } = context
  const kept = call.body['attachments'] === undefined ? message.files : []
  const files = [...kept, ...call.files.map((file) => ({ ...file, id: world.nextId() }))]
  const next = { ...message.body, ...call.body }
  const troubles = messageTroubles(
    next,
    files.map((file) => file.name),
  )
  if (troubles.length > 0) return troubles
  message.body = next
  message.files = files
  message.edits += 1
  return []
}

const patchMessage: Handler = (context, ids) =>
  withMessage(context, ids, (room, message) => {
    const troubles = sizeFault(context) === null ? editInto(context, message) : null
    if (troubles === null) return fault(413, 40_005, 'Request entity too large')
    return troubles.length > 0 ? invalid(troubles) : ok(messageJson(context.world, room, message))
  })

const deleteMessage: Handler = (context, ids) =>
  withMessage(context, ids, (_room, message) => {
    message.deleted = true
    return none
  })

const readMessages: Handler = ({ world, call }, [channel = '']) => {
  const room = world.rooms.get(channel)
  const refused = room?.type === 1 ? null : roomFault(world, room)
  if (refused !== null || room === undefined) return refused ?? fault(404, 10_003, 'Unknown Channel')
  const limit = Number(call.query.get('limit') ?? 50)
  const after = call.query.get('after')
  const before = call.query.get('before')
  const there = room.messages.filter((message) => !message.deleted)
  const wanted =
    after === null
      ? there.filter((message) => before === null || BigInt(message.id) < BigInt(before)).slice(-limit)
      : there.filter((message) => BigInt(message.id) > BigInt(after)).slice(0, limit)
  return ok(wanted.toReversed().map((message) => messageJson(world, room, message)))
}

const openDirect: Handler = ({ world, call }) => {
  const person = String(call.body['recipient_id'])
  if (!world.users.has(person)) return fault(400, 50_033, 'Invalid Recipient(s)')
  const found = [...world.rooms.values()].find((room) => room.type === 1 && room.people.has(person))
  return ok(roomJson(world, found ?? world.addRoom({ type: 1, people: new Set([person]) })))
}

const openThread: Handler = ({ world, call }, [channel = '']) => {
  const parent = world.rooms.get(channel)
  const refused = roomFault(world, parent)
  if (refused !== null || parent === undefined) return refused ?? fault(404, 10_003, 'Unknown Channel')
  const name = String(call.body['name'] ?? '')
  if (name.length < 1 || name.length > 100) return invalid([`name: ${name.length}`])
  const thread = world.addRoom({ type: Number(call.body['type'] ?? 11), name, guild: parent.guild, parent: parent.id })
  return { status: 201, body: roomJson(world, thread) }
}

const addToThread: Handler = ({ world }, [channel = '', person = '']) => {
  world.rooms.get(channel)?.people.add(person)
  return none
}

const findAsked = (world: World, token: string): Asked | undefined => [...world.asked.values()].find((one) => one.token === token)

const callbackFault = (world: World, asked: Asked | undefined, token: string): Answer | null => {
  if (asked === undefined || asked.token !== token) return fault(404, 10_062, 'Unknown interaction')
  if (asked.acknowledged !== null) return fault(400, 40_060, 'Interaction has already been acknowledged.')
  return world.now() - asked.at > 3_000 ? fault(404, 10_062, 'Unknown interaction') : null
}

const keepCallback = (context: Context, asked: Asked, answer: { readonly type: number; readonly data: Json }): void => {
  const { type, data } = answer
  asked.acknowledged = type
  asked.acknowledgedAt = context.world.now()
  if (type === 9) asked.modal = data
  if (type === 8) asked.suggestions = Array.isArray(data['choices']) ? data['choices'].filter(isJson) : []
  if (type === 5 || type === 4) asked.private.push(storeMessage(context, data))
  if (type === 7 && asked.source !== null) asked.source.body = { ...asked.source.body, ...data }
}

const callback: Handler = (context, [id = '', token = '']) => {
  const { world, call } = context
  const asked = world.asked.get(id)
  const refused = callbackFault(world, asked, token)
  if (refused !== null || asked === undefined) return refused ?? fault(404, 10_062, 'Unknown interaction')
  const data = isJson(call.body['data']) ? call.body['data'] : {}
  const type = Number(call.body['type'])
  const names = call.files.map((file) => file.name)
  const troubles = type === 9 ? modalTroubles(data) : type === 4 || type === 7 ? messageTroubles(data, names) : []
  if (troubles.length > 0) return invalid(troubles)
  keepCallback(context, asked, { type, data })
  return none
}

const originalOf = (asked: Asked): Stored | null =>
  asked.acknowledged === 5 || asked.acknowledged === 4 ? (asked.private[0] ?? null) : asked.source

const patchOriginal: Handler = (context, [, token = '']) => {
  const { world } = context
  const asked = findAsked(world, token)
  if (asked === undefined || world.now() - asked.at > 15 * 60_000) return fault(401, 50_027, 'Invalid Webhook Token')
  const original = asked.acknowledged === null ? null : originalOf(asked)
  const room = world.rooms.get(asked.room)
  if (original === null || room === undefined) return fault(404, 10_008, 'Unknown Message')
  const tooLarge = sizeFault(context)
  if (tooLarge !== null) return tooLarge
  const troubles = editInto(context, original)
  return troubles.length > 0 ? invalid(troubles) : ok(messageJson(world, room, original))
}

const followUp: Handler = (context, [, token = '']) => {
  const { world, call } = context
  const asked = findAsked(world, token)
  if (asked === undefined || asked.acknowledged === null) return fault(401, 50_027, 'Invalid Webhook Token')
  const room = world.rooms.get(asked.room)
  const troubles = messageTroubles(
    call.body,
    call.files.map((file) => file.name),
  )
  if (troubles.length > 0) return invalid(troubles)
  if (room === undefined) return fault(404, 10_003, 'Unknown Channel')
  const message = storeMessage(context, call.body)
  if ((flagsOf(call.body) & 64) === 0) room.messages.push(message)
  if ((flagsOf(call.body) & 64) !== 0) asked.private.push(message)
  return ok(messageJson(world, room, message))
}

const putCommands: Handler = ({ world, call }, ids) => {
  if (ids[0] !== world.application) return fault(403, 50_001, 'Missing Access')
  if (ids[1] !== undefined && !world.guilds.has(ids[1])) return fault(403, 50_001, 'Missing Access')
  const commands = call.list ?? []
  const troubles = commandTroubles(commands)
  if (troubles.length > 0) return invalid(troubles)
  world.commands.set(ids[1] ?? 'global', commands)
  return ok(commands.map((command) => ({ ...command, id: world.nextId() })))
}

const readMember: Handler = ({ world }, [guild = '', person = '']) => {
  const found = world.guilds.get(guild)
  const member = found === undefined ? null : memberJson(world, found, person)
  return member === null ? fault(404, 10_007, 'Unknown Member') : ok(member)
}

const about = ({ world }: Context): Answer =>
  ok({ id: world.application, name: 'platenpost', bot: userJson(world.bot), flags: 0 })

const gatewayBot: Handler = ({ rules }) =>
  ok({
    url: rules.gateway(),
    shards: rules.sharded,
    session_start_limit: { total: 1000, remaining: 999, reset_after: 14_400_000, max_concurrency: 1 },
  })

const routes: readonly (readonly [string, RegExp, Handler])[] = [
  ['GET', /^\/gateway\/bot$/, gatewayBot],
  ['GET', /^\/(?:oauth2\/)?applications\/@me$/, about],
  ['GET', /^\/users\/@me$/, ({ world }) => ok(userJson(world.bot))],
  ['POST', /^\/users\/@me\/channels$/, openDirect],
  ['PUT', /^\/applications\/(\d+)\/commands$/, putCommands],
  ['PUT', /^\/applications\/(\d+)\/guilds\/(\d+)\/commands$/, putCommands],
  ['GET', /^\/guilds\/(\d+)\/members\/(\d+)$/, readMember],
  ['POST', /^\/channels\/(\d+)\/messages$/, postMessage],
  ['GET', /^\/channels\/(\d+)\/messages$/, readMessages],
  ['PATCH', /^\/channels\/(\d+)\/messages\/(\d+)$/, patchMessage],
  ['DELETE', /^\/channels\/(\d+)\/messages\/(\d+)$/, deleteMessage],
  ['POST', /^\/channels\/(\d+)\/threads$/, openThread],
  ['PUT', /^\/channels\/(\d+)\/thread-members\/(\d+)$/, addToThread],
  ['POST', /^\/interactions\/(\d+)\/([^/]+)\/callback$/, callback],
  ['PATCH', /^\/webhooks\/(\d+)\/([^/]+)\/messages\/@original$/, patchOriginal],
  ['POST', /^\/webhooks\/(\d+)\/([^/]+)$/, followUp],
]

export const answerCall = (context: Context): Answer => {
  for (const [method, pattern, handler] of routes) {
    const match = method === context.call.method ? pattern.exec(context.call.path) : null
    if (match !== null) return handler(context, match.slice(1))
  }
  return fault(404, 0, `404: Not Found (${context.call.method} ${context.call.path})`)
}

/** Calls that name no token: whoever holds the interaction's own token may make them. */
export const isOpen = (path: string): boolean => /^\/(interactions|webhooks)\//.test(path)
