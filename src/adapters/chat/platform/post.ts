import { type RawFile, type REST, Routes } from 'discord.js'
import * as z from 'zod'
import type { Held, PostingKey, PostingRecord, Postings } from '../../../ports/platform-desk.ts'
import { bodyHash, idAt, markOf, platformNonce } from './nonce.ts'
import { type Clock, withPatience } from './patience.ts'
import { findOwn } from './reconcile.ts'
import { bodyOf, type Part } from './render.ts'
import type { Upload } from './uploads.ts'

/** `rest` must not repeat by itself: whether to post again is decided here, from the record. */
export type PostingNeeds = {
  readonly rest: REST
  readonly postings: Postings
  readonly clock: Clock
  readonly own: () => Promise<string>
}
export type Sending = {
  readonly key: PostingKey
  readonly channel: string
  readonly part: Part
  readonly files: readonly Upload[]
}
export type Placed = { readonly messageId: string; readonly outcome: 'posted' | 'edited' | 'already-there' }

/** A lease outlasts one call of ten seconds with its pauses; every attempt makes it longer. */
const leaseFor = 45_000
/** Within this time the platform's own memory of nonces is trusted; after it the channel is read first. */
const young = 60_000
/** How far our clock and the platform's may be apart. */
const skew = 60_000

const posted = z.object({ id: z.string() })

const rawFiles = (files: readonly Upload[]): RawFile[] =>
  files.map(({ name, mime, bytes }) => ({ name, contentType: mime, data: Buffer.from(bytes) }))

const attachmentsOf = (files: readonly Upload[]) => files.map(({ name }, id) => ({ id, filename: name }))

const hashOf = ({ part, files }: Sending): string =>
  bodyHash({ inside: part.inside, files: files.map(({ name, id }) => [name, id]) })

const takeLease = async ({ postings, clock }: PostingNeeds, { key, channel }: Sending): Promise<PostingRecord> => {
  const giveUpAt = clock.now() + leaseFor
  for (;;) {
    const now = clock.now()
    const record = await postings.lease(key, { channel, now, until: now + leaseFor })
    if (record !== null) return record
    if (now > giveUpAt) throw new Error(`somebody else is posting ${key.nonce}`)
    await clock.pause(250)
  }
}

const keep = async (
  { postings }: PostingNeeds,
  held: Held,
  done: { readonly message: string; readonly body: string },
): Promise<void> => {
  if (!(await postings.record(held, done))) throw new Error(`the lease on ${held.nonce} was lost before its message was recorded`)
}

/** One attempt: the moment is committed first, then the channel is read when the first attempt is long ago, then it is sent. */
const attempt = async (needs: PostingNeeds, sending: Sending, record: PostingRecord): Promise<string> => {
  const { rest, postings, clock } = needs
  const { key, part, files } = sending
  const now = clock.now()
  const first = record.firstAttemptAt ?? now
  if (!(await postings.attempt({ ...key, fence: record.fence }, first, now + leaseFor))) {
    throw new Error(`the lease on ${key.nonce} was lost`)
  }
  const mark = markOf(key, record.channel, record.round)
  if (now - first >= young) {
    const found = await findOwn(needs, { channel: record.channel, after: idAt(first - skew), mark, part })
    if (found !== null) return found
  }
  const body = {
    ...bodyOf(part, mark, 0),
    attachments: attachmentsOf(files),
    nonce: platformNonce(key, record.channel, record.round),
    enforce_nonce: true,
  }
  return posted.parse(await rest.post(Routes.channelMessages(record.channel), { body, files: rawFiles(files) })).id
}

const create = async (needs: PostingNeeds, sending: Sending, record: PostingRecord): Promise<Placed> => {
  const held = { ...sending.key, fence: record.fence }
  const since = record.firstAttemptAt ?? needs.clock.now()
  const messageId = await withPatience(needs.clock, () => attempt(needs, sending, { ...record, firstAttemptAt: since }))
  if (record.firstAttemptAt !== null) {
    await edit(needs, sending, { ...record, message: messageId })
  }
  await keep(needs, held, { message: messageId, body: hashOf(sending) })
  return { messageId, outcome: 'posted' }
}

/** Idempotent: the whole message is written again, with its files. */
const edit = async ({ rest, clock }: PostingNeeds, { key, part, files }: Sending, record: PostingRecord): Promise<void> => {
  const body = { ...bodyOf(part, markOf(key, record.channel, record.round), 0), attachments: attachmentsOf(files) }
  const route = Routes.channelMessage(record.channel, record.message ?? '')
  await withPatience(clock, () => rest.patch(route, { body, files: rawFiles(files) }))
}

const place = async (needs: PostingNeeds, sending: Sending, record: PostingRecord): Promise<Placed> => {
  if (record.message === null) return await create(needs, sending, record)
  const body = hashOf(sending)
  if (record.body === body) return { messageId: record.message, outcome: 'already-there' }
  await edit(needs, sending, record)
  await keep(needs, { ...sending.key, fence: record.fence }, { message: record.message, body })
  return { messageId: record.message, outcome: 'edited' }
}

/**
 * Puts one part where it belongs, exactly once: posts it, or edits the message that has its nonce. Whatever happens in
 * between, a later call with the same key finds out what was done.
 */
export const postPart = async (needs: PostingNeeds, sending: Sending): Promise<Placed> => {
  const record = await takeLease(needs, sending)
  try {
    return await place(needs, sending, record)
  } finally {
    await needs.postings.release({ ...sending.key, fence: record.fence })
  }
}

/** Takes away a part that the delivery no longer has. */
export const removePart = async (needs: PostingNeeds, sending: Sending): Promise<void> => {
  const record = await takeLease(needs, sending)
  const held = { ...sending.key, fence: record.fence }
  const { message } = record
  if (message !== null) {
    await withPatience(needs.clock, () => needs.rest.delete(Routes.channelMessage(record.channel, message)))
  }
  await needs.postings.drop(held)
}
