import { dryings, faultOwners, spoiledReasons } from '../../../../templates/desk/floor/floor-words.ts'
import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { Gate } from '../../../domain/press/press-plan.ts'
import { type FormAct, isFormAct, type TicketAct } from '../../../domain/ticket/acts.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { gateSubject } from '../../../domain/ticket/gates.ts'
import { workSteps } from '../../../domain/ticket/work-steps.ts'
import { complaintKinds } from '../../../domain/understanding/conversation.ts'
import type { Form, FormField } from '../../../ports/chat.ts'
import type { Remake } from '../../../ports/floor-records.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import { findable, type TicketLife } from '../records/ticket-life.ts'
import { shopLanguage, wordsFor } from '../say/say-floor.ts'
import { itemName } from '../stock/item-name.ts'
import { garmentText } from './garment-text.ts'
import { rowText } from './row-text.ts'
import { stepName } from './step-name.ts'
import { tickDeeds } from './tick.ts'

type Options = FormField['options']
type Field = keyof ReturnType<typeof wordsFor>['fields']

/** Whether an act asks for something to be filled in first; known from its name alone. */
export const needsForm = (act: string): boolean => isFormAct(act)

type Making = { readonly desk: Desk; readonly life: TicketLife; readonly facts: TicketFacts; readonly remakes: readonly Remake[] }

const line = (desk: Desk, name: Field, required: boolean): FormField => ({
  name,
  label: wordsFor(desk).fields[name],
  kind: 'line',
  options: [],
  required,
})
const select = (desk: Desk, name: Field, options: Options): FormField => ({
  name,
  label: wordsFor(desk).fields[name],
  kind: 'select',
  options,
  required: true,
})
const photo = (desk: Desk): FormField => ({ ...line(desk, 'photo', false), kind: 'file' })

const closedOf = ({ life }: Making, code: Gate['code']): readonly Gate[] =>
  life.gates.filter(({ gate, is }) => gate.code === code && is !== 'open').map(({ gate }) => gate)

/** The garments of which this can be found now. */
const garments = (making: Making, act: FormAct): FormField => {
  const gates = findable(making.life).filter((one) => one.act === act)
  const ids = new Set(gates.map(({ gate }) => gate.garment))
  const named = making.facts.garments.filter(({ id }) => ids.size === 0 || ids.has(id))
  return select(
    making.desk,
    'garment',
    named.map(({ id }) => ({ value: id, label: garmentText(making.facts, id) })),
  )
}

const subjects = (making: Making, code: Gate['code']): FormField =>
  select(
    making.desk,
    'subject',
    [...new Map(closedOf(making, code).map((gate) => [gate.subject, gate])).values()].map((gate) => ({
      value: gate.subject,
      label: gateSubject(making.facts, ticketWords[shopLanguage(making.desk)], gate),
    })),
  )

const results = (desk: Desk, ...codes: readonly string[]): FormField =>
  select(
    desk,
    'result',
    codes.map((value) => ({ value, label: wordsFor(desk).results[value] ?? value })),
  )

const gateFields = (
  making: Making,
  act: Exclude<FormAct, 'tick' | 'spoiled' | 'remade' | 'short' | 'ask' | 'complaint'>,
): readonly FormField[] => {
  const { desk } = making
  switch (act) {
    case 'count-in':
      return [
        garments(making, 'count-in'),
        line(desk, 'missing', true),
        line(desk, 'faults', false),
        line(desk, 'label', false),
        line(desk, 'bin', false),
      ]
    case 'strings':
      return [garments(making, 'strings'), results(desk, 'no-strings', 'strings')]
    case 'water-drops':
      return [garments(making, 'water-drops'), line(desk, 'drops', true)]
    case 'test-press':
      return [garments(making, 'test-press'), results(desk, 'held', 'failed')]
    case 'bleed-test':
      return [garments(making, 'bleed-test'), results(desk, 'pressed', 'clean', 'bled', 'skipped'), line(desk, 'signedBy', false)]
    case 'certificate':
      return [subjects(making, 'certificate'), line(desk, 'certificate', true)]
    case 'coupon':
      return [subjects(making, 'coupon'), line(desk, 'hole', true)]
    case 'first-piece':
      return [garments(making, 'first-piece'), photo(desk)]
    case 'second-look':
      return [garments(making, 'second-look'), results(desk, 'right', 'wrong'), line(desk, 'note', false)]
  }
}

