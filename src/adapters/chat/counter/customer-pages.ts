import { randomUUID } from 'node:crypto'
import { html, type Piece } from '../../../../templates/page/html.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Line } from '../../../ports/counter-desk.ts'
import { type Look, wordsOf } from './answer.ts'
import type { Counter } from './counter.ts'
import { type Place, renderSlips } from './slip.ts'

type Page = Look & { readonly main: Piece }

const languageLinks = (counter: Counter, language: Language): Piece =>
  html`<nav class="ways" aria-label="${wordsOf(language).speak}">${counter.desk.languages.map((one) =>
    one === language
      ? html`<a lang="${one}" href="/?language=${one}" aria-current="true">${wordsOf(one).language}</a>`
      : html`<a lang="${one}" hreflang="${one}" href="/?language=${one}">${wordsOf(one).language}</a>`,
  )}</nav>`

/** Where a customer begins. */
export const startPage = (counter: Counter, language: Language): Page => {
  const words = wordsOf(language)
  const main = html`<section class="sheet start"><h1>${words.start.title}</h1><p class="lead">${words.start.lead}</p>
<form method="post" action="/start"><input type="hidden" name="id" value="${randomUUID()}"><input type="hidden" name="language" value="${language}">
<label for="text">${words.start.label}</label>
<textarea id="text" name="text" rows="5" maxlength="20000" aria-describedby="text-hint"></textarea>
<p class="hint" id="text-hint">${words.start.hint}</p>
<button class="main">${words.start.open}</button></form></section>
<p class="aside"><a href="/sign-in?language=${language}">${words.start.staff}</a></p>`
  return { language, look: 'customer', title: words.start.title, links: languageLinks(counter, language), main }
}

/** The box for words; with script it stays at hand while the slips move. */
export const writeBox = (
  place: Place,
  label: string,
): Piece => html`<form class="write" method="post" action="${place.base}/say" data-send>
<input type="hidden" name="id" value="${randomUUID()}">
<label for="text">${label}</label>
<textarea id="text" class="small" name="text" rows="2" maxlength="20000" required></textarea>
<button class="main">${place.words.write.send}</button></form>`

const rosterBox = (place: Place): Piece => {
  const { roster } = place.words
  return html`<details class="roster"><summary>${roster.open}</summary>
<form method="post" action="${place.base}/say" enctype="multipart/form-data" data-send>
<input type="hidden" name="id" value="${randomUUID()}">
<label for="roster">${roster.label}</label>
<textarea id="roster" name="text" rows="8" maxlength="20000" spellcheck="false" aria-describedby="roster-hint"></textarea>
<p class="hint" id="roster-hint">${roster.hint}</p>
<label for="files">${roster.files}</label>
<input id="files" type="file" name="files" multiple aria-describedby="files-hint">
<p class="hint" id="files-hint">${roster.filesHint}</p>
<button class="main">${roster.send}</button></form></details>`
}

/** A customer's conversation: the slips, and what to answer with. */
export const conversationPage = (
  open: { readonly language: Language; readonly title: string },
  lines: readonly Line[],
  place: Place,
): Page => {
  const { words } = place
  const main = html`<div class="counter"><section class="talk"><h1>${open.title}</h1>${renderSlips(lines, place)}</section>
<section class="answer" aria-label="${words.write.title}">${writeBox(place, words.write.label)}${rosterBox(place)}<p class="keep">${words.keep}</p></section></div>`
  return { language: open.language, look: 'customer', title: open.title, links: null, main }
}
