import type { Machine } from '../press/machine.ts'
import type { PressStep } from '../press/press-plan.ts'
import { shownPressure } from '../press/shown.ts'
import { formatTemperature } from '../units/format.ts'
import { type TenthsC, tenthsC } from '../units/units.ts'
import { correctionText } from './figures.ts'
import { garmentName, once, placeText, rowsOf, type Scene } from './names.ts'
import type { PressBoxBlock } from './ticket.ts'

/** One setting of a press with everything that goes with it, and the steps that are pressed so. */
export type SetUp = {
  readonly garments: readonly string[]
  readonly steps: readonly PressStep[]
  /** The short presses before it on the same places: pre-press and tack. */
  readonly before: readonly PressStep[]
  readonly peel: PressStep['peel']
}

export const garmentsOf = ({ facts }: Scene, step: PressStep): readonly string[] =>
  once(rowsOf(facts, step).map((row) => row.garment))

const isFull = (step: PressStep): boolean => step.action === 'press' || step.action === 'press-inside'
const isShort = (step: PressStep): boolean => step.action === 'pre-press' || step.action === 'tack'

const machineOf = ({ facts }: Scene, id: string): Machine | undefined => facts.machines.find((machine) => machine.id === id)

/** The figure to set: the step's own with the correction of that press's last probe. */
const setPoint = (scene: Scene, step: PressStep): TenthsC | null => {
  if (step.tenthsC === null) return null
  const machine = step.machine === null ? undefined : machineOf(scene, step.machine)
  return tenthsC(step.tenthsC + (machine?.correctionTenthsC ?? 0))
}

/** The unit of a press's own dial. */
const dialOf = (scene: Scene, step: PressStep): 'F' | 'C' => {
  const machine = step.machine === null ? undefined : machineOf(scene, step.machine)
  return machine?.step.unit ?? scene.facts.show.temperature
}

/** The figure to set, in the unit of the dial it is set on. */
export const temperatureOf = (scene: Scene, step: PressStep): string | null => {
  const point = setPoint(scene, step)
  return point === null ? null : formatTemperature(point, dialOf(scene, step))
}

/** The same figure in the shop's unit, where that press's dial is marked in the other. */
export const sameTextOf = (scene: Scene, step: PressStep): string | null => {
  const point = setPoint(scene, step)
  const { temperature } = scene.facts.show
  return point === null || dialOf(scene, step) === temperature ? null : formatTemperature(point, temperature)
}

/** The pressure of a step: its word, and how that press shows it: on its own gauge, in psi or in bar. */
export const pressureOf = (scene: Scene, step: PressStep): string | null => {
  if (step.pressure === null) return null
  const { press } = scene.words
  const word = press.pressures[step.pressure.word]
  const machine = step.machine === null ? undefined : machineOf(scene, step.machine)
  if (machine === undefined) return word
  const shown = shownPressure(machine, step.pressure.word, scene.facts.show.pressure)
  switch (shown.kind) {
    case 'word':
      return word
    case 'gauge':
      return press.gauge(word, shown.gauge)
    case 'range':
      return press.measured(word, shown.least === shown.most ? `${shown.least}` : `${shown.least}–${shown.most}`, shown.unit)
  }
}

/** What lies inside; a pillow never goes in without a sheet on it, save under stones that are pressed from the inside. */
export const insideOf = ({ words }: Scene, step: PressStep): string =>
  step.inside === 'pillow' && step.side !== 'inside' ? words.press.pillowAndSheet : words.press.insides[step.inside]

export const secondsOf = ({ words }: Scene, step: PressStep): string | null =>
  step.seconds === null ? null : words.press.seconds(step.seconds)

const sameSetting = (a: PressStep, b: PressStep): boolean =>
  a.machine === b.machine &&
  a.tenthsC === b.tenthsC &&
  a.seconds === b.seconds &&
  a.pressure?.word === b.pressure?.word &&
  a.pressure?.gauge === b.pressure?.gauge &&
  a.inside === b.inside &&
  a.cover === b.cover

/** How the carrier or tape comes off after a press: what the next peeling step on that place says. */
const peelAfter = (steps: readonly PressStep[], at: number): PressStep['peel'] => {
  const own = steps[at]?.peel ?? null
  if (own !== null) return own
  for (const step of steps.slice(at + 1)) {
    if (isFull(step)) return null
    if (step.peel !== null) return step.peel
  }
  return null
}

const beforeOf = (steps: readonly PressStep[], at: number): readonly PressStep[] => {
  const start = steps.slice(0, at).findLastIndex(isFull) + 1
  return steps.slice(start, at).filter(isShort)
}

/** The settings in a run of steps, each once, in the order in which they are first used. */
const setUpsOf = (scene: Scene, steps: readonly PressStep[]): readonly SetUp[] => {
  const found: SetUp[] = []
  steps.forEach((step, at) => {
    if (!isFull(step)) return
    const peel = peelAfter(steps, at)
    const garments = garmentsOf(scene, step)
    const same = found.findIndex(
      (setUp) =>
        setUp.peel === peel &&
        String(setUp.garments) === String(garments) &&
        setUp.steps.some((other) => sameSetting(other, step)),
    )
    const known = found[same]
    if (known === undefined) found.push({ garments, steps: [step], before: beforeOf(steps, at), peel })
    else found[same] = { ...known, steps: [...known.steps, step], before: [...known.before, ...beforeOf(steps, at)] }
  })
  return found
}

