import type { WhyCode } from '../press/step-codes.ts'
import type { ProblemSaid } from './facts.ts'
import { runsText } from './figures.ts'
import { once, type Scene, shortWhen, whenText } from './names.ts'
import { cell, column, table } from './table.ts'
import type { Block, Sheet } from './ticket.ts'
import type { TicketWords } from './words.ts'

/** A span of minutes in days, hours and minutes. */
export const spanText = (words: TicketWords, minutes: number): string =>
  words.last.span(Math.floor(minutes / 1440), Math.floor((minutes % 1440) / 60), minutes % 60)

const heading = (text: string): Block => ({ kind: 'heading', level: 2, text })
const small = (text: string): Block => ({ kind: 'text', style: 'small', text })
const body = (text: string): Block => ({ kind: 'text', style: 'body', text })

const careBlocks = ({ facts, words }: Scene): readonly Block[] => {
  const { care } = words
  const looks = facts.stones.length > 0 ? [...care.inspect, ...care.inspectStones] : care.inspect
  return [
    heading(care.inspection),
    { kind: 'checks', items: [{ title: '', text: '', answers: looks, writes: [] }] },
    heading(care.pack),
    { kind: 'checks', items: [{ title: '', text: '', answers: care.packing, writes: [] }] },
    {
      kind: 'checks',
      items: [{ title: care.rest(facts.restBeforeWashHours), text: care.goOut, answers: [], writes: care.firstWash }],
    },
    ...care.wash.map(body),
  ]
}

const planBlocks = (scene: Scene): readonly Block[] => {
  const { facts, words } = scene
  const { plan } = facts
  const { last } = words
  const lines = [
    plan.promised === null ? last.unpromised : last.promised(whenText(scene, plan.promised)),
    ...(plan.slackMinutes === null ? [] : [last.slack(spanText(words, plan.slackMinutes))]),
    ...(plan.freezesAt === undefined || plan.freezesAt === null ? [] : [last.freezes(whenText(scene, plan.freezesAt))]),
    ...plan.hangsOn.map((text) => `${last.hangsOn}: ${text}`),
  ]
  const heads = last.slotHeads
  const rows = plan.slots.map((slot) => [
    cell(slot.work),
    cell(slot.stations.join(', ')),
    cell(shortWhen(scene, slot.start)),
    cell(shortWhen(scene, slot.end)),
    cell(slot.setUpMinutes === undefined || slot.setUpMinutes === 0 ? '' : spanText(words, slot.setUpMinutes)),
  ])
  const slots: readonly Block[] =
    rows.length === 0
      ? []
      : [
          table(
            [
              column(heads.work, 3),
              column(heads.stations, 3),
              column(heads.start, 3),
              column(heads.end, 3),
              column(heads.setUp, 1.6),
            ],
            [{ heading: null, rows }],
          ),
        ]
  return [heading(last.plan), ...lines.map(body), ...slots]
}

/** What was found about the order, with how grave it is. */
export const problemText = (words: TicketWords, { severity, text }: ProblemSaid): string =>
  `${words.last.severities[severity]}: ${text}`

/** Notes only: what is graver stands on the front page. */
const problemBlocks = ({ facts, words }: Scene): readonly Block[] => {
  const notes = facts.problems.filter(({ severity }) => severity === 'note')
  if (notes.length === 0) return []
  const said = once(notes.map((problem) => problemText(words, problem)))
  return [heading(words.last.problems), ...said.map(body)]
}

const rulebookBlocks = ({ facts, words }: Scene): readonly Block[] => {
  const book = facts.rulebook
  if (book === null) return []
  const { last } = words
  return [
    heading(last.rulebook),
    body(`${last.rule(book.body, book.clause, book.edition)} (${last.marks[book.mark]}). ${last.askLeague}`),
    ...book.notes.map(body),
  ]
}

const whyBlocks = ({ facts, words }: Scene): readonly Block[] => {
  const codes = once<WhyCode>(facts.press.flatMap((step) => step.why))
  if (codes.length === 0) return []
  const said = codes.map((code) => {
    const steps = facts.press.filter((step) => step.why.includes(code)).map((step) => step.no)
    return small(words.last.whyStep(runsText(steps), words.steps.why[code]))
  })
  return [heading(words.last.why), ...said]
}

const sourceBlocks = ({ facts, words }: Scene): readonly Block[] => {
  const { last } = words
  const sources = facts.sources.map((source) => body(last.source(source.of, source.sheet, source.date)))
  return [heading(last.sources), ...sources, ...last.defer.map(body)]
}

/** Inspecting, packing and the first wash; then what is not needed at the press: plan, reasons, sources, and who decides. */
export const lastSheet = (scene: Scene): Sheet => {
  const title = scene.words.last.title
  const made: Block = { kind: 'text', style: 'small', text: scene.words.head.made(whenText(scene, scene.facts.now)) }
  const parts = [careBlocks, problemBlocks, planBlocks, rulebookBlocks, whyBlocks, sourceBlocks].flatMap((part) => part(scene))
  return { title, blocks: [{ kind: 'heading', level: 1, text: title }, made, ...parts] }
}
