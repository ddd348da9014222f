import type { Minutes } from '../../src/domain/units/units.ts'
import type { ShopStore } from '../../src/ports/store.ts'

type Of = { readonly orderId: string; readonly ticketId: string; readonly word: string; readonly at: Minutes }

/** One row of everything the floor keeps of a shop; `word` stands wherever a person wrote something. */
export const fillFloor = async ({ stock, floor }: ShopStore, { orderId, ticketId, word, at }: Of): Promise<void> => {
  await stock.want(orderId, [{ item: word, amount: 1, due: at }])
  await stock.putLot({ item: 'stone', lot: 'lot-1', certificate: word, grossMilligrams: null, bin: word })
  await stock.order({ comingId: 'coming-1', item: word, amount: 1, due: at, by: word })
  await stock.putTemplate({ key: 'a-template', box: word, made: '2026-11-25', brushed: 1 })
  const readings = [1_600, 1_590, 1_590, 1_600, 1_590]
  const morning = { day: '2026-11-25', setTenths: 1_600, readings, correctionTenths: 10, verdict: 'corrected' } as const
  await floor.checkPress({ press: 'press-1', ...morning, by: word, at })
  const remake = { line: 1, quantity: 1, reason: 'scorched', whose: 'shop', photo: null, cost: 0, by: word, at, doneAt: null }
  await floor.addRemake({ remakeId: 'remake-1', orderId, ticketId, ...remake })
}
