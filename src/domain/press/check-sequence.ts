import { checkPressed } from './check-pressed.ts'
import type { Bench, PressJob } from './job.ts'
import type { PressStep } from './press-plan.ts'
import { type Breach, type BreachCode, type LayerState, type LineState, partOf, startLines } from './replay.ts'

type Tell = (code: BreachCode, layer?: LayerState) => void

const meant = (state: LineState, step: PressStep): readonly LayerState[] =>
  state.layers.filter((one) => step.layers.includes(one.layer.id))

/** Stones already down on the same part, unless they are kept off the pad. */
const stonesDown = (state: LineState, one: LayerState): boolean =>
  state.layers.some(
    (other) =>
      other.on &&
      other.layer.material.kind === 'stone' &&
      partOf(other.place) === partOf(one.place) &&
      (other.place === one.place || !state.apart),
  )

const lay = (state: LineState, step: PressStep, tell: Tell): void => {
  for (const one of meant(state, step)) {
    if (one.on) tell('laid-twice', one)
    if (one.layer.material.kind === 'vinyl' && stonesDown(state, one)) tell('vinyl-after-stones', one)
    const stack = state.layers.filter((other) => other.place === one.place)
    const below = stack[stack.indexOf(one) - 1]
    if (one.layer.lies === 'on-layer-below' && below !== undefined && !step.layers.includes(below.layer.id)) {
      if (!below.on) tell('laid-before-what-lies-below', one)
      if (below.covered) tell('laid-over-carrier', one)
    }
    one.on = true
    one.covered = true
  }
}

/** What is wrong with taking the carrier or the tape off a layer now. */
const peelFaults = (one: LayerState, peel: PressStep['peel']): readonly BreachCode[] => {
  const { material } = one.layer
  const stone = material.kind === 'stone'
  const faults: readonly (BreachCode | false)[] = [
    peel !== material.peel && 'wrong-peel',
    !one.finished && (stone || !one.tacked) && 'peel-too-early',
    !stone && !one.finished && !material.tackPeel && 'cold-peel-tacked',
    stone && !one.lifted && 'not-lifted',
    material.peel === 'cold' && one.warm && 'peel-too-early',
  ]
  return faults.filter((fault) => fault !== false)
}

const peelOff = (state: LineState, step: PressStep, tell: Tell): void => {
  for (const one of meant(state, step)) {
    for (const fault of peelFaults(one, step.peel)) tell(fault, one)
    one.covered = false
  }
}

/** Stones want a minute at least before their tape comes off (common practice: 1-3 min). */
const leastCoolSeconds = 60

const coolDown = (state: LineState, step: PressStep): void => {
  for (const one of meant(state, step)) {
    const long = one.layer.material.kind === 'vinyl' || (step.seconds ?? 0) >= leastCoolSeconds
    if (long) one.warm = false
  }
}

/** Before the garment is turned, all that was laid on the part is finished, bare and cool enough to lie flat. */
const leavePart = (state: LineState, tell: Tell): void => {
  for (const one of state.layers) {
    const open = one.on && (!one.finished || one.covered)
    const missing = !one.on && state.part !== null && partOf(one.place) === state.part
    if (open || missing) tell('turned-too-soon', one)
  }
}

/** Notices which part of the garment comes under the platen, and whether its places are pressed by themselves. */
const comeTo = (state: LineState, step: PressStep, tell: Tell): void => {
  const here = state.layers.find((one) => step.place.split('+').includes(one.place.place))
  const part = here === undefined ? null : partOf(here.place)
  if (part === null) return
  if (step.action === 'turn') {
    if (state.part !== part) leavePart(state, tell)
    state.part = part
  }
  if (state.part === null) state.part = part
  if (state.part !== part) tell('turned-without-saying')
  if (step.action === 'protect') state.apart = step.why.includes('places-kept-apart')
}

const replayStep = (bench: Bench, state: LineState, step: PressStep): readonly Breach[] => {
  const breaches: Breach[] = []
  const tell: Tell = (code, one) => {
    breaches.push({ code, step: step.no, line: state.line, layer: one?.layer.id ?? null })
  }
  comeTo(state, step, tell)
  switch (step.action) {
    case 'place':
      lay(state, step, tell)
      break
    case 'pre-press':
    case 'tack':
    case 'press':
    case 'press-inside':
      checkPressed({ bench, state, step, tell })
      break
    case 'lift':
      for (const one of meant(state, step)) one.lifted = one.finished
      break
    case 'cool':
      coolDown(state, step)
      break
    case 'peel':
      peelOff(state, step, tell)
      break
    case 'protect':
    case 'inspect':
    case 'turn':
      break
    case 'turn-out':
    case 'turn-back':
      state.insideOut = step.action === 'turn-out'
      break
  }
  return breaches
}

const atTheEnd = (state: LineState): readonly Breach[] => {
  const open = state.layers.filter((one) => !one.finished || one.covered)
  const left: readonly Breach[] = state.insideOut ? [{ code: 'wrong-side-out', step: 0, line: state.line, layer: null }] : []
  return [...open.map(({ layer }): Breach => ({ code: 'not-finished', step: 0, line: state.line, layer: layer.id })), ...left]
}

const unknownLayers = (states: readonly LineState[], steps: readonly PressStep[]): readonly Breach[] => {
  const known = new Set(states.flatMap((state) => state.layers.map((one) => one.layer.id)))
  return steps.flatMap((step) =>
    step.layers
      .filter((id) => !known.has(id))
      .map((layer) => ({ code: 'unknown-layer' as const, step: step.no, line: 0, layer })),
  )
}

/**
 * Replays a press sequence garment by garment and layer by layer and tells every breach of a record, of the cloth's limits
 * and of the order of work. Simpler than the planner and independent of it; empty when the sequence is sound.
 */
export const checkSequence = (job: PressJob, bench: Bench, steps: readonly PressStep[]): readonly Breach[] => {
  const states = startLines(job.garments)
  const replayed = states.flatMap((state) => {
    const own = steps.filter((step) => step.lines.includes(state.line))
    return [...own.flatMap((step) => replayStep(bench, state, step)), ...atTheEnd(state)]
  })
  return [...unknownLayers(states, steps), ...replayed]
}
