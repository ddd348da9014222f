import { ticketWords } from '../../../../templates/ticket/words.ts'
import type { PressStep } from '../../../domain/press/press-plan.ts'
import type { TicketAct } from '../../../domain/ticket/acts.ts'
import { byName } from '../../../domain/ticket/bags.ts'
import type { TicketFacts } from '../../../domain/ticket/facts.ts'
import { pieceWait, waitingForPiece } from '../../../domain/ticket/first-piece.ts'
import { otherPresses } from '../../../domain/ticket/heat.ts'
import { tickOf, type WorkStep, workSteps } from '../../../domain/ticket/work-steps.ts'
import type { PressCheck } from '../../../ports/floor-records.ts'
import type { PressView, StepView } from '../../../ports/floor-view.ts'
import type { ShopStore } from '../../../ports/store.ts'
import type { Desk } from '../desk.ts'
import { ticketFrom } from '../records/records.ts'
import { closedFor, holderOf, openActs, openForms, type TicketLife } from '../records/ticket-life.ts'
import { ticketName } from '../records/ticket-names.ts'
import { deskWordsFor, localOf, shopLanguage, showOf, wordsFor } from '../say/say-floor.ts'
import { bagViews } from './bag-view.ts'
import { gateNames } from './gate-name.ts'
import { pieceHints } from './piece-hint.ts'
import { hoursText, type PromisedHour, promisedHours } from './promised-hour.ts'
import { readLife } from './read-life.ts'
import { rowText } from './row-text.ts'
import { stepName } from './step-name.ts'
import { ticketForm } from './ticket-form.ts'
import { gateLine, weightOf } from './ticket-message.ts'
import { benchWarnings } from './warnings.ts'

/** The figures of a step with the day's correction in them, as they are set at the machine. */
const figuresOf = (desk: Desk, press: PressStep, checks: readonly PressCheck[]): readonly string[] => {
  const words = wordsFor(desk)
  const correction = checks.find((check) => check.press === press.machine)?.correctionTenths ?? 0
  const said = (word: string): string => words.pressWords[word] ?? word
  return [
    press.tenthsC === null ? '' : showOf(desk).temperature(press.tenthsC + correction),
    press.seconds === null ? '' : `${press.seconds} s`,
    press.pressure === null ? '' : [said(press.pressure.word), press.pressure.gauge ?? ''].join(' ').trim(),
    press.peel === null ? '' : said(press.peel),
    said(press.inside === 'none' ? 'none' : press.inside),
    said(press.cover),
    press.machine?.replaceAll('-', ' ') ?? '',
  ].filter((one) => one !== '')
}

const cautionsOf = (desk: Desk, facts: TicketFacts, press: PressStep): readonly string[] => {
  const words = ticketWords[shopLanguage(desk)]
  return [
    ...otherPresses({ facts, words }, press),
    ...press.cautions.map((code) => words.steps.cautions[code]),
    ...press.lookFor.map((code) => words.steps.lookFor[code]),
  ]
}

type Viewing = {
  readonly desk: Desk
  readonly life: TicketLife
  readonly facts: TicketFacts
  readonly checks: readonly PressCheck[]
}

const gateViews = (desk: Desk, facts: TicketFacts, { gates }: TicketLife): PressView['gates'] => {
  const lines = new Map(gates.map((gate) => [gateLine(desk, facts, gate), gate.is === 'open']))
  return [...lines].map(([text, isOpen]) => ({ text, isOpen }))
}

/** What must be found out before a step of the cutter or the press is done for any of its garments. */
const waitsFor = ({ desk, life, facts }: Viewing, { kind, lines }: WorkStep): readonly string[] => {
  if (kind !== 'cut' && kind !== 'press') return []
  const garments = new Set(life.roster.filter(({ line }) => lines.includes(line)).map(({ garment }) => garment))
  const from = kind === 'cut' ? 'cutting' : 'pressing'
  const closed = [...garments].flatMap((garment) => closedFor(life, { from, garment }).map(({ gate }) => gate))
  return closed.length === 0 ? [] : [wordsFor(desk).first(gateNames(desk, facts, closed))]
}

/** The first pieces that a step waits for with garments of its own. */
const piecesOf = ({ life }: Viewing, { kind }: WorkStep, open: readonly number[]): TicketLife['gates'] => {
  if (kind !== 'press' && kind !== 'inspect') return []
  const garments = new Set(life.roster.filter(({ line }) => open.includes(line)).map(({ garment }) => garment))
  return life.gates.filter(
    (state) => pieceWait(life, state) !== null && (state.gate.garment === null || garments.has(state.gate.garment)),
  )
}

/** Something is to be done about a first piece by whoever is at the ticket: not by the second person alone. */
const isInHand = ({ life }: Viewing, state: TicketLife['gates'][number]): boolean =>
  ['write', 'alone', 'again'].includes(pieceWait(life, state) ?? '')

