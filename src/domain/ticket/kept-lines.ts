import type { RosterFacts, TicketFacts } from './facts.ts'
import type { LineState } from './work-steps.ts'

type Work = Pick<TicketFacts, 'roster' | 'layers' | 'garments'>

const markText = ({ marks }: RosterFacts): string =>
  marks
    .map(({ decoration, text }) => `${decoration} ${text}`)
    .toSorted()
    .join('\n')

const isSameWork = (a: RosterFacts, b: RosterFacts): boolean =>
  a.garment === b.garment && a.fit === b.fit && a.size === b.size && a.quantity === b.quantity && markText(a) === markText(b)

/** Whether all pieces are made of the same layers on the same cloth: another material is another work. */
export const isSameMaking = (before: Work, after: Work): boolean => {
  const cloth = ({ garments, layers }: Work): string =>
    JSON.stringify([
      layers,
      garments.map(({ id, colour, fibres, finish, dye, from }) => [id, colour.id, fibres, finish, dye, from]),
    ])
  return cloth(before) === cloth(after)
}

/** How far each line of the later revision is already: what was made for a player whose pieces stay the same stays made. */
export const keptLines = (before: Work, after: Work, stateOf: (line: number) => LineState): ReadonlyMap<number, LineState> => {
  const same = isSameMaking(before, after)
  const left = [...before.roster]
  return new Map(
    after.roster.map((row) => {
      const at = same ? left.findIndex((old) => isSameWork(old, row)) : -1
      const [old] = at < 0 ? [] : left.splice(at, 1)
      return [row.line, old === undefined ? 'not-cut' : stateOf(old.line)]
    }),
  )
}
