import { createHash, randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { PageWords } from '../../../../templates/page/words.ts'
import type { Action } from '../../../ports/chat.ts'
import type { LoadSheet, LoadTable, Told } from '../../../ports/counter-desk.ts'
import { type Look, wordsOf } from './answer.ts'
import type { Counter } from './counter.ts'
import type { Signed } from './sign-in.ts'
import { answered, look } from './staff-pages.ts'

const tightFrom = 90

/** A share of a cell: from nine tenths on it stands out by weight and a mark, not by colour. */
const shareCell = (percent: number | null): Html => {
  if (percent === null) return html`<td class="share"></td>`
  return percent >= tightFrom
    ? html`<td class="share tight"><strong>${percent} % !</strong></td>`
    : html`<td class="share">${percent} %</td>`
}

const shareTable = (
  table: LoadTable & { readonly title: string },
): Html => html`<div class="wide" role="region" tabindex="0" aria-label="${table.title}"><table><caption>${table.title}</caption>
<thead><tr>${table.head.map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
<tbody>${table.rows.map((row) => html`<tr><th scope="row">${row.name}</th>${row.percents.map(shareCell)}</tr>`)}</tbody></table></div>`

const pressForm = (action: Action, words: PageWords): Html => {
  const button = (label: string): Html =>
    html`<button class="${action.weight}" name="action" value="${action.id}">${label}</button>`
  const inner =
    action.weight === 'grave'
      ? html`<details class="grave" id="grave-${action.id}"><summary>${action.label}</summary>${button(words.sure(action.label))}</details>`
      : button(action.label)
  return html`<form method="post" action="/load/press"><input type="hidden" name="id" value="${randomUUID()}">${inner}</form>`
}

const lateJob = (
  job: LoadSheet['late']['jobs'][number],
  { late }: LoadSheet,
  words: PageWords,
): Html => html`<li><p class="what">${job.text}</p>
${when(job.causes.length > 0, () => html`<p>${late.because}</p><ul class="plain-list">${job.causes.map((cause) => html`<li>${cause}</li>`)}</ul>`)}
${when(
  job.fixes.length > 0,
  () =>
    html`<p>${late.fixesTitle}</p><ul class="mends">${job.fixes.map((fix) => html`<li><p>${fix.text}</p>${fix.action === null ? null : pressForm(fix.action, words)}</li>`)}</ul>`,
)}</li>`

const lateSection = (
  sheet: LoadSheet,
  words: PageWords,
): Html => html`<section class="sheet" aria-labelledby="late"><h2 id="late">${sheet.late.title} <span class="count">${sheet.late.jobs.length}</span></h2>
${sheet.late.jobs.length === 0 ? html`<p class="none">${sheet.late.none}</p>` : html`<ul>${sheet.late.jobs.map((job) => lateJob(job, sheet, words))}</ul>`}</section>`

const ratesSection = (
  { rates }: LoadSheet,
  words: PageWords,
): Html => html`<section class="sheet" aria-labelledby="rates"><h2 id="rates">${rates.title}</h2><p>${rates.lead}</p>
<ul>${rates.rates.map((rate) => html`<li><p class="what">${rate.name}</p><p>${rate.text}</p>${pressForm(rate.action, words)}</li>`)}</ul></section>`

const changesSection = ({ changesTitle, changes }: LoadSheet): Piece =>
  when(
    changes.length > 0,
    () =>
      html`<section class="sheet" aria-labelledby="changes"><h2 id="changes">${changesTitle}</h2><ul>${changes.map((change) => html`<li>${change}</li>`)}</ul></section>`,
  )

/** What changes of the page: what will be late and what mends it, the load as picture and tables, how long work takes here. */
export const loadSheetPart = (sheet: LoadSheet, words: PageWords): Html => {
  // Another drawing has another address, so that none is taken from what the browser kept.
  const drawn = createHash('sha256').update(sheet.picture).digest('base64url').slice(0, 12)
  return html`<div id="sheet"><p class="lead">${sheet.lead}</p>
${lateSection(sheet, words)}
<section class="sheet load"><figure><picture><source media="(width < 40rem)" srcset="/load/narrow?of=${drawn}"><img src="/load/picture?of=${drawn}" alt="${sheet.pictureAlt}"></picture></figure>
${shareTable(sheet.stations)}
${when(sheet.due.rows.length > 0, () => shareTable(sheet.due))}</section>
${ratesSection(sheet, words)}
${changesSection(sheet)}</div>`
}

/** The owner's load, which changes while it lies open. */
export const loadPage = (
  counter: Counter,
  signed: Signed,
  { sheet, said }: { readonly sheet: LoadSheet; readonly said: Told | null },
): Look & { readonly main: Piece } => {
  const words = wordsOf(signed.language)
  const main = html`<h1>${sheet.title}</h1>${answered(said)}
<div data-live="/load/live" data-after="0">${loadSheetPart(sheet, words)}</div>`
  return { ...look(counter, signed, 'load'), main }
}
