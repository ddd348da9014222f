import { REST, Routes } from 'discord.js'
import * as z from 'zod'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Channel, Deliver, Delivered, Delivery, Message } from '../../../ports/chat.ts'
import { type PlatformDesk, type PostingTrouble, Undeliverable } from '../../../ports/platform-desk.ts'
import { coalesced } from './coalesce.ts'
import { type Clock, systemClock } from './patience.ts'
import { fileName } from './plain-text.ts'
import { type Placed, type PostingNeeds, postPart, removePart, type Upload } from './post.ts'
import { type Carried, renderParts } from './render.ts'
import { failureOf } from './rest-failure.ts'

export type DeliveryDesk = Pick<PlatformDesk, 'file' | 'placeOf' | 'troubled' | 'postings'>
export type DeliverySettings = {
  readonly token: string
  /** The platform's own address when null. */
  readonly api: string | null
  readonly clock?: Clock
  /** Milliseconds between two edits of one message. */
  readonly spacing?: number
  /** Milliseconds after which a call counts as unknown. */
  readonly timeout?: number
}
type Needs = PostingNeeds & { readonly desk: DeliveryDesk }
type Bundle = { readonly uploads: readonly Upload[]; readonly carried: Carried }

/** What every server takes in one request without being boosted; the platform's default. */
const mostBytes = 10 * 1024 * 1024

const loadUpload = async (desk: DeliveryDesk, { shop, channel }: Delivery, id: string): Promise<Upload> => {
  const stored = await desk.file(shop, channel, id)
  if (stored === null) throw new Error(`there is no file ${id} to send`)
  return { id, name: fileName(stored.name), mime: stored.mime, bytes: stored.bytes }
}

const distinct = (picture: Upload | null, file: Upload | null): Upload | null =>
  picture !== null && picture.name === file?.name ? { ...picture, name: `picture-${picture.name}` } : picture

const weight = (uploads: readonly Upload[]): number => uploads.reduce((sum, { bytes }) => sum + bytes.length, 0)

/** The file sets to try, the whole one first, then without the picture, then in words only. */
const bundlesOf = async (desk: DeliveryDesk, delivery: Delivery): Promise<readonly Bundle[]> => {
  const { message } = delivery
  const file = message.file === null ? null : await loadUpload(desk, delivery, message.file.file)
  const picture = distinct(message.picture === null ? null : await loadUpload(desk, delivery, message.picture.file), file)
  const note = platformWords[message.language].tooLarge
  const bundle = (shownPicture: Upload | null, shownFile: Upload | null): Bundle => {
    const whole = shownPicture === picture && shownFile === file
    return {
      uploads: [shownPicture, shownFile].filter((one) => one !== null),
      carried: { picture: shownPicture?.name ?? null, file: shownFile?.name ?? null, note: whole ? null : note },
    }
  }
  const sets = [bundle(picture, file), bundle(null, file), bundle(null, null)]
  return sets.filter(({ uploads }, at) => weight(uploads) <= mostBytes && uploads.length !== sets[at - 1]?.uploads.length)
}

const postParts = async (
  needs: Needs,
  where: { readonly delivery: Delivery; readonly channel: string },
  bundle: Bundle,
): Promise<Delivered> => {
  const { shop, nonce, message } = where.delivery
  const parts = renderParts(message, bundle.carried)
  const placed: Placed[] = []
  for (const [at, part] of parts.entries()) {
    const files = bundle.uploads.filter(({ name }) => part.files.includes(name))
    placed.push(await postPart(needs, { key: { shop, nonce, part: at + 1 }, channel: where.channel, part, files }))
  }
  for (let surplus = await needs.postings.parts(shop, nonce); surplus > parts.length; surplus -= 1) {
    await removePart(needs, {
      key: { shop, nonce, part: surplus },
      channel: where.channel,
      part: { inside: [], files: [] },
      files: [],
    })
  }
  const outcome = (['posted', 'edited'] as const).find((one) => placed.some((part) => part.outcome === one)) ?? 'already-there'
  return { messageId: placed.at(-1)?.messageId ?? '', outcome }
}

const postLargest = async (
  needs: Needs,
  where: { readonly delivery: Delivery; readonly channel: string },
): Promise<Delivered> => {
  const bundles = await bundlesOf(needs.desk, where.delivery)
  for (const bundle of bundles.slice(0, -1)) {
    try {
      return await postParts(needs, where, bundle)
    } catch (error) {
      if (failureOf(error)?.kind !== 'too-large') throw error
    }
  }
  const last = bundles.at(-1)
  if (last === undefined) throw new Error('a delivery has no set of files to try')
  return await postParts(needs, where, last)
}

const textMessage = (language: Message['language'], text: string): Message => ({
  language,
  blocks: [{ kind: 'text', text, tone: 'caution' }],
  picture: null,
  file: null,
  actions: [],
  choice: null,
  form: null,
})

/** Tells staff in another channel of the shop; when that cannot be reached either, the desk's own note has to do. */
const tellStaff = async (needs: Needs, { shop, nonce, channel }: Delivery, code: PostingTrouble): Promise<void> => {
  const { about } = await needs.desk.troubled(shop, { code, channel, nonce })
  const other: Channel = { kind: 'shop', name: channel.kind === 'shop' && channel.name === 'owner' ? 'bench' : 'owner' }
  const place = await needs.desk.placeOf(shop, other)
  if (place === null) return
  const text = platformWords[place.language].trouble[code](about ?? platformWords[place.language].aMessage)
  const told: Delivery = { shop, channel: other, nonce: `trouble:${nonce}:${code}`, message: textMessage(place.language, text) }
  try {
    await postParts(
      needs,
      { delivery: told, channel: place.channel },
      { uploads: [], carried: { picture: null, file: null, note: null } },
    )
  } catch (error) {
    if (failureOf(error)?.kind !== 'never') throw error
  }
}

const deliverOnce = async (needs: Needs, delivery: Delivery): Promise<Delivered> => {
  const place = await needs.desk.placeOf(delivery.shop, delivery.channel)
  if (place === null) {
    await tellStaff(needs, delivery, 'channel-not-chosen')
    throw new Undeliverable('channel-not-chosen')
  }
  try {
    return await postLargest(needs, { delivery, channel: place.channel })
  } catch (cause) {
    const failure = failureOf(cause)
    const trouble = failure?.kind === 'never' ? failure.trouble : failure?.kind === 'too-large' ? 'refused-by-platform' : null
    if (trouble === null) throw cause
    await tellStaff(needs, delivery, trouble)
    throw new Undeliverable(trouble, { cause })
  }
}

const idSchema = z.object({ id: z.string() })

/** Our own user's id, asked once. */
const ownId = (rest: REST): (() => Promise<string>) => {
  let known: string | null = null
  return async () => {
    known ??= idSchema.parse(await rest.get(Routes.user())).id
    return known
  }
}

/**
 * Delivers into the platform over its REST side; any process may. The same nonce is the same message: posted once, edited
 * when its body changes. Throws `Undeliverable` when a person has to look, anything else means again.
 */
export const platformDeliver = (desk: DeliveryDesk, settings: DeliverySettings): Deliver => {
  const clock = settings.clock ?? systemClock
  const rest = new REST({
    version: '10',
    retries: 0,
    timeout: settings.timeout ?? 10_000,
    rejectOnRateLimit: () => true,
    ...(settings.api === null ? {} : { api: settings.api }),
  }).setToken(settings.token)
  const needs: Needs = { rest, clock, desk, postings: desk.postings, own: ownId(rest) }
  return coalesced((delivery) => deliverOnce(needs, delivery), settings.spacing ?? 1_100, clock)
}
