import type { PieceStones } from '../../../domain/layout/layout.ts'
import type { Ids } from '../../../ports/clock.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { pieceFrom } from './records.ts'

/** Pieces that an order needs and the store knows from earlier ones, by content key. */
export const knownPieces = async (shop: ShopStore, ids: Ids, keys: readonly string[]): Promise<Map<string, PieceStones>> => {
  const kept = await shop.pieces.read(keys.map(ids.hash))
  return new Map(
    keys.flatMap((key) => {
      const body = kept.get(ids.hash(key))
      return body === undefined ? [] : [[key, pieceFrom(body)] as const]
    }),
  )
}

type Use = { readonly orderId: string; readonly pieces: ReadonlyMap<string, PieceStones>; readonly keys: readonly string[] }

/** Keeps an order's pieces, new ones too, for as long as an order uses them: a joined name is gone with its people. */
export const keepPieces = async (shop: ShopStore, ids: Ids, { orderId, pieces, keys }: Use): Promise<void> => {
  const bodies = keys.flatMap((key) => {
    const piece = pieces.get(key)
    return piece === undefined ? [] : [{ hash: ids.hash(key), body: { version: 1, piece } }]
  })
  await shop.pieces.put(orderId, bodies)
}
