import { writeLocal } from '../../../domain/calendar/local-time.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'

const boxName = (number: number): string => `T${number}`

/** The next number that no box on the shelf has. */
const freeBox = (boxes: readonly string[]): string => {
  const numbers = boxes.flatMap((box) => (/^T\d+$/.test(box) ? [Number(box.slice(1))] : []))
  return boxName(Math.max(0, ...numbers) + 1)
}

/** Templates of a finished job go on the shelf: new ones in a box of their own with the day, known ones are brushed that much more. */
export const keepTemplates = async (
  desk: Desk,
  shop: ShopStore,
  { templates }: Pick<TicketFacts, 'templates'>,
): Promise<void> => {
  const shelf = new Map((await shop.stock.templates()).map((one) => [one.key, one]))
  const box = freeBox([...shelf.values()].map((one) => one.box))
  const made = writeLocal(desk.zone, desk.clock.now()).slice(0, 10)
  for (const { key, brushed } of templates) {
    const known = shelf.get(key)
    const next = known === undefined ? { key, box, made, brushed } : { ...known, brushed: known.brushed + brushed }
    shelf.set(key, next)
    await shop.stock.putTemplate(next)
  }
}
