import { randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { Form } from '../../../ports/chat.ts'
import type { PressView, StepView, TileView } from '../../../ports/floor-view.ts'
import { wordsOf } from './answer.ts'
import type { Counter } from './counter.ts'
import type { Signed } from './sign-in.ts'
import { type Place, renderForm } from './slip.ts'
import { look } from './staff-pages.ts'

type Page = ReturnType<typeof look> & { readonly main: Piece }
export type Listed = { readonly ticketId: string; readonly label: string }

const answered = (said: string | null): Piece => when(said !== null, () => html`<p class="said" role="status">${said}</p>`)

/** Which tickets can be worked on. */
export const pressListPage = (counter: Counter, signed: Signed, tickets: readonly Listed[]): Page => {
  const { press } = wordsOf(signed.language)
  const links = tickets.map(
    ({ ticketId, label }) =>
      html`<li><a class="button wide-button" href="/press/${encodeURIComponent(ticketId)}">${label}</a></li>`,
  )
  const main = html`<section class="sheet"><h1>${press.title}</h1><p class="lead">${press.lead}</p>
${tickets.length === 0 ? html`<p class="none">${press.none}</p>` : html`<ul class="tickets">${links}</ul>`}</section>`
  return { ...look(counter, signed, 'press'), main }
}

const tile = (one: TileView, step: StepView, place: Place): Html => {
  const id = `tile-${step.no}-${one.line}`
  const { states } = place.words.press
  const said = one.by === null ? states[one.state] : `${states[one.state]}, ${one.by}`
  const chosen = one.state === 'done' ? null : html` checked`
  return html`<li class="tile ${one.state}"><input type="checkbox" id="${id}" name="field.line-${one.line}" value="yes"${chosen}><label for="${id}"><strong dir="auto">${one.label}</strong> <span>${said}</span></label></li>`
}

const timer = (step: StepView, place: Place): Piece =>
  when(step.seconds !== null, () => {
    const { press } = place.words
    const seconds = step.seconds ?? 0
    return html`<div class="timer"><button type="button" class="plain" data-seconds="${seconds}" data-over="${press.timerOver}">${press.timer(seconds)}</button> <output aria-live="assertive"></output><p class="hint">${press.timerNote}</p></div>`
  })

/** Ticks of one step: the chosen tiles, and what is done with them. Going back asks for no reason. */
const ticks = (step: StepView, tick: string, place: Place): Html => {
  const { press } = place.words
  return html`<form method="post" action="${place.base}/fill" data-send><input type="hidden" name="id" value="${randomUUID()}"><input type="hidden" name="form" value="${tick}"><input type="hidden" name="field.step" value="${step.no}">
<fieldset><legend>${press.chosen}</legend><ul class="tiles">${step.tiles.map((one) => tile(one, step, place))}</ul></fieldset>
<div class="actions big"><button class="main" name="field.deed" value="done">${press.done}</button><button class="plain" name="field.deed" value="take">${press.take}</button><button class="plain" name="field.deed" value="back">${press.back}</button></div></form>`
}

const still = (step: StepView, place: Place): Html =>
  html`<ul class="tiles">${step.tiles.map((one) => html`<li class="tile ${one.state}"><strong dir="auto">${one.label}</strong> <span>${place.words.press.states[one.state]}</span></li>`)}</ul>`

const stepCard = (step: StepView, tick: string | null, place: Place): Html => {
  const heading = `step-${step.no}`
  const inner = html`${when(step.figures.length > 0, () => html`<p class="figures">${step.figures.map((figure) => html`<span>${figure}</span> `)}</p>`)}
${when(step.cautions.length > 0, () => html`<ul class="cautions">${step.cautions.map((one) => html`<li>${one}</li>`)}</ul>`)}
${timer(step, place)}${tick === null ? still(step, place) : ticks(step, tick, place)}`
  return step.isDone
    ? html`<section class="sheet step over"><details><summary>${place.words.press.fold(step.title)}</summary>${inner}</details></section>`
    : html`<section class="sheet step" aria-labelledby="${heading}"><h2 id="${heading}">${step.title}</h2>${inner}</section>`
}

const formCard = (form: Form, place: Place): Html => {
  const act = form.id.split(':').at(2) ?? form.id.split(':').at(1) ?? ''
  return html`<details class="sheet fill" id="form-${act}"><summary>${form.title}</summary>${renderForm(form, place)}</details>`
}

export const formCards = (forms: readonly Form[], place: Place): Piece => forms.map((form) => formCard(form, place))

const acts = (view: PressView, place: Place): Piece =>
  when(
    view.acts.length > 0,
    () =>
      html`<form method="post" action="${place.base}/press" data-send><input type="hidden" name="id" value="${randomUUID()}"><div class="actions big">${view.acts.map((one) => html`<button class="main" name="action" value="${one.id}">${one.label}</button>`)}</div></form>`,
  )

export type Seen = { readonly view: PressView; readonly place: Place; readonly said: string | null }

/** One ticket at the press, for a tablet and gloves: large figures, tiles to choose, three large buttons a step. */
export const pressPage = (counter: Counter, signed: Signed, { view, place, said }: Seen): Page => {
  const { press } = place.words
  const main = html`<div class="at-press"><section class="sheet"><h1>${view.title}</h1><p class="lead">${view.needed}</p>${answered(said)}
${when(view.warnings.length > 0, () => html`<ul class="warnings">${view.warnings.map((one) => html`<li>${one}</li>`)}</ul>`)}
<h2>${press.gates}</h2><ul>${view.gates.map((one) => html`<li>${one}</li>`)}</ul>${acts(view, place)}</section>
${when(view.forms.length > 0, () => html`<section class="fills" aria-label="${press.forms}">${formCards(view.forms, place)}</section>`)}
${view.steps.map((step) => stepCard(step, view.tick, place))}</div>`
  return { ...look(counter, signed, 'press'), main }
}
