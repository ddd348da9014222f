import { minutes } from '../../../domain/units/units.ts'
import type { Hold, StoredOrder, StoredRevision } from '../../../ports/work-records.ts'

export const orderColumns = ['orderId', 'conversationId', 'state', 'hold', 'revision', 'version', 'handedOverAt'] as const
export const revisionColumns = ['orderId', 'revision', 'hash', 'document', 'signedBy', 'signedAt'] as const

export type OrderRow = Omit<StoredOrder, 'hold'> & { readonly hold: unknown }
export type RevisionRow = Omit<StoredRevision, 'signed'> & { readonly signedBy: string | null; readonly signedAt: number | null }

const isHold = (value: unknown): value is Hold => typeof value === 'object' && value !== null && 'why' in value

export const orderOf = (row: OrderRow): StoredOrder => {
  const { orderId, conversationId, state, hold, revision, version, handedOverAt } = row
  return { orderId, conversationId, state, hold: isHold(hold) ? hold : null, revision, version, handedOverAt }
}

export const revisionOf = ({ signedBy, signedAt, ...row }: RevisionRow): StoredRevision => ({
  ...row,
  signed: signedBy === null || signedAt === null ? null : { by: signedBy, at: minutes(signedAt) },
})
