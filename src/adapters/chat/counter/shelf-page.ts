import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { Told } from '../../../ports/counter-desk.ts'
import type { ShelfGroup, ShelfView } from '../../../ports/floor-view.ts'
import type { Counter } from './counter.ts'
import { formCards } from './press-pages.ts'
import type { Signed } from './sign-in.ts'
import type { Place } from './slip.ts'
import { answered, look } from './staff-pages.ts'

type Page = ReturnType<typeof look> & { readonly main: Piece }
type Part = ShelfView['shopping']

const part = ({ title, lines }: Part, nothing: string): Html =>
  html`<section class="sheet"><h2>${title} <span class="count">${lines.length}</span></h2>${lines.length === 0 ? html`<p class="none">${nothing}</p>` : html`<ul>${lines.map((one) => html`<li>${one}</li>`)}</ul>`}</section>`

const groupTable = ({ title, rows }: ShelfGroup, { head }: ShelfView): Html =>
  html`<div class="wide" tabindex="0" role="group" aria-label="${title}"><table class="shelf-table"><thead><tr>${head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead><tbody>${rows.map(
    ({ item, lot, bin, certificate, free, reserved, short }) =>
      html`<tr><th scope="row">${item}</th>${[short, free, reserved, lot, bin].map((cell) => html`<td>${cell}</td>`)}<td class="words">${certificate}</td></tr>`,
  )}</tbody></table></div>`

/** What is short lies open; each kind of thing is one line that opens. */
const groups = (view: ShelfView, { words: { shelf } }: Place): Piece =>
  when(
    view.groups.length > 0,
    () =>
      html`<section class="sheet folded" aria-label="${shelf.title}">${view.groups.map(
        (group) =>
          html`<details id="kind-${group.kind}"${group.kind === 'short' ? html` open` : null}><summary>${group.title} <span class="count">${group.rows.length}</span></summary>${groupTable(group, view)}</details>`,
      )}</section>`,
  )

const tables = ['orders', 'stock', 'remakes'] as const

/** What changes of the page: what lies in the shop, what must be bought, and where it is written down. */
export const shelfSheet = (view: ShelfView, place: Place): Html => {
  const { shelf } = place.words
  return html`<div id="sheet">${part(view.shopping, shelf.nothing)}${part(view.coming, shelf.nothing)}
${formCards(view.forms, shelf.forms, place)}
${groups(view, place)}
${part(view.templates, shelf.nothing)}</div>`
}

/** What lies in the shop, what must be bought, and where deliveries, counts and losses are written down. */
export const shelfPage = (
  counter: Counter,
  signed: Signed,
  { view, place, said }: { readonly view: ShelfView; readonly place: Place; readonly said: Told | null },
): Page => {
  const { shelf } = place.words
  const main = html`<section class="sheet"><h1>${shelf.title}</h1><p class="lead">${shelf.lead}</p>${answered(said)}</section>
<div data-live="/shelf/live" data-after="0">${shelfSheet(view, place)}</div>
<section class="sheet"><h2>${shelf.tables}</h2><ul>${tables.map((name) => html`<li><a href="/tables/${name}.csv" download>${name}.csv</a></li>`)}</ul></section>`
  return { ...look(counter, signed, 'shelf'), main }
}
