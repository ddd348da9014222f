import { randomUUID } from 'node:crypto'
import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { PageWords } from '../../../../templates/page/words.ts'
import type { Action, Attachment, Choice, Form, FormField, Message } from '../../../ports/chat.ts'
import type { Line } from '../../../ports/counter-desk.ts'
import { renderBlock } from './blocks.ts'

/** Where a slip lies: the address its forms and files hang under, and who looks at it. */
export type Place = {
  readonly base: string
  /** Where an action that asks for something is filled in; null: it is done by one press. */
  readonly formAt?: (action: string) => string | null
  readonly words: PageWords
  readonly locale: string
  readonly zone: string
  readonly nameOf: (by: Line['by']) => string
  /** Slips that came before this one (by `seq`) are folded under what they are called; left out: none can be folded. */
  readonly foldsBefore?: number
}

/** The address part under which a form of the page posts. */
type Deed = 'press' | 'choose' | 'fill'

/** A form of the page; the hidden id makes sending it twice count once. */
const postForm = (address: string, inner: Piece): Html =>
  html`<form method="post" action="${address}" data-send><input type="hidden" name="id" value="${randomUUID()}">${inner}</form>`

const deedForm = (place: Place, deed: Deed, inner: Piece): Html => postForm(`${place.base}/${deed}`, inner)

const actionButton = (action: Action, label: string): Html =>
  html`<button class="${action.weight}" name="action" value="${action.id}">${label}</button>`

/** A grave action is asked twice; one that asks for something leads to where it is filled in. */
const renderAction = (action: Action, { words, formAt }: Place): Html => {
  const address = formAt?.(action.id) ?? null
  if (address !== null) return html`<a class="button ${action.weight}" href="${address}">${action.label}</a>`
  return action.weight === 'grave'
    ? html`<details class="grave"><summary>${action.label}</summary>${actionButton(action, words.sure(action.label))}</details>`
    : actionButton(action, action.label)
}

const renderActions = (actions: readonly Action[], place: Place): Piece =>
  when(actions.length > 0, () =>
    deedForm(place, 'press', html`<div class="actions">${actions.map((action) => renderAction(action, place))}</div>`),
  )

const isSaid = (message: Message, label: string): boolean =>
  message.blocks.some((block) => block.kind === 'text' && block.text === label)

type Asking = { readonly choice: Choice; readonly said: boolean; readonly isAnswered: boolean }

/**
 * The label of a choice that the message says already is for those who cannot see that they stand together. What was answered stays
 * to be read and cannot be pressed.
 */
const renderChoice = ({ choice, said, isAnswered }: Asking, place: Place): Html =>
  deedForm(
    place,
    'choose',
    html`<fieldset${when(isAnswered, () => html` disabled`)}><legend${said ? html` class="unseen"` : null}>${choice.label}</legend><input type="hidden" name="choice" value="${choice.id}"><div class="actions">${choice.options.map(
      (option) => html`<button class="plain" name="value" value="${option.value}">${option.label}</button>`,
    )}</div></fieldset>`,
  )

const fieldBox = (field: FormField, id: string, words: PageWords): Html => {
  const name = `field.${field.name}`
  const need = field.required ? html` required` : null
  switch (field.kind) {
    case 'line':
      return html`<input id="${id}" name="${name}" maxlength="500"${need}>`
    case 'lines':
      return html`<textarea id="${id}" name="${name}" rows="4"${need}></textarea>`
    case 'select':
      return html`<select id="${id}" name="${name}"${need}><option value="">${words.choose}</option>${field.options.map(
        (option) => html`<option value="${option.value}">${option.label}</option>`,
      )}</select>`
    case 'file':
      return html`<input id="${id}" type="file" name="${name}"${need}>`
    default:
      return field.kind satisfies never
  }
}

export const renderForm = (form: Form, place: Place): Html => {
  const prefix = randomUUID()
  const upload = form.fields.some((field) => field.kind === 'file')
  const boxes = form.fields.map((field, index) => {
    const id = `f-${prefix}-${index}`
    return html`<label for="${id}">${field.label}</label>${fieldBox(field, id, place.words)}`
  })
  return html`<form method="post" action="${place.base}/fill"${when(upload, () => html` enctype="multipart/form-data"`)} data-send><input type="hidden" name="id" value="${randomUUID()}"><input type="hidden" name="form" value="${form.id}"><fieldset><legend>${form.title}</legend>${boxes}<button class="main">${form.submit}</button></fieldset></form>`
}

