import type { Catalogue } from '../order/catalogue.ts'
import type { Shop } from './shop.ts'

/** What an order is resolved against, out of the shop's records. */
export const catalogueOf = (shop: Shop): Catalogue => ({
  garments: shop.garments,
  fabrics: shop.fabrics,
  places: shop.places,
  colours: shop.colours,
  vinyls: shop.vinyl,
  stones: shop.stones,
  stock: shop.stock,
  faces: shop.faces.map((face) => face.id),
})
