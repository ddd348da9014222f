import { loadWords } from '../../../../templates/desk/load/languages.ts'
import { peopleTime } from '../../../domain/calendar/hours.ts'
import { ok } from '../../../domain/result/result.ts'
import {
  atPace,
  isLearnedStage,
  type LearnedRates,
  learned,
  withFrozen,
  workSeen,
} from '../../../domain/schedule/work/learned-rates.ts'
import type { Member } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { StoredTicket } from '../../../ports/work-records.ts'
import type { Workshop } from '../../work-out.ts'
import type { Desk } from '../desk.ts'
import { shopPlanFrom } from '../records/records.ts'

/** The workshop with its rates at the pace that its tickets have shown. */
export const withPace = (workshop: Workshop, pace: LearnedRates): Workshop => ({
  ...workshop,
  shop: { ...workshop.shop, rates: atPace(workshop.shop.rates, pace) },
})

const dayMinutes = 1_440

/** A ticket that was checked says how long its work took; under the plan's lock, inside the act's transaction. */
export const learnPace = async (desk: Desk, shop: ShopStore, ticket: StoredTicket): Promise<void> => {
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const sold = plan.sold.find(({ id }) => id === ticket.orderId)
  const happened = await shop.tickets.findings(ticket.ticketId)
  const first = happened[0]
  if (sold === undefined || first === undefined) return
  const range = { from: first.at - dayMinutes, to: desk.clock.now() + dayMinutes }
  const seen = workSeen(happened, sold, peopleTime(desk.zone, desk.workshop.shop.hours, range))
  if (seen.length === 0) return
  const written = await shop.plan.write(read.version, { ...plan, pace: learned(plan.pace, seen) })
  if (!written.ok) throw new Error('the plan changed although this transaction holds it alone')
}

/** The owner keeps a rate as it is, or lets it learn again. Answers with a word where that is not theirs to do. */
export const freezeRate = async (
  desk: Desk,
  member: Member,
  { stage, word }: { readonly stage: string; readonly word: string },
): Promise<string | null> => {
  if (member.role !== 'owner') return loadWords[desk.workshop.shop.profile.languages[0] ?? 'en'].ownerOnly
  if (!isLearnedStage(stage) || (word !== 'freeze' && word !== 'thaw')) return null
  const done = await desk.store.together(desk.shopId, async (shop) => {
    await shop.plan.alone()
    const read = await shop.plan.read()
    const plan = shopPlanFrom(read.body)
    const written = await shop.plan.write(read.version, { ...plan, pace: withFrozen(plan.pace, stage, word === 'freeze') })
    return written.ok ? ok(null) : written
  })
  if (!done.ok) throw new Error(`the rate could not be kept: ${done.problems.map(({ code }) => code).join(', ')}`)
  return null
}
