import type { ShopEvent, StepKey } from '../../../ports/work-records.ts'
import type { Database, Scope } from './tables.ts'
import { type Said, writeMessages } from './write-messages.ts'
import { type Told, writeWork } from './write-work.ts'

/** What a transaction has to write and nobody in it looks at: it is written at its end, all of a kind in one statement. */
type Pending = {
  readonly messages: Said[]
  readonly events: ShopEvent[]
  readonly wanted: StepKey[]
  readonly done: StepKey[]
  readonly news: Told[]
}

const pending = new WeakMap<Database, Pending>()

const nothing = (): Pending => ({ messages: [], events: [], wanted: [], done: [], news: [] })

const pendingIn = (db: Database): Pending => {
  const known = pending.get(db) ?? nothing()
  pending.set(db, known)
  return known
}

/** Writes what waits: before something that looks at it, and at the end of the transaction. */
export const settle = async (scope: Scope): Promise<void> => {
  const waiting = pending.get(scope.db)
  if (waiting === undefined) return
  pending.delete(scope.db)
  const { messages, ...work } = waiting
  if (messages.length > 0) await writeMessages(scope, messages)
  if (Object.values(work).some(({ length }) => length > 0)) await writeWork(scope, work)
}

/** Outside of a transaction nothing waits. */
const add = async (scope: Scope, note: (waiting: Pending) => void): Promise<void> => {
  note(pendingIn(scope.db))
  if (!scope.db.isTransaction) await settle(scope)
}

/** One statement writes no row twice: a message of the same nonce waits for the first to be written. */
export const noteMessage = async (scope: Scope, message: Said): Promise<void> => {
  if (pending.get(scope.db)?.messages.some(({ nonce }) => nonce === message.nonce)) await settle(scope)
  await add(scope, ({ messages }) => messages.push(message))
}

export const noteEvent = (scope: Scope, event: ShopEvent): Promise<void> => add(scope, ({ events }) => events.push(event))

export const noteWanted = (scope: Scope, key: StepKey): Promise<void> => add(scope, ({ wanted }) => wanted.push(key))

const isSame = (one: StepKey, other: StepKey): boolean =>
  one.step === other.step && one.orderId === other.orderId && one.revision === other.revision

/** A step that is wanted and done at once is wanted first. */
export const noteDone = async (scope: Scope, key: StepKey): Promise<void> => {
  if (pending.get(scope.db)?.wanted.some((one) => isSame(one, key))) await settle(scope)
  await add(scope, ({ done }) => done.push(key))
}

/** The same news is told once when the transaction is kept. */
export const noteNews = (scope: Scope, told: Told): Promise<void> => add(scope, ({ news }) => news.push(told))
