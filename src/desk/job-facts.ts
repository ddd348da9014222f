import type { ResolvedOrder } from '../domain/order/resolve.ts'
import type { PressPlan } from '../domain/press/press-plan.ts'
import type { JobFacts, SideFacts, VinylFacts } from '../domain/schedule/work/job-facts.ts'
import { type Minutes, minutes } from '../domain/units/units.ts'
import type { Counted } from './count.ts'
import type { LaidApplication, LaidVinyl } from './lay-out.ts'

const dayMinutes = 1_440

export type JobMeans = {
  readonly resolved: ResolvedOrder
  readonly applications: readonly LaidApplication[]
  readonly counted: Counted
  readonly press: PressPlan
  /** Content keys of the templates on the shelf. */
  readonly shelf: ReadonlySet<string>
  readonly now: Minutes
  /** Vinyl or stones must come first; null: all is on the shelf. */
  readonly materialsArrive: Minutes | null
}

const smallSizes: ReadonlySet<string> = new Set(['SS6', 'SS8'])

const bump = (facts: VinylFacts, laid: LaidApplication): VinylFacts => {
  const { quantity, decoration } = laid.application
  if (decoration.content.kind === 'number') return { ...facts, numbers: facts.numbers + quantity }
  if (decoration.content.kind === 'name') return { ...facts, names: facts.names + quantity }
  return { ...facts, marks: facts.marks + quantity }
}

const isOver = (drawing: NonNullable<LaidApplication['drawing']>, vinyl: LaidVinyl): boolean => drawing.vinyl[0] !== vinyl

/** Pieces to cut and weed per material; a piece that lies on another vinyl counts apart, since registering it takes longer. */
const vinylFacts = (applications: readonly LaidApplication[]): readonly VinylFacts[] => {
  const facts = new Map<string, VinylFacts>()
  for (const laid of applications) {
    const { drawing } = laid
    if (drawing === null) continue
    for (const vinyl of drawing.vinyl) {
      const { material } = vinyl.layer
      const over = isOver(drawing, vinyl)
      const key = `${material.id} ${over}`
      const glitter = material.kind === 'vinyl' && material.class === 'glitter'
      facts.set(key, bump(facts.get(key) ?? { colour: material.id, names: 0, numbers: 0, marks: 0, glitter, over }, laid))
    }
  }
  return [...facts.values()]
}

const hasStones = (laid: LaidApplication): boolean => (laid.drawing?.stones.length ?? 0) > 0

/** One entry per set-up at the press, in the order in which they are pressed. */
const sideFacts = (means: JobMeans): readonly SideFacts[] =>
  means.press.times.map((time) => {
    const here = means.applications.filter(
      ({ application }) => time.lines.includes(application.line) && time.places.includes(application.place.id),
    )
    const quantities = new Map(here.map(({ application }) => [application.line, application.quantity]))
    const places = time.places.map((place) => here.find(({ application }) => application.place.id === place))
    const flat = places.flatMap((laid) => (laid === undefined || hasStones(laid) ? [] : [laid.drawing?.vinyl.length ?? 1]))
    return {
      side: time.side,
      family: time.family,
      garments: [...quantities.values()].reduce((sum, quantity) => sum + quantity, 0),
      plainPlaces: flat.filter((layers) => layers < 2).length,
      twoColourPlaces: flat.filter((layers) => layers >= 2).length,
      stoned: here.some(hasStones),
    }
  })

/** Garments on the shelf are here now; those to be ordered come after the days their record gives; own ones when they are brought. */
const garmentsArrive = (means: JobMeans): Minutes | null => {
  const days = means.resolved.garments.map((garment) =>
    garment.order.from === 'shop' ? (garment.record?.arrivesInDays ?? 0) : 0,
  )
  const longest = Math.max(0, ...days)
  return longest === 0 ? null : minutes(means.now + longest * dayMinutes)
}

const stoneFacts = (counted: Counted): JobFacts['stones'] => {
  const pieces = (small: boolean) =>
    counted.stones
      .filter(({ material }) => smallSizes.has(material.size) === small)
      .reduce((sum, { line }) => sum + line.pieces, 0)
  return { small: pieces(true), usual: pieces(false) }
}

const hasGate = (press: PressPlan, code: PressPlan['gates'][number]['code']): boolean =>
  press.gates.some((gate) => gate.code === code)

/** What the plan of the benches needs to know of a job. */
export const jobFacts = (means: JobMeans): JobFacts => {
  const { resolved, applications, counted, press, shelf } = means
  const tapes = applications.filter(hasStones).reduce((sum, { application, drawing }) => {
    const pieces = (drawing?.stones ?? []).reduce((count, { layout }) => count + layout.pieces.length, 0)
    return sum + pieces * application.quantity
  }, 0)
  return {
    garments: resolved.order.roster.reduce((sum, row) => sum + row.quantity, 0),
    styles: resolved.garments.length,
    ownGarments: resolved.garments.some((garment) => garment.order.from === 'customer'),
    garmentsArrive: garmentsArrive(means),
    materialsArrive: means.materialsArrive,
    vinyl: vinylFacts(applications),
    templates: counted.templates.filter(({ key }) => !shelf.has(key)).map(({ holes }) => ({ holes })),
    stones: stoneFacts(counted),
    tapes,
    sides: sideFacts(means),
    proof: resolved.order.from === undefined ? 'first' : 'reorder',
    waterDrops: hasGate(press, 'water-drops'),
    testPress: hasGate(press, 'test-press'),
    bleedTest: hasGate(press, 'bleed-test'),
    coupon: hasGate(press, 'coupon'),
  }
}
