import { once } from 'node:events'
import { Client, Events, GatewayDispatchEvents, GatewayIntentBits, type Guild, Options, REST } from 'discord.js'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { PlatformDesk } from '../../../ports/platform-desk.ts'
import { answerRest } from './acknowledge.ts'
import { type Fetch, fetchRules } from './attachments.ts'
import { inOrder } from './in-order.ts'
import { inTurn } from './in-turn.ts'
import { listen } from './listen.ts'
import type { Needs } from './needs.ts'
import { onInteraction } from './on-interaction.ts'
import { onMessage, readMessage } from './on-message.ts'
import { type Clock, systemClock } from './patience.ts'
import { failureOf } from './rest-failure.ts'
import { sayIn, settingButton, textPart } from './say.ts'

export type PlatformSettings = {
  readonly token: string
  /** The platform's own address when null. */
  readonly api: string | null
  /** Whether the bot may read plain messages of a server; a right that is granted on the platform's page. */
  readonly readsContent: boolean
  readonly report: (error: unknown) => void
  readonly clock?: Clock
  /** Milliseconds after which a call counts as unknown. */
  readonly timeout?: number
  readonly fetch?: Fetch
  /** Ends the connecting, however long it takes. */
  readonly signal?: AbortSignal
}
export type Platform = {
  /** Our own user's id there. */
  readonly id: string
  readonly stop: () => Promise<void>
}

/** Nothing is kept in memory that the store knows: a restart loses nothing. Up to 2,500 servers a shard; one process. */
const openClient = ({ api, readsContent }: PlatformSettings): Client =>
  new Client({
    intents: [
      GatewayIntentBits.Guilds,
      GatewayIntentBits.GuildMessages,
      GatewayIntentBits.DirectMessages,
      ...(readsContent ? [GatewayIntentBits.MessageContent] : []),
    ],
    shards: 'auto',
    allowedMentions: { parse: [], repliedUser: false },
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      MessageManager: 0,
      ReactionManager: 0,
      GuildMemberManager: { maxSize: 0, keepOverLimit: (member) => member.id === member.client.user.id },
      UserManager: { maxSize: 0, keepOverLimit: (user) => user.id === user.client.user.id },
    }),
    ...(api === null ? {} : { rest: { api } }),
  })

/** Deeds that the desk works on at once; between two of them the process turns to what must be acknowledged. */
const mostAtOnce = 3

const unhurried = (desk: PlatformDesk): PlatformDesk => {
  const turn = inTurn(mostAtOnce)
  return {
    ...desk,
    hear: (talk, by, incoming) => turn(() => desk.hear(talk, by, incoming)),
    act: (actor, incoming) => turn(() => desk.act(actor, incoming)),
  }
}

const needsOf = (client: Client, desk: PlatformDesk, settings: PlatformSettings): Needs => {
  const { api, token, report } = settings
  const clock = settings.clock ?? systemClock
  const timeout = settings.timeout ?? 5_000
  const rest = new REST({ version: '10', retries: 0, timeout, ...(api === null ? {} : { api }) }).setToken(token)
  const files = { ...fetchRules, ...(settings.fetch === undefined ? {} : { fetch: settings.fetch }) }
  const serverName = (guild: string): string | null => client.guilds.cache.get(guild)?.name ?? null
  return { desk: unhurried(desk), rest, answers: answerRest(api), clock, files, report, serverName }
}

/** A server added us: a word in its own channel for notices, with the way into the set-up dialogue. */
const welcome = async (needs: Needs, guild: Guild): Promise<void> => {
  if (guild.systemChannelId === null || (await needs.desk.guild(guild.id)) !== null) return
  const words = platformWords[guild.preferredLocale.startsWith('es') ? 'es' : 'en'].setUp
  const part = textPart(words.welcome, settingButton('start', words.start))
  try {
    await sayIn(needs, guild.systemChannelId, { part, cause: `welcome|${guild.id}` })
  } catch (error) {
    if (failureOf(error)?.kind !== 'never') throw error
  }
}

/** What is said in one room is heard in the order in which it was said, though the first of it may bring a file that takes long. */
const listenTo = (client: Client, needs: Needs): void => {
  const { report } = needs
  client.on(Events.Error, report)
  client.on(Events.ShardError, report)
  listen<unknown>((listener) => client.ws.on(GatewayDispatchEvents.InteractionCreate, listener), {
    hear: (data) => onInteraction(needs, data),
    report,
  })
  const told = inOrder()
  listen<unknown>((listener) => client.ws.on(GatewayDispatchEvents.MessageCreate, listener), {
    hear: async (data) => {
      const [id, message] = [client.user?.id, readMessage(data)]
      const isThread = (channel: string): boolean => client.channels.cache.get(channel)?.isThread() ?? false
      if (id !== undefined && message !== null) await told(message.channel_id, () => onMessage(needs, message, { id, isThread }))
    },
    report,
  })
  listen<Guild>((listener) => client.on(Events.GuildCreate, listener), { hear: (guild) => welcome(needs, guild), report })
}

/** What comes of the work, or the end that the signal brings; leaves nothing of it on a signal that outlives the work. */
const orEnded = async <T>(work: Promise<T>, signal: AbortSignal | undefined): Promise<T> => {
  const over = new AbortController()
  const ended =
    signal === undefined ? [] : [once(signal, 'abort', { signal: over.signal }).then(() => Promise.reject(signal.reason))]
  try {
    return await Promise.race([work, ...ended])
  } finally {
    over.abort()
  }
}

/** Connects to the platform and hands everything people do there to the desk. Resolves when it is listening; leaves nothing open where it fails. */
export const startPlatform = async (desk: PlatformDesk, settings: PlatformSettings): Promise<Platform> => {
  const client = openClient(settings)
  listenTo(client, needsOf(client, desk, settings))
  const ready = new Promise<string>((resolve) => client.once(Events.ClientReady, ({ user }) => resolve(user.id)))
  const connected = client.login(settings.token).then(() => ready)
  try {
    return { id: await orEnded(connected, settings.signal), stop: () => client.destroy() }
  } catch (cause) {
    connected.catch(() => undefined)
    await client.destroy()
    throw cause
  }
}
