import type { GarmentKind } from '../draft.ts'
import type { Item } from './items.ts'
import { applyWaiting, before } from './look-around.ts'
import { flush, put, putGarment, type Walk } from './walk.ts'

export const garmentIds: Readonly<Record<GarmentKind, string>> = {
  jersey: 'jersey',
  't-shirt': 'tee',
  hoodie: 'hoodie',
  polo: 'polo',
  shorts: 'shorts',
  jacket: 'jacket',
  bodysuit: 'bodysuit',
}

/** A garment of a kind that is there already, in another colour and counted apart, is a second one. */
const garmentId = (walk: Walk, kind: GarmentKind): string => {
  const id = garmentIds[kind]
  const there = walk.draft.garments[id]
  const colour = walk.waiting.find((item) => item.kind === 'colour')
  const counted = walk.waiting.some((item) => item.kind === 'figure' || item.kind === 'count')
  const differs = there?.colour !== undefined && colour?.kind === 'colour' && colour.id !== there.colour
  return walk.fresh.has(id) && differs && counted ? `${id}-2` : id
}

const countWaiting = (walk: Walk): number | undefined => {
  const item = walk.waiting.find((one) => one.kind === 'figure' || one.kind === 'count')
  const count = item?.kind === 'count' ? item.id : item?.kind === 'figure' ? Number(item.text) : undefined
  return count !== undefined && Number.isInteger(count) && count >= 1 && count <= 500 ? count : undefined
}

const isOf = (walk: Walk, at: number): boolean => {
  const item = before(walk, at)
  return (
    item !== undefined && (item.kind === 'of' || ['on', 'for', 'de', 'en', 'para'].includes(item.key)) && walk.groups.length > 0
  )
}

const restrict = (walk: Walk, id: string): void => {
  for (const group of walk.groups) {
    if (walk.only) {
      group.on.clear()
      group.only = true
    }
    group.on.add(id)
  }
}

const startGarment = (walk: Walk, id: string, at: number): void => {
  const aside = isOf(walk, at)
  const target = walk.target
  if (aside) restrict(walk, id)
  else flush(walk)
  walk.scope = id
  walk.target = { kind: 'garment', id }
  walk.fresh.add(id)
  const count = countWaiting(walk)
  if (count !== undefined) putGarment(walk, id, { count })
  applyWaiting(walk)
  if (aside) walk.aside = target
}

export const hearGarment = (walk: Walk, item: Extract<Item, { kind: 'garment' }>, at: number): void => {
  const roles = Object.keys(walk.draft.garments).filter((id) => id === 'home' || id === 'away')
  if (item.id === 'jersey' && roles.length > 0) {
    applyWaiting(walk)
    return
  }
  const id = garmentId(walk, item.id)
  putGarment(walk, id, { kind: item.id, ...(item.catalogue === undefined ? {} : { catalogue: item.catalogue }) })
  startGarment(walk, id, at)
}

export const hearRole = (walk: Walk, id: 'home' | 'away', at: number): void => {
  const plain = walk.draft.garments['jersey']
  if (plain !== undefined && walk.draft.garments[id] === undefined) put(walk, [{ path: ['garments', 'jersey'], value: null }])
  putGarment(walk, id, { kind: 'jersey' })
  startGarment(walk, id, at)
}
