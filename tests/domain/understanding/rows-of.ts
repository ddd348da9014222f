import { openOf, type Played, play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

export type Heard = { readonly rows: readonly string[]; readonly open: readonly string[]; readonly played: Played }

/** What is on the list after the last message, a line as "7 Ana women M" or "men L x5", and what is asked. */
export const heard = async (language: 'en' | 'es', says: readonly string[]): Promise<Heard> => {
  const shop = await starterShop()
  const played = play({ id: 'heard', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const rows = played.composed.order.roster.map(({ number, name, fit, size, quantity }) =>
    [number, name, fit, size, quantity === 1 ? undefined : `x${quantity}`].filter((part) => part !== undefined).join(' '),
  )
  return { rows, open: openOf(played).map(({ about }) => about), played }
}
