import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Channel, Incoming } from '../../../ports/chat.ts'
import type { GuildSettings, Outcome, PlatformPerson, Talk } from '../../../ports/platform-desk.ts'
import { personOf } from './interaction.ts'
import type { Needs } from './needs.ts'
import { type MessagePayload, messageSchema } from './payload.ts'
import { actorOf } from './role.ts'
import { openConversation } from './rooms.ts'
import { messageParts, sayIn, textPart } from './say.ts'
import { shopChoice, shopsFor } from './shop-choice.ts'
import { takeFiles } from './take-files.ts'
import { talkChannel } from './whose.ts'

/** A plain message or a reply; everything else is the platform's own notice. */
const spoken = [0, 19]

type Own = { readonly id: string; readonly isThread: (channel: string) => boolean }

const textOf = ({ content }: MessagePayload, own: string): string => content.replaceAll(new RegExp(`<@!?${own}>`, 'g'), '').trim()

const saidIn = async (
  needs: Needs,
  message: MessagePayload,
  where: { shop: string; channel: Channel; language: Language; own: string },
) => {
  const { files, refusals } = await takeFiles(needs, where, message.attachments)
  const incoming: Incoming = { kind: 'said', id: message.id, text: textOf(message, where.own), files }
  return { incoming, refusals }
}

const reply = async (needs: Needs, message: MessagePayload, texts: readonly string[]): Promise<void> => {
  for (const [at, text] of texts.entries()) {
    await sayIn(needs, message.channel_id, { part: textPart(text), cause: `${message.id}|${at}` })
  }
}

const saidBy = (outcome: Outcome): readonly string[] => (outcome.said === null ? [] : [outcome.said])

const hearIn = async (needs: Needs, message: MessagePayload, heard: { talk: Talk; person: PlatformPerson; own: string }) => {
  const { talk, person, own } = heard
  if (talk.person !== person.id) {
    await needs.desk.hear(talk, person, { kind: 'said', id: message.id, text: '', files: [] })
    return
  }
  const { incoming, refusals } = await saidIn(needs, message, { ...talk, channel: talkChannel(talk), own })
  const outcome = await needs.desk.hear(talk, person, incoming)
  const words = [...refusals, ...saidBy(outcome)]
  await reply(needs, { ...message, channel_id: talk.channel }, words)
}

const direct = async (needs: Needs, message: MessagePayload, own: Own): Promise<void> => {
  const person = personOf(message.author, '')
  const talk = await needs.desk.talkIn(message.channel_id, null)
  if (talk !== null) return await hearIn(needs, message, { talk, person, own: own.id })
  const shops = await shopsFor(needs, person.id)
  const [only] = shops
  const settings = only === undefined || shops.length > 1 ? null : await needs.desk.guild(only.guild)
  const opened = settings === null ? null : await openConversation(needs, { settings, person, asked: null, cause: message.id })
  if (opened !== null) return await hearIn(needs, message, { talk: opened, person, own: own.id })
  if (shops.length < 2) return await reply(needs, message, [platformWords[person.language].noShop])
  for (const [at, part] of messageParts(shopChoice(person.language, shops)).entries()) {
    await sayIn(needs, message.channel_id, { part, cause: `${message.id}|shop|${at}` })
  }
}

const isShopChannel = (settings: GuildSettings, channel: string): boolean =>
  channel === settings.bench || channel === settings.owner

/** Somebody named us in a channel of the server: staff speak to the shop, a customer is led to a room of their own. */
const named = async (needs: Needs, message: MessagePayload, heard: { guild: string; own: Own }): Promise<void> => {
  const settings = await needs.desk.guild(heard.guild)
  const person = personOf(message.author, settings?.language ?? '')
  const words = platformWords[person.language]
  if (settings === null) return await reply(needs, message, [words.notSetUp])
  const actor = actorOf(settings, { person, roles: message.member?.roles ?? [] })
  if (actor.role !== null && isShopChannel(settings, message.channel_id)) {
    const { incoming, refusals } = await saidIn(needs, message, {
      ...settings,
      channel: { kind: 'shop', name: 'bench' },
      own: heard.own.id,
    })
    const outcome = await needs.desk.act(actor, incoming)
    return await reply(needs, message, [...refusals, ...saidBy(outcome)])
  }
  const talk = await openConversation(needs, { settings, person, asked: message.channel_id, cause: message.id })
  if (talk === null) return await reply(needs, message, [words.noRoom])
  await hearIn(needs, message, { talk, person, own: heard.own.id })
  return await reply(needs, message, [words.wentThere])
}

/** A message as the platform sent it; null for what is none. */
export const readMessage = (data: unknown): MessagePayload | null => messageSchema.safeParse(data).data ?? null

/** One message of people. Without the right to read plain messages of a server those arrive empty and are passed by. */
export const onMessage = async (needs: Needs, message: MessagePayload, own: Own): Promise<void> => {
  if (message.author.bot === true || message.webhook_id !== undefined || !spoken.includes(message.type)) return
  if (message.guild_id === undefined) return await direct(needs, message, own)
  const isNamed = message.mentions.some(({ id }) => id === own.id)
  const isReadable = message.content !== '' || message.attachments.length > 0
  const talk =
    isNamed || (isReadable && own.isThread(message.channel_id)) ? await needs.desk.talkIn(message.channel_id, null) : null
  if (talk !== null) return await hearIn(needs, message, { talk, person: personOf(message.author, talk.language), own: own.id })
  if (isNamed) await named(needs, message, { guild: message.guild_id, own })
}
