import type { FormAct } from '../../../domain/ticket/acts.ts'
import { type Minutes, minutes } from '../../../domain/units/units.ts'
import type { Deed } from './deed.ts'
import { changePlan, withDone } from './mark-work.ts'
import { readLife } from './read-life.ts'

/** The planned work that a finding can end, and the gate that says whether it has. */
const workOf: { readonly [act in FormAct]?: string } = {
  'count-in': 'count-in',
  'water-drops': 'water-drops',
  'test-press': 'test-press',
  'bleed-test': 'bleed-test',
  coupon: 'coupon',
  'second-look': 'first-piece',
}

/** When the work of a bleed test was over: its wait runs from the pressing, and there is none for what was skipped. */
const bleedOver = ({ desk }: Deed, facts: object): Minutes | null => {
  const result = 'result' in facts ? facts.result : null
  const now = desk.clock.now()
  if (result === 'skipped') return minutes(now - desk.workshop.shop.rates.bleedTest.waitMinutes)
  return result === 'pressed' ? now : null
}

/**
 * What was found at a gate goes into the plan: the work of a gate is over as soon as it is open for every garment, so that it is not
 * planned for somebody again. A bleed test's is over when all pieces are pressed; its wait follows.
 */
export const markGates = async (deed: Deed, act: FormAct, facts: object): Promise<void> => {
  const { desk, shop, life } = deed
  const work = workOf[act]
  const after = work === undefined ? null : await readLife(desk, shop, life.ticket.ticketId)
  if (work === undefined || after === null) return
  const at = act === 'bleed-test' ? bleedOver(deed, facts) : desk.clock.now()
  const gates = after.gates.filter(({ gate }) => gate.code === work)
  const isOver = gates.every(({ is, why }) => is === 'open' || (act === 'bleed-test' && why === 'waits'))
  if (at === null || !isOver) return
  await changePlan(shop, (plan) => withDone(plan, life.order.orderId, { isOver: (id) => id === work, at }))
}
