import { loadWords } from '../../../../templates/desk/load/languages.ts'
import { ok, type Problem, type Result } from '../../../domain/result/result.ts'
import type { Fix } from '../../../domain/schedule/explain/bottleneck.ts'
import type { Language } from '../../../domain/units/language.ts'
import { minutes } from '../../../domain/units/units.ts'
import type { Action } from '../../../ports/chat.ts'
import type { Told } from '../../../ports/counter-desk.ts'
import type { ShopStore } from '../../../ports/store.ts'
import { conversationChannel, type Desk, shopChannel } from '../desk.ts'
import { orderIdOf } from '../records/order-id.ts'
import {
  conversationFrom,
  type FirstPart,
  orderFrom,
  type PlacedOrder,
  type Proposal,
  type ShopPlan,
  shopPlanFrom,
  withChange,
} from '../records/records.ts'
import { messageWith, textMessage } from '../say/say-message.ts'
import { doneSaying, toldWhy } from '../say/told.ts'
import { jobName } from './job-names.ts'
import { momentText, type PlanWords, planWords } from './plan-words.ts'
import type { LateJob } from './tight-jobs.ts'

/** Buttons of a question about a promise: `p:<order>:<kind>:<yes or no>`. */
const actionsOf = ({ words }: PlanWords, { orderId, kind }: Proposal): readonly Action[] => [
  { id: `p:${orderId}:${kind}:yes`, label: words.proposal.yes, weight: 'main' },
  { id: `p:${orderId}:${kind}:no`, label: words.proposal.no, weight: 'plain' },
]

const questionOf = (said: PlanWords, proposal: Proposal): string => {
  const at = momentText(said, proposal.at)
  if (proposal.kind === 'split-collection') {
    const { garments, of } = proposal.first ?? { garments: 1, of: 2 }
    return said.words.proposal['split-collection']({ garments, of, at, rest: momentText(said, proposal.rest ?? proposal.at) })
  }
  return said.words.proposal[proposal.kind](at)
}

const isAsked = (code: Fix['code']): code is Proposal['kind'] =>
  code === 'move-promise' || code === 'split-collection' || code === 'drop-stones'

const halfHour = 30

/** The part that is ready, in garments: lots are alike. */
const firstPart = async (shop: ShopStore, { id, revision }: PlacedOrder, { subject, at }: Fix): Promise<FirstPart | null> => {
  const document = (await shop.orders.revision(id, revision))?.document ?? null
  const [, ready = 1, lots = 2] = (/^(\d+)\/(\d+)$/.exec(subject) ?? []).map(Number)
  if (document === null || at === null) return null
  const of = orderFrom(document).roster.reduce((sum, { quantity }) => sum + quantity, 0)
  return { at, garments: Math.max(1, Math.floor((of * ready) / lots)), of }
}

/** Puts the question into the customer's conversation and remembers that it is open. The promise stays until they answer. */
export const askCustomer = async (
  desk: Desk,
  shop: ShopStore,
  about: { readonly plan: ShopPlan; readonly version: number; readonly job: LateJob; readonly fix: Fix },
): Promise<Result<Told, Problem>> => {
  const { plan, version, job, fix } = about
  const owner = loadWords[desk.workshop.shop.profile.languages[0] ?? 'en']
  const order = await shop.orders.read(job.orderId)
  const sold = plan.sold.find(({ id }) => id === job.orderId)
  const conversationId = order?.conversationId ?? null
  const stored = conversationId === null ? null : await shop.conversations.read(conversationId)
  if (conversationId === null || stored === null || sold === undefined || !isAsked(fix.code)) return ok(toldWhy(owner.gone))
  const promised = sold.promised ?? sold.needBy
  const rest = minutes(Math.ceil((promised + job.minutes) / halfHour) * halfHour)
  const first = fix.code === 'split-collection' ? await firstPart(shop, sold, fix) : null
  const asked = { orderId: job.orderId, kind: fix.code, at: minutes(fix.at ?? promised), ready: fix.subject, rest }
  const proposal: Proposal = first === null ? asked : { ...asked, first }
  const others = plan.proposals.filter(({ orderId }) => orderId !== job.orderId)
  const written = await shop.plan.write(version, { ...plan, proposals: [...others, proposal] })
  if (!written.ok) return written
  const { language } = conversationFrom(stored.state)
  const said = planWords(desk, language, new Map())
  const text = questionOf(said, proposal)
  const body = messageWith(language, { blocks: [{ kind: 'text', text, tone: 'caution' }], actions: actionsOf(said, proposal) })
  const channel = conversationChannel(conversationId)
  await shop.messages.say({ channel, nonce: `ask-${job.orderId}-${written.value}`, by: 'bot', body })
  await shop.tell('channel', channel)
  const facts = { kind: proposal.kind, at: proposal.at }
  await shop.events.add({ code: 'promise-asked', orderId: job.orderId, ticketId: null, by: 'owner', at: desk.clock.now(), facts })
  return ok(doneSaying(owner.asked(await jobName(shop, job.orderId))))
}

