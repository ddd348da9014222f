import * as z from 'zod'
import type { GateState } from '../../../domain/press/gate-state.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import { making, piecesThrough, wanting } from '../../../domain/ticket/made.ts'
import {
  isThrough,
  lineState,
  type Ticked,
  tickOf,
  type WorkKind,
  type WorkStep,
  workSteps,
} from '../../../domain/ticket/work-steps.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Tick } from '../../../ports/work-records.ts'
import { closedFor, type TicketLife } from '../records/ticket-life.ts'
import { localOf, wordsFor } from '../say/say-floor.ts'
import { type UsedAt, useAt } from '../stock/use-stock.ts'
import { type Answered, type Deed, readValues } from './deed.ts'
import { gateNames } from './gate-name.ts'
import { markWork } from './mark-work.ts'
import { pieceHints } from './piece-hint.ts'
import { stepNames } from './step-name.ts'

export const tickDeeds = ['take', 'start', 'done', 'back'] as const
export type TickDeed = (typeof tickDeeds)[number]

const tickSchema = z.looseObject({
  step: z.coerce.number().int().positive(),
  deed: z.enum(tickDeeds),
  lines: z.string().max(2_000).default(''),
})

const chosenLines = (step: WorkStep, values: Deed['values'], written: string): readonly number[] => {
  const boxes = Object.keys(values).flatMap((name) => (name.startsWith('line-') ? [Number(name.slice('line-'.length))] : []))
  const said = written.split(/[^\d]+/).flatMap((part) => (part === '' ? [] : [Number(part)]))
  const chosen = new Set([...boxes, ...said])
  return chosen.size === 0 ? step.lines : step.lines.filter((line) => chosen.has(line))
}

const after = { take: 'taken', start: 'started', done: 'done', back: 'waiting' } as const

const ticksFor = (lines: readonly number[], { step, deed, by }: { step: number; deed: TickDeed; by: string }): readonly Tick[] =>
  lines.map((line) => ({ step, line, state: after[deed], by: deed === 'back' ? null : by }))

/** Somebody else has taken or started one of these; whoever is done with it may still be corrected. */
const otherHolder = (ticks: readonly Ticked[], lines: readonly number[], at: { step: number; by: string }): string | null =>
  lines
    .map((line) => tickOf(ticks, at.step, line))
    .find(({ state, by }) => (state === 'taken' || state === 'started') && by !== at.by)?.by ?? null

type Ticking = { readonly step: WorkStep; readonly lines: readonly number[]; readonly deed: TickDeed }

/**
 * Of each kind of garment: before its first piece is signed only one of it goes through a press step; its other gates keep it from
 * being cut or pressed at all. The gates of another kind keep nothing of this one back.
 */
const closedGates = (life: TicketLife, { step, lines, deed }: Ticking): readonly GateState[] => {
  const { kind } = step
  if (kind !== 'cut' && kind !== 'press') return []
  const chosen = life.roster.filter(({ line }) => lines.includes(line))
  return [...new Set(chosen.map(({ garment }) => garment))].flatMap((garment) => {
    // A line that is only taken or begun is one garment in hand.
    const weighed = life.roster.map((row) => (deed === 'done' ? row : { ...row, quantity: 1 }))
    const own = { ...life, roster: weighed.filter((row) => row.garment === garment) }
    const pressing = piecesThrough(own, step, lines) > 1 ? 'run' : 'pressing'
    return closedFor(life, { from: kind === 'cut' ? 'cutting' : pressing, garment })
  })
}

/** What the chosen lines must be through before this: nothing is looked at or bagged that is not made. */
const stepsBefore = (life: TicketLife, { step: { kind }, lines, deed }: Ticking): readonly WorkStep[] => {
  if (deed !== 'done') return []
  if (kind === 'inspect') return wanting(life, making, lines)
  return kind === 'bag' ? wanting(life, [...making, 'inspect'], lines) : []
}

/** A press that was found uneven this morning is not used. */
const shutPress = async ({ desk, shop }: Deed, step: WorkStep): Promise<string | null> => {
  const machine = step.press?.machine ?? null
  if (machine === null) return null
  const checks = await shop.floor.pressChecks(localOf(desk, desk.clock.now()).slice(0, 10))
  return checks.some(({ press, verdict }) => press === machine && verdict === 'not-fit') ? machine : null
}

const refusal = async (deed: Deed, ticking: Ticking): Promise<string | null> => {
  const { life, by, desk } = deed
  const { step, lines } = ticking
  const words = wordsFor(desk)
  const holder = otherHolder(life.ticks, lines, { step: step.no, by: by.name })
  if (holder !== null) return words.stepHeld(holder)
  const closed = closedGates(life, ticking)
  if (closed.length > 0) {
    const gates = closed.map(({ gate }) => gate)
    return [words.first(gateNames(desk, deed.facts, gates)), ...pieceHints(desk, deed, closed)].join(' ')
  }
  const before = stepsBefore(life, ticking)
  if (before.length > 0) return words.first(stepNames(desk, deed.facts, before))
  const shut = await shutPress(deed, step)
  return shut === null ? null : words.pressShut(shut)
}