const stepView = (viewing: Viewing, step: WorkStep): StepView => {
  const { desk, life, facts, checks } = viewing
  const rows = step.kind === 'bag' ? [...facts.roster].sort(byName) : facts.roster
  const waiting = waitingForPiece(life, life.gates, step.kind)
  const tiles = rows.flatMap((row) => {
    const { line } = row
    const { state, by } = tickOf(life.ticks, step.no, line)
    const isChosen = state !== 'done' && !waiting.has(line)
    return step.lines.includes(line) ? [{ line, label: rowText(desk, facts, row), state, by, isChosen }] : []
  })
  const open = tiles.flatMap(({ line, state }) => (state === 'done' ? [] : [line]))
  const pieces = piecesOf(viewing, step, open)
  return {
    no: step.no,
    title: stepName(desk, facts, step),
    figures: step.press === null ? [] : figuresOf(desk, step.press, checks),
    cautions: [
      ...waitsFor(viewing, step),
      ...pieceHints(desk, viewing, pieces),
      ...(step.press === null ? [] : cautionsOf(desk, facts, step.press)),
    ],
    seconds: step.press?.seconds ?? null,
    tiles,
    isDone: open.length === 0,
    isNext: tiles.some(({ isChosen }) => isChosen) || pieces.some((state) => isInHand(viewing, state)),
  }
}

/** Why nobody works from a ticket any more; null for one that is open, or handed over. */
const notThis = async (desk: Desk, shop: ShopStore, { ticket, order }: TicketLife): Promise<string | null> => {
  const words = wordsFor(desk).notThis
  if (order.state === 'cancelled' || ticket.state === 'cancelled') return words.cancelled
  if (ticket.state === 'closed') return words.closed
  if (ticket.state !== 'replaced') return null
  const newer = (await shop.tickets.ofOrder(ticket.orderId)).find(({ revision }) => revision === ticket.replacedBy)
  return words.replaced(newer === undefined ? `r${ticket.replacedBy}` : `${ticketName(newer.number)} r${newer.revision}`)
}

type Looking = Viewing & { readonly promised: PromisedHour | null }

/** What is to be heeded of a ticket, and who it is handed to once it is bagged. */
const warningsOf = ({ desk, life, checks, promised }: Looking): readonly string[] => {
  const { collects } = ticketFrom(life.ticket.body).facts.people
  const isHandedTo = life.order.state === 'bagged' && collects !== null
  return isHandedTo
    ? [wordsFor(desk).handTo(collects)]
    : benchWarnings(desk, life, { checks, changing: promised?.changing ?? null })
}

const headOf = ({ desk, life, facts, promised }: Looking): Pick<PressView, 'ticketId' | 'title' | 'needed' | 'holder'> => ({
  ticketId: life.ticket.ticketId,
  title: deskWordsFor(desk).ticketFor(`${ticketName(life.ticket.number)} r${life.ticket.revision}`, facts.team),
  needed: hoursText(desk, facts, promised),
  holder: holderOf(life.findings)?.by ?? null,
})

const nothingToDo = { gates: [], steps: [], bags: [], tick: null, acts: [], forms: [] } as const

const atWork = async ({
  desk,
  life,
  facts,
  checks,
  promised,
}: Looking): Promise<Omit<PressView, keyof ReturnType<typeof headOf>>> => {
  const forms: readonly TicketAct[] = openForms(life).filter((act) => act !== 'tick')
  const acts = openActs(life)
  const wanted = [...forms, ...(acts.includes('collected') ? (['collected'] as const) : [])]
  const made = await Promise.all(wanted.map((act) => ticketForm(desk, life, act)))
  const { ticketId, revision } = life.ticket
  return {
    gates: gateViews(desk, facts, life),
    warnings: warningsOf({ desk, life, facts, checks, promised }),
    steps: workSteps(facts).map((step) => stepView({ desk, life, facts, checks }, step)),
    bags: bagViews(desk, life, facts),
    tick: openForms(life).includes('tick') ? `t:${ticketId}:tick:${revision}` : null,
    acts: acts.map((act) => ({
      id: `t:${ticketId}:${act}:${revision}`,
      label: wordsFor(desk).acts[act],
      weight: weightOf(act),
    })),
    forms: made.filter((form) => form !== null),
  }
}

/**
 * A ticket as it is worked at the press: steps with tiles, gates, warnings of the day, and what can be filled in. One that nobody works
 * from any more, to which an old paper still leads, says that and nothing else.
 */
export const pressView = async (desk: Desk, ticketId: string): Promise<PressView | null> => {
  const shop = desk.store.shop(desk.shopId)
  const life = await readLife(desk, shop, ticketId)
  if (life === null) return null
  const { facts } = ticketFrom(life.ticket.body)
  const [checks, promises, over] = await Promise.all([
    shop.floor.pressChecks(localOf(desk, desk.clock.now()).slice(0, 10)),
    promisedHours(desk, shop),
    notThis(desk, shop, life),
  ])
  const looking = { desk, life, facts, checks, promised: promises.get(life.order.orderId) ?? null }
  const head = headOf(looking)
  return over === null ? { ...head, ...(await atWork(looking)) } : { ...head, ...nothingToDo, warnings: [over] }
}
