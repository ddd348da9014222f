import * as z from 'zod'
import { dryings } from '../../../../templates/desk/floor/floor-words.ts'
import { ok } from '../../../domain/result/result.ts'
import type { RosterFacts } from '../../../domain/ticket/facts.ts'
import { tickOf, workSteps } from '../../../domain/ticket/work-steps.ts'
import { complaintKinds } from '../../../domain/understanding/conversation.ts'
import { ticketName } from '../records/ticket-names.ts'
import { showOf, tellOwner, wordsFor } from '../say/say-floor.ts'
import { type Answered, type Deed, readValues } from './deed.ts'
import { pressSetting } from './press-setting.ts'
import { oneOf, rowText } from './row-text.ts'

const complaintSchema = z.object({
  line: z.coerce.number().int().positive(),
  kind: z.enum(complaintKinds),
  washes: z.coerce.number().int().min(0).max(500),
  drying: z.enum(dryings),
  photo: z.string().max(200).default(''),
})

const dayMinutes = 1_440

/** Who put a line through its press steps; whoever checked the whole ticket where nobody ticked it. */
const pressedBy = ({ life, facts }: Deed, { line }: RosterFacts): string => {
  const steps = workSteps(facts).filter(({ kind, lines }) => kind === 'press' && lines.includes(line))
  const names = steps.map(({ no }) => tickOf(life.ticks, no, line).by)
  return [...new Set(names.filter((name) => name !== null))].join(', ')
}

/** Lots of the ticket's vinyl and stones, as they were picked. */
const lotsOf = ({ facts }: Deed): string =>
  [...facts.vinyl, ...facts.stones].map(({ material, lot }) => `${material.replaceAll('-', ' ')} ${lot ?? ''}`.trim()).join(', ')

/** How the garment was made, for whoever decides what the complaint is worth. */
const madeLines = (deed: Deed, row: RosterFacts): readonly string[] => {
  const { desk, facts, life } = deed
  const { made } = wordsFor(desk).ownerNote
  const { tenthsC, machine } = pressSetting(facts)
  const seconds = facts.press.find((step) => step.action === 'press' && step.tenthsC === tenthsC)?.seconds ?? null
  const setting = [showOf(desk).temperature(tenthsC), seconds === null ? '' : `${seconds} s`, machine.replaceAll('-', ' ')]
  const signedBy = life.findings.findLast(({ code }) => code === 'second-look')?.by ?? null
  return [
    made.pressed(setting.filter((part) => part !== '').join(', '), pressedBy(deed, row)),
    made.lots(lotsOf(deed)),
    ...(signedBy === null ? [] : [made.signed(signedBy)]),
    made.decide,
  ]
}

/**
 * A garment that came back from the wash: whose, what happened, how long it was worn, how it was washed. It is a record and promises
 * nothing; the owner sees how the garment was made and decides.
 */
export const noteComplaint = async (deed: Deed): Answered => {
  const read = readValues(deed, complaintSchema)
  if (!read.ok) return ok(read.said)
  const { desk, shop, life, facts, act, by } = deed
  const words = wordsFor(desk)
  const row = facts.roster.find(({ line }) => line === read.value.line)
  if (row === undefined) return ok(words.badForm(words.fields.line))
  const { line, kind, washes, drying, photo } = read.value
  const at = desk.clock.now()
  const days = Math.floor((at - (life.order.handedOverAt ?? at)) / dayMinutes)
  const record = { line, kind, days, washes, drying, photo: photo === '' ? null : photo }
  await shop.tickets.find(life.ticket.ticketId, { code: act, facts: record, by: by.name, at })
  const note = words.ownerNote
  const what = note.complaint({
    ticket: ticketName(life.ticket.number),
    line: rowText(desk, facts, oneOf(row)),
    kind: words.complaints[kind],
  })
  await tellOwner(desk, shop, {
    nonce: `complaint-${life.ticket.ticketId}-${life.findings.length}`,
    text: [what, note.worn(days, washes, words.dryings[drying]), ...madeLines(deed, row)].join('\n'),
  })
  return ok(null)
}
