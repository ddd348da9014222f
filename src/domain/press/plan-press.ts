import { ok, type Result } from '../result/result.ts'
import { seconds, tenthsC } from '../units/units.ts'
import { checkSequence } from './check-sequence.ts'
import { exposuresOf } from './exposures.ts'
import { failureProblem } from './failure-problem.ts'
import { gatesOf } from './gates.ts'
import { type InsidePress, insidePressOf } from './inside-press.ts'
import type { Bench, JobGarment, PressJob } from './job.ts'
import { meltingFibre } from './limits.ts'
import type { Machine } from './machine.ts'
import { changeBetween, familyOf, orderSetUps } from './order-set-ups.ts'
import type { Exposure, Heat, PressPlan, PressStep, SetUpTime } from './press-plan.ts'
import type { PressProblem } from './problems.ts'
import { remarksOn } from './remarks.ts'
import { stepsOf } from './sequence.ts'
import { type Failed, hasStones, type SetUp, setUpsOf } from './set-ups.ts'
import { type Draft, linesOf } from './step-draft.ts'
import { labourSeconds, machineSeconds, setUpSeconds } from './times.ts'
import { way } from './way.ts'
import { isThreaded, opposite } from './zones.ts'

const meltProblems = (garment: JobGarment): readonly PressProblem[] => {
  const melting = meltingFibre(garment.cloth)
  if (melting === null || garment.places.length === 0) return []
  const { limit, percent } = melting
  const facts = { garment: garment.id, fibre: limit.fibre, percent, fromTenthsC: limit.capTenthsC, source: limit.source }
  return [
    { code: 'fibre-melts', at: `${garment.at}/fibres`, severity: 'stop', facts: { ...facts, ways: [way('another-garment')] } },
  ]
}

type Chains = { readonly setUps: readonly (readonly SetUp[])[]; readonly failed: readonly Failed[] }

const onMachine = (bench: Bench, garments: readonly JobGarment[], machine: Machine): Chains => {
  const tried = garments.map((garment) => setUpsOf(bench, garment, machine))
  return {
    setUps: tried.flatMap((one) => (one.ok ? [one.value] : [])),
    failed: tried.flatMap((one) => (one.ok ? [] : [one.failed])),
  }
}

/** One machine for the whole order where one holds it; else for each garment the first that does. */
const chooseMachines = (bench: Bench, garments: readonly JobGarment[]): Chains => {
  const whole = bench.machines.map((machine) => onMachine(bench, garments, machine))
  const best = whole.find((chains) => chains.failed.length === 0)
  if (best !== undefined) return best
  const singly = garments.map((garment) => {
    const tries = bench.machines.map((machine) => onMachine(bench, [garment], machine))
    return tries.find((one) => one.failed.length === 0) ?? tries[0] ?? { setUps: [], failed: [] }
  })
  return { setUps: singly.flatMap((one) => one.setUps), failed: singly.flatMap((one) => one.failed) }
}

type Placed = {
  readonly setUp: SetUp
  readonly inside: InsidePress
  readonly drafts: readonly Draft[]
  readonly before: SetUp | undefined
  readonly firstOfGarment: boolean
}

/** Lines of a set-up by what was done on them before: the part they last lay on, and whether this one was pressed already. */
const linesBefore = (setUp: SetUp, earlier: readonly SetUp[]) => {
  const lines = linesOf(setUp.places)
  const zonesOf = (line: number): readonly string[] =>
    earlier.filter((one) => linesOf(one.places).includes(line)).map((one) => one.zone)
  const last = (line: number): string => zonesOf(line).at(-1) ?? setUp.zone
  return {
    turned: lines.filter((line) => last(line) !== setUp.zone),
    fresh: lines.filter((line) => !zonesOf(line).includes(setUp.zone)),
  }
}

const sequenceOf = (bench: Bench, setUps: readonly SetUp[]): readonly Placed[] =>
  setUps.map((setUp, index) => {
    const earlier = setUps.slice(0, index).filter((one) => one.garment.id === setUp.garment.id)
    const below = earlier.filter((one) => one.zone === opposite(setUp.zone))
    const later = setUps
      .slice(index + 1)
      .filter((one) => one.garment.id === setUp.garment.id && one.zone === opposite(setUp.zone))
    const through = later.filter((one) => !isThreaded(one.machine, one.zone))
    const pressesToCome = through.reduce((sum, one) => sum + one.heats.length, 0)
    const inside = insidePressOf(bench, setUp, { earlier: earlier.length, pressesToCome })
    const drafts = stepsOf({
      setUp,
      settings: bench.settings,
      ...linesBefore(setUp, earlier),
      stonesBelow: below.some((one) => hasStones(one.places)),
      inside,
    })
    return { setUp, inside, drafts, before: setUps[index - 1], firstOfGarment: earlier.length === 0 }
  })

