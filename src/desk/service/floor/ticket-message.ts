import type { GateState } from '../../../domain/press/gate-state.ts'
import { isFormAct, isPlainAct, type TicketAct } from '../../../domain/ticket/acts.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { tickOf, type WorkKind, workKinds, workSteps } from '../../../domain/ticket/work-steps.ts'
import type { Action, Block, Message } from '../../../ports/chat.ts'
import type { PressCheck } from '../../../ports/floor-records.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Finding, StoredTicket } from '../../../ports/work-records.ts'
import { type Desk, shopChannel } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import { openActs, openForms, type TicketLife } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { deskWordsFor, hourOf, localOf, momentOf, shopLanguage, wordsFor } from '../say/say-floor.ts'
import { messageWith } from '../say/say-message.ts'
import { foundText } from './found-text.ts'
import { gateName } from './gate-name.ts'
import { hoursText, type PromisedHour, promisedHours } from './promised-hour.ts'
import { benchWarnings } from './warnings.ts'

/** What leads on stands out; what gives the ticket away or lets it rest does not. */
export const weightOf = (act: TicketAct): Action['weight'] =>
  ['take', 'start', 'checked', 'bagged', 'collected', 'seen', 'resume'].includes(act) ? 'main' : 'plain'

/** A ticket is begun by the first tick of a step, or by the one press that ticks all its cutting. */
const isBegunByStep = ({ facts }: Finding): boolean => typeof facts === 'object' && facts !== null && 'step' in facts

const doneLine = (desk: Desk, facts: TicketFacts, finding: Finding): readonly Block[] => {
  const words = wordsFor(desk)
  const hour = hourOf(desk, finding.at)
  if (finding.code === 'start' && !isBegunByStep(finding))
    return [{ kind: 'text', text: words.allCut(finding.by, hour), tone: 'good' }]
  if (isPlainAct(finding.code)) return [{ kind: 'text', text: words.done[finding.code](finding.by, hour), tone: 'good' }]
  if (!isFormAct(finding.code)) return []
  const text = words.found[finding.code](foundText(desk, facts, finding), finding.by, hour)
  return [{ kind: 'text', text, tone: 'plain' }]
}

/** Each gate with how it stands; a wait says when to look. */
export const gateLine = (desk: Desk, facts: TicketFacts, { gate, why, lookAt }: GateState): string => {
  const words = wordsFor(desk)
  const wait = lookAt === null || why === 'passed' ? '' : `, ${words.lookAt(momentOf(desk, lookAt))}`
  return `${gateName(desk, facts, gate)}: ${words.gateIs[why]}${wait}`
}

const progressOf = (desk: Desk, facts: TicketFacts, { ticks }: TicketLife): readonly string[] => {
  const steps = workSteps(facts)
  const of = (kind: WorkKind) =>
    steps.filter((step) => step.kind === kind).flatMap((step) => step.lines.map((line) => tickOf(ticks, step.no, line).state))
  return workKinds.flatMap((kind) => {
    const states = of(kind)
    const through = states.filter((state) => state === 'done').length
    return states.length === 0 || through === 0
      ? []
      : [wordsFor(desk).progress(wordsFor(desk).steps[kind], through, states.length)]
  })
}

const throwAwayBlocks = (desk: Desk, { throwAway }: TicketFacts): readonly Block[] => {
  if (throwAway.length === 0) return []
  const words = wordsFor(desk)
  const items = throwAway.map(({ line, place, text }) => words.throwLine(line, place, text))
  return [
    { kind: 'text', text: words.throwAway, tone: 'caution' },
    { kind: 'list', title: null, items },
  ]
}

type Around = { readonly bytes: number; readonly checks: readonly PressCheck[]; readonly promised: PromisedHour | null }

const lists = (desk: Desk, life: TicketLife, { promised }: Around): readonly Block[] => {
  const { facts } = ticketFrom(life.ticket.body)
  const progress = progressOf(desk, facts, life)
  const pieces = facts.roster.reduce((sum, row) => sum + row.quantity, 0)
  const collector =
    life.order.state === 'bagged' && facts.people.collects !== null ? [wordsFor(desk).handTo(facts.people.collects)] : []
  return [
    {
      kind: 'list',
      title: hoursText(desk, facts, promised),
      items: [deskWordsFor(desk).pieces(pieces), ...collector],
    },
    ...(life.gates.length === 0
      ? []
      : [
          {
            kind: 'list',
            title: deskWordsFor(desk).gates,
            items: [...new Set(life.gates.map((gate) => gateLine(desk, facts, gate)))],
          } as const,
        ]),
    ...(progress.length === 0 ? [] : [{ kind: 'list', title: null, items: progress } as const]),
  ]
}

/** What stands in the bench channel: whose, when, how many, the gates, the paper, what was done with it and what can be. */
const ticketMessage = (desk: Desk, life: TicketLife, around: Around): Message => {
  const { bytes, checks, promised } = around
  const { ticket, findings } = life
  const { facts, pdf, papers = [] } = ticketFrom(ticket.body)
  const words = wordsFor(desk)
  const name = ticketName(ticket.number)
  const warnings = benchWarnings(desk, life, { checks, changing: promised?.changing ?? null }).map(
    (text): Block => ({ kind: 'text', text, tone: 'caution' }),
  )
  const acts: readonly TicketAct[] = [...openActs(life), ...openForms(life)]
  return messageWith(shopLanguage(desk), {
    blocks: [
      { kind: 'text', text: deskWordsFor(desk).ticketFor(`${name} r${ticket.revision}`, facts.team), tone: 'plain' },
      ...lists(desk, life, around),
      ...throwAwayBlocks(desk, facts),
      ...warnings,
      ...findings.flatMap((finding) => doneLine(desk, facts, finding)),
    ],
    file: { file: pdf, name: `${name}-${ticket.revision}.pdf`, mime: 'application/pdf', bytes },
    papers,
    actions: acts.map((act) => ({
      id: `t:${ticket.ticketId}:${act}:${ticket.revision}`,
      label: words.acts[act],
      weight: weightOf(act),
    })),
  })
}

type Put = 'posted' | 'edited' | 'already-there'

/** What the message tells of the world around a ticket: its file, what the presses showed today, and its promise. */
export const readAround = async (
  desk: Desk,
  shop: ShopStore,
  { body, orderId }: Pick<StoredTicket, 'body' | 'orderId'>,
): Promise<Around> => {
  const [file, checks, promises] = await Promise.all([
    body === null ? null : shop.files.mark(shopChannel('bench'), ticketFrom(body).pdf),
    shop.floor.pressChecks(localOf(desk, desk.clock.now()).slice(0, 10)),
    promisedHours(desk, shop),
  ])
  return { bytes: file?.size ?? 0, checks, promised: promises.get(orderId) ?? null }
}

type WithAround = { readonly life: TicketLife; readonly around: Around }

/** Posts the ticket's message, or edits it in place. */
export const putWith = async (desk: Desk, shop: ShopStore, { life, around }: WithAround): Promise<Put> => {
  const channel = shopChannel('bench')
  const body = ticketMessage(desk, life, around)
  const { outcome } = await shop.messages.put({ channel, nonce: life.ticket.ticketId, by: 'bot', body })
  await shop.tell('channel', channel)
  return outcome
}

/** The same with what is true around it now. */
export const putTicketMessage = async (desk: Desk, shop: ShopStore, life: TicketLife): Promise<Put> =>
  putWith(desk, shop, { life, around: await readAround(desk, shop, life.ticket) })
