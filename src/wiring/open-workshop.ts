import { join } from 'node:path'
import { loadFaces } from '../adapters/folder/faces.ts'
import { loadShop } from '../adapters/folder/shop.ts'
import type { Workshop } from '../desk/work-out.ts'
import type { PieceStones } from '../domain/layout/layout.ts'
import { ok, type Result } from '../domain/result/result.ts'

/** The shop's records and faces, read and checked. */
export const openWorkshop = async (root: string, shopFolder: string | undefined): Promise<Result<Workshop>> => {
  const folder = shopFolder ?? join(root, 'templates', 'shop')
  const shop = await loadShop(folder)
  if (!shop.ok) return shop
  const faces = await loadFaces(shop.value.faces, { root, shop: folder })
  if (!faces.ok) return faces
  return ok({ shop: shop.value, faces: faces.value, cache: new Map<string, PieceStones>() })
}
