import type { Minutes } from '../../units/units.ts'
import type { After, Operation } from '../book/operation.ts'
import type { Crew, JobFacts, SideFacts, VinylFacts } from './job-facts.ts'
import type { Rates } from './rates.ts'

type Place = 'cutter' | 'press' | 'bench'
type Step = {
  readonly id: string
  readonly minutes: number
  readonly needs: readonly (readonly string[])[]
  readonly after: readonly After[]
  readonly family?: string
  readonly release?: Minutes | null
}

const operation = (step: Step): Operation => ({
  id: step.id,
  minutes: Math.max(1, Math.ceil(step.minutes - 1e-9)),
  needs: step.needs,
  family: step.family ?? null,
  splittable: true,
  after: step.after,
  release: step.release ?? null,
  started: null,
  done: null,
  on: null,
})

const after = (lagMinutes: number, ...ids: readonly string[]): readonly After[] =>
  ids.map((id) => ({ operation: id, lagMinutes }))

const atPlace = (crew: Crew, place: Place): readonly (readonly string[])[] => [
  crew.filter((one) => one.kind === place).map((one) => one.id),
  crew.filter((one) => one.kind === 'person' && (one.does ?? [place]).includes(place)).map((one) => one.id),
]

const remakeFactor = (facts: JobFacts, rates: Rates): number => {
  const stones = facts.stones.small + facts.stones.usual > 0
  return 1 + (stones ? rates.remake.stonesPercent : rates.remake.plainPercent) / 100
}

const weedMinutes = (vinyl: VinylFacts, rates: Rates): number => {
  const { weed } = rates
  const pieces = vinyl.numbers * weed.numberEach + vinyl.names * weed.nameEach + vinyl.marks * weed.markEach
  return pieces * (vinyl.glitter ? weed.glitterFactor : 1) * (vinyl.over ? weed.secondColourFactor : 1)
}

const brushMinutes = (facts: JobFacts, rates: Rates): number => {
  const { brush } = rates
  const brushing = facts.stones.usual / brush.usualPerMinute + facts.stones.small / brush.smallPerMinute
  return brushing * (1 + brush.rightingPercent / 100) + facts.tapes * brush.tapeEach
}

const plugMinutes = (facts: JobFacts, rates: Rates): number =>
  facts.templates.reduce((sum, { holes }) => sum + (holes / 400) * rates.template.plugsPer400Holes + rates.template.boardEach, 0)

const sideMinutes = (side: SideFacts, rates: Rates): number => {
  const { press } = rates
  const flat = side.plainPlaces * press.plainEach + side.twoColourPlaces * press.twoColourEach
  return side.garments * (flat + (side.stoned ? press.stonedSideEach : 0))
}

/** The stages that are worked in turns, in minutes for the whole job. */
type Stages = {
  readonly weed: readonly number[]
  readonly brush: number
  readonly sides: readonly number[]
  readonly inspect: number
}

const stagesOf = (facts: JobFacts, rates: Rates): Stages => {
  const factor = remakeFactor(facts, rates)
  return {
    weed: facts.vinyl.map((vinyl) => weedMinutes(vinyl, rates) * factor),
    brush: brushMinutes(facts, rates) * factor,
    sides: facts.sides.map((side) => sideMinutes(side, rates) * factor),
    inspect: facts.garments * rates.inspectAndBagEach * factor,
  }
}

type Job = { readonly facts: JobFacts; readonly rates: Rates; readonly crew: Crew }

const beforeTheBench = ({ facts, rates, crew }: Job): readonly Operation[] => {
  const bench = atPlace(crew, 'bench')
  const press = atPlace(crew, 'press')
  const garments = facts.garmentsArrive
  const countIn = rates.countIn.minutes + rates.countIn.garmentEach * facts.garments
  const steps: Step[] = []
  const proof = facts.proof === 'first' ? rates.proof.firstMinutes : rates.proof.reorderMinutes
  if (facts.proof !== 'none') steps.push({ id: 'proof', minutes: proof, needs: bench.slice(1), after: [] })
  const proofs = steps.map((step) => step.id)
  steps.push({ id: 'count-in', minutes: countIn, needs: bench, after: after(0, ...proofs), release: garments })
  if (facts.waterDrops) {
    steps.push({ id: 'water-drops', minutes: rates.waterDropsMinutes * facts.styles, needs: bench, after: after(0, 'count-in') })
  }
  const tested = facts.waterDrops ? 'water-drops' : 'count-in'
  if (facts.testPress) {
    steps.push({ id: 'test-press', minutes: rates.testPressMinutes * facts.styles, needs: press, after: after(0, tested) })
  }
  if (facts.bleedTest) {
    const material = facts.materialsArrive
    steps.push({
      id: 'bleed-test',
      minutes: rates.bleedTest.minutes * facts.styles,
      needs: press,
      after: after(0, facts.testPress ? 'test-press' : tested),
      release: material,
    })
  }
  return steps.map(operation)
}

