import type { LayoutCache } from '../domain/layout/layout.ts'
import type { Order } from '../domain/order/order.ts'
import { parseOrder } from '../domain/order/parse-order.ts'
import { type ResolvedOrder, resolveOrder } from '../domain/order/resolve.ts'
import { type Bench, type PressJob, usualBenchSettings } from '../domain/press/job.ts'
import { jobFromOrder } from '../domain/press/job-from-order.ts'
import { planPress } from '../domain/press/plan-press.ts'
import type { PressPlan } from '../domain/press/press-plan.ts'
import { type Price, priceOf } from '../domain/price/price.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import { checkOrder } from '../domain/rules/check-order.ts'
import type { Operation } from '../domain/schedule/book/operation.ts'
import { type Promised, promise } from '../domain/schedule/promise/promise.ts'
import type { JobFacts } from '../domain/schedule/work/job-facts.ts'
import { catalogueOf } from '../domain/shop/catalogue.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { minutes } from '../domain/units/units.ts'
import { type Counted, countOrder } from './count.ts'
import { type Cuts, cutOrder } from './cut.ts'
import { extentsOf } from './extents.ts'
import { type AskFloor, operationsFor, type ShopTime, shopTime } from './floor.ts'
import { hangsOn, type Leads } from './hangs-on.ts'
import { jobFacts } from './job-facts.ts'
import { type Faces, type LaidOut, type LayoutMeans, layOut, wantedPieces } from './lay-out.ts'
import { priceFacts } from './price-facts.ts'
import { type Shortage, shortages } from './shortages.ts'
import { hourProblems, wantedHour } from './wanted-hour.ts'

/** What an order is worked out with: the shop's records, its faces, and a cache of laid-out pieces. */
export type Workshop = { readonly shop: Shop; readonly faces: Faces; readonly cache: LayoutCache }

/** An order worked out: everything the quote, the ticket and the cutter need. */
export type Work = {
  readonly order: Order
  readonly time: ShopTime
  readonly resolved: ResolvedOrder
  readonly laid: LaidOut
  readonly counted: Counted
  readonly cuts: Cuts
  readonly job: PressJob
  readonly press: PressPlan
  readonly facts: JobFacts
  readonly shortages: readonly Shortage[]
  readonly operations: readonly Operation[]
  readonly promised: Promised
  readonly price: Price
}

/** An order document, the present minute on the shop's clock, and what the job is called on sheets and tags. */
export type Asked = {
  readonly document: unknown
  readonly now: string
  readonly job: string
  /** The floor that the promise is asked of. */
  readonly floor: AskFloor
  /** What whoever cuts and presses reads; the order's own language where nobody says. */
  readonly bench?: Order['language']
}

/** All problems found, worst first; `work` is null when one of them is a stop. */
export type WorkedOut = { readonly order: Order | null; readonly problems: readonly Problem[]; readonly work: Work | null }

const ranks = { stop: 0, 'needs-test': 1, caution: 2, note: 3 } as const

const tidy = (problems: readonly Problem[]): readonly Problem[] => {
  const once = new Map(problems.map((problem) => [JSON.stringify(problem), problem]))
  return [...once.values()].sort((a, b) => ranks[a.severity] - ranks[b.severity])
}

const refused = (order: Order | null, problems: readonly Problem[]): WorkedOut => ({
  order,
  problems: tidy(problems),
  work: null,
})

const isStop = ({ severity }: Problem): boolean => severity === 'stop'

const benchOf = (shop: Shop): Bench => ({
  machines: shop.presses,
  auxiliaries: shop.auxiliaries,
  shelf: {
    materials: [...shop.vinyl, ...shop.stones],
    stock: Object.fromEntries([
      ...shop.stock.vinyl.map((entry) => [entry.material, entry.lengthMicrometres] as const),
      ...shop.stock.stones.map((entry) => [entry.material, entry.pieces] as const),
    ]),
  },
  settings: usualBenchSettings,
})

const meansOf = ({ shop, faces, cache }: Workshop): LayoutMeans => ({
  faces,
  settings: shop.stoneSettings,
  leastNameMicrometres: shop.profile.usual.leastNameMicrometres,
  cache,
})

type Drawn = Pick<Work, 'resolved' | 'laid' | 'job'> & {
  readonly press: Result<PressPlan>
  readonly problems: readonly Problem[]
}

/** Draws the order, plans the press and lets every rule look at what came out. */
const drawAndCheck = (resolved: ResolvedOrder, workshop: Workshop, now: string): Drawn => {
  const { shop } = workshop
  const laid = layOut(resolved, meansOf(workshop))
  const extents = extentsOf(laid.applications)
  const job = jobFromOrder({ resolved, colours: shop.colours, extents })
  const bench = benchOf(shop)
  const press = planPress(job, bench)
  const { order } = resolved
  const checked = checkOrder({
    order,
    job,
    press,
    extents,
    rulebook: shop.rulebooks.find((book) => book.id === order.rulebook) ?? null,
    colours: shop.colours,
    findings: [],
    shelf: bench.shelf,
    today: now.slice(0, 10),
  })
  return { resolved, laid, job, press, problems: [...resolved.problems, ...laid.problems, ...checked] }
}

/** Content keys of the templates that lie on the shop's shelf. */
export const templateShelf = (shop: Shop): ReadonlySet<string> => new Set(shop.stock.templates.map((template) => template.key))

