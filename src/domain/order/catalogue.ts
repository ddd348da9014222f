import type { Fabric, Garment } from '../garment/garment.ts'
import type { Place } from '../garment/place.ts'
import type { Colour, Stone, Vinyl } from '../material/material.ts'
import type { Stock } from '../stock/stock.ts'

/** What the shop has, as far as an order is resolved against it. */
export type Catalogue = {
  readonly garments: readonly Garment[]
  readonly fabrics: readonly Fabric[]
  readonly places: readonly Place[]
  readonly colours: readonly Colour[]
  readonly vinyls: readonly Vinyl[]
  readonly stones: readonly Stone[]
  readonly stock: Stock
  readonly faces: readonly string[]
}