const tickFields = ({ desk, facts }: Making): readonly FormField[] => {
  const words = wordsFor(desk)
  const steps = workSteps(facts).map((step) => ({ value: String(step.no), label: stepName(desk, facts, step) }))
  const deeds = tickDeeds.map((value) => ({ value, label: words.deeds[value] }))
  return [select(desk, 'step', steps), select(desk, 'deed', deeds), line(desk, 'lines', false)]
}

const rows = ({ desk, facts }: Making): Options =>
  facts.roster.map((row) => ({ value: String(row.line), label: rowText(desk, facts, row) }))

const spoiledFields = (making: Making): readonly FormField[] => {
  const { desk } = making
  const words = wordsFor(desk)
  return [
    select(desk, 'line', rows(making)),
    line(desk, 'quantity', false),
    select(
      desk,
      'reason',
      spoiledReasons.map((value) => ({ value, label: words.reasons[value] })),
    ),
    select(
      desk,
      'whose',
      faultOwners.map((value) => ({ value, label: words.whose[value] })),
    ),
    photo(desk),
  ]
}

/** How long it was worn is known from the hand-over and not asked. */
const complaintFields = (making: Making): readonly FormField[] => {
  const { desk } = making
  const words = wordsFor(desk)
  return [
    select(desk, 'line', rows(making)),
    select(
      desk,
      'kind',
      complaintKinds.map((value) => ({ value, label: words.complaints[value] })),
    ),
    line(desk, 'washes', true),
    select(
      desk,
      'drying',
      dryings.map((value) => ({ value, label: words.dryings[value] })),
    ),
    photo(desk),
  ]
}

const remadeFields = ({ desk, facts, remakes }: Making): readonly FormField[] => {
  const reasons: { readonly [reason: string]: string } = wordsFor(desk).reasons
  const open = remakes.filter(({ doneAt }) => doneAt === null)
  const label = ({ line: of, quantity, reason }: Remake): string => {
    const row = facts.roster.find((one) => one.line === of)
    return `${row === undefined ? of : rowText(desk, facts, { ...row, quantity })}: ${reasons[reason] ?? reason}`
  }
  return [
    select(
      desk,
      'remake',
      open.map((remake) => ({ value: remake.remakeId, label: label(remake) })),
    ),
  ]
}

/** Every material of the ticket, stones first. */
const shortFields = ({ desk, facts }: Making): readonly FormField[] => {
  const materials = [...facts.stones, ...facts.vinyl].map(({ material }) => material)
  const options = [...new Set(materials)].map((value) => ({ value, label: itemName(desk, value) }))
  return [select(desk, 'subject', options), line(desk, 'note', false)]
}

const fieldsOf = (making: Making, act: TicketAct): readonly FormField[] => {
  if (act === 'tick') return tickFields(making)
  if (act === 'spoiled') return spoiledFields(making)
  if (act === 'complaint') return complaintFields(making)
  if (act === 'remade') return remadeFields(making)
  if (act === 'short') return shortFields(making)
  if (act === 'ask') return [{ ...line(making.desk, 'note', true), kind: 'lines' }]
  if (act === 'collected') return [line(making.desk, 'collector', false)]
  return isFormAct(act) ? gateFields(making, act) : []
}

/** What must be filled in for an act on a ticket, with the choices of now; null when the act asks for nothing. */
export const ticketForm = async (desk: Desk, life: TicketLife, act: TicketAct): Promise<Form | null> => {
  const { facts } = ticketFrom(life.ticket.body)
  const remakes = act === 'remade' ? await desk.store.shop(desk.shopId).floor.remakesOf(life.order.orderId) : []
  const fields = fieldsOf({ desk, life, facts, remakes }, act)
  if (fields.length === 0) return null
  const words = wordsFor(desk)
  const { ticketId, revision } = life.ticket
  return { id: `t:${ticketId}:${act}:${revision}`, title: words.acts[act], fields, submit: words.save }
}
