import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Fix } from '../../../domain/schedule/explain/bottleneck.ts'
import type { Cause } from '../../../domain/schedule/explain/causes.ts'
import { explainLate } from '../../../domain/schedule/explain/explain.ts'
import { completionOf } from '../../../domain/schedule/timeline/fit.ts'
import { free } from '../../../domain/schedule/timeline/model.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Action } from '../../../ports/chat.ts'
import type { Desk } from '../desk.ts'
import { type ShopPlan, shopPlanFrom } from '../records/records.ts'
import { jobNames } from './job-names.ts'
import { causesText, durationText, fixText, momentText, type PlanWords, planWords } from './plan-words.ts'
import { type PresentPlan, presentPlan } from './present-plan.ts'

/** A job whose promise the plan breaks, or keeps only just; what would mend it, with an action where one press does it. */
export type TightJob = {
  readonly orderId: string
  readonly revision: number
  readonly kind: 'late' | 'tight'
  /** Late by so many minutes, or ready so many before the promise. */
  readonly minutes: number
  readonly text: string
  readonly causes: readonly string[]
  readonly fixes: readonly { readonly code: Fix['code']; readonly text: string; readonly action: Action | null }[]
}

/** A job with less time than this between being ready and its promise is tight. */
const tightMinutes = 120

/** A late order of the kept plan with its causes and fixes, as the engine tells them. */
export type LateJob = {
  readonly orderId: string
  readonly minutes: number
  readonly causes: readonly Cause[]
  readonly fixes: readonly Fix[]
}

/** Later than wanted, a job is promised for the next full half hour. */
const halfHour = 30
const atHalfHour = (fix: Fix): Fix =>
  fix.code === 'move-promise' && fix.at !== null ? { ...fix, at: minutes(Math.ceil(fix.at / halfHour) * halfHour) } : fix

/** The jobs that the kept plan brings late, the latest first. */
export const lateJobs = ({ lines }: PresentPlan): readonly LateJob[] =>
  explainLate(lines).map((late) => ({
    orderId: late.order,
    minutes: late.minutes,
    causes: late.causes,
    fixes: late.fixes.map(atHalfHour),
  }))

const isGrave = (code: Fix['code']): boolean => code === 'drop-stones' || code === 'split-collection' || code === 'move-promise'

/** Fixes of one kind belong together and are done by one press, so that only the last of them has it. */
const fixesOf = (plan: PlanWords, late: LateJob, revision: number): TightJob['fixes'] =>
  late.fixes.map((fix, index) => ({
    code: fix.code,
    text: fixText(plan, fix),
    action:
      late.fixes.findLastIndex(({ code }) => code === fix.code) === index
        ? {
            id: `o:${late.orderId}:mend-${fix.code}:${revision}`,
            label: plan.words.buttons[fix.code],
            weight: isGrave(fix.code) ? 'grave' : 'plain',
          }
        : null,
  }))

const nearlyLate = ({
  lines,
}: PresentPlan): readonly { readonly orderId: string; readonly slack: number; readonly due: number }[] => {
  const { model } = lines
  return model.orders.flatMap((order, index) => {
    const slack = order.due - completionOf(lines, index)
    const isOpen = model.state.slice(order.first, order.end).some((state) => state === free)
    return isOpen && slack >= 0 && slack < tightMinutes ? [{ orderId: order.id, slack, due: order.due }] : []
  })
}

const dueOf = ({ lines }: PresentPlan, orderId: string): number => lines.model.orders.find(({ id }) => id === orderId)?.due ?? 0

/** Late and tight jobs of a plan, in words. */
export const tightOf = (desk: Desk, plan: ShopPlan, said: PlanWords): Result<readonly TightJob[], Problem> => {
  const present = presentPlan(desk, plan)
  if (!present.ok) return present
  const revisionOf = (orderId: string): number => plan.sold.find(({ id }) => id === orderId)?.revision ?? 0
  const nameOf = (orderId: string): string => said.jobs.get(orderId) ?? orderId
  const late = lateJobs(present.value).map((one): TightJob => {
    const { orderId } = one
    const revision = revisionOf(orderId)
    const promised = momentText(said, dueOf(present.value, orderId))
    const text = said.words.late(nameOf(orderId), durationText(said, one.minutes), promised)
    const causes = causesText(said, one.causes)
    return { orderId, revision, kind: 'late', minutes: one.minutes, text, causes, fixes: fixesOf(said, one, revision) }
  })
  const tight = nearlyLate(present.value).map(({ orderId, slack, due }): TightJob => {
    const text = said.words.tight(nameOf(orderId), durationText(said, slack), momentText(said, due))
    return { orderId, revision: revisionOf(orderId), kind: 'tight', minutes: slack, text, causes: [], fixes: [] }
  })
  return ok([...late, ...tight])
}

/** The jobs of the shop that are late or tight in the kept plan, in words and with what would mend them. */
export const tightJobs = async (desk: Desk, language: Language): Promise<readonly TightJob[]> => {
  const shop = desk.store.shop(desk.shopId)
  const plan = shopPlanFrom((await shop.plan.read()).body)
  const said = planWords(
    desk,
    language,
    await jobNames(
      shop,
      plan.sold.map(({ id }) => id),
    ),
  )
  const tight = tightOf(desk, plan, said)
  if (!tight.ok) throw new Error(`the plan cannot be explained: ${tight.problems.map(({ code }) => code).join(', ')}`)
  return tight.value
}
