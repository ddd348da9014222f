import { join } from 'node:path'
import { projectRoot } from '../../../src/adapters/folder/root.ts'
import { loadShop } from '../../../src/adapters/folder/shop.ts'
import type { Shop } from '../../../src/domain/shop/shop.ts'

/** The starter shop as it is shipped. */
export const starterShop = async (): Promise<Shop> => {
  const loaded = await loadShop(join(projectRoot(), 'templates/shop'))
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.problems.slice(0, 3)))
  return loaded.value
}
