import type { ColourShown } from './art.ts'
import type { Language, Show } from './facts.ts'
import { namedMoment } from './moment.ts'
import type { LocalMinute } from './plan-facts.ts'
import { cell, column, table } from './table.ts'
import type { Block, Ticket } from './ticket.ts'
import type { TicketWords } from './words.ts'

/** One line of a price; `text` says in words what is charged for, amounts are minor units of the currency (ISO 4217). */
export type PriceLine = { readonly text: string; readonly quantity: number; readonly unit: number; readonly amount: number }

type SlipFacts = {
  readonly now: LocalMinute
  readonly language: Language
  readonly show: Show
  readonly shop: { readonly name: string; readonly ask: string }
  readonly ticket: string
  readonly revision: number
  readonly team: string
}

/** What the customer pays, as it was shown and signed. */
export type PriceSlipFacts = SlipFacts & {
  readonly currency: string
  readonly minorDigits: number
  readonly lines: readonly PriceLine[]
  readonly total: number
  readonly money: 'none' | 'deposit' | 'paid' | 'order-number' | 'on-account'
  readonly paid: number | null
  readonly reference: string | null
}

/** What the customer is told about wearing and washing. */
export type CareCardFacts = SlipFacts & {
  readonly colours: readonly ColourShown[]
  readonly stones: boolean
  readonly restBeforeWashHours: number
}

/** The ticket's number where there is one, with the revision: the order's own id says nothing to a person. */
const jobOf = ({ ticket, revision }: SlipFacts, words: TicketWords): string =>
  [ticket, words.head.revision(revision)].filter((text) => text !== '').join(' · ')

const whenText = (facts: SlipFacts, words: TicketWords, minute: LocalMinute): string => {
  const moment = namedMoment(minute, words.language)
  return words.at(words.date(moment, facts.show.dateOrder), words.time(moment))
}

/** An amount in minor units with its decimals and its currency's code. */
export const moneyText = (
  amount: number,
  { currency, minorDigits }: Pick<PriceSlipFacts, 'currency' | 'minorDigits'>,
): string => {
  const digits = String(Math.abs(amount)).padStart(minorDigits + 1, '0')
  const whole = digits.slice(0, digits.length - minorDigits)
  const part = minorDigits === 0 ? '' : `.${digits.slice(-minorDigits)}`
  return `${amount < 0 ? '−' : ''}${whole}${part} ${currency}`
}

const paper = (facts: SlipFacts, words: TicketWords, title: string): Omit<Ticket, 'sheets'> => ({
  title: `${title}: ${facts.team}`,
  language: words.language,
  paper: facts.show.paper,
  made: facts.now,
  running: [facts.shop.name, jobOf(facts, words), facts.team].join(' · '),
  foot: words.head.page,
  lacking: words.head.lacking,
})

const text = (value: string, style: 'body' | 'strong' | 'small' = 'body'): Block => ({ kind: 'text', style, text: value })

/** The price slip: the only printed paper with money on it, for the customer alone. */
export const composePriceSlip = (facts: PriceSlipFacts, words: TicketWords): Ticket => {
  const { slip } = words
  const money = (amount: number): string => moneyText(amount, facts)
  const rows = facts.lines.map((line) => [
    cell(line.text),
    cell(String(line.quantity)),
    cell(money(line.unit)),
    cell(money(line.amount)),
  ])
  const total = [cell(slip.total, { bold: true }), cell(''), cell(''), cell(money(facts.total), { bold: true })]
  const columns = [
    column(slip.heads.what, 6),
    column(slip.heads.quantity, 1.2, 'right'),
    column(slip.heads.unit, 2, 'right'),
    column(slip.heads.amount, 2, 'right'),
  ]
  const paid = facts.paid === null ? [] : [text(slip.paid(money(facts.paid), money(facts.total - facts.paid)))]
  const reference = facts.reference === null ? [] : [text(slip.reference(facts.reference))]
  const blocks: readonly Block[] = [
    { kind: 'heading', level: 1, text: slip.price },
    text(facts.team, 'strong'),
    text(`${words.head.order} ${jobOf(facts, words)} · ${whenText(facts, words, facts.now)}`),
    table(columns, [{ heading: null, rows: [...rows, total] }]),
    text(slip.money[facts.money], 'strong'),
    ...paid,
    ...reference,
    text(slip.questions(facts.shop.name, facts.shop.ask), 'small'),
  ]
  return { ...paper(facts, words, slip.price), sheets: [{ title: slip.price, blocks }] }
}

/** The care card that goes into every bag. */
export const composeCareCard = (facts: CareCardFacts, words: TicketWords): Ticket => {
  const { slip, care } = words
  const rest = { title: care.rest(facts.restBeforeWashHours), text: '', answers: [], writes: care.firstWash }
  const lines = [...slip.wash, ...(facts.stones ? slip.stones : [])]
  const blocks: readonly Block[] = [
    { kind: 'heading', level: 1, text: slip.care },
    text(facts.team, 'strong'),
    ...(facts.colours.length === 0 ? [] : [text(slip.colours(words.list(facts.colours.map((colour) => colour.name))))]),
    { kind: 'checks', items: [rest, ...lines.map((line) => ({ title: line, text: '', answers: [], writes: [] }))] },
    text(slip.complaint),
    text(slip.questions(facts.shop.name, facts.shop.ask), 'small'),
  ]
  return { ...paper(facts, words, slip.care), sheets: [{ title: slip.care, blocks }] }
}
