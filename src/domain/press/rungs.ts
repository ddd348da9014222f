import type { JobLayer, JobPlace } from './job.ts'

/** Layers that are laid down together, before the press is closed once: one level of the vinyl, or all the stones. */
export type Rung = { readonly layers: readonly JobLayer[]; readonly stones: boolean }

const isStone = (layer: JobLayer): boolean => layer.material.kind === 'stone'

/**
 * The rungs of places that are pressed together: vinyl levels bottom first, aligned at their top so that a place with fewer
 * levels joins later, and all stones last, because raised stones would keep the platen off the vinyl.
 */
export const rungsOf = (places: readonly JobPlace[]): readonly Rung[] => {
  const vinyls = places.map((place) => place.layers.filter((layer) => !isStone(layer)))
  const levels = Math.max(0, ...vinyls.map((layers) => layers.length))
  const rungs: Rung[] = []
  for (let level = 0; level < levels; level += 1) {
    rungs.push({ stones: false, layers: vinyls.flatMap((layers) => layers[level - levels + layers.length] ?? []) })
  }
  const stones = places.flatMap((place) => place.layers.filter(isStone))
  return stones.length > 0 ? [...rungs, { stones: true, layers: stones }] : rungs
}

/** A run of rungs that is finished by one full press: all but the last are only tacked. */
export type Group = { readonly rungs: readonly Rung[]; readonly members: readonly JobLayer[] }

const mayTack = (rung: Rung): boolean =>
  !rung.stones && rung.layers.every((layer) => layer.material.kind === 'vinyl' && layer.material.tackPeel)

const groupsFrom = (rungs: readonly Rung[], full: ReadonlySet<number>): readonly Group[] => {
  const groups: Group[] = []
  let open: Rung[] = []
  rungs.forEach((rung, index) => {
    open.push(rung)
    if (!full.has(index)) return
    groups.push({ rungs: open, members: open.flatMap((one) => one.layers) })
    open = []
  })
  return groups
}

/**
 * Every way to divide the rungs into full presses, fewest full presses first. Only a rung whose records all allow tack and
 * peel may be tacked; the last is always pressed in full.
 */
export const groupings = (rungs: readonly Rung[]): readonly (readonly Group[])[] => {
  const last = rungs.length - 1
  const must = rungs.flatMap((rung, index) => (index === last || !mayTack(rung) ? [index] : []))
  const free = rungs.flatMap((rung, index) => (index !== last && mayTack(rung) ? [index] : []))
  const choices = Array.from({ length: 2 ** free.length }, (_, mask) => free.filter((_free, bit) => (mask >> bit) % 2 === 1))
  return choices.toSorted((a, b) => a.length - b.length).map((chosen) => groupsFrom(rungs, new Set([...must, ...chosen])))
}