const figuresOf = (scene: Scene, setUp: SetUp, step: PressStep): PressBoxBlock['rows'][number]['figures'] => {
  const { press } = scene.words
  return [
    { label: press.figures.temperature, value: temperatureOf(scene, step) },
    { label: press.figures.seconds, value: secondsOf(scene, step) },
    { label: press.figures.same, value: sameTextOf(scene, step) },
    { label: press.figures.pressure, value: pressureOf(scene, step) },
    { label: press.figures.peel, value: setUp.peel === null ? null : press.peels[setUp.peel] },
    { label: press.figures.inside, value: insideOf(scene, step) },
    { label: press.figures.cover, value: press.overs[step.cover] },
    { label: press.figures.machine, value: step.machine },
  ].flatMap(({ label, value }) => (value === null ? [] : [{ label, value }]))
}

const lesserText = (scene: Scene, step: PressStep): string => {
  const figures = [temperatureOf(scene, step), sameTextOf(scene, step), secondsOf(scene, step), pressureOf(scene, step)].filter(
    (text) => text !== null,
  )
  return scene.words.press.lesser(scene.words.press.actions[step.action], figures.join(' · '))
}

const correctionOf = (scene: Scene, step: PressStep): readonly string[] => {
  const machine = step.machine === null ? undefined : machineOf(scene, step.machine)
  if (machine === undefined || step.tenthsC === null || machine.correctionTenthsC === 0) return []
  const unit = dialOf(scene, step)
  const { correction } = scene.words.press
  return [correction(machine.id, correctionText(machine.correctionTenthsC, unit), formatTemperature(step.tenthsC, unit))]
}

/** Whether another press holds a setting as safely: no wider swing, as fine a dial in the same unit, hot enough, laid over alike. */
const holdsAsWell = (other: Machine, own: Machine, set: number): boolean =>
  other.swingTenthsC <= own.swingTenthsC &&
  other.step.unit === own.step.unit &&
  other.step.degrees <= own.step.degrees &&
  own.step.degrees % other.step.degrees === 0 &&
  other.correctionTenthsC === 0 &&
  own.correctionTenthsC === 0 &&
  set <= other.maxTenthsC &&
  (other.threads || !own.threads)

/** What holds at another press that the plan gives this job to: a gauge's figure is true for one press alone. */
export const otherPresses = (scene: Scene, step: PressStep): readonly string[] => {
  const own = step.machine === null ? undefined : machineOf(scene, step.machine)
  const set = step.tenthsC
  if (own === undefined || set === null) return []
  const planned = new Set(scene.facts.plan.slots.flatMap(({ stations }) => stations))
  return scene.facts.machines
    .filter(({ id }) => id !== own.id && planned.has(id.replaceAll('-', ' ')))
    .map((other) => {
      const there = { ...step, machine: other.id }
      const texts = [temperatureOf(scene, there), secondsOf(scene, there), pressureOf(scene, there)]
      const figures = holdsAsWell(other, own, set) ? texts.filter((text) => text !== null).join(' · ') : null
      return scene.words.press.onOther({ machine: other.id, figures, own: own.id })
    })
}

const coversText = (scene: Scene, setUp: SetUp): string => {
  const { press } = scene.words
  const at = setUp.steps.map((step) =>
    step.action === 'press-inside'
      ? `${press.actions['press-inside']}: ${placeText(scene.words, step.place)}`
      : placeText(scene.words, step.place),
  )
  return press.covers(once(at).join(' · '))
}

const rowOf = (scene: Scene, setUp: SetUp): readonly PressBoxBlock['rows'][number][] => {
  const step = setUp.steps[0]
  if (step === undefined) return []
  const before = once(setUp.before.map((short) => lesserText(scene, short))).join('    ')
  const notes = [
    ...(before === '' ? [] : [before]),
    ...correctionOf(scene, step),
    ...otherPresses(scene, step),
    scene.words.press.defer,
  ]
  return [{ covers: coversText(scene, setUp), figures: figuresOf(scene, setUp, step), notes }]
}

/** One press box for each garment, or set of garments pressed alike, with a row for every setting it needs. */
export const pressBoxes = (scene: Scene, steps: readonly PressStep[]): readonly PressBoxBlock[] => {
  const setUps = setUpsOf(scene, steps)
  const sets = once(setUps.map((setUp) => setUp.garments.join('+')))
  return sets.map((set): PressBoxBlock => {
    const mine = setUps.filter((setUp) => setUp.garments.join('+') === set)
    const names = (mine[0]?.garments ?? []).map((id) => garmentName(scene, id))
    return {
      kind: 'press-box',
      title: scene.words.press.box(scene.words.list(names)),
      rows: mine.flatMap((setUp) => rowOf(scene, setUp)),
    }
  })
}
