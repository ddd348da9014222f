import { type Html, html, type Piece, when } from '../../../../templates/page/html.ts'
import type { PageWords } from '../../../../templates/page/words.ts'
import type { Block } from '../../../ports/chat.ts'

type Fields = Extract<Block, { kind: 'fields' }>
type Table = Extract<Block, { kind: 'table' }>
type Text = Extract<Block, { kind: 'text' }>

const textBlock = (block: Text, words: PageWords): Html => {
  const stamp = block.tone === 'plain' || block.tone === 'good' ? null : words[block.tone]
  return html`<p class="text ${block.tone}" dir="auto">${when(stamp !== null, () => html`<strong class="stamp">${stamp}</strong> `)}${block.text}</p>`
}

const fieldsBlock = (block: Fields, words: PageWords): Html =>
  html`<dl class="fields">${block.fields.map(
    (field) =>
      html`<div><dt>${field.name}</dt><dd dir="auto">${field.value}${when(field.assumed, () => html` <span class="stamp">${words.assumed}</span>`)}</dd></div>`,
  )}</dl>`

const tableBlock = (
  block: Table,
  words: PageWords,
): Html => html`<div class="wide" tabindex="0" role="group" aria-label="${words.wideTable}"><table>
<thead><tr>${block.head.map((cell) => html`<th scope="col">${cell}</th>`)}</tr></thead>
<tbody>${block.rows.map((row) => html`<tr>${row.map((cell) => html`<td dir="auto">${cell}</td>`)}</tr>`)}</tbody>
</table></div>`

export const renderBlock = (block: Block, words: PageWords): Piece => {
  switch (block.kind) {
    case 'text':
      return textBlock(block, words)
    case 'list':
      return html`${when(block.title !== null, () => html`<h3>${block.title}</h3>`)}<ul>${block.items.map((item) => html`<li dir="auto">${item}</li>`)}</ul>`
    case 'fields':
      return fieldsBlock(block, words)
    case 'table':
      return tableBlock(block, words)
    case 'progress':
      return html`<div class="progress"><p>${block.text} <span class="count">${words.progress(block.done, block.of)}</span></p><progress aria-label="${block.text}" max="${Math.max(1, block.of)}" value="${Math.min(block.done, block.of)}"></progress></div>`
    default:
      return block satisfies never
  }
}
