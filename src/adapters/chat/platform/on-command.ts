import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Incoming } from '../../../ports/chat.ts'
import type { Talk } from '../../../ports/platform-desk.ts'
import { type Acknowledged, acknowledgePrivately } from './acknowledge.ts'
import type { Asking, Interaction } from './interaction.ts'
import type { Needs } from './needs.ts'
import { openSetUp } from './on-setting.ts'
import { tellOutcome } from './outcome.ts'
import type { Part } from './render.ts'
import { actorOf } from './role.ts'
import { linkTo, openConversation } from './rooms.ts'
import { linkRow, messageParts, textPart } from './say.ts'
import { shopChoice, shopsFor } from './shop-choice.ts'
import { takeFiles } from './take-files.ts'
import { tell } from './tell.ts'
import { talkChannel } from './whose.ts'

const benchOf = { kind: 'shop', name: 'bench' } as const

type Command = Extract<Asking, { kind: 'command' }>
type Asked = { readonly interaction: Interaction; readonly how: Acknowledged; readonly command: Command }

const say = async (needs: Needs, { interaction, how }: Asked, parts: readonly Part[]): Promise<void> =>
  await tell(needs, interaction, { how, parts, files: [] })

/** The text and files given with the command, said in the conversation. */
const saidOf = async (needs: Needs, { interaction, command }: Asked, talk: Talk) => {
  const { files, refusals } = await takeFiles(needs, { ...talk, channel: talkChannel(talk) }, command.files)
  const text = command.texts['text'] ?? ''
  const incoming: Incoming | null = text === '' && files.length === 0 ? null : { kind: 'said', id: interaction.id, text, files }
  return { incoming, refusals }
}

const goOnIn = async (needs: Needs, asked: Asked, talk: Talk): Promise<void> => {
  const { interaction } = asked
  const words = platformWords[interaction.person.language]
  const { incoming, refusals } = await saidOf(needs, asked, talk)
  const outcome = incoming === null ? null : await needs.desk.hear(talk, interaction.person, incoming)
  const said = [...refusals, ...((outcome?.said ?? '') ? [outcome?.said ?? ''] : [])].map((text) => textPart(text))
  const isThere = talk.channel === interaction.channel
  const guild = asked.interaction.guild
  const link = linkRow(words.goThere, linkTo(guild === null ? null : await threadGuild(needs, talk, guild), talk.channel))
  await say(needs, asked, [isThere ? textPart(words.done) : textPart(words.wentThere, link), ...said])
}

/** A conversation of this server is either one of its threads or direct messages, which have no server. */
const threadGuild = async ({ desk }: Needs, talk: Talk, guild: string): Promise<string | null> => {
  const settings = await desk.guild(guild)
  return settings !== null && settings.shop === talk.shop && settings.talks === 'thread' ? guild : null
}

const orderInServer = async (needs: Needs, asked: Asked, guild: string): Promise<void> => {
  const { person, channel, id } = asked.interaction
  const words = platformWords[person.language]
  const settings = await needs.desk.guild(guild)
  if (settings === null) return await say(needs, asked, [textPart(words.notSetUp)])
  const talk = await openConversation(needs, { settings, person, asked: channel, cause: id })
  return talk === null ? await say(needs, asked, [textPart(words.noRoom)]) : await goOnIn(needs, asked, talk)
}

const orderInDirect = async (needs: Needs, asked: Asked): Promise<void> => {
  const { person, channel, id } = asked.interaction
  const running = await needs.desk.talkIn(channel, null)
  if (running !== null && !running.over) return await goOnIn(needs, asked, running)
  const shops = await shopsFor(needs, person.id)
  const [only] = shops
  const settings = only === undefined || shops.length > 1 ? null : await needs.desk.guild(only.guild)
  const talk = settings === null ? null : await openConversation(needs, { settings, person, asked: null, cause: id })
  if (talk !== null) return await goOnIn(needs, asked, talk)
  const words = platformWords[person.language]
  return await say(needs, asked, shops.length > 1 ? messageParts(shopChoice(person.language, shops)) : [textPart(words.noShop)])
}

const status = async (needs: Needs, asked: Asked): Promise<void> => {
  const { person, channel, guild, id } = asked.interaction
  const settings = guild === null ? null : await needs.desk.guild(guild)
  const here = await needs.desk.talkIn(channel, null)
  const talk = here ?? (guild !== null && settings === null ? null : await needs.desk.talkOf(person.id, settings?.shop ?? null))
  if (talk === null) return await say(needs, asked, [textPart(platformWords[person.language].noTalk)])
  const outcome = await needs.desk.hear(talk, person, { kind: 'pressed', id, action: 'c:status' })
  return await tellOutcome(needs, asked.interaction, {
    how: asked.how,
    kept: { shop: talk.shop, channel: talkChannel(talk) },
    outcome,
    refusals: [],
  })
}

/** Commands of staff and owner: the desk decides who may, and answers in private. */
const shopCommand = async (needs: Needs, asked: Asked): Promise<void> => {
  const { interaction, how, command } = asked
  const words = platformWords[interaction.person.language]
  if (interaction.guild === null) return await say(needs, asked, [textPart(words.onlyInServer)])
  const settings = await needs.desk.guild(interaction.guild)
  if (settings === null) return await say(needs, asked, [textPart(words.notSetUp)])
  const named = `c:${command.word}`
  const incoming: Incoming =
    command.word === 'tickets'
      ? { kind: 'filled', id: interaction.id, form: named, values: command.texts }
      : { kind: 'pressed', id: interaction.id, action: named }
  const outcome = await needs.desk.act(actorOf(settings, interaction), incoming)
  return await tellOutcome(needs, interaction, { how, kept: { shop: settings.shop, channel: benchOf }, outcome, refusals: [] })
}

/** A command was given: acknowledged first, answered in private. */
export const onCommand = async (needs: Needs, interaction: Interaction, command: Command): Promise<void> => {
  const asked: Asked = { interaction, command, how: await acknowledgePrivately(needs.answers, interaction) }
  if (command.word === 'order' && interaction.answered.elsewhere) return
  switch (command.word) {
    case 'order':
      return interaction.guild === null ? await orderInDirect(needs, asked) : await orderInServer(needs, asked, interaction.guild)
    case 'status':
      return await status(needs, asked)
    case 'setup':
      return await openSetUp(needs, interaction, asked.how)
    case 'tickets':
    case 'morning':
    case 'load':
      return await shopCommand(needs, asked)
  }
}
