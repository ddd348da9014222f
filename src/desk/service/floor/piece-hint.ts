import type { GateState } from '../../../domain/press/gate-state.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { pieceWait } from '../../../domain/ticket/first-piece.ts'
import type { Desk } from '../desk.ts'
import type { TicketLife } from '../records/ticket-life.ts'
import { wordsFor } from '../say/say-floor.ts'
import { whichGarment } from './garment-text.ts'

type At = { readonly life: TicketLife; readonly facts: TicketFacts }

/** What is to be done for the first pieces among some gates, each once, with its garment where a ticket has several kinds. */
export const pieceHints = (desk: Desk, { life, facts }: At, gates: readonly GateState[]): readonly string[] => {
  const hints = gates.flatMap((state) => {
    const wait = pieceWait(life, state)
    if (wait === null) return []
    const which = whichGarment(facts, state.gate.garment)
    return [[which, wordsFor(desk).firstPiece[wait]].filter((part) => part !== '').join(': ')]
  })
  return [...new Set(hints)]
}
