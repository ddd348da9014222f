import { serverWords } from '../../../templates/desk/server.ts'
import { deskWords } from '../../../templates/desk/words.ts'
import { dayOf, writeLocal } from '../../domain/calendar/local-time.ts'
import type { Slot } from '../../domain/schedule/book/operation.ts'
import { showFor } from '../../domain/shop/show.ts'
import { shopActs } from '../../domain/ticket/acts.ts'
import type { Language } from '../../domain/units/language.ts'
import { minutes } from '../../domain/units/units.ts'
import type { Action, Message } from '../../ports/chat.ts'
import type { Desk } from '../service/desk.ts'
import { readLife } from '../service/floor/read-life.ts'
import { shopPlanFrom, ticketFrom } from '../service/records/records.ts'
import { holderOf, type TicketLife } from '../service/records/ticket-life.ts'
import { ticketName } from '../service/records/ticket-names.ts'
import { wordsFor } from '../service/say/say-floor.ts'
import { messageWith } from '../service/say/say-message.ts'

/** `station` by its id, `day` as YYYY-MM-DD; empty means any. */
export type Wanted = { readonly station: string; readonly day: string; readonly language: Language }
type Listed = { readonly life: TicketLife; readonly slots: readonly Slot[] }

export const postAgainId = 'c:post-again'

const slotText = (desk: Desk, slot: Slot, language: Language): string => {
  const show = showFor(desk.workshop.shop, language)
  const from = writeLocal(desk.zone, slot.start)
  const to = writeLocal(desk.zone, slot.end)
  const stations = slot.stations.join(' + ')
  const until = from.slice(0, 10) === to.slice(0, 10) ? show.hour(to.slice(11)) : show.moment(to)
  return serverWords[language].place(stations, show.moment(from), until)
}

const lineOf = (desk: Desk, { life, slots }: Listed, language: Language): string => {
  const words = serverWords[language]
  const { ticket, order, findings } = life
  const holder = holderOf(findings)
  const state = [deskWords[language].states[order.state], holder === null ? words.nobody : words.takenBy(holder.by)].join(', ')
  const head = words.ticketLine(ticketName(ticket.number), ticketFrom(ticket.body).facts.team, state)
  return [head, ...slots.map((slot) => slotText(desk, slot, language))].join('\n')
}

/** Open tickets with a slot of the plan at that station on that day; all open ones when nothing is asked. */
const found = async (desk: Desk, wanted: Wanted): Promise<readonly Listed[]> => {
  const shop = desk.store.shop(desk.shopId)
  const { slots } = shopPlanFrom((await shop.plan.read()).body)
  const isWanted = (slot: Slot): boolean =>
    (wanted.station === '' || slot.stations.includes(wanted.station)) &&
    (wanted.day === '' || dayOf(desk.zone, slot.start) === wanted.day)
  const lives = await Promise.all((await shop.tickets.list(['open'])).map(({ ticketId }) => readLife(desk, shop, ticketId)))
  const listed = lives
    .filter((life) => life !== null)
    .map((life) => ({ life, slots: slots.filter((slot) => slot.order === life.order.orderId && isWanted(slot)) }))
  const isAll = wanted.station === '' && wanted.day === ''
  return listed.filter((one) => isAll || one.slots.length > 0)
}

const firstStart = ({ slots }: Listed): number => Math.min(...slots.map(({ start }) => start))

/** What staff do with the shop's own things: presses, deliveries, the shelf. */
const shopActions = (desk: Desk): readonly Action[] =>
  shopActs.map((act) => ({ id: `s:${act}`, label: wordsFor(desk).acts[act], weight: 'plain' }))

/** The open tickets in the order of their work, with a way to have a lost one posted again. */
export const listTickets = async (desk: Desk, wanted: Wanted): Promise<Message> => {
  const { language } = wanted
  const words = serverWords[language]
  const listed = (await found(desk, wanted)).toSorted((a, b) => firstStart(a) - firstStart(b))
  const title = words.tickets([wanted.station, wanted.day].filter((one) => one !== '').join(', '))
  const actions = shopActions(desk)
  if (listed.length === 0) return messageWith(language, { blocks: [{ kind: 'list', title, items: [words.noTickets] }], actions })
  const options = listed.map(({ life }) => ({
    value: life.ticket.ticketId,
    label: `${ticketName(life.ticket.number)} ${ticketFrom(life.ticket.body).facts.team}`,
  }))
  return messageWith(language, {
    blocks: [{ kind: 'list', title, items: listed.map((one) => lineOf(desk, one, language)) }],
    actions,
    choice: { id: postAgainId, label: words.postAgain, options },
  })
}

const daysAhead = 14

/** What may be asked for, as far as it begins with what was typed. */
export const suggestions = (desk: Desk, { option, text }: { readonly option: string; readonly text: string }) => {
  const now = desk.clock.now()
  const days = Array.from({ length: daysAhead }, (_, at) => dayOf(desk.zone, minutes(now + at * 1_440)))
  const stations = desk.workshop.shop.stations.map(({ id }) => id)
  const all = option === 'station' ? stations : option === 'day' ? days : []
  return all.filter((one) => one.includes(text.trim().toLowerCase()))
}
