import { fibreLimits } from '../garment/fibre-limits.ts'
import type { Auxiliary } from '../material/material.ts'
import type { Bench } from './job.ts'
import type { Machine } from './machine.ts'
import type { PressStep } from './press-plan.ts'
import { type BreachCode, isBody, type LayerState, type LineState, partOf } from './replay.ts'

type Replayed = {
  readonly bench: Bench
  readonly state: LineState
  readonly step: PressStep
  readonly tell: (code: BreachCode, layer?: LayerState) => void
}

const firmness = ['light', 'medium', 'firm']

const machineOf = ({ bench, step }: Replayed): Machine | undefined =>
  bench.machines.find((machine) => machine.id === step.machine)

/** Threaded, only the side being pressed lies on the lower platen; limbs are never threaded. */
const threads = (replayed: Replayed): boolean => machineOf(replayed)?.threads === true && isBody(replayed.state.part)

const named = ({ step }: Replayed, one: LayerState): boolean => step.place.split('+').includes(one.place.place)

/** What lies between the platens and is reached by the heat. */
const underLoad = (replayed: Replayed): readonly LayerState[] => {
  const { state } = replayed
  return state.layers.filter((one) => one.on && partOf(one.place) === state.part && (!state.apart || named(replayed, one)))
}

/** What is finished on the other side of the body and lies below, because the garment is not threaded. */
const below = (replayed: Replayed): readonly LayerState[] => {
  const { state, step } = replayed
  if (threads(replayed) || !isBody(state.part) || step.action === 'press-inside') return []
  return state.layers.filter((one) => one.on && isBody(partOf(one.place)) && partOf(one.place) !== state.part)
}

const auxiliaryMost = (bench: Bench, kind: Auxiliary['kind']): number =>
  Math.max(0, ...bench.auxiliaries.filter((one) => one.kind === kind).map((one) => one.capTenthsC))

const clothMost = ({ state }: Replayed): number => {
  const { fibres, capTenthsC } = state.garment.cloth
  const shares = fibres === 'unknown' ? [] : fibres.map((share) => share.fibre)
  const limits = fibreLimits
    .filter((limit) => limit.mark === 'quoted' && shares.includes(limit.fibre))
    .map((limit) => limit.capTenthsC)
  return Math.min(...limits, capTenthsC ?? Number.POSITIVE_INFINITY)
}

/** Degrees of the thermostat's own unit, which tenths of °C hit to within a tenth. */
const isOnDial = (machine: Machine, tenths: number): boolean => {
  const { unit, degrees } = machine.step
  const shown = unit === 'C' ? tenths / 10 : (tenths * 9) / 50 + 32
  return Math.abs(shown - degrees * Math.round(shown / degrees)) <= (unit === 'C' ? 0.05 : 0.091)
}

/** No temperature passes a limit less the swing, of cloth, layers, sheet, tape or pad; asked-for settings keep the limit itself. */
const checkHeat = (replayed: Replayed): void => {
  const { bench, state, step, tell } = replayed
  const machine = machineOf(replayed)
  const set = step.tenthsC ?? 0
  if (machine === undefined || set + Math.max(0, machine.correctionTenthsC) > machine.maxTenthsC) tell('too-hot')
  const room = step.cautions.includes('over-margin') ? 0 : (machine?.swingTenthsC ?? 0)
  const limits = [clothMost(replayed)]
  if (step.cover === 'sheet') limits.push(auxiliaryMost(bench, 'cover-sheet'))
  if (step.inside === 'pillow') limits.push(auxiliaryMost(bench, 'pillow'))
  const loaded = underLoad(replayed)
  if (loaded.some((one) => one.layer.material.kind === 'stone' && one.covered)) limits.push(auxiliaryMost(bench, 'tape'))
  if (set + room > Math.min(...limits)) tell('too-hot')
  for (const one of loaded) {
    if (set + room > one.layer.material.window.tenthsC.most) tell('too-hot', one)
  }
  if (state.garment.cloth.fibres !== 'unknown' && state.garment.cloth.fibres.some((share) => share.fibre === 'polypropylene'))
    tell('too-hot')
}

const checkDial = (replayed: Replayed): void => {
  const machine = machineOf(replayed)
  const set = (replayed.step.tenthsC ?? 0) + (machine?.correctionTenthsC ?? 0)
  if (machine !== undefined && !isOnDial(machine, set)) replayed.tell('off-the-dial')
}

