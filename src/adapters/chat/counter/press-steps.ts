import { randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { StepView, TileView } from '../../../ports/floor-view.ts'
import type { Place } from './slip.ts'

const tile = (one: TileView, step: StepView, place: Place): Html => {
  const id = `tile-${step.no}-${one.line}`
  const { states } = place.words.press
  const said = one.by === null ? states[one.state] : `${states[one.state]}, ${one.by}`
  const chosen = when(one.isChosen, () => html` checked`)
  return html`<li class="tile ${one.state}"><input type="checkbox" id="${id}" name="field.line-${one.line}" value="yes"${chosen}><label for="${id}"><strong dir="auto">${one.label}</strong> <span>${said}</span></label></li>`
}

const timer = (step: StepView, place: Place): Piece =>
  when(step.seconds !== null, () => {
    const { press } = place.words
    const seconds = step.seconds ?? 0
    return html`<div class="timer" id="timer-${step.no}"><button type="button" class="plain" data-seconds="${seconds}" data-over="${press.timerOver}">${press.timer(seconds)}</button> <output aria-live="assertive"></output><p class="hint">${press.timerNote}</p></div>`
  })

/** `tick`: where ticks go; `isMine`: whoever looks has the ticket already, so that its steps are not to be taken one by one. */
type Ticking = { readonly tick: string | null; readonly isMine: boolean; readonly place: Place }

/** Ticks of one step: the chosen tiles, and what is done with them. Going back asks for no reason. */
const ticks = (step: StepView, { tick, isMine, place }: Ticking & { readonly tick: string }): Html => {
  const { press } = place.words
  const deed = (name: 'done' | 'take' | 'back', look: 'main' | 'plain'): Html =>
    html`<button class="${look}" id="${name}-${step.no}" name="field.deed" value="${name}">${press[name]}</button>`
  return html`<form method="post" action="${place.base}/fill" data-send><input type="hidden" name="id" value="${randomUUID()}"><input type="hidden" name="form" value="${tick}"><input type="hidden" name="field.step" value="${step.no}">
<fieldset><legend>${press.chosen}</legend><ul class="tiles">${step.tiles.map((one) => tile(one, step, place))}</ul></fieldset>
<div class="actions big">${deed('done', 'main')}${isMine ? null : deed('take', 'plain')}${deed('back', 'plain')}</div></form>`
}

const still = (step: StepView, place: Place): Html =>
  html`<ul class="tiles">${step.tiles.map((one) => html`<li class="tile ${one.state}"><strong dir="auto">${one.label}</strong> <span>${place.words.press.states[one.state]}</span></li>`)}</ul>`

const stepBody = (step: StepView, { tick, isMine, place }: Ticking): Html =>
  html`${when(step.figures.length > 0, () => html`<p class="figures">${step.figures.map((figure) => html`<span>${figure}</span> `)}</p>`)}
${when(step.cautions.length > 0, () => html`<ul class="cautions">${step.cautions.map((one) => html`<li>${one}</li>`)}</ul>`)}
${timer(step, place)}${tick === null ? still(step, place) : ticks(step, { tick, isMine, place })}`

const through = ({ tiles }: StepView): number => tiles.filter(({ state }) => state === 'done').length

/** A step that is not to be done now: one line that opens. Of these one lies open at a time. */
const foldedStep = (step: StepView, at: Ticking): Html =>
  html`<details class="step" name="step" id="fold-${step.no}"><summary>${step.title} <span class="count">${at.place.words.progress(through(step), step.tiles.length)}</span></summary>${stepBody(step, at)}</details>`

/**
 * The step to be done now by somebody: one they have in hand, else the first at which something can be done, else the first that is
 * not through. Until a first piece is signed that is where its garment stands, however many of its kind wait behind it.
 */
export const stepNow = (steps: readonly StepView[], name: string): StepView | null =>
  steps.find(({ tiles }) => tiles.some(({ state, by }) => (state === 'taken' || state === 'started') && by === name)) ??
  steps.find(({ isDone, isNext }) => !isDone && isNext) ??
  steps.find(({ isDone }) => !isDone) ??
  null

const folded = (title: string, steps: readonly StepView[], at: Ticking): Piece =>
  when(
    steps.length > 0,
    () =>
      html`<section class="sheet folded" aria-label="${title}"><h2>${title}</h2>${steps.map((step) => foldedStep(step, at))}</section>`,
  )

type Steps = Ticking & { readonly steps: readonly StepView[]; readonly now: StepView | null }

/** The step to do now in full: its figures, cautions, count-down and tiles. */
export const nowCard = ({ tick, isMine, now, place }: Steps): Piece =>
  when(now !== null, () =>
    now === null
      ? null
      : html`<section class="sheet step now" aria-labelledby="now"><h2 id="now" tabindex="-1"><span class="stamp">${place.words.press.now}</span> ${now.title}</h2>${stepBody(now, { tick, isMine, place })}</section>`,
  )

/** All other steps, folded: what comes, and what is through. */
export const otherSteps = ({ steps, tick, isMine, now, place }: Steps): Piece => {
  const { press } = place.words
  const others = steps.filter(({ no }) => no !== now?.no)
  const coming = others.filter(({ isDone }) => !isDone)
  const over = others.filter(({ isDone }) => isDone)
  return html`${folded(press.coming, coming, { tick, isMine, place })}${folded(press.over, over, { tick, isMine, place })}`
}
