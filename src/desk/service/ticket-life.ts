import type { GateState } from '../../domain/press/gate-state.ts'
import type { FormAct, PlainAct, TicketAct } from '../../domain/ticket/acts.ts'
import type { Finding, OrderState, RowState, StoredOrder, StoredTicket, Tick } from '../../ports/work-records.ts'

/** A ticket as staff see it: its order's state, its ticks, what was found and done so far, and how its gates stand now. */
export type TicketLife = {
  readonly ticket: StoredTicket
  readonly order: StoredOrder
  readonly findings: readonly Finding[]
  readonly ticks: readonly Tick[]
  readonly gates: readonly GateState[]
  /** This revision changed pieces that were made already. */
  readonly changedPieces: boolean
  readonly openRemakes: number
}

/** Who holds the ticket now; null when nobody took it or it was handed on. */
export const holderOf = (findings: readonly Finding[]): Finding | null => {
  const last = findings.filter(({ code }) => code === 'take' || code === 'hand-on').at(-1)
  return last === undefined || last.code === 'hand-on' ? null : last
}

const wasDone = (life: TicketLife, act: TicketAct): boolean => life.findings.some(({ code }) => code === act)

const isPaused = (findings: readonly Finding[]): boolean =>
  findings.filter(({ code }) => code === 'pause' || code === 'resume').at(-1)?.code === 'pause'

/** The holder must say "seen" before more is cut or pressed. */
export const wantsSeen = (life: TicketLife): boolean => life.changedPieces && !wasDone(life, 'seen')

/** Gates that are not open and keep from this: cutting, or everything up to the check. */
export const closedFor = (life: TicketLife, what: 'cutting' | 'pressing' | 'run'): readonly GateState[] =>
  life.gates.filter(({ is, gate }) => {
    if (is === 'open') return false
    if (what === 'cutting') return gate.blocks === 'cutting'
    return what === 'run' || gate.blocks !== 'run'
  })

const heldActs = (life: TicketLife): readonly PlainAct[] => {
  if (isPaused(life.findings)) return ['resume', 'hand-on']
  if (wantsSeen(life)) return ['seen', 'hand-on']
  if (wasDone(life, 'start'))
    return closedFor(life, 'run').length === 0 && life.openRemakes === 0 ? ['checked', 'pause', 'hand-on'] : ['pause', 'hand-on']
  return closedFor(life, 'cutting').length === 0 ? ['start', 'hand-on'] : ['hand-on']
}

/**
 * What may be done next by one press. Whoever takes a ticket holds it alone; checking, bagging and handing over follow each other.
 * A ticket that is printed and does not stand on the bench yet waits: what an earlier one had is carried over when it is posted.
 */
export const openActs = (life: TicketLife): readonly PlainAct[] => {
  if (life.ticket.state !== 'open') return []
  const { state } = life.order
  if (state === 'checked') return life.openRemakes === 0 ? ['bagged'] : []
  if (state === 'bagged') return life.openRemakes === 0 ? ['collected'] : []
  if (state !== 'on-bench') return []
  return holderOf(life.findings) === null ? ['take'] : heldActs(life)
}

const actOfGate = ({ gate, why }: GateState): FormAct => {
  if (why === 'wants-second') return 'second-look'
  return why === 'wants-test-press' ? 'test-press' : gate.code
}

/** What may be filled in now: gates that are not open, ticks, spoiled garments, remakes that are ready; a complaint once it is handed over. */
export const openForms = (life: TicketLife): readonly FormAct[] => {
  if (life.order.state === 'collected' && life.ticket.state === 'done') return ['complaint']
  if (life.ticket.state !== 'open') return []
  const { state } = life.order
  const atWork = state === 'on-bench'
  const gates = atWork ? life.gates.filter(({ is }) => is !== 'open').map(actOfGate) : []
  const held = atWork && holderOf(life.findings) !== null && !isPaused(life.findings) && !wantsSeen(life)
  const mayBeSpoiled = held || state === 'checked' || state === 'bagged'
  return [
    ...new Set(gates),
    ...(held ? (['tick'] as const) : []),
    ...(mayBeSpoiled ? (['spoiled'] as const) : []),
    ...(life.openRemakes > 0 ? (['remade'] as const) : []),
    ...(held ? (['short'] as const) : []),
    ...(atWork ? (['ask'] as const) : []),
  ]
}

/** The order's state after an act, where it changes it. */
export const stateAfter: { readonly [Act in PlainAct]: OrderState | null } = {
  take: null,
  'hand-on': null,
  pause: null,
  resume: null,
  seen: null,
  start: null,
  checked: 'checked',
  bagged: 'bagged',
  collected: 'collected',
}

/** What every row of the roster becomes by an act, where it changes. */
export const rowsAfter: { readonly [Act in PlainAct]: RowState['state'] | null } = {
  take: null,
  'hand-on': null,
  pause: null,
  resume: null,
  seen: null,
  start: 'cut',
  checked: 'pressed',
  bagged: 'bagged',
  collected: null,
}
