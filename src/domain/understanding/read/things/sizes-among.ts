import { listed } from '../../words/languages.ts'
import type { Item } from './items.ts'
import { placeOf, type Walk } from './walk.ts'

/** "S to XL", "2T-5T", "de la S a la XL", "S, M and L": one of several sizes is not that of all. */
export const isAmongSizes = (walk: Walk, item: Item): boolean => {
  const at = placeOf(walk, item)
  const isOther = (step: number): boolean => {
    const between = [1, 2, 3, 4].findIndex((far) => walk.items[at + step * far]?.kind === 'size')
    const link = walk.items.slice(...(step > 0 ? [at + 1, at + 1 + between] : [at - between, at]))
    return (
      between >= 0 &&
      link.every(({ kind, key }) => ['comma', 'and', 'in', 'of'].includes(kind) || listed.things.sizeLinks.includes(key))
    )
  }
  return isOther(1) || isOther(-1)
}
