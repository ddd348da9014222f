import { seconds, tenthsC } from '../units/units.ts'
import type { GroupHeat } from './heat.ts'
import type { JobPlace } from './job.ts'
import type { Rung } from './rungs.ts'
import type { CautionCode, LookForCode, WhyCode } from './step-codes.ts'
import { atPress, type Draft, ids, isStone, placesWith, step, type Turn } from './step-draft.ts'
import { cooling, liftingStones, peeling, slowest } from './taking-off.ts'
import { crossesZip, hasStrings, isThreaded, obstaclesNear } from './zones.ts'

const closing: readonly CautionCode[] = ['hot-platen', 'hands-out-before-closing', 'never-leave-closed']

const insideReasons = (turn: Turn): readonly WhyCode[] => {
  const { garment, machine, places, zone, apart } = turn.setUp
  const reasons: WhyCode[] = []
  if (isThreaded(machine, zone)) reasons.push('garment-is-threaded')
  if (garment.cloth.perforated || garment.cloth.thin) reasons.push('glue-passes-through')
  if (places.some((place) => obstaclesNear(garment, place).length > 0)) reasons.push('holds-platen-up')
  if (turn.stonesBelow && !isThreaded(machine, zone)) reasons.push('stones-finished-below')
  if (apart) reasons.push('places-kept-apart')
  return reasons
}

const insideCautions = (turn: Turn): readonly CautionCode[] => {
  const { garment, places, inside } = turn.setUp
  const cautions: CautionCode[] = []
  if (inside === 'pillow') cautions.push('gloves-for-pillow-and-stones')
  if (places.some((place) => obstaclesNear(garment, place).length > 0)) cautions.push('keep-25-mm-off')
  if (places.some((place) => crossesZip(garment, place))) cautions.push('zip-in-two-halves')
  if (hasStrings(garment)) cautions.push('hood-and-strings-clear')
  if (turn.stonesBelow) cautions.push('stones-never-on-bare-platen')
  return cautions
}

/** Pre-press, then threading or the pad; with finished stones below, the pad comes first. */
const preparing = (turn: Turn): readonly Draft[] => {
  const { setUp, settings } = turn
  const { places } = setUp
  const heat = setUp.heats[0]
  const protect = step(turn, places, {
    action: 'protect',
    lookFor:
      setUp.inside === 'pillow' ? ['sheet-on-pillow', 'lies-flat', 'pressure-with-pad-in'] : ['lies-flat', 'nothing-under-load'],
    why: insideReasons(turn),
    cautions: insideCautions(turn),
  })
  if (heat === undefined || turn.fresh.length === 0) return [protect]
  const below = turn.stonesBelow && !isThreaded(setUp.machine, setUp.zone)
  const prePress = step(turn, places, {
    action: 'pre-press',
    ...atPress(turn, { tenthsC: tenthsC(heat.tenthsC), seconds: seconds(settings.prePressSeconds), layers: heat.group.members }),
    inside: below ? 'pillow' : 'none',
    cover: 'sheet',
    lookFor: ['no-steam', 'lies-flat'],
    why: ['drives-moisture-out'],
    cautions: closing,
    lines: turn.fresh,
  })
  return below ? [protect, prePress] : [prePress, protect]
}

const laying = (turn: Turn, rung: Rung): readonly Draft[] =>
  placesWith(turn, rung.layers).map((place) => {
    const layers = place.layers.filter((layer) => rung.layers.includes(layer))
    const above = place.layers.some((layer) => layers.includes(layer) && layer.lies === 'on-layer-below')
    const looks: LookForCode[] = ['centred-and-height', ...(above ? (['ticks-meet'] as const) : [])]
    const cautions: CautionCode[] = crossesZip(turn.setUp.garment, place) ? ['zip-in-two-halves'] : []
    if (!rung.stones) {
      return step(turn, [place], {
        action: 'place',
        layers: ids(layers),
        cover: 'carrier',
        lookFor: looks,
        why: place.layers.some(isStone) ? ['flat-layers-first'] : [],
        cautions,
      })
    }
    const byVinyl = place.layers.some((layer) => !isStone(layer))
    return step(turn, [place], {
      action: 'place',
      layers: ids(layers),
      cover: 'tape',
      lookFor: [...looks, ...(byVinyl ? (['row-clear-of-vinyl'] as const) : []), 'stones-right-way-up'],
      why: byVinyl ? ['flat-layers-first'] : [],
      cautions: [...cautions, 'do-not-move-tape', 'stones-on-floor'],
    })
  })

const coverOver = (heat: GroupHeat, rung: Rung): Draft['cover'] => {
  const bare = rung.stones || heat.finished.length > 0 || heat.group.rungs.indexOf(rung) > 0
  return bare ? 'sheet' : 'carrier'
}

