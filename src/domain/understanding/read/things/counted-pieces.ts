import type { Draft, Player } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { addCounted } from '../list/merge-players.ts'
import { addPlayers } from '../list/table.ts'
import type { Counted } from '../list/tally.ts'
import type { Term } from '../text/lexicon.ts'
import { garmentIds } from './hear-garment.ts'

const countedGarment = (draft: Draft, terms: readonly Term[], counted: Counted): string | undefined => {
  const ids = Object.keys(draft.garments)
  const term = terms.find((one) => one.from === counted.garment)
  if (term?.meaning.kind !== 'garment') return undefined
  const id = garmentIds[term.meaning.id]
  return ids.includes(id) || ids.length === 0 ? id : undefined
}

/** Pieces counted by size as lines of the tally, or as players where the figures can only be their numbers. */
export const countedPatches = (
  draft: Draft,
  things: Draft,
  { terms, counted }: { terms: readonly Term[]; counted: readonly Counted[] },
): readonly Patch[] => {
  const several = Object.keys(things.garments).length > 1
  const players = counted.map((one): Player => {
    const garment = countedGarment(things, terms, one)
    const fit = one.fit === undefined ? {} : { fit: one.fit }
    return { size: one.size, quantity: one.quantity, ...fit, ...(garment === undefined || !several ? {} : { garment }) }
  })
  return areNumbers(draft, things, players) ? addPlayers(draft.rows, players.map(numbered)) : addCounted(draft, players)
}

const numbered = ({ quantity, ...player }: Player): Player => ({ ...player, number: String(quantity ?? 1) })

/** "22 L, 7 M, 15 XL, 30 M": where numbers are put on and a size stands twice, the figures are the players' numbers. */
const areNumbers = (draft: Draft, things: Draft, players: readonly Player[]): boolean => {
  const worn = Object.values(things.marks).some(({ content, wanted }) => content === 'number' && wanted !== false)
  const figures = players.map(({ quantity }) => quantity ?? 1)
  const sizes = new Set(players.map(({ fit, size }) => `${fit ?? ''} ${size ?? ''}`))
  const said = Object.values(things.garments).map(({ count }) => count ?? draft.count)
  const sum = figures.reduce((all, one) => all + one, 0)
  const repeated = players.length > 2 && sizes.size < players.length && new Set(figures).size === figures.length
  return worn && repeated && Math.max(...figures) > 9 && !said.includes(sum) && Object.keys(draft.tally).length === 0
}
