import type { GateState } from '../press/gate-state.ts'
import { beforeFirstPiece, firstPieceLine, type Work } from './made.ts'
import type { WorkKind } from './work-steps.ts'

/**
 * What a first piece waits for that is not signed. `make`: steps of the garment that goes ahead; `alone`: the same by hand, without a
 * tick, where every line is of several garments; `write`: it is made and not written down; `sign`: a second person; `again`: it was
 * found wrong.
 */
export type PieceWait = 'make' | 'alone' | 'write' | 'sign' | 'again'

/** What the first piece of a gate waits for; null for a gate that is passed, and for one of another kind. */
export const pieceWait = (work: Work, { gate, is, why }: GateState): PieceWait | null => {
  if (gate.code !== 'first-piece' || is === 'open') return null
  if (why === 'wants-second') return 'sign'
  if (beforeFirstPiece(work, gate.garment).length > 0) return 'make'
  if (why === 'failed') return 'again'
  return firstPieceLine(work, gate.garment) === null ? 'alone' : 'write'
}

const afterFirst: readonly WorkKind[] = ['press', 'inspect', 'bag']

/**
 * Lines that wait at a kind of step for a first piece of their garment: at the press all but the one that goes ahead, at the look and
 * at the bags that one, too, until it is signed. Cutting, weeding and brushing wait for none.
 */
export const waitingForPiece = (work: Work, gates: readonly GateState[], kind: WorkKind): ReadonlySet<number> => {
  if (!afterFirst.includes(kind)) return new Set()
  const waiting = gates.filter((state) => pieceWait(work, state) !== null)
  const lines = waiting.flatMap(({ gate: { garment } }) => {
    const ahead = kind === 'press' ? firstPieceLine(work, garment) : null
    return work.roster.filter((row) => (garment === null || row.garment === garment) && row.line !== ahead)
  })
  return new Set(lines.map(({ line }) => line))
}
