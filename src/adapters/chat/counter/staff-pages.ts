import { randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { Language } from '../../../domain/units/language.ts'
import type { Line, Member, Morning, MorningLine, Told } from '../../../ports/counter-desk.ts'
import { type Look, wordsOf } from './answer.ts'
import type { Counter } from './counter.ts'
import { writeBox } from './customer-pages.ts'
import type { Signed } from './sign-in.ts'
import { type Place, renderSlips, ticketAnchor } from './slip.ts'

type Page = Look & { readonly main: Piece }
type Here = 'bench' | 'press' | 'shelf' | 'morning' | 'load' | 'people'

const ways = (signed: Signed): readonly Here[] =>
  signed.member.role === 'owner' ? ['morning', 'load', 'bench', 'press', 'shelf', 'people'] : ['bench', 'press', 'shelf']

/** The way round for people who work here, with language and the way out. */
const staffLinks = (counter: Counter, signed: Signed, here: Here): Piece => {
  const words = wordsOf(signed.language)
  const way = (one: Here): Html =>
    one === here
      ? html`<a href="/${one}" aria-current="page">${words.pages[one]}</a>`
      : html`<a href="/${one}">${words.pages[one]}</a>`
  const others = counter.desk.languages.filter((language) => language !== signed.language)
  return html`<nav class="ways" aria-label="${signed.member.name}">${ways(signed).map(way)}</nav>
<form class="ways" method="post" action="/language"><input type="hidden" name="back" value="/${here}">${others.map(
    (language) =>
      html`<button class="quiet" name="language" value="${language}" lang="${language}">${wordsOf(language).language}</button>`,
  )}<button class="quiet" formaction="/sign-out">${words.signOut}</button></form>`
}

/** Language, title and way round of a page of the shop's own people. */
export const look = (counter: Counter, signed: Signed, here: Here): Look => ({
  language: signed.language,
  look: 'staff',
  title: wordsOf(signed.language).pages[here],
  links: staffLinks(counter, signed, here),
})

/** What the desk answered to this person alone, on a page that was sent without script. */
export const answered = (told: Told | null): Piece =>
  when(told !== null && told.said !== null, () =>
    told?.isDone === false
      ? html`<p class="said trouble" role="alert">${told.said}</p>`
      : html`<p class="said" role="status">${told?.said ?? ''}</p>`,
  )

export type Room = { readonly lines: readonly Line[]; readonly place: Place; readonly said: Told | null }

/** So many of the newest tickets lie open on the bench; older ones show what they are called until they are opened. */
const openTickets = 6

/** The bench: tickets as slips, with their paper and what can be done with them. */
export const benchPage = (counter: Counter, signed: Signed, room: Room): Page => {
  const { bench } = wordsOf(signed.language)
  const place = { ...room.place, foldsBefore: room.lines.at(-openTickets)?.seq ?? 0 }
  const main = html`<section class="talk"><h1>${bench.title}</h1><p class="lead">${bench.lead}</p>${renderSlips(room.lines, place)}</section>
<section class="answer">${answered(room.said)}${writeBox(room.place, bench.label)}</section>`
  return { ...look(counter, signed, 'bench'), main }
}

/** Where a line's ticket lies and is worked; an order without one is named where the line does not name it. */
const marksOf = (line: MorningLine, language: Language): Piece => {
  const { morning, press } = wordsOf(language)
  if (line.ticket === null)
    return when(
      line.order !== null && !line.text.includes(line.order),
      () => html`<p class="marks">${morning.order} ${line.order}</p>`,
    )
  const at = encodeURIComponent(line.ticket)
  return html`<p class="marks"><a href="/bench#${ticketAnchor(line.ticket)}">${morning.ticket}</a> <a href="/press/${at}">${press.atPress}</a></p>`
}

const morningLine = (line: MorningLine, language: Language): Html =>
  html`<li><p class="what" dir="auto">${line.text}</p><p class="todo"><span class="stamp">${wordsOf(language).morning.todo}</span> <span dir="auto">${line.todo}</span></p>${marksOf(line, language)}</li>`

/** So many lines of a section lie open: what hurts most stands on top of each. */
const mostOpen = 8

const morningLines = ({ code, lines }: Morning['sections'][number], language: Language): Html => {
  const { morning } = wordsOf(language)
  const list = (some: readonly MorningLine[]): Html => html`<ul>${some.map((line) => morningLine(line, language))}</ul>`
  if (lines.length === 0) return html`<p class="none">${morning.nothing}</p>`
  const rest = lines.slice(mostOpen)
  return html`${list(lines.slice(0, mostOpen))}${when(rest.length > 0, () => html`<details class="more" id="more-${code}"><summary>${morning.more(rest.length)}</summary>${list(rest)}</details>`)}`
}

/** The sections of the morning sheet, replaced whole when they change. */
export const morningSheet = (morning: Morning, language: Language): Html =>
  html`<div id="sheet" class="sections" lang="${language}">${morning.sections.map(
    (
      section,
    ) => html`<section class="sheet" aria-labelledby="section-${section.code}"><h2 id="section-${section.code}">${section.title} <span class="count">${section.lines.length}</span></h2>
${morningLines(section, language)}</section>`,
  )}</div>`

const longDate = (date: string, language: Language): string =>
  new Intl.DateTimeFormat(language === 'es' ? 'es-US' : 'en-US', { dateStyle: 'full', timeZone: 'UTC' }).format(
    new Date(`${date}T00:00:00Z`),
  )

/** What the owner opens at seven, and the notes to the owner below it. */
export const morningPage = (counter: Counter, signed: Signed, room: Room & { readonly morning: Morning }): Page => {
  const { morning } = wordsOf(signed.language)
  const main = html`<h1>${morning.title}</h1><p class="lead">${longDate(room.morning.date, signed.language)}</p>
${morningSheet(room.morning, signed.language)}
<section class="talk"><h2 class="plainly">${morning.notes}</h2>${renderSlips(room.lines, room.place)}</section>
<section class="answer">${answered(room.said)}${writeBox(room.place, morning.label)}</section>`
  return { ...look(counter, signed, 'morning'), main }
}

export type Made =
  | { readonly kind: 'code'; readonly name: string; readonly code: string }
  | { readonly kind: 'link'; readonly link: string }
  | { readonly kind: 'calendar'; readonly link: string }

const madeNote = (made: Made, language: Language): Html => {
  const { people, calendar } = wordsOf(language)
  return made.kind === 'code'
    ? html`<section class="sheet made" role="status"><h2>${people.made(made.name)}</h2><p class="key">${made.code}</p><p>${people.tell}</p></section>`
    : html`<section class="sheet made" role="status"><h2>${made.kind === 'link' ? people.linkMade : calendar.made}</h2><p class="key link">${made.link}</p><p>${made.kind === 'link' ? people.linkLead : calendar.lead}</p></section>`
}

/** Everybody who works here; whoever is staff can be taken off the list. */
const memberLines = (members: readonly Member[], language: Language): Html => {
  const { people } = wordsOf(language)
  const line = ({ id, name, role }: Member): Html =>
    role === 'owner'
      ? html`<li><bdi>${name}</bdi> <span class="stamp">${people.owner}</span></li>`
      : html`<li><details class="fill" id="member-${id}"><summary><bdi>${name}</bdi></summary><form method="post" action="/people/remove"><input type="hidden" name="member" value="${id}"><p>${people.removeLead}</p><button class="plain">${people.remove}</button></form></details></li>`
  return html`<section class="sheet"><h2>${people.here}</h2><ul>${members.map(line)}</ul></section>`
}

/** Who works here, and where the owner lets people in. */
export const peoplePage = (
  counter: Counter,
  signed: Signed,
  { members, made }: { readonly members: readonly Member[]; readonly made: Made | null },
): Page => {
  const { people, calendar } = wordsOf(signed.language)
  const main = html`<h1>${people.title}</h1>${made === null ? null : madeNote(made, signed.language)}
${memberLines(members, signed.language)}
<section class="sheet"><p>${people.lead}</p><form method="post" action="/people/code"><label for="name">${people.name}</label>
<input id="name" name="name" required maxlength="60" autocomplete="off"><button class="main">${people.make}</button></form></section>
<section class="sheet"><h2>${people.linkTitle}</h2><p>${people.linkLead}</p><form method="post" action="/people/link"><button class="plain">${people.linkMake}</button></form></section>
<section class="sheet"><h2>${calendar.title}</h2><p>${calendar.lead}</p><form method="post" action="/people/calendar"><div class="actions"><button class="plain">${calendar.make}</button><button class="plain" formaction="/people/calendar/end">${calendar.revoke}</button></div></form></section>`
  return { ...look(counter, signed, 'people'), main }
}

/** The door for staff. `trouble` is what went wrong with the last try. */
export const signInPage = (language: Language, trouble: string | null): Page => {
  const { signIn } = wordsOf(language)
  const main = html`<section class="sheet"><h1>${signIn.title}</h1><p>${signIn.lead}</p>${when(trouble !== null, () => html`<p class="trouble" role="alert">${trouble}</p>`)}
<form method="post" action="/sign-in"><input type="hidden" name="language" value="${language}">
<label for="name">${signIn.name}</label><input id="name" name="name" required maxlength="60" autocomplete="username">
<label for="code">${signIn.code}</label><input id="code" name="code" required maxlength="60" autocomplete="one-time-code" autocapitalize="characters" spellcheck="false">
<button class="main">${signIn.enter}</button></form></section>`
  return { language, look: 'staff', title: signIn.title, links: null, main }
}

/** Asks for a press before the link is used up, so that a preview of the link does not use it. */
export const ownerPage = (language: Language, link: string): Page => {
  const { owner } = wordsOf(language)
  const main = html`<section class="sheet"><h1>${owner.title}</h1><p>${owner.lead}</p>
<form method="post" action="/owner/${link}"><input type="hidden" name="language" value="${language}"><input type="hidden" name="id" value="${randomUUID()}"><button class="main">${owner.enter}</button></form></section>`
  return { language, look: 'staff', title: owner.title, links: null, main }
}
