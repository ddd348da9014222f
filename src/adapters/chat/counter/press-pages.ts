import { randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { Form } from '../../../ports/chat.ts'
import type { Told } from '../../../ports/counter-desk.ts'
import type { BagView, PressView, TicketAtPress } from '../../../ports/floor-view.ts'
import { wordsOf } from './answer.ts'
import type { Counter } from './counter.ts'
import { nowCard, otherSteps, stepNow } from './press-steps.ts'
import type { Signed } from './sign-in.ts'
import { type Place, renderForm } from './slip.ts'
import { answered, look } from './staff-pages.ts'

type Page = ReturnType<typeof look> & { readonly main: Piece }

const groups = ['mine', 'free', 'held', 'checked', 'bagged', 'collected'] as const
type Group = (typeof groups)[number]

const groupOf = ({ stage, by }: TicketAtPress, name: string): Group => (stage === 'held' && by === name ? 'mine' : stage)

const listed = (one: TicketAtPress, place: Place): Html => {
  const { press } = place.words
  const notes = [
    one.setting,
    one.hours,
    one.stage === 'held' && one.by !== null ? press.heldBy(one.by) : '',
    one.waits.length === 0 ? '' : press.waits(one.waits.join(', ')),
  ].filter((note) => note !== '')
  return html`<li><a class="ticket ${one.stage}" href="/press/${encodeURIComponent(one.ticketId)}"><strong dir="auto">${one.label}</strong>${notes.map((note) => html`<span>${note}</span>`)}</a></li>`
}

/** What was handed over is folded: it is looked for only when something comes back. */
const groupSheet = (group: Group, tickets: readonly TicketAtPress[], place: Place): Html => {
  const title = html`${place.words.press.groups[group]} <span class="count">${tickets.length}</span>`
  const list = html`<ul class="tickets">${tickets.map((one) => listed(one, place))}</ul>`
  return group === 'collected'
    ? html`<section class="sheet folded"><details id="group-${group}"><summary>${title}</summary>${list}</details></section>`
    : html`<section class="sheet" aria-labelledby="group-${group}"><h2 id="group-${group}">${title}</h2>${list}</section>`
}

/** The tickets that can be worked on: one's own first, then what is free, what others hold, what waits to be bagged and handed over. */
export const pressList = (tickets: readonly TicketAtPress[], name: string, place: Place): Html => {
  const parts = groups.flatMap((group) => {
    const own = tickets.filter((one) => groupOf(one, name) === group)
    return own.length === 0 ? [] : [groupSheet(group, own, place)]
  })
  const none = when(tickets.length === 0, () => html`<p class="sheet none">${place.words.press.none}</p>`)
  return html`<div id="sheet">${none}${parts}</div>`
}

export const pressListPage = (counter: Counter, signed: Signed, list: Html): Page => {
  const { press } = wordsOf(signed.language)
  const main = html`<h1>${press.title}</h1><p class="lead">${press.lead}</p><div data-live="/press/live" data-after="0">${list}</div>`
  return { ...look(counter, signed, 'press'), main }
}

const formCard = (form: Form, place: Place): Html => {
  const act = form.id.split(':').at(2) ?? form.id.split(':').at(1) ?? ''
  return html`<details class="fill" id="form-${act}"><summary>${form.title}</summary>${renderForm(form, place)}</details>`
}

/** What can be written down, each folded under its name. */
export const formCards = (forms: readonly Form[], title: string, place: Place): Piece =>
  when(
    forms.length > 0,
    () =>
      html`<section class="sheet folded" aria-label="${title}"><h2>${title}</h2>${forms.map((form) => formCard(form, place))}</section>`,
  )

const acts = (view: PressView, place: Place): Piece =>
  when(
    view.acts.length > 0,
    () =>
      html`<form method="post" action="${place.base}/press" data-send><input type="hidden" name="id" value="${randomUUID()}"><div class="actions big">${view.acts.map((one) => html`<button class="${one.weight}" name="action" value="${one.id}">${one.label}</button>`)}</div></form>`,
  )

const gates = ({ gates: all }: PressView, place: Place): Piece => {
  const { press } = place.words
  const shut = all.filter(({ isOpen }) => !isOpen)
  const open = all.filter(({ isOpen }) => isOpen)
  return html`${when(shut.length > 0, () => html`<h2>${press.gates}</h2><ul class="shut">${shut.map(({ text }) => html`<li>${text}</li>`)}</ul>`)}
${when(open.length > 0, () => html`<details class="passed" id="gates-passed"><summary>${press.passed(open.length)}</summary><ul>${open.map(({ text }) => html`<li>${text}</li>`)}</ul></details>`)}`
}

const bagList = (bags: readonly BagView[], place: Place): Piece => {
  const { press } = place.words
  const full = bags.filter(({ garments }) => garments.every(({ isBagged }) => isBagged)).length
  const state = (isBagged: boolean): string => (isBagged ? press.states.done : press.states.waiting)
  return when(
    bags.length > 0,
    () =>
      html`<section class="sheet folded"><details id="bags"><summary>${press.bags} <span class="count">${place.words.progress(full, bags.length)}</span></summary><dl class="fields">${bags.map(
        ({ player, garments }) =>
          html`<div><dt dir="auto">${player}</dt><dd><ul>${garments.map(({ text, isBagged }) => html`<li><span dir="auto">${text}</span>: ${state(isBagged)}</li>`)}</ul></dd></div>`,
      )}</dl></details></section>`,
  )
}

export type Seen = { readonly view: PressView; readonly name: string; readonly place: Place; readonly said: Told | null }

/** What changes of a ticket's page: the step to do now on top, everything else folded below it. */
export const pressSheet = ({ view, name, place, said }: Seen): Html => {
  const { press } = place.words
  const at = { steps: view.steps, tick: view.tick, isMine: view.holder === name, now: stepNow(view.steps, name), place }
  // Where nothing can be ticked yet, what the whole ticket wants comes first.
  const isFirst = view.tick === null
  return html`<div id="sheet"><section class="sheet top"><h1>${view.title}</h1><p class="lead">${view.needed}${when(view.holder !== null, () => html` · ${press.heldBy(view.holder ?? '')}`)}</p>${answered(said)}
${when(view.warnings.length > 0, () => html`<ul class="warnings">${view.warnings.map((one) => html`<li>${one}</li>`)}</ul>`)}
${gates(view, place)}${when(isFirst, () => acts(view, place))}</section>
${nowCard(at)}
${when(!isFirst && view.acts.length > 0, () => html`<section class="sheet">${acts(view, place)}</section>`)}
${formCards(view.forms, press.forms, place)}
${otherSteps(at)}
${bagList(view.bags, place)}</div>`
}

/** One ticket at the press, for a tablet and gloves: large figures, tiles to choose, three large buttons a step. */
export const pressPage = (counter: Counter, signed: Signed, seen: Seen): Page => {
  const main = html`<div class="at-press" data-live="${seen.place.base}/live" data-after="0">${pressSheet(seen)}</div>`
  return { ...look(counter, signed, 'press'), main }
}
