import { REST, Routes } from 'discord.js'
import * as z from 'zod'
import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Channel, Deliver, Delivered, Delivery, Message } from '../../../ports/chat.ts'
import { type PlatformDesk, type PostingTrouble, Undeliverable } from '../../../ports/platform-desk.ts'
import { coalesced } from './coalesce.ts'
import { type Clock, systemClock } from './patience.ts'
import { type Placed, type PostingNeeds, postPart, removePart } from './post.ts'
import { nothingCarried, renderParts } from './render.ts'
import { failureOf } from './rest-failure.ts'
import { type Bundle, bundlesOf } from './uploads.ts'

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
  const bundles = await bundlesOf(needs.desk, where.delivery, where.delivery.message)
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
    await postParts(needs, { delivery: told, channel: place.channel }, { uploads: [], carried: nothingCarried })
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
