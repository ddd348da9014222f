import { ChannelType, type REST, Routes } from 'discord.js'
import * as z from 'zod'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { GuildSettings, PlatformDesk, PlatformPerson, Talk } from '../../../ports/platform-desk.ts'
import { type Clock, withPatience } from './patience.ts'
import { label } from './plain-text.ts'
import { failureOf } from './rest-failure.ts'
import { sayIn, textPart } from './say.ts'

export type RoomNeeds = { readonly rest: REST; readonly clock: Clock; readonly desk: PlatformDesk }
type Wanted = {
  readonly settings: GuildSettings
  readonly person: PlatformPerson
  /** The server's channel in which the customer asked, below which a thread may be opened. */
  readonly asked: string | null
  readonly cause: string
}

const idSchema = z.object({ id: z.string() })
const oneWeek = 10_080

const directRoom = async ({ rest, clock }: RoomNeeds, person: string): Promise<string> => {
  const body = { recipient_id: person }
  return idSchema.parse(await withPatience(clock, () => rest.post(Routes.userChannels(), { body }))).id
}

const threadRoom = async ({ rest, clock }: RoomNeeds, { settings, person, asked }: Wanted): Promise<string | null> => {
  const parent = settings.orders ?? asked
  if (parent === null) return null
  const name = label(platformWords[person.language].threadName(person.name), 100)
  const body = { name, type: ChannelType.PrivateThread, invitable: false, auto_archive_duration: oneWeek }
  const { id } = idSchema.parse(await rest.post(Routes.threads(parent), { body }))
  await withPatience(clock, () => rest.put(Routes.threadMembers(id, person.id)))
  return id
}

const isClosed = (error: unknown): boolean => failureOf(error)?.kind === 'never'

/** Says hello in that room; false when the platform does not let us write there. */
const greets = async (needs: RoomNeeds, room: string, { settings, person, cause }: Wanted): Promise<boolean> => {
  try {
    const part = textPart(platformWords[person.language].writeHere(settings.name))
    await sayIn(needs, room, { part, cause: `hello|${cause}` })
    return true
  } catch (error) {
    if (isClosed(error)) return false
    throw error
  }
}

/** A thread of the customer's own; null when the platform does not let us open one. */
const openThread = async (needs: RoomNeeds, wanted: Wanted): Promise<string | null> => {
  try {
    const room = await threadRoom(needs, wanted)
    return room !== null && (await greets(needs, room, wanted)) ? room : null
  } catch (error) {
    if (isClosed(error)) return null
    throw error
  }
}

const openDirect = async (needs: RoomNeeds, wanted: Wanted): Promise<string | null> => {
  const room = await directRoom(needs, wanted.person.id)
  return (await greets(needs, room, wanted)) ? room : null
}

/**
 * The customer's conversation with this shop, in a room where we can write: the one it is held in, else direct messages or
 * a thread as the shop wants it, else the other of the two. null: there is no such room.
 */
export const openConversation = async (needs: RoomNeeds, wanted: Wanted): Promise<Talk | null> => {
  const { settings, person } = wanted
  const running = await needs.desk.talkOf(person.id, settings.shop)
  if (running !== null && (await greets(needs, running.channel, wanted))) {
    return await needs.desk.openTalk(settings.shop, person, running.channel)
  }
  const [first, second] = settings.talks === 'direct' ? [openDirect, openThread] : [openThread, openDirect]
  const room = (await first(needs, wanted)) ?? (await second(needs, wanted))
  return room === null ? null : await needs.desk.openTalk(settings.shop, person, room)
}

/** Where a click on a link leads. */
export const linkTo = (guild: string | null, channel: string): string =>
  `https://discord.com/channels/${guild ?? '@me'}/${channel}`
