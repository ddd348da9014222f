import { seconds, tenthsC } from '../units/units.ts'
import type { GroupHeat } from './heat.ts'
import type { JobLayer } from './job.ts'
import type { Exposure, PressStep } from './press-plan.ts'
import type { SetUp } from './set-ups.ts'

type Met = { readonly heat: GroupHeat; readonly layer: JobLayer }

const capOf = (layer: JobLayer): number => layer.material.window.tenthsC.most

const kindAt = ({ heat, layer }: Met, step: PressStep): Exposure['kind'] | null => {
  if (step.action === 'press-inside') return layer.material.kind === 'stone' ? 'inside' : 're-press'
  if (heat.finished.includes(layer)) return 're-press'
  return step.action === 'tack' ? 'tack' : 'dwell'
}

const leftOf = (layer: JobLayer, kind: Exposure['kind'], spent: number): number => {
  const { material } = layer
  if (kind === 're-press') return material.rePress.seconds - spent
  if (kind === 'inside' && material.kind === 'stone') return material.insideSeconds.most - spent
  return material.window.seconds.most - spent
}

const isPressing = (step: PressStep): boolean => step.tenthsC !== null && step.action !== 'pre-press'

/** The group a pressing step belongs to: the one whose members or whose temperature and layers it names. */
const heatOf = (setUp: SetUp, step: PressStep): GroupHeat | undefined =>
  setUp.heats.find((heat) => heat.group.members.some((layer) => step.layers.includes(layer.id)))

const present = (setUp: SetUp, heat: GroupHeat, step: PressStep): readonly JobLayer[] => {
  if (step.action === 'press-inside') return setUp.heats.flatMap((one) => one.group.members)
  const { rungs } = heat.group
  const reached = rungs.findIndex((rung) => rung.layers.some((layer) => step.layers.includes(layer.id)))
  const until = step.action === 'tack' ? reached : rungs.length - 1
  return [...heat.finished, ...rungs.slice(0, until + 1).flatMap((rung) => rung.layers)]
}

/** Every meeting of a layer with the press in one set-up, in order, with what its record still allows afterwards. */
export const exposuresOf = (setUp: SetUp, steps: readonly PressStep[]): readonly Exposure[] => {
  const spent = new Map<string, number>()
  return steps.filter(isPressing).flatMap((step) => {
    const heat = heatOf(setUp, step)
    if (heat === undefined || step.tenthsC === null) return []
    const [temperature, time] = [step.tenthsC, step.seconds ?? 0]
    return present(setUp, heat, step).flatMap((layer): readonly Exposure[] => {
      const kind = kindAt({ heat, layer }, step)
      if (kind === null) return []
      const once = kind === 're-press' || kind === 'inside'
      const total = time + (once ? 0 : (spent.get(layer.id) ?? 0))
      if (!once) spent.set(layer.id, total)
      return [
        {
          layer: layer.id,
          step: step.no,
          kind,
          tenthsC: tenthsC(temperature),
          seconds: seconds(time),
          leftSeconds: leftOf(layer, kind, total),
          leftTenthsC: capOf(layer) - temperature,
        },
      ]
    })
  })
}
