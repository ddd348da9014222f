import type { Zone } from '../../domain/calendar/zone.ts'
import type { Channel } from '../../ports/chat.ts'
import type { Clock, Ids } from '../../ports/clock.ts'
import type { ReadSheet } from '../../ports/sheet.ts'
import type { Store } from '../../ports/store.ts'
import type { Press } from '../make-job.ts'
import type { Workshop } from '../work-out.ts'

/** What the desk of one shop works with. */
export type Desk = {
  readonly shopId: string
  readonly zone: Zone
  readonly store: Store
  readonly workshop: Workshop
  readonly clock: Clock
  readonly ids: Ids
  readonly readSheet: ReadSheet
}

/** A worker's desk has a printer and a picture maker beside it. */
export type WorkerDesk = Desk & { readonly press: Press }

export const conversationChannel = (conversationId: string): string => `conversation:${conversationId}`
export const shopChannel = (name: 'bench' | 'owner'): string => `shop:${name}`
export const orderFiles = (orderId: string): string => `order:${orderId}`

/** A channel's name in the records, and back. */
export const channelName = (channel: Channel): string =>
  channel.kind === 'conversation' ? conversationChannel(channel.id) : shopChannel(channel.name)

export const channelFrom = (name: string): Channel | null => {
  if (name.startsWith('conversation:')) return { kind: 'conversation', id: name.slice('conversation:'.length) }
  if (name === shopChannel('bench')) return { kind: 'shop', name: 'bench' }
  return name === shopChannel('owner') ? { kind: 'shop', name: 'owner' } : null
}
