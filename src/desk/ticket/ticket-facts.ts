import { sayHangsOn, workName } from '../../../templates/ticket/work.ts'
import { writeLocal } from '../../domain/calendar/local-time.ts'
import type { Zone } from '../../domain/calendar/zone.ts'
import type { Order } from '../../domain/order/order.ts'
import type { Problem } from '../../domain/result/result.ts'
import type { Slot } from '../../domain/schedule/book/operation.ts'
import type { Shop } from '../../domain/shop/shop.ts'
import { showFor } from '../../domain/shop/show.ts'
import type { Change, ThrowAway } from '../../domain/ticket/changes.ts'
import type { Language, RulebookFacts, SourceFacts, TicketFacts, VinylFacts } from '../../domain/ticket/facts.ts'
import type { PlanFacts, SlotFacts } from '../../domain/ticket/plan-facts.ts'
import { vinylSheetFile } from '../file-names.ts'
import { materialCalled, sayForOrder } from '../say-for-order.ts'
import type { Work } from '../work-out.ts'
import { garmentsOf, rosterOf } from './garments.ts'
import { digitTallies, type PickMeans, shownColour, stonePicks, templatePicks } from './picks.ts'
import { layersOf, placementsOf } from './placements.ts'

/** What a ticket is called and where it hangs in the order's history. */
export type TicketIdentity = {
  readonly ticket: string
  readonly order: string
  readonly revision: number
  readonly replaces: number | null
  readonly link: string | null
  readonly changes: readonly Change[]
  readonly throwAway: readonly ThrowAway[]
}

const vinylFacts = (work: Work, means: PickMeans): readonly VinylFacts[] =>
  work.cuts.vinyl.map(({ material, sheet, applications }) => ({
    class: material.class,
    colour: shownColour(means, material.colour),
    material: material.id,
    lot: material.lot,
    bin: means.stock.vinyl.find((entry) => entry.material === material.id)?.bin ?? null,
    places: [...new Set(applications.map(({ application }) => application.place.id))],
    lengthMicrometres: sheet.usedLength,
    widthMicrometres: material.rollWidthMicrometres,
    cut: material.cut,
    peel: material.peel,
    sheets: [
      {
        file: vinylSheetFile(material.id),
        widthMicrometres: sheet.width,
        lengthMicrometres: sheet.length,
        pieces: sheet.parts.length,
      },
    ],
  }))

/** A booked piece of work in the ticket's words. */
export const slotFacts = (slot: Slot, zone: Zone, language: Language): SlotFacts => ({
  work: workName(slot.operation, language),
  stations: slot.stations.map((station) => station.replaceAll('-', ' ')),
  start: writeLocal(zone, slot.start),
  end: writeLocal(zone, slot.end),
  setUpMinutes: slot.setupMinutes,
})

/** A ticket is printed of what is signed, so that its promise no longer hangs on the signature. */
const planFacts = ({ promised, time: { zone } }: Work, language: Language, shop: Shop): PlanFacts => ({
  promised: writeLocal(zone, promised.promised),
  slackMinutes: promised.slackMinutes,
  hangsOn: promised.hangsOn.flatMap(({ code, by }) =>
    code === 'sign-off' ? [] : [sayHangsOn(code, language, showFor(shop, language).moment(writeLocal(zone, by)))],
  ),
  slots: promised.slots.map((slot) => slotFacts(slot, zone, language)),
  freezesAt: promised.freezesAt === null ? null : writeLocal(zone, promised.freezesAt),
})

const rulebookFacts = (work: Work, shop: Shop): RulebookFacts | null => {
  const book = shop.rulebooks.find((one) => one.id === work.order.rulebook)
  if (book === undefined) return null
  const { body, clause, edition, mark } = book
  return { body, clause, edition, mark, notes: [] }
}

const sourcesOf = (work: Work, shop: Shop): readonly SourceFacts[] => {
  const materials = [...work.resolved.layers.values()].flat().map(({ material }) => material)
  const once = new Map(materials.map((material) => [material.id, material]))
  return [...once.values()].map(({ id, source }) => ({
    of: materialCalled(shop, work.order, id) ?? id,
    sheet: source.sheet,
    date: source.date,
  }))
}

/** Who the shop is and how it writes figures. */
const houseFacts = ({ profile }: Shop): Pick<TicketFacts, 'show' | 'shop' | 'restBeforeWashHours'> => ({
  show: {
    temperature: profile.units.temperature,
    length: profile.units.length,
    pressure: profile.units.pressure,
    paper: profile.units.paper,
    dateOrder: profile.dateOrder,
  },
  shop: { name: profile.name, ask: profile.ask },
  restBeforeWashHours: profile.restBeforeWashHours,
})

type OrderFacts = Pick<
  TicketFacts,
  'language' | 'team' | 'sport' | 'use' | 'needBy' | 'needFor' | 'gameDay' | 'handOver' | 'people' | 'notes'
>

const orderFacts = (order: Order): OrderFacts => ({
  language: order.language,
  team: order.team,
  sport: order.sport,
  use: order.use,
  needBy: order.needBy,
  needFor: order.needFor ?? null,
  gameDay: order.gameDay ?? null,
  handOver: order.handOver,
  people: {
    orders: order.people.orders,
    signsOff: order.people.signsOff ?? null,
    collects: order.people.collects ?? null,
  },
  notes: order.notes ?? null,
})

type BenchFacts = Pick<
  TicketFacts,
  'garments' | 'layers' | 'placements' | 'vinyl' | 'tally' | 'templates' | 'stones' | 'roster' | 'machines' | 'press' | 'gates'
>

const faceCalled = (shop: Shop, id: string): string => shop.faces.find((face) => face.id === id)?.name ?? id

const benchFacts = (work: Work, shop: Shop): BenchFacts => {
  const { resolved, laid, counted, press } = work
  const { colours, stoneSettings: settings } = shop
  const means: PickMeans = { colours, stock: shop.stock, language: work.order.language }
  const drawing = { colours, settings, resolved, applications: laid.applications }
  return {
    garments: garmentsOf(resolved),
    layers: layersOf(drawing),
    placements: placementsOf(drawing),
    machines: shop.presses,
    press: press.steps,
    gates: press.gates,
    vinyl: vinylFacts(work, means),
    tally: digitTallies(laid.applications).map((one) => ({ ...one, face: faceCalled(shop, one.face) })),
    templates: templatePicks(counted, means),
    stones: stonePicks(counted, means),
    roster: rosterOf({ resolved, applications: laid.applications }),
  }
}

/** Everything the paper says about a job, from what was worked out. */
export const ticketFacts = (
  work: Work,
  shop: Shop,
  about: { readonly identity: TicketIdentity; readonly problems: readonly Problem[]; readonly now: string },
): TicketFacts => {
  const { language } = work.order
  return {
    ...about.identity,
    now: about.now,
    ...houseFacts(shop),
    ...orderFacts(work.order),
    ...benchFacts(work, shop),
    problems: about.problems.map((problem) => ({
      code: problem.code,
      severity: problem.severity,
      text: sayForOrder(problem, work.order, shop),
    })),
    plan: planFacts(work, language, shop),
    rulebook: rulebookFacts(work, shop),
    sources: sourcesOf(work, shop),
  }
}