const tacking = (turn: Turn, heat: GroupHeat, rung: Rung): readonly Draft[] => [
  ...laying(turn, rung),
  step(turn, placesWith(turn, rung.layers), {
    action: 'tack',
    layers: ids(rung.layers),
    ...atPress(turn, { tenthsC: tenthsC(heat.tenthsC), seconds: seconds(heat.tackSeconds), layers: heat.group.members }),
    peel: slowest(rung.layers),
    cover: coverOver(heat, rung),
    why: ['tack-only-holds', 'joint-heat'],
    cautions: closing,
  }),
  ...peeling(turn, rung.layers),
]

const pressReasons = (heat: GroupHeat): readonly WhyCode[] => {
  if (heat.askedTenthsC !== null) return ['asked-for']
  const reasons: WhyCode[] = heat.group.members.length > 1 ? ['joint-heat', 'least-asking-layer'] : ['record-says']
  const usual = Math.min(...heat.group.members.map((layer) => layer.material.window.tenthsC.usual))
  if (usual > heat.tenthsC) reasons.push('below-hard-cap')
  return reasons
}

/** One group: tacks, then the full press over all its layers, then what comes off. */
const pressing = (turn: Turn, heat: GroupHeat): readonly Draft[] => {
  const { rungs, members } = heat.group
  const final = rungs[rungs.length - 1]
  if (final === undefined) return []
  const cover = coverOver(heat, final)
  const press = step(turn, placesWith(turn, members), {
    action: 'press',
    layers: ids(members),
    ...atPress(turn, { tenthsC: tenthsC(heat.tenthsC), seconds: seconds(heat.seconds), layers: members }),
    peel: slowest(final.layers),
    cover,
    lookFor: final.stones ? ['tape-stays-put'] : ['edges-down'],
    why: [...pressReasons(heat), ...(cover === 'sheet' ? (['cover-what-has-no-carrier'] as const) : [])],
    cautions: [...closing, ...(heat.overMargin ? (['over-margin'] as const) : []), 'ventilate'],
  })
  return [
    ...rungs.slice(0, -1).flatMap((rung) => tacking(turn, heat, rung)),
    ...laying(turn, final),
    press,
    ...(final.stones ? liftingStones(turn, final.layers) : peeling(turn, final.layers)),
  ]
}

const inspecting = (turn: Turn): Draft => {
  const { places, garment } = turn.setUp
  const stones = places.some((place) => place.layers.some(isStone))
  const looks: LookForCode[] = stones ? ['stones-between-stones', 'empty-holes', 'lifted-edges'] : ['lifted-edges']
  return step(turn, places, {
    action: 'inspect',
    inside: 'none',
    layers: ids(places.flatMap((place) => place.layers)),
    lookFor: [...looks, 'other-side-clean', ...(garment.cloth.marks ? (['press-marks'] as const) : [])],
  })
}

/** For the inside press the cloth comes up and the stones go down, into the pillow. */
const turnedOut = (turn: Turn, places: readonly JobPlace[]): Draft =>
  step(turn, places, {
    side: 'inside',
    action: 'turn-out',
    inside: 'pillow',
    lookFor: ['stones-face-into-pillow', 'sheet-on-cloth'],
    why: ['glue-from-inside'],
    cautions: ['do-not-bend-stones', 'stones-never-on-bare-platen'],
  })

const turnedBack = (turn: Turn, places: readonly JobPlace[]): Draft =>
  step(turn, places, {
    side: 'inside',
    action: 'turn-back',
    inside: 'none',
    lookFor: ['empty-holes'],
    cautions: ['do-not-bend-stones'],
  })

const fromInside = (turn: Turn): readonly Draft[] => {
  const { inside, setUp } = turn
  if (inside.kind !== 'press') return []
  const layers = setUp.places.flatMap((place) => place.layers)
  const places = placesWith(turn, layers.filter(isStone))
  const press = step(turn, places, {
    side: 'inside',
    action: 'press-inside',
    layers: ids(places.flatMap((place) => place.layers)),
    ...atPress(turn, { tenthsC: tenthsC(inside.tenthsC), seconds: seconds(inside.seconds), layers }),
    inside: 'pillow',
    cover: 'sheet',
    lookFor: ['lies-flat'],
    why: ['glue-from-inside'],
    cautions: [...closing, 'gloves-for-pillow-and-stones', 'stones-never-on-bare-platen'],
  })
  const cooled = cooling(turn, layers.filter(isStone), turn.settings.coolSeconds.stones)
  return [turnedOut(turn, places), press, { ...cooled, side: 'inside', cover: 'none' }, turnedBack(turn, places)]
}

/** The steps of one set-up for all its lines, from turning the garment to looking at the work. */
export const stepsOf = (turn: Turn): readonly Draft[] => [
  ...(turn.turned.length > 0
    ? [
        step(turn, turn.setUp.places, {
          action: 'turn',
          inside: 'none',
          lookFor: ['other-side-away'],
          why: ['finish-one-side'],
          lines: turn.turned,
          cautions: turn.stonesBelow ? ['do-not-bend-stones'] : [],
        }),
      ]
    : []),
  ...preparing(turn),
  ...turn.setUp.heats.flatMap((heat) => pressing(turn, heat)),
  inspecting(turn),
  ...fromInside(turn),
]