/** What a customer pressed under a question about their promise; `id` is the delivery's, so that it counts once. */
export type Answer = {
  readonly conversationId: string
  readonly id: string
  readonly action: string
  readonly language: Language
}

/** A promise that was moved, or that now stands for the rest of an order whose first part is collected before. */
const agreed = (plan: ShopPlan, { orderId, kind, at, rest, first }: Proposal, now: number): ShopPlan => {
  if (kind === 'drop-stones') return plan
  const isMoved = kind === 'move-promise'
  const promised = isMoved ? at : (rest ?? at)
  const parts = isMoved || first === undefined ? {} : { first }
  const sold = plan.sold.map((order) => (order.id === orderId ? { ...order, promised, ...parts } : order))
  return withChange({ ...plan, sold }, { reason: isMoved ? 'promise-moved' : 'in-two-parts', at: minutes(now), orderId })
}

const thanksFor = (said: PlanWords, { kind, at }: Proposal, yes: boolean): string | null => {
  if (!yes) return said.words.proposal.refused
  return kind === 'drop-stones' ? null : said.words.proposal.thanks[kind](momentText(said, at))
}

const tellOwner = async (
  desk: Desk,
  shop: ShopStore,
  told: { readonly answer: Answer; readonly proposal: Proposal; readonly yes: boolean },
) => {
  const language = desk.workshop.shop.profile.languages[0] ?? 'en'
  const said = planWords(desk, language, new Map())
  const job = await jobName(shop, told.proposal.orderId)
  const what = said.words.fixes[told.proposal.kind]({
    subject: told.proposal.ready,
    at: momentText(said, told.proposal.at),
    duration: '',
  })
  const text = said.words.answered[told.yes ? 'yes' : 'no'](job, what)
  const channel = shopChannel('owner')
  await shop.messages.say({ channel, nonce: `answer-${told.answer.id}`, by: 'bot', body: textMessage(text, language) })
  await shop.tell('channel', channel)
}

/**
 * What a customer answers to a question about their promise. Answers with words to say in their name where a yes asks for a new
 * revision, null otherwise. A question that is no longer open is said to be so.
 */
export const hearAnswer = async (desk: Desk, shop: ShopStore, answer: Answer): Promise<Result<string | null, Problem>> => {
  const [, orderId = '', kind = '', word = ''] = answer.action.split(':')
  await shop.plan.alone()
  const read = await shop.plan.read()
  const plan = shopPlanFrom(read.body)
  const own = orderIdOf(answer.conversationId) === orderId
  const proposal = plan.proposals.find((one) => own && one.orderId === orderId && one.kind === kind)
  const said = planWords(desk, answer.language, new Map())
  const channel = conversationChannel(answer.conversationId)
  const say = async (text: string): Promise<void> => {
    await shop.messages.say({ channel, nonce: `answered-${answer.id}`, by: 'bot', body: textMessage(text, answer.language) })
    await shop.tell('channel', channel)
  }
  if (proposal === undefined) {
    await say(said.words.proposal.over)
    return ok(null)
  }
  const yes = word === 'yes'
  const now = desk.clock.now()
  const closed = { ...plan, proposals: plan.proposals.filter((one) => one !== proposal) }
  const written = await shop.plan.write(read.version, yes ? agreed(closed, proposal, now) : closed)
  if (!written.ok) return written
  const thanks = thanksFor(said, proposal, yes)
  if (thanks !== null) await say(thanks)
  await tellOwner(desk, shop, { answer, proposal, yes })
  const facts = { kind: proposal.kind, at: proposal.at, agreed: yes }
  await shop.events.add({ code: 'promise-answered', orderId, ticketId: null, by: 'customer', at: now, facts })
  return ok(yes && proposal.kind === 'drop-stones' ? said.words.proposal.withoutStones : null)
}
