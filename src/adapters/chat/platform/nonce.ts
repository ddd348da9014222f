import { createHash } from 'node:crypto'
import type { PostingKey } from '../../../ports/platform-desk.ts'

const digest = (key: PostingKey, channel: string, round: number): Buffer =>
  createHash('sha256').update([key.shop, channel, key.nonce, key.part, round].join('|')).digest()

/** The platform takes 25 signs at most; 24 of base64url are 144 bits. */
export const platformNonce = (key: PostingKey, channel: string, round: number): string =>
  digest(key, channel, round).toString('base64url').slice(0, 24)

/** A number that stays on the message as the id of its outermost component: 1 to 2³⁰, never one of the platform's small own. */
export const markOf = (key: PostingKey, channel: string, round: number): number =>
  2 ** 29 + (digest(key, channel, round).readUInt32BE(24) % 2 ** 29)

export const bodyHash = (body: unknown): string => createHash('sha256').update(JSON.stringify(body)).digest('base64url')

const epoch = 1_420_070_400_000n

/** The smallest id that a message of this moment (epoch ms) can have. */
export const idAt = (moment: number): string => ((BigInt(Math.max(moment, Number(epoch))) - epoch) << 22n).toString()
