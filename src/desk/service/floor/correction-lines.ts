import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import type { PressCheck } from '../../../ports/floor-records.ts'
import type { Desk } from '../desk.ts'
import { showOf, wordsFor } from '../say/say-floor.ts'

const machinesOf = (facts: TicketFacts): readonly string[] => [
  ...new Set(facts.press.flatMap(({ machine }) => (machine === null ? [] : [machine]))),
]

/** What the morning's check means for a ticket's presses: a correction, no pressing, or that nobody has probed yet. */
export const correctionLines = (desk: Desk, facts: TicketFacts, checks: readonly PressCheck[]): readonly string[] => {
  const words = wordsFor(desk)
  return machinesOf(facts).flatMap((machine) => {
    const check = checks.find(({ press }) => press === machine)
    const name = machine.replaceAll('-', ' ')
    if (check === undefined) return [words.notChecked(name)]
    if (check.verdict === 'not-fit') return [words.pressShut(name)]
    if (check.correctionTenths === 0) return []
    const sign = check.correctionTenths > 0 ? '+' : '−'
    return [words.correction(name, `${sign}${showOf(desk).swing(Math.abs(check.correctionTenths))}`)]
  })
}
