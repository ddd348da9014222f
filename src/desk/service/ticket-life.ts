import type { Finding, OrderState, RowState, StoredOrder, StoredTicket } from '../../ports/work-records.ts'

/** What staff can do with an open ticket, in the order in which it is done. */
export const ticketActs = ['take', 'hand-on', 'start', 'checked', 'bagged', 'collected'] as const
export type TicketAct = (typeof ticketActs)[number]

export const isTicketAct = (name: string): name is TicketAct => ticketActs.some((act) => act === name)

/** A ticket as staff see it: its order's state, and what was done with it so far. */
export type TicketLife = { readonly ticket: StoredTicket; readonly order: StoredOrder; readonly findings: readonly Finding[] }

/** Who holds the ticket now; null when nobody took it or it was handed on. */
export const holderOf = (findings: readonly Finding[]): Finding | null => {
  const last = findings.filter(({ code }) => code === 'take' || code === 'hand-on').at(-1)
  return last === undefined || last.code === 'hand-on' ? null : last
}

const wasDone = (life: TicketLife, act: TicketAct): boolean => life.findings.some(({ code }) => code === act)

/** What may be done next. Whoever takes a ticket holds it alone; checking, bagging and handing over follow each other. */
export const openActs = (life: TicketLife): readonly TicketAct[] => {
  if (life.ticket.state !== 'open') return []
  const { state } = life.order
  const isHeld = holderOf(life.findings) !== null
  if (state === 'checked') return ['bagged']
  if (state === 'bagged') return ['collected']
  if (state !== 'on-bench' && state !== 'ticketed') return []
  if (!isHeld) return ['take']
  return wasDone(life, 'start') ? ['checked', 'hand-on'] : ['start', 'hand-on']
}

/** The order's state after an act, where it changes it. */
export const stateAfter: { readonly [Act in TicketAct]: OrderState | null } = {
  take: null,
  'hand-on': null,
  start: null,
  checked: 'checked',
  bagged: 'bagged',
  collected: 'collected',
}

/** What every row of the roster becomes by an act, where it changes. */
export const rowsAfter: { readonly [Act in TicketAct]: RowState['state'] | null } = {
  take: null,
  'hand-on': null,
  start: 'cut',
  checked: 'pressed',
  bagged: 'bagged',
  collected: null,
}