/** Glue that could pass through is caught by a pad, and nothing without a carrier meets the platen bare. */
const checkProtection = (replayed: Replayed): void => {
  const { state, step, tell } = replayed
  const { perforated, thin } = state.garment.cloth
  const loaded = underLoad(replayed)
  if (loaded.length > 0 && (perforated || thin) && step.inside !== 'pillow') tell('glue-unprotected')
  if (step.cover === 'none') tell('nothing-over-it')
  for (const one of loaded) {
    if (!one.covered && step.cover !== 'sheet') tell('nothing-over-it', one)
    const stone = one.layer.material.kind === 'stone'
    if (stone && one.finished && step.action !== 'press-inside') tell('finished-stones-under-load', one)
  }
  for (const one of below(replayed)) {
    if (one.layer.material.kind === 'stone' && step.inside !== 'pillow') tell('finished-stones-under-load', one)
  }
}

const checkPlaten = (replayed: Replayed): void => {
  const machine = machineOf(replayed)
  const places = new Set(replayed.state.layers.filter((one) => named(replayed, one)).map((one) => one.place))
  for (const place of places) {
    const wide = (place.widthMicrometres ?? 0) > (machine?.platenWidthMicrometres ?? 0)
    const high = (place.heightMicrometres ?? 0) > (machine?.platenDepthMicrometres ?? 0)
    if (wide || high) replayed.tell('off-the-platen')
  }
}

const rePress = (replayed: Replayed, one: LayerState): void => {
  const { step, tell } = replayed
  const allowed = one.layer.material.rePress
  one.rePresses += 1
  if (one.rePresses > allowed.times) tell('re-pressed-too-often', one)
  if ((step.seconds ?? 0) > allowed.seconds) tell('re-pressed-too-long', one)
}

const checkTack = (replayed: Replayed, one: LayerState): void => {
  const { bench, step, tell } = replayed
  const { material } = one.layer
  const own = material.kind === 'vinyl' ? material.tackSeconds : undefined
  const range = own ?? bench.settings.tackSeconds
  const time = step.seconds ?? 0
  if (time < range.least || time > range.most) tell('tack-out-of-range', one)
  one.tacked = true
}

const checkDwell = (replayed: Replayed, one: LayerState): void => {
  const { step, tell } = replayed
  const { window } = one.layer.material
  if (one.made < window.seconds.least) tell('too-short', one)
  if ((step.tenthsC ?? 0) < window.tenthsC.least) tell('too-cool', one)
  if (firmness.indexOf(step.pressure?.word ?? 'light') < firmness.indexOf(window.pressure)) tell('too-soft', one)
  one.finished = true
}

/** Tack and dwell make a layer; whatever comes after it is finished is a re-press. */
const meetFace = (replayed: Replayed, one: LayerState): void => {
  const { step, tell } = replayed
  one.warm = true
  if (one.finished) {
    rePress(replayed, one)
    return
  }
  one.made += step.seconds ?? 0
  if (one.made > one.layer.material.window.seconds.most) tell('too-long', one)
  if (step.action === 'press') checkDwell(replayed, one)
  if (step.action === 'tack' && step.layers.includes(one.layer.id)) checkTack(replayed, one)
}

const meetInside = (replayed: Replayed, one: LayerState): void => {
  const { step, tell } = replayed
  const { material } = one.layer
  if (!one.finished || one.covered) tell('inside-not-allowed', one)
  one.warm = true
  if (material.kind === 'vinyl') {
    rePress(replayed, one)
    return
  }
  one.inside += step.seconds ?? 0
  const { least, most } = material.insideSeconds
  if (one.inside > most || (step.seconds ?? 0) < least) tell('inside-not-allowed', one)
}

const checkInside = (replayed: Replayed): void => {
  const { state, step, tell } = replayed
  const { perforated, thin } = state.garment.cloth
  const elsewhere = state.layers.some((one) => one.on && partOf(one.place) !== state.part)
  if (perforated || thin || elsewhere || step.inside !== 'pillow' || step.cover !== 'sheet') tell('inside-not-allowed')
}

/** One closing of the press over one garment: heat, protection, platen, and what every layer under the load makes of it. */
export const checkPressed = (replayed: Replayed): void => {
  if (replayed.state.insideOut !== (replayed.step.action === 'press-inside')) replayed.tell('wrong-side-out')
  checkHeat(replayed)
  checkDial(replayed)
  checkPlaten(replayed)
  if (replayed.step.action === 'press-inside') {
    checkInside(replayed)
    for (const one of underLoad(replayed)) meetInside(replayed, one)
    return
  }
  checkProtection(replayed)
  for (const one of underLoad(replayed)) meetFace(replayed, one)
  if (replayed.step.action === 'press') for (const one of below(replayed)) rePress(replayed, one)
}