const numbered = (placed: readonly Placed[]): readonly (readonly PressStep[])[] => {
  let no = 0
  return placed.map(({ drafts }) =>
    drafts.map((draft) => {
      no += 1
      return { no, ...draft }
    }),
  )
}

const heatsOf = (setUp: SetUp): readonly Heat[] =>
  setUp.heats.map((heat) => ({
    garment: setUp.garment.id,
    side: setUp.places[0]?.side ?? 'front',
    places: setUp.places.map((place) => place.place),
    layers: [...heat.finished, ...heat.group.members].map((layer) => layer.id),
    machine: setUp.machine.id,
    tenthsC: tenthsC(heat.tenthsC),
    seconds: seconds(heat.seconds),
    leastTenthsC: heat.leastTenthsC,
    leastBy: heat.leastBy,
    mostTenthsC: heat.mostTenthsC,
    mostBy: heat.mostBy,
    swingTenthsC: setUp.machine.swingTenthsC,
  }))

const changeSeconds = ({ setUp, before }: Placed): number => {
  if (before === undefined || before.machine.id !== setUp.machine.id) return setUpSeconds.newTemperature
  const change = changeBetween(before, setUp)
  if (change === 0) return setUpSeconds.sameFamily
  const [from, to] = [before.heats[before.heats.length - 1]?.tenthsC, setUp.heats[0]?.tenthsC]
  return from === to ? setUpSeconds.otherChange : setUpSeconds.newTemperature
}

const timeOf = (placed: Placed): SetUpTime => {
  const { setUp, drafts } = placed
  return {
    garment: setUp.garment.id,
    side: setUp.places[0]?.side ?? 'front',
    places: setUp.places.map((place) => place.place),
    lines: linesOf(setUp.places),
    machine: setUp.machine.id,
    family: familyOf(setUp),
    labourSeconds: labourSeconds(drafts),
    machineSeconds: machineSeconds(drafts),
    setUpSeconds: changeSeconds(placed) + (placed.firstOfGarment ? setUpSeconds.firstPiece : 0),
  }
}

const piecesOn = (garments: readonly JobGarment[], lines: readonly number[]): number =>
  garments
    .flatMap((garment) => garment.lines)
    .filter((line) => lines.includes(line.line))
    .reduce((sum, line) => sum + line.quantity, 0)

const perGarment = (garments: readonly JobGarment[], times: readonly SetUpTime[]): PressPlan['secondsPerGarment'] => {
  const pieces = Math.max(
    1,
    piecesOn(
      garments,
      garments.flatMap((garment) => garment.lines.map((line) => line.line)),
    ),
  )
  const sum = (of: (time: SetUpTime) => number): number =>
    Math.round(times.reduce((total, time) => total + of(time) * piecesOn(garments, time.lines), 0) / pieces)
  return { labour: sum((time) => time.labourSeconds), machine: sum((time) => time.machineSeconds) }
}

/**
 * The press sequence of an order: set-ups in the order that changes the press least, every step with setting, pressure, pad
 * and cover, the exposures of every layer, the gates to open first, and seconds per garment. Refused with 'fibre-melts',
 * 'no-common-heat' and the other stops of `problems.ts`, each with its ways out. The checker replays what was planned; a breach
 * it finds is a bug and thrown. After common practice and the makers' sheets.
 */
export const planPress = (job: PressJob, bench: Bench): Result<PressPlan, PressProblem> => {
  const garments = job.garments.filter((garment) => garment.places.length > 0)
  const melting = garments.flatMap(meltProblems)
  const whole = garments.filter((garment) => meltProblems(garment).length === 0)
  const chains = chooseMachines(bench, whole)
  const placed = sequenceOf(bench, orderSetUps(chains.setUps))
  const remarks = placed.flatMap(({ setUp, inside }) => remarksOn(setUp, inside))
  const stops = [...melting, ...chains.failed.map((failed) => failureProblem(bench, failed))]
  if (stops.length > 0) return { ok: false, problems: [...stops, ...remarks] }
  const steps = numbered(placed)
  const breaches = checkSequence(job, bench, steps.flat())
  if (breaches.length > 0) throw new Error('the planned press sequence breaches a limit', { cause: breaches })
  const exposures: readonly Exposure[] = placed.flatMap(({ setUp }, index) => exposuresOf(setUp, steps[index] ?? []))
  const heats = placed.flatMap(({ setUp }) => heatsOf(setUp))
  const times = placed.map(timeOf)
  return ok({
    steps: steps.flat(),
    gates: gatesOf(bench, job.garments, heats),
    problems: remarks,
    exposures,
    heats,
    times,
    secondsPerGarment: perGarment(garments, times),
  })
}