/** Days that ordered garments and materials take, where any must be ordered. */
const leadsOf = ({ garments }: ResolvedOrder, short: readonly Shortage[]): Leads => {
  const days = garments.flatMap(({ order, record }) => (order.from === 'shop' && record !== null ? [record.arrivesInDays] : []))
  return {
    garmentDays: days.length === 0 ? null : Math.max(...days),
    materialDays: short.length === 0 ? null : Math.max(...short.map((one) => one.days)),
    ownGarments: garments.some(({ order }) => order.from === 'customer'),
  }
}

type Planned = Drawn & { readonly plan: PressPlan; readonly time: ShopTime; readonly asked: Asked }
type Counts = Pick<Work, 'counted' | 'cuts' | 'shortages' | 'facts'>

/** Counts stones, cuts vinyl and templates, looks at the shelf, and says what work that makes. */
const countAndCut = ({ resolved, laid, plan: press, time, asked }: Planned, shop: Shop): Result<Counts> => {
  const { applications } = laid
  const counted = countOrder(applications, shop.profile.sparePercent)
  const shelf = templateShelf(shop)
  const language = asked.bench ?? resolved.order.language
  const { cutter } = shop.profile
  const cuts = cutOrder(applications, counted, {
    job: asked.job,
    language,
    cutter,
    auxiliaries: shop.auxiliaries,
    settings: shop.stoneSettings,
    shelf,
  })
  if (!cuts.ok) return cuts
  const short = shortages(counted, cuts.value.vinyl, shop.stock)
  const wait = Math.max(0, ...short.map((one) => one.days))
  const materialsArrive = wait > 0 ? minutes(time.now + wait * 1_440) : null
  const facts = jobFacts({ resolved, applications, counted, press, shelf, now: time.now, materialsArrive })
  return ok({ counted, cuts: cuts.value, shortages: short, facts })
}

const shortageProblems = (short: readonly Shortage[]): readonly Problem[] =>
  short.map(({ material, kind, missing, packs, days }) => ({
    code: 'short-of-material',
    at: '',
    severity: 'note',
    facts: { material, kind, missing, packs, days },
  }))

const promiseAndPrice = (
  planned: Planned,
  shop: Shop,
): Result<{ readonly work: Omit<Work, 'order'>; readonly problems: readonly Problem[] }> => {
  const { resolved, laid, job, plan: press, time, asked } = planned
  const counts = countAndCut(planned, shop)
  if (!counts.ok) return counts
  const needBy = wantedHour(resolved.order, time)
  if (!needBy.ok) return needBy
  const floor = asked.floor(shop, time, needBy.value.at)
  if (!floor.ok) return floor
  const operations = operationsFor(shop, counts.value.facts)
  const promised = promise(floor.value, { id: asked.job, operations, needBy: needBy.value.at })
  if (!promised.ok) return promised
  const price = priceOf(
    priceFacts(resolved, laid.applications, {
      count: counts.value.counted,
      shelf: templateShelf(shop),
      // Nobody is charged for a hurry that does not bring the order when it was wanted.
      daysUntilNeeded: Math.floor((Math.max(needBy.value.at, promised.value.promised) - time.now) / 1_440),
    }),
    shop.prices,
  )
  const hangs = hangsOn(promised.value, leadsOf(resolved, counts.value.shortages))
  const work = {
    time,
    resolved,
    laid,
    job,
    press,
    ...counts.value,
    operations,
    promised: { ...promised.value, hangsOn: hangs },
    price,
  }
  const hour = hourProblems({ operations, resolved, promised: promised.value }, { shop, time, wanted: needBy.value.at })
  return ok({ work, problems: [...needBy.value.problems, ...hour, ...shortageProblems(counts.value.shortages)] })
}

/**
 * Works an order document out against a shop and its floor: every problem, and unless one is a stop the drawing, count, press
 * sequence, promise and price.
 */
export const workOut = (asked: Asked, workshop: Workshop): WorkedOut => {
  const { now } = asked
  const parsed = parseOrder(asked.document)
  if (!parsed.ok) return refused(null, parsed.problems)
  const order = parsed.value
  const time = shopTime(workshop.shop, now)
  if (!time.ok) return refused(order, time.problems)
  const resolved = resolveOrder(order, catalogueOf(workshop.shop))
  if (!resolved.ok) return refused(order, resolved.problems)
  const drawn = drawAndCheck(resolved.value, workshop, now)
  const pressProblems = drawn.press.ok ? [] : drawn.press.problems
  if (!drawn.press.ok || drawn.problems.some(isStop)) return refused(order, [...drawn.problems, ...pressProblems])
  const planned = { ...drawn, plan: drawn.press.value, time: time.value, asked }
  const rest = promiseAndPrice(planned, workshop.shop)
  if (!rest.ok) return refused(order, [...drawn.problems, ...rest.problems])
  return { order, problems: tidy([...drawn.problems, ...rest.value.problems]), work: { order, ...rest.value.work } }
}

/** Content keys of the pieces that an order document will have laid out; none for a document that will be refused. */
export const piecesOf = (document: unknown, workshop: Workshop): readonly string[] => {
  const parsed = parseOrder(document)
  if (!parsed.ok) return []
  const resolved = resolveOrder(parsed.value, catalogueOf(workshop.shop))
  return resolved.ok ? wantedPieces(resolved.value, meansOf(workshop)) : []
}
