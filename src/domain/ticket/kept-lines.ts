import type { GarmentFacts, RosterFacts, TicketFacts } from './facts.ts'
import type { LineState } from './work-steps.ts'

type Work = Pick<TicketFacts, 'roster' | 'layers' | 'garments'>

const markText = ({ marks }: RosterFacts): string =>
  marks
    .map(({ decoration, text }) => `${decoration} ${text}`)
    .toSorted()
    .join('\n')

const isSameWork = (a: RosterFacts, b: RosterFacts): boolean =>
  a.garment === b.garment && a.fit === b.fit && a.size === b.size && a.quantity === b.quantity && markText(a) === markText(b)

/** What a garment is, however many there are of it. */
const kindText = ({ id, name, kind, colour, fibres, knit, finish, dye, features, from }: GarmentFacts): string =>
  JSON.stringify([id, name, kind, colour.id, fibres, knit, finish, dye, features, from])

/** Whether all pieces are made of the same layers on the same garments: another material or another cut is another work. */
export const isSameMaking = (before: Work, after: Work): boolean => {
  const cloth = ({ garments, layers }: Work): string => JSON.stringify([layers, garments.map(kindText)])
  return cloth(before) === cloth(after)
}

/** Whether every garment of this id was in the door before: the same kind, and of no size more than there were. */
export const isAllKnown = (before: Work, after: Work, id: string): boolean => {
  const was = before.garments.find((garment) => garment.id === id)
  const is = after.garments.find((garment) => garment.id === id)
  if (was === undefined || is === undefined || kindText(was) !== kindText(is)) return false
  const wereOf = ({ fit, size }: GarmentFacts['sizes'][number]): number =>
    was.sizes.find((one) => one.fit === fit && one.size === size)?.quantity ?? 0
  return is.sizes.every((one) => one.quantity <= wereOf(one))
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
