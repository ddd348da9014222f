import { fibreLimits } from '../garment/fibre-limits.ts'
import type { Auxiliary } from '../material/material.ts'
import type { ClothFacts, JobLayer } from './job.ts'
import type { Machine } from './machine.ts'

/** A temperature nothing may pass, and whose it is; the setting keeps the press's swing below it. */
export type Cap = { readonly by: string; readonly tenthsC: number; readonly source: string; readonly fibre: boolean }

/** Hard limits of the cloth: fibres by what was read, and the mill's own figure. */
export const clothCaps = (cloth: ClothFacts): readonly Cap[] => {
  const mill: readonly Cap[] =
    cloth.capTenthsC === null ? [] : [{ by: 'fabric', tenthsC: cloth.capTenthsC, source: "the fabric's own record", fibre: true }]
  if (cloth.fibres === 'unknown') return mill
  const shares = cloth.fibres
  const fibres = fibreLimits
    .filter((limit) => limit.mark !== 'memory' && shares.some((share) => share.fibre === limit.fibre))
    .map((limit) => ({ by: limit.fibre, tenthsC: limit.capTenthsC, source: limit.source, fibre: true }))
  return [...mill, ...fibres]
}

export type SoftCap = { readonly fibre: string; readonly percent: number; readonly tenthsC: number; readonly source: string }

/** Limits known from memory only: kept where they can be, otherwise a test press is asked for. */
export const softCaps = (cloth: ClothFacts): readonly SoftCap[] => {
  if (cloth.fibres === 'unknown') return []
  return cloth.fibres.flatMap(({ fibre, percent }) =>
    fibreLimits
      .filter((limit) => limit.mark === 'memory' && limit.fibre === fibre)
      .map((limit) => ({ fibre, percent, tenthsC: limit.capTenthsC, source: limit.source })),
  )
}

/** The fibre that no transfer leaves whole, if the cloth has one. */
export const meltingFibre = (cloth: ClothFacts) => {
  if (cloth.fibres === 'unknown') return null
  const shares = cloth.fibres
  const limit = fibreLimits.find((one) => one.never && shares.some((share) => share.fibre === one.fibre))
  if (limit === undefined) return null
  return { limit, percent: shares.find((share) => share.fibre === limit.fibre)?.percent ?? 0 }
}

export const layerCap = (layer: JobLayer): Cap => ({
  by: layer.material.id,
  tenthsC: layer.material.window.tenthsC.most,
  source: `${layer.material.source.sheet}, ${layer.material.source.date}`,
  fibre: false,
})

/** Of several things of one kind the shop uses the one that stands most heat. */
export const bestAuxiliary = (auxiliaries: readonly Auxiliary[], kind: Auxiliary['kind']): Auxiliary | null =>
  auxiliaries
    .filter((auxiliary) => auxiliary.kind === kind)
    .reduce<Auxiliary | null>((best, one) => (best === null || one.capTenthsC > best.capTenthsC ? one : best), null)

export const auxiliaryCap = (auxiliary: Auxiliary): Cap => ({
  by: auxiliary.id,
  tenthsC: auxiliary.capTenthsC,
  source: `${auxiliary.source.sheet}, ${auxiliary.source.date}`,
  fibre: false,
})

export const lowest = (caps: readonly Cap[]): Cap | null =>
  caps.reduce<Cap | null>((least, cap) => (least === null || cap.tenthsC < least.tenthsC ? cap : least), null)

/** The hottest the machine may be set: its own most, less what is added today. */
export const machineMost = (machine: Machine): number => machine.maxTenthsC - Math.max(0, machine.correctionTenthsC)
