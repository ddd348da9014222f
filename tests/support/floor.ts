import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { readLife } from '../../src/desk/service/floor/read-life.ts'
import { pressAction } from '../../src/desk/service/press-action.ts'
import { orderIdOf } from '../../src/desk/service/records/order-id.ts'
import { conversationFrom } from '../../src/desk/service/records/records.ts'
import { findable } from '../../src/desk/service/records/ticket-life.ts'
import { beforeFirstPiece, making } from '../../src/domain/ticket/made.ts'
import { tickOf } from '../../src/domain/ticket/work-steps.ts'
import { startConversation } from '../../src/domain/understanding/conversation.ts'
import type { Member } from '../../src/ports/counter-desk.ts'
import { presses, says, work } from './desk.ts'
import { unwrap } from './embedded.ts'

export const noor: Member = { id: 'm-noor', name: 'Noor', role: 'staff' }
export const pim: Member = { id: 'm-pim', name: 'Pim', role: 'staff' }
export const rosa: Member = { id: 'owner', name: 'Rosa', role: 'owner' }

type Values = { readonly [field: string]: string }

/** One act of one person on a ticket; answers with the word for them, null when it was done. */
export const acts = (
  desk: WorkerDesk,
  ticketId: string,
  { act, by = noor, values = {} }: { readonly act: string; readonly by?: Member; readonly values?: Values },
): Promise<string | null> => pressAction(desk, by, { action: `t:${ticketId}:${act}:1`, values })

export const lifeNow = async (desk: WorkerDesk, ticketId: string) => {
  const life = await readLife(desk, desk.store.shop(desk.shopId), ticketId)
  if (life === null) throw new Error(`there is no ticket ${ticketId}`)
  return life
}

/** What opens a gate, as somebody who finds everything right fills it in. */
const good: { readonly [act: string]: Values } = {
  'count-in': { missing: '0' },
  strings: { result: 'no-strings' },
  'water-drops': { drops: '2 3 2 2 3' },
  'test-press': { result: 'held' },
  'bleed-test': { result: 'skipped', signedBy: 'Coach' },
  certificate: { certificate: 'C-1' },
  coupon: { hole: '3.1' },
  'first-piece': {},
  'second-look': { result: 'right' },
}

/** Ticks one step for some lines. */
const ticks = async (
  desk: WorkerDesk,
  ticketId: string,
  { step, lines }: { step: number; lines: readonly number[] },
): Promise<void> => {
  const values = { step: String(step), deed: 'done', lines: lines.join(' ') }
  const said = await acts(desk, ticketId, { act: 'tick', values })
  if (said !== null) throw new Error(`step ${step}: ${said}`)
}

/** Takes one garment of each kind through every step up to the look at the first piece. */
export const makeFirstPieces = async (desk: WorkerDesk, ticketId: string): Promise<void> => {
  for (;;) {
    const life = await lifeNow(desk, ticketId)
    const made = life.gates.filter(({ gate, why }) => gate.code === 'first-piece' && why === 'not-done')
    const [next] = made.flatMap(({ gate }) => beforeFirstPiece(life, gate.garment).slice(0, 1))
    if (next === undefined) return
    await ticks(desk, ticketId, { step: next.step.no, lines: [next.line] })
  }
}

/** Ticks every step before the check for every garment that is still to go through it. */
export const makeAll = async (desk: WorkerDesk, ticketId: string): Promise<void> => {
  const life = await lifeNow(desk, ticketId)
  for (const step of life.steps.filter(({ kind }) => making.includes(kind))) {
    const lines = step.lines.filter((line) => tickOf(life.ticks, step.no, line).state === 'waiting')
    if (lines.length > 0) await ticks(desk, ticketId, { step: step.no, lines })
  }
}

/** Who does it: a second person signs the first piece, the owner looks at strings. */
const handsFor = (act: string): Member => {
  if (act === 'second-look') return pim
  return act === 'strings' ? rosa : noor
}

/** Opens every gate of a ticket but those left out, the first piece with two people's hands. */
export const openGates = async (desk: WorkerDesk, ticketId: string, leaveOut: readonly string[] = []): Promise<void> => {
  for (;;) {
    const gates = findable(await lifeNow(desk, ticketId)).filter(({ act }) => Object.hasOwn(good, act) && !leaveOut.includes(act))
    const [first] = gates
    if (first === undefined && leaveOut.length > 0) return
    if (first === undefined) {
      await makeFirstPieces(desk, ticketId)
      if (findable(await lifeNow(desk, ticketId)).every(({ act }) => act !== 'first-piece')) return
      continue
    }
    const { act: next, gate } = first
    const values = { garment: gate.garment ?? '', subject: gate.subject, ...good[next] }
    const said = await acts(desk, ticketId, {
      act: next,
      by: handsFor(next),
      values,
    })
    if (said !== null) throw new Error(`${next}: ${said}`)
  }
}

/** Everything from the bench to the counter for a ticket whose gates can be opened at once. */
export const workThrough = async (desk: WorkerDesk, ticketId: string): Promise<void> => {
  for (const act of ['take', 'gates', 'made', 'checked', 'bagged', 'collected']) {
    if (act === 'gates') await openGates(desk, ticketId)
    else if (act === 'made') await makeAll(desk, ticketId)
    else {
      const said = await acts(desk, ticketId, { act })
      if (said !== null) throw new Error(`${act}: ${said}`)
    }
  }
}

export const talkOf = async (desk: WorkerDesk, id: string) =>
  conversationFrom((await desk.store.shop(desk.shopId).conversations.read(id))?.state)

/** A customer's first words, up to the proof. */
export const toProof = async (desk: WorkerDesk, id: string, words: string): Promise<void> => {
  const state = startConversation({ id, person: { id, name: null }, language: 'en' })
  unwrap(await desk.store.shop(desk.shopId).conversations.add(id, state))
  await says(desk, id, words)
  if ((await talkOf(desk, id)).asked?.code === 'ask-ages') await says(desk, id, 'all are 13 or older')
  await work(desk)
}

export const sign = async (desk: WorkerDesk, id: string): Promise<void> => {
  const { shown, asked } = await talkOf(desk, id)
  if (shown === null) throw new Error(`nothing was shown to ${id}; asked ${asked?.code ?? 'nothing'}`)
  await presses(desk, id, `c:sign-off:${shown.revision}:${shown.hash}`)
  await work(desk)
}

export const orderOf = async (desk: WorkerDesk, id: string) => {
  const order = await desk.store.shop(desk.shopId).orders.read(orderIdOf(id))
  if (order === null) throw new Error(`${id} has no order`)
  return order
}

export const ticketOf = async (desk: WorkerDesk, id: string): Promise<string> => {
  const ticket = (await desk.store.shop(desk.shopId).tickets.ofOrder(orderIdOf(id))).at(-1)
  if (ticket === undefined) throw new Error(`${id} has no ticket`)
  return ticket.ticketId
}
