import type { Colour } from '../material/material.ts'
import type { Decoration, Order } from '../order/order.ts'
import type { Extent, JobGarment, JobPlace, PressJob, Shelf } from '../press/job.ts'
import type { Heat, PressPlan } from '../press/press-plan.ts'
import type { PressProblem } from '../press/problems.ts'
import type { Result } from '../result/result.ts'
import type { RuleProblem } from './problems.ts'
import type { Rulebook } from './rulebook.ts'

/** What the shop found out with water drops on a garment: seconds until each drop had sunk, 60 when it still stood then. */
export type Finding = { readonly garment: string; readonly seconds: readonly number[] | 'not-done' }

/** Everything the rules look at; all of it computed before. `today` is 'YYYY-MM-DD' in the shop's zone. */
export type RuleFacts = {
  readonly order: Order
  readonly job: PressJob
  readonly press: Result<PressPlan, PressProblem> | Result<PressPlan>
  readonly extents: readonly Extent[]
  readonly rulebook: Rulebook | null
  readonly colours: readonly Colour[]
  readonly findings: readonly Finding[]
  readonly shelf: Shelf
  readonly today: string
}

/** A rule of the trade, the law or a league. */
export type Rule = (facts: RuleFacts) => readonly RuleProblem[]

/** Every decoration with its pointer: those of the order and the extras of its rows. */
export const decorationsOf = (order: Order): readonly { readonly decoration: Decoration; readonly at: string }[] => [
  ...order.decorations.map((decoration, index) => ({ decoration, at: `/decorations/${index}` })),
  ...order.roster.flatMap((row, line) =>
    (row.extras ?? []).map((decoration, index) => ({ decoration, at: `/roster/${line}/extras/${index}` })),
  ),
]

export const placesOf = (facts: RuleFacts): readonly { readonly garment: JobGarment; readonly place: JobPlace }[] =>
  facts.job.garments.flatMap((garment) => garment.places.map((place) => ({ garment, place })))

/** The rule book that binds the order: only what is worn in a game is bound by one. */
export const bindingBook = (facts: RuleFacts): Rulebook | null => (facts.order.use === 'game' ? facts.rulebook : null)

const heatsOf = (facts: RuleFacts): readonly Heat[] => (facts.press.ok ? facts.press.value.heats : [])

/** A setting, and how hot it may get with the press's swing on top; both in tenths of °C. */
type Hottest = { readonly setTenthsC: number; readonly upToTenthsC: number }

const hotter = (a: Hottest, b: Hottest): Hottest => (b.upToTenthsC > a.upToTenthsC ? b : a)

/** The hottest a layer gets on a garment; the usual point of its record where the press is not planned. */
export const hottestOf = (facts: RuleFacts, garment: JobGarment, layer: JobPlace['layers'][number]): Hottest => {
  const { usual } = layer.material.window.tenthsC
  return (
    heatsOf(facts)
      .filter((heat) => heat.garment === garment.id && heat.layers.includes(layer.id))
      .map((heat) => ({ setTenthsC: heat.tenthsC, upToTenthsC: heat.tenthsC + heat.swingTenthsC }))
      .reduce<Hottest | null>((most, one) => (most === null ? one : hotter(most, one)), null) ?? {
      setTenthsC: usual,
      upToTenthsC: usual,
    }
  )
}

/** The hottest any layer of a garment gets. */
export const hottestOn = (facts: RuleFacts, garment: JobGarment): Hottest =>
  garment.places
    .flatMap((place) => place.layers.map((layer) => hottestOf(facts, garment, layer)))
    .reduce(hotter, { setTenthsC: 0, upToTenthsC: 0 })
