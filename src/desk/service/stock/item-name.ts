import { floorWords } from '../../../../templates/desk/floor/words.ts'
import { showFor } from '../../../domain/shop/show.ts'
import { readGarmentItem } from '../../../domain/stock/item.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Desk } from '../desk.ts'

/** What people call a stock item. */
export const itemName = (desk: Desk, item: string, asked?: Language): string => {
  const { shop } = desk.workshop
  const language = asked ?? shop.profile.languages[0] ?? 'en'
  const show = showFor(shop, language)
  const garment = readGarmentItem(item)
  if (garment !== null) return `${show.garment(garment.garment)}, ${show.colour(garment.colour)}, ${garment.fit} ${garment.size}`
  const stone = shop.stones.find(({ id }) => id === item)
  if (stone !== undefined) return `${stone.size} ${show.colour(stone.colour)}`
  const vinyl = shop.vinyl.find(({ id }) => id === item)
  if (vinyl !== undefined) return `${floorWords[language].vinylNames[vinyl.class]}, ${show.colour(vinyl.colour)}`
  return item.replaceAll('-', ' ')
}

/** Packs to buy, like ones counted: "4 × 1440 pieces + 720 pieces". `say` gives one pack in words. */
export const packsText = (packs: readonly number[], say: (pack: number) => string): string =>
  [...new Set(packs)]
    .map((pack) => {
      const times = packs.filter((one) => one === pack).length
      return times === 1 ? say(pack) : `${times} × ${say(pack)}`
    })
    .join(' + ')

/** An amount as it is read on the shelf: pieces, or metres of roll. */
export const amountText = (desk: Desk, { item, amount }: { item: string; amount: number }, asked?: Language): string => {
  const { vinyl, auxiliaries, profile } = desk.workshop.shop
  const { units } = floorWords[asked ?? profile.languages[0] ?? 'en']
  const rolled = vinyl.some(({ id }) => id === item) || auxiliaries.some(({ id, kind }) => id === item && kind === 'tape')
  if (rolled) return `${(amount / 1_000_000).toFixed(2)} ${units.metres}`
  return readGarmentItem(item) === null ? units.pieces(amount) : units.garments(amount)
}
