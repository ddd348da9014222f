import type { GateState } from '../../../domain/press/gate-state.ts'
import type { FormAct, PlainAct, TicketAct } from '../../../domain/ticket/acts.ts'
import { beforeFirstPiece, making, type Work, wanting } from '../../../domain/ticket/made.ts'
import type { WorkStep } from '../../../domain/ticket/work-steps.ts'
import type { Finding, OrderState, StoredOrder, StoredTicket, Tick } from '../../../ports/work-records.ts'

/** A ticket as staff see it: its order's state, its steps and ticks, what was found and done so far, and how its gates stand now. */
export type TicketLife = Omit<Work, 'ticks'> & {
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

export type Kept = { readonly from: 'cutting' | 'pressing' | 'run'; readonly garment?: string }

/**
 * Gates that are not open and keep from this: cutting, or everything up to the check; of one garment where one is named. What shuts
 * the revision keeps from cutting, too: nobody cuts what will not be pressed.
 */
export const closedFor = (life: TicketLife, { from, garment }: Kept): readonly GateState[] =>
  life.gates.filter(({ is, gate }) => {
    if (is === 'open') return false
    if (garment !== undefined && gate.garment !== null && gate.garment !== garment) return false
    if (from === 'cutting') return gate.blocks === 'cutting' || is === 'shut'
    return from === 'run' || gate.blocks !== 'run'
  })

/** Steps that must be ticked before everything can be called checked. */
export const unmade = (life: TicketLife): readonly WorkStep[] =>
  wanting(
    life,
    making,
    life.roster.map(({ line }) => line),
  )

/** Steps before the first piece of the garment that is nearest to one. */
export const beforeAnyPiece = (life: TicketLife): readonly WorkStep[] => {
  const waits = life.gates
    .filter(({ gate, is }) => gate.code === 'first-piece' && is !== 'open')
    .map(({ gate }) => beforeFirstPiece(life, gate.garment).map(({ step }) => step))
  return waits.toSorted((a, b) => a.length - b.length)[0] ?? []
}

const mayBeChecked = (life: TicketLife): boolean =>
  closedFor(life, { from: 'run' }).length === 0 && life.openRemakes === 0 && unmade(life).length === 0

const heldActs = (life: TicketLife): readonly PlainAct[] => {
  if (isPaused(life.findings)) return ['resume', 'hand-on']
  if (wantsSeen(life)) return ['seen', 'hand-on']
  if (wasDone(life, 'start')) return mayBeChecked(life) ? ['checked', 'pause', 'hand-on'] : ['pause', 'hand-on']
  return closedFor(life, { from: 'cutting' }).length === 0 ? ['start', 'hand-on'] : ['hand-on']
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
  const isTried = gate.code === 'water-drops' && (why === 'wants-test-press' || why === 'failed')
  return isTried ? 'test-press' : gate.code
}

/** Gates at which something can be found now; a first piece must be made before it is looked at. */
export const findable = (life: TicketLife): readonly (GateState & { readonly act: FormAct })[] =>
  life.gates
    .filter(({ is }) => is !== 'open')
    .map((state) => ({ ...state, act: actOfGate(state) }))
    .filter(({ act, gate }) => act !== 'first-piece' || beforeFirstPiece(life, gate.garment).length === 0)

/** What may be filled in now: gates that are not open, ticks, spoiled garments, remakes that are ready; a complaint once it is handed over. */
export const openForms = (life: TicketLife): readonly FormAct[] => {
  if (life.order.state === 'collected' && life.ticket.state === 'done') return ['complaint']
  if (life.ticket.state !== 'open') return []
  const { state } = life.order
  const atWork = state === 'on-bench'
  const gates = atWork ? findable(life).map(({ act }) => act) : []
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
