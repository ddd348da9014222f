import { seconds } from '../units/units.ts'
import type { JobLayer } from './job.ts'
import { type Draft, ids, isStone, placesWith, step, type Turn } from './step-draft.ts'

const softness = { hot: 0, warm: 1, cold: 2 } as const

/** Carriers come off as each record says: hot ones at once, cold ones after the rest has cooled. */
export const peeling = (turn: Turn, layers: readonly JobLayer[]): readonly Draft[] => {
  const kinds = [...new Set(layers.map((layer) => layer.material.peel))].toSorted((a, b) => softness[a] - softness[b])
  return kinds.flatMap((peel) => {
    const peeled = layers.filter((layer) => layer.material.peel === peel)
    const places = placesWith(turn, peeled)
    const off = step(turn, places, {
      action: 'peel',
      layers: ids(peeled),
      peel,
      lookFor: ['carrier-comes-clean', 'edges-down'],
      why: ['record-says'],
      cautions: peel === 'hot' ? ['hot-platen'] : [],
    })
    return peel === 'cold' ? [cooling(turn, peeled, turn.settings.coolSeconds.vinyl), off] : [off]
  })
}

export const cooling = (turn: Turn, layers: readonly JobLayer[], time: number): Draft =>
  step(turn, placesWith(turn, layers), {
    action: 'cool',
    layers: ids(layers),
    seconds: seconds(time),
    inside: 'none',
    cover: layers.some(isStone) ? 'tape' : 'carrier',
    lookFor: ['no-heat-felt'],
    why: ['glue-sets-when-cool'],
  })

/** After stones: all together flat to a table, the sheet inside freed while warm where one lies, the tape off when cool. */
export const liftingStones = (turn: Turn, layers: readonly JobLayer[]): readonly Draft[] => {
  const stones = layers.filter(isStone)
  const places = placesWith(turn, stones)
  const onPillow = turn.setUp.inside === 'pillow'
  return [
    step(turn, places, {
      action: 'lift',
      layers: ids(stones),
      inside: 'none',
      cover: 'tape',
      lookFor: [onPillow ? 'inside-free-of-glue' : 'other-side-clean', 'tape-stays-put'],
      why: [onPillow ? 'bond-breaks-while-warm' : 'glue-sets-when-cool'],
      cautions: ['gloves-for-pillow-and-stones', 'do-not-bend-stones'],
    }),
    cooling(turn, stones, turn.settings.coolSeconds.stones),
    step(turn, places, {
      action: 'peel',
      layers: ids(stones),
      peel: 'cold',
      inside: 'none',
      lookFor: ['stone-that-lifts'],
      why: ['glue-sets-when-cool'],
      cautions: ['stones-on-floor'],
    }),
  ]
}

export const slowest = (layers: readonly JobLayer[]): Draft['peel'] =>
  layers.map((layer) => layer.material.peel).toSorted((a, b) => softness[b] - softness[a])[0] ?? null
