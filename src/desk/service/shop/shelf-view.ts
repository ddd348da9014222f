import { readGarmentItem } from '../../../domain/stock/item.ts'
import { freeLots, heldLots, lacking, type StockChange } from '../../../domain/stock/ledger.ts'
import { shopActs } from '../../../domain/ticket/acts.ts'
import type { ShelfRow, ShelfView } from '../../../ports/floor-view.ts'
import type { StockLot } from '../../../ports/stock-records.ts'
import type { Desk } from '../desk.ts'
import { momentOf, wordsFor } from '../say/say-floor.ts'
import { amountText, itemName, packsText } from '../stock/item-name.ts'
import { shoppingNow } from '../stock/shopping-now.ts'
import { supplyOf } from '../stock/supply-of.ts'
import { shopForm } from './shop-form.ts'

type Reading = { readonly desk: Desk; readonly ledger: readonly StockChange[]; readonly lots: readonly StockLot[] }

const rowsOf = ({ desk, ledger, lots }: Reading, item: string, lacks: number): readonly ShelfRow[] => {
  const of = ledger.filter((move) => move.item === item)
  const orders = [...new Set(of.flatMap(({ orderId }) => (orderId === null ? [] : [orderId])))]
  const names = [...new Set(of.map(({ lot }) => lot))]
  const say = (amount: number): string => amountText(desk, { item, amount })
  return names.flatMap((lot, index) => {
    const inLot = (all: readonly { readonly lot: string; readonly amount: number }[]): number =>
      all.filter((one) => one.lot === lot).reduce((sum, one) => sum + one.amount, 0)
    const free = inLot(freeLots(of, item))
    const reserved = orders.reduce((sum, orderId) => sum + inLot(heldLots(of, { orderId, item })), 0)
    const known = lots.find((one) => one.item === item && one.lot === lot)
    if (free + reserved === 0 && lacks === 0) return []
    const short = index === 0 && lacks > 0 ? say(lacks) : ''
    const about = { lot, bin: known?.bin ?? '', certificate: known?.certificate ?? '' }
    return [{ item: itemName(desk, item), ...about, free: say(free), reserved: reserved === 0 ? '' : say(reserved), short }]
  })
}

const kinds = ['short', 'stones', 'vinyl', 'garments', 'other'] as const
type Kind = (typeof kinds)[number]

const kindOf = ({ workshop: { shop } }: Desk, item: string): Kind => {
  if (readGarmentItem(item) !== null) return 'garments'
  if (shop.stones.some(({ id }) => id === item)) return 'stones'
  return shop.vinyl.some(({ id }) => id === item) ? 'vinyl' : 'other'
}

/** The rows of the shelf by kind, each by name; kinds with nothing in them are left out. */
const groupsOf = (reading: Reading, items: readonly string[], lacksOf: (item: string) => number): ShelfView['groups'] => {
  const titles = wordsFor(reading.desk).shelf.kinds
  const all = items.flatMap((item) => {
    const kind = lacksOf(item) > 0 ? 'short' : kindOf(reading.desk, item)
    return rowsOf(reading, item, lacksOf(item)).map((row) => ({ kind, row }))
  })
  return kinds.flatMap((kind) => {
    const rows = all.filter((one) => one.kind === kind).map(({ row }) => row)
    return rows.length === 0 ? [] : [{ kind, title: titles[kind], rows: rows.toSorted((a, b) => a.item.localeCompare(b.item)) }]
  })
}

const shoppingLines = async (desk: Desk): Promise<readonly string[]> =>
  (await shoppingNow(desk)).map(({ item, packs, amount, missing, orderBy }) => {
    const { unit } = supplyOf(desk.workshop.shop)(item)
    const bought = `${packsText(packs, (pack) => amountText(desk, { item, amount: pack * unit }))} (${amountText(desk, { item, amount: missing })})`
    const { orderBy: by, orderNow } = wordsFor(desk).shelf
    const packsWanted = amount > 0 ? bought : ''
    const when = orderBy <= desk.clock.now() ? orderNow(packsWanted) : by(packsWanted, momentOf(desk, orderBy))
    return `${itemName(desk, item)}: ${when}`
  })

/** What lies on the shelf by lot, what is short with the hour to order, what is on its way, and the templates in their boxes. */
export const shelfView = async (desk: Desk): Promise<ShelfView> => {
  const { stock } = desk.store.shop(desk.shopId)
  const [ledger, needs, lots] = await Promise.all([stock.ledger(), stock.needs(), stock.lots()])
  const items = [...new Set([...ledger.map(({ item }) => item), ...needs.map(({ item }) => item)])]
  const lacksOf = (item: string): number =>
    needs.filter((need) => need.item === item).reduce((sum, need) => sum + lacking(ledger, need), 0)
  const words = wordsFor(desk).shelf
  const coming = (await stock.coming()).map(
    (one) => `${itemName(desk, one.item)}: ${words.comingLine(amountText(desk, one), momentOf(desk, one.due))}`,
  )
  const templates = (await stock.templates()).map(({ box, made, brushed }) => words.templateLine(box, made, brushed))
  return {
    head: [words.item, words.short, words.free, words.reserved, words.lot, words.bin, words.certificate],
    groups: groupsOf({ desk, ledger, lots }, items, lacksOf),
    shopping: { title: words.shopping, lines: await shoppingLines(desk) },
    coming: { title: words.coming, lines: coming },
    templates: { title: words.templates, lines: templates },
    forms: await Promise.all(shopActs.map((act) => shopForm(desk, act))),
  }
}