const atTheCutter = ({ facts, rates, crew }: Job): readonly Operation[] => {
  const cutter = atPlace(crew, 'cutter')
  const release = facts.materialsArrive
  const start = after(0, facts.waterDrops ? 'water-drops' : 'count-in')
  const steps: Step[] = facts.vinyl.map((vinyl, index) => ({
    id: `cut-vinyl-${index + 1}`,
    minutes: rates.cutter.loadMinutes + rates.cutter.pieceEach * (vinyl.names + vinyl.numbers + vinyl.marks),
    needs: cutter,
    after: start,
    family: vinyl.colour,
    release,
  }))
  if (facts.coupon) {
    const needs = atPlace(crew, 'bench')
    steps.push({ id: 'coupon', minutes: rates.couponMinutes, needs, after: after(0, 'count-in'), release })
  }
  if (facts.templates.length > 0) {
    const hole = after(0, facts.coupon ? 'coupon' : 'count-in')
    const cut = facts.templates.length * rates.template.cutEach
    steps.push({ id: 'cut-templates', minutes: cut, needs: cutter.slice(0, 1), after: hole, family: 'template' })
    const board = plugMinutes(facts, rates)
    steps.push({ id: 'plugs', minutes: board, needs: atPlace(crew, 'bench'), after: after(0, 'cut-templates') })
  }
  return steps.map(operation)
}

const batchAtTheBench = (
  { facts, crew }: Job,
  stages: Stages,
  batch: { readonly no: number; readonly of: number },
): readonly Operation[] => {
  const needs = atPlace(crew, 'bench')
  const steps: Step[] = stages.weed.map((total, index) => ({
    id: `weed-${index + 1}-${batch.no}`,
    minutes: total / batch.of,
    needs,
    after: after(0, `cut-vinyl-${index + 1}`),
  }))
  if (stages.brush > 0) {
    const ready = [...(facts.templates.length > 0 ? ['plugs'] : ['count-in']), ...(facts.coupon ? ['coupon'] : [])]
    const release = facts.materialsArrive
    steps.push({ id: `brush-${batch.no}`, minutes: stages.brush / batch.of, needs, after: after(0, ...ready), release })
  }
  return steps.map(operation)
}

const firstPiece = ({ facts, rates, crew }: Job, prepared: readonly Operation[]): Operation => {
  const gates = facts.bleedTest ? after(rates.bleedTest.waitMinutes, 'bleed-test') : []
  const tests = facts.testPress ? after(0, 'test-press') : []
  const family = facts.sides[0]?.family
  return operation({
    id: 'first-piece',
    minutes: rates.press.firstPieceMinutes,
    needs: atPlace(crew, 'press'),
    after: [...after(0, 'count-in', ...prepared.map((one) => one.id)), ...gates, ...tests],
    ...(family === undefined ? {} : { family }),
  })
}

const batchAtThePress = (
  { facts, rates, crew }: Job,
  stages: Stages,
  batch: { readonly no: number; readonly of: number; readonly prepared: readonly Operation[] },
): readonly Operation[] => {
  let before = after(0, 'first-piece', ...batch.prepared.map((one) => one.id))
  const steps: Step[] = facts.sides.map((side, index) => {
    const id = `press-${index + 1}-${batch.no}`
    const step = {
      id,
      minutes: (stages.sides[index] ?? 0) / batch.of,
      needs: atPlace(crew, 'press'),
      after: before,
      family: side.family,
    }
    before = after(0, id)
    return step
  })
  const cooled = before.map((one) => ({ ...one, lagMinutes: rates.coolMinutes }))
  steps.push({ id: `inspect-${batch.no}`, minutes: stages.inspect / batch.of, needs: atPlace(crew, 'bench'), after: cooled })
  return steps.map(operation)
}

/**
 * The work of a job as operations, from the facts of its layout and press sequence and the shop's rates. Stages longer than the
 * shop's turn are shared out in equal batches of garments, so that colleagues can work side by side.
 */
export const operationsOf = (facts: JobFacts, rates: Rates, crew: Crew): readonly Operation[] => {
  const job = { facts, rates, crew }
  const stages = stagesOf(facts, rates)
  const longest = Math.max(...stages.weed, stages.brush, ...stages.sides, stages.inspect)
  const of = Math.min(Math.max(1, facts.garments), Math.max(1, Math.ceil(longest / rates.turnMinutes)))
  const batches = Array.from({ length: of }, (_, index) => {
    const batch = { no: index + 1, of }
    return { ...batch, prepared: batchAtTheBench(job, stages, batch) }
  })
  return [
    ...beforeTheBench(job),
    ...atTheCutter(job),
    ...batches.flatMap((batch) => batch.prepared),
    firstPiece(job, batches[0]?.prepared ?? []),
    ...batches.flatMap((batch) => batchAtThePress(job, stages, batch)),
  ]
}
