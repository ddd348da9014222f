import type * as z from 'zod'
import type { Problem, Result } from '../../../domain/result/result.ts'
import type { FormAct } from '../../../domain/ticket/acts.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { wordsFor } from '../say/say-floor.ts'

export type Values = { readonly [field: string]: string }

/** Something that somebody fills in about a ticket, inside the transaction in which it is written down. */
export type Deed = {
  readonly desk: Desk
  readonly shop: ShopStore
  readonly life: TicketLife
  readonly facts: TicketFacts
  readonly act: FormAct
  readonly by: Member
  readonly values: Values
}

/** A sentence for whoever did it when it was not done; null when it was. */
export type Answered = Promise<Result<string | null, Problem>>

/** What was filled in, read strictly; a field that cannot be read is named to whoever filled it in. */
export const readValues = <T extends z.ZodType>(
  { desk, values }: Pick<Deed, 'desk' | 'values'>,
  schema: T,
): { readonly ok: true; readonly value: z.output<T> } | { readonly ok: false; readonly said: string } => {
  const read = schema.safeParse(values)
  if (read.success) return { ok: true, value: read.data }
  const field = String(read.error.issues[0]?.path[0] ?? '')
  const words = wordsFor(desk)
  const labels: { readonly [field: string]: string } = words.fields
  return { ok: false, said: words.badForm(labels[field] ?? field) }
}