const sizeOf = (bytes: number): string =>
  bytes < 1024 * 1024 ? `${Math.max(1, Math.round(bytes / 1024))} kB` : `${(bytes / (1024 * 1024)).toFixed(1)} MB`

const fileAddress = (base: string, file: string): string => `${base}/file/${encodeURIComponent(file)}`

const endingOf = (name: string): string => /\.([A-Za-z0-9]{1,5})$/.exec(name)?.[1]?.toUpperCase() ?? 'FILE'

const renderFile = (file: Attachment, place: Place): Html =>
  html`<p class="file"><a href="${fileAddress(place.base, file.file)}" download="${file.name}"><span class="kind">${endingOf(file.name)}</span> <span class="name">${file.name}</span> <span class="size">${sizeOf(file.bytes)}</span></a></p>`

const renderPicture = (picture: NonNullable<Message['picture']>, place: Place): Html => {
  const address = fileAddress(place.base, picture.file)
  return html`<figure><img src="${address}" alt="${picture.alt}" decoding="async"><figcaption><a href="${address}" download>${place.words.openPicture}</a></figcaption></figure>`
}

/** The ticket a slip is about, known by its actions, so that the morning sheet can point at it. */
const ticketOf = (message: Message): string | null =>
  message.actions.map((action) => /^t:([^:]+):/.exec(action.id)?.[1] ?? null).find((id) => id !== null) ?? null

export const ticketAnchor = (ticket: string): string => `ticket-${encodeURIComponent(ticket)}`

const timeOf = (at: number, place: Place): Html => {
  const shown = new Intl.DateTimeFormat(place.locale, {
    timeZone: place.zone,
    weekday: 'short',
    hour: 'numeric',
    minute: '2-digit',
    month: 'short',
    day: 'numeric',
  })
  return html`<time datetime="${new Date(at).toISOString()}">${shown.format(at)}</time>`
}

const slipInside = ({ message, isAnswered = false }: Line, blocks: Message['blocks'], place: Place): Html => {
  const ticket = ticketOf(message)
  return html`${when(ticket !== null, () => html`<span class="anchor" id="${ticketAnchor(ticket ?? '')}"></span>`)}
<div class="body">${when(message.picture !== null, () => (message.picture === null ? null : renderPicture(message.picture, place)))}
<div class="words">${blocks.map((block) => renderBlock(block, place.words))}
${message.file === null ? null : renderFile(message.file, place)}
${(message.papers ?? []).map((paper) => renderFile(paper, place))}</div></div>
${message.choice === null ? null : renderChoice({ choice: message.choice, said: isSaid(message, message.choice.label), isAnswered }, place)}
${message.form === null ? null : renderForm(message.form, place)}
${renderActions(message.actions, place)}`
}

/** A slip that begins with what it is called can be folded under that; an address that points into it opens it. */
const slipBody = (line: Line, place: Place): Html => {
  const { message, id, seq } = line
  const [first, ...rest] = message.blocks
  if (place.foldsBefore === undefined || first?.kind !== 'text' || rest.length === 0)
    return slipInside(line, message.blocks, place)
  return html`<details class="slip-fold" id="fold-${encodeURIComponent(id)}"${seq < place.foldsBefore ? null : html` open`}><summary dir="auto">${first.text}</summary>${slipInside(line, rest, place)}</details>`
}

/** One line of a channel as a slip of paper. */
export const renderSlip = (line: Line, place: Place): Html => {
  const id = `slip-${encodeURIComponent(line.id)}`
  return html`<li class="slip by-${line.by.kind}" id="${id}" data-seq="${line.seq}" data-change="${line.change}" lang="${line.message.language}">
<div class="head"><h2 dir="auto">${place.nameOf(line.by)}</h2><p class="when">${timeOf(line.at, place)}${when(line.edited > 0, () => html` <span class="edited">${place.words.edited}</span>`)}</p></div>
${slipBody(line, place)}
</li>`
}

/** The slips of a channel, kept live by the script from `base`/live. */
export const renderSlips = (lines: readonly Line[], place: Place): Html => {
  const after = Math.max(0, ...lines.map((line) => line.change))
  return html`<div class="slips" role="log" aria-live="polite" aria-relevant="additions" aria-label="${place.words.slips}" tabindex="-1" data-live="${place.base}/live" data-after="${after}"><ol>${lines.map((line) => renderSlip(line, place))}</ol>${when(lines.length === 0, () => html`<p class="none">${place.words.noSlips}</p>`)}</div><span id="newest"></span>`
}
