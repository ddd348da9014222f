import type { Shop } from '../../../domain/shop/shop.ts'
import { readGarmentItem } from '../../../domain/stock/item.ts'
import type { Supply } from '../../../domain/stock/shopping.ts'

const gross = 144

/** How the shop buys an item: stones by the gross, vinyl and tape by the roll, garments and sheets by the piece. */
export const supplyOf =
  ({ stock, stones, vinyl, garments, auxiliaries }: Shop) =>
  (item: string): Supply => {
    const { supply } = stock
    if (stones.some(({ id }) => id === item)) return { unit: gross, packs: supply.stonePackGross, days: supply.stoneDays }
    const roll = vinyl.find(({ id }) => id === item)
    if (roll !== undefined) return { unit: roll.rollLengthMicrometres, packs: [1], days: supply.vinylDays }
    const tape = auxiliaries.find(({ id, kind }) => id === item && kind === 'tape')
    if (tape !== undefined) return { unit: tape.heightMicrometres, packs: [1], days: supply.vinylDays }
    const garment = garments.find(({ id }) => id === readGarmentItem(item)?.garment)
    return { unit: 1, packs: [1], days: garment?.arrivesInDays ?? supply.vinylDays }
  }
