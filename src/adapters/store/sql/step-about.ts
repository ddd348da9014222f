import { sql } from 'kysely'
import type { StepAbout, StepKey } from '../../../ports/work-records.ts'
import { compiledText } from './compiled.ts'
import { type OrderRow, orderOf, revisionOf } from './order-rows.ts'
import { settle } from './pending.ts'
import type { Scope } from './tables.ts'
import { languageIn } from './talk-language.ts'

type Row = OrderRow & {
  readonly isDone: boolean | null
  readonly isThere: boolean
  readonly ofRevision: number | null
  readonly hash: string
  readonly document: unknown
  readonly signedBy: string | null
  readonly signedAt: number | null
  readonly language: string | null
}

const look = compiledText(
  ({ shopId, step, orderId, revision }: StepKey & { readonly shopId: string }) => sql<Row>`
  select (select state = 'done' from step
      where shop_id = ${shopId} and order_id = ${orderId} and revision = ${revision} and step = ${step}) as is_done,
    ordered.order_id is not null as is_there, ordered.order_id, ordered.conversation_id, ordered.state, ordered.hold, ordered.revision,
    ordered.version, ordered.handed_over_at,
    revised.revision as of_revision, revised.hash, revised.document, revised.signed_by, revised.signed_at,
    (select talk.state->>'language' from conversation talk
      where talk.shop_id = ${shopId} and talk.conversation_id = ordered.conversation_id) as language
  from (values (1)) one
    left join "order" ordered on ordered.shop_id = ${shopId} and ordered.order_id = ${orderId}
    left join order_revision revised
      on revised.shop_id = ${shopId} and revised.order_id = ${orderId} and revised.revision = ${revision}`,
)

/** A step, its order, the revision it is for and the language of its conversation, in one statement. */
export const aboutStep = async (scope: Scope, { step, orderId, revision }: StepKey): Promise<StepAbout> => {
  await settle(scope)
  const row = await look.first(scope.db, { shopId: scope.shopId, step, orderId, revision })
  if (row === undefined) return { isDone: false, order: null, revision: null, language: null }
  const { hash, document, signedBy, signedAt, ofRevision } = row
  return {
    isDone: row.isDone === true,
    order: row.isThere ? orderOf(row) : null,
    revision: ofRevision === null ? null : revisionOf({ orderId, revision: ofRevision, hash, document, signedBy, signedAt }),
    language: languageIn(row.language),
  }
}
