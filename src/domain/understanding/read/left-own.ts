import type { Item } from './items.ts'
import { headAhead } from './look-around.ts'
import type { Walk } from './walk.ts'

export const isOtherOwn = (walk: Walk, item: Item, at: number): boolean =>
  item.kind === 'own' && item.near === true && headAhead(walk, at)?.kind !== 'garment'
