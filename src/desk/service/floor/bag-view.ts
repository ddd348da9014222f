import type { Bag } from '../../../domain/ticket/bags.ts'
import { bagsOf } from '../../../domain/ticket/bags.ts'
import type { RosterFacts, TicketFacts } from '../../../domain/ticket/facts.ts'
import { tickOf, workSteps } from '../../../domain/ticket/work-steps.ts'
import type { BagView } from '../../../ports/floor-view.ts'
import type { Desk } from '../desk.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { wordsFor } from '../say/say-floor.ts'
import { garmentText } from './garment-text.ts'

const pieceText = (facts: TicketFacts, { garment, size, quantity }: RosterFacts): string =>
  [quantity > 1 ? `${quantity} ×` : '', garmentText(facts, garment), size === 'later' ? '' : size]
    .filter((part) => part !== '')
    .join(' ')

const playerText = (desk: Desk, { name, number, rows }: Bag): string =>
  name === null && number === null
    ? wordsFor(desk).lineNo(rows[0]?.line ?? 0)
    : [name ?? '', number === null ? '' : `#${number}`].filter((part) => part !== '').join(' ')

/** The bags of a ticket by player, with what is in them already. */
export const bagViews = (desk: Desk, life: TicketLife, facts: TicketFacts): readonly BagView[] => {
  const bagging = workSteps(facts).find(({ kind }) => kind === 'bag')
  const isBagged = (line: number): boolean => bagging !== undefined && tickOf(life.ticks, bagging.no, line).state === 'done'
  return bagsOf(facts.roster).map((bag) => ({
    player: playerText(desk, bag),
    garments: bag.rows.map((row) => ({ text: pieceText(facts, row), isBagged: isBagged(row.line) })),
  }))
}