/** Where an item leaves the shelf: sheets at the cutter, stones at the brush, a garment when its last press step is through. */
const usedKinds: { readonly [kind in WorkKind]: UsedAt | null } = {
  cut: 'cut',
  weed: null,
  brush: 'brush',
  press: 'press',
  inspect: null,
  bag: null,
}

/** Lines whose use at a step was written down before; a line that is made again uses what its remake wants. */
const usedBefore = (life: TicketLife, at: UsedAt): ReadonlySet<number> =>
  new Set(
    life.findings.flatMap(({ code, facts }) => {
      if (code !== 'used' || typeof facts !== 'object' || facts === null || !('at' in facts) || facts.at !== at) return []
      return 'lines' in facts && Array.isArray(facts.lines) ? facts.lines.map(Number) : []
    }),
  )

export type Through = {
  readonly life: TicketLife
  readonly ticks: readonly Ticked[]
  readonly steps: readonly WorkStep[]
  readonly by: string
}

/** Rows and stock after ticks: a row is as far as its ticks say, what a line uses is used once. */
const afterTicks = async (
  { desk, shop }: Pick<Deed, 'desk' | 'shop'>,
  { life, ticks, steps, by }: Through,
  kinds: readonly WorkKind[],
): Promise<void> => {
  const { ticket, order } = life
  const lines = [...new Set(steps.flatMap((step) => step.lines))]
  await shop.orders.setRows(
    order.orderId,
    lines.map((line) => ({ line, state: lineState(steps, ticks, line) })),
  )
  for (const kind of kinds) {
    const at = usedKinds[kind]
    if (at === null) continue
    const before = usedBefore(life, at)
    const fresh = lines.filter((line) => !before.has(line) && isThrough(steps, ticks, { kind, line }))
    if (fresh.length === 0) continue
    await useAt(desk, shop, { ticket, by, step: at, lines: fresh })
    await shop.tickets.find(ticket.ticketId, { code: 'used', facts: { at, lines: fresh }, by, at: desk.clock.now() })
  }
}

const merged = (before: readonly Tick[], fresh: readonly Tick[]): readonly Tick[] => [
  ...before.filter((old) => !fresh.some((one) => one.step === old.step && one.line === old.line)),
  ...fresh,
]

const keep = async (shop: ShopStore, ticketId: string, ticks: readonly Tick[]): Promise<Result<null, Problem>> => {
  const ticket = await shop.tickets.read(ticketId)
  const kept = await shop.tickets.tick({ id: ticketId, version: ticket?.version ?? 0 }, ticks)
  return kept.ok ? ok(null) : kept
}

/** Ticks every step of some kinds for all its lines, as one press for the whole ticket does. */
export const tickWhole = async (
  at: Pick<Deed, 'desk' | 'shop' | 'life' | 'facts' | 'by'>,
  kinds: readonly WorkKind[],
): Promise<Result<null, Problem>> => {
  const steps = workSteps(at.facts)
  const fresh = steps
    .filter(({ kind }) => kinds.includes(kind))
    .flatMap((step) => ticksFor(step.lines, { step: step.no, deed: 'done', by: at.by.name }))
  const kept = await keep(at.shop, at.life.ticket.ticketId, fresh)
  if (!kept.ok) return kept
  const ticks = merged(at.life.ticks, fresh)
  await afterTicks(at, { life: at.life, ticks, steps, by: at.by.name }, kinds)
  await markWork(at, steps, ticks)
  return ok(null)
}

/** One step for chosen lines: taken, started, done, or back without a word. Of two who take it at once one has it. */
export const tickStep = async (deed: Deed): Answered => {
  const read = readValues(deed, tickSchema)
  if (!read.ok) return ok(read.said)
  const { life, facts, shop, by } = deed
  const steps = workSteps(facts)
  const step = steps.find(({ no }) => no === read.value.step)
  if (step === undefined) return ok(wordsFor(deed.desk).badForm(wordsFor(deed.desk).fields.step))
  const lines = chosenLines(step, deed.values, read.value.lines)
  const ticking = { step, lines, deed: read.value.deed }
  const refused = ticking.deed === 'back' ? null : await refusal(deed, ticking)
  if (refused !== null) return ok(refused)
  const fresh = ticksFor(lines, { step: step.no, deed: read.value.deed, by: by.name })
  const kept = await keep(shop, life.ticket.ticketId, fresh)
  if (!kept.ok) return kept
  const begun = life.findings.some(({ code }) => code === 'start')
  const at = deed.desk.clock.now()
  if (!begun && read.value.deed !== 'take')
    await shop.tickets.find(life.ticket.ticketId, { code: 'start', facts: { step: step.no }, by: by.name, at })
  const ticks = merged(life.ticks, fresh)
  await afterTicks(deed, { life, ticks, steps, by: by.name }, [step.kind])
  await markWork(deed, steps, ticks)
  return ok(null)
}
