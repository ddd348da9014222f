import { platformWords } from '../../../../templates/platform/languages.ts'
import type { Block, Message } from '../../../ports/chat.ts'
import { oneLine, shown, shownLine, splitText } from './plain-text.ts'

const signs = { plain: '', assumed: '', caution: '⚠ ', stop: '⛔ ', good: '✓ ' } as const
const widest = 56

const listText = ({ title, items }: Extract<Block, { kind: 'list' }>): string => {
  const lines = items.map((item) => `• ${shown(item).replaceAll('\n', '\n  ')}`)
  return [...(title === null ? [] : [`**${shownLine(title)}**`]), ...lines].join('\n')
}

const bold = (text: string): string => {
  const line = shownLine(text)
  return line === '' ? '' : `**${line}**`
}

type Language = Message['language']

/** The replies call what nobody has said yet by the same word, in brackets. */
const marked = (text: string, isAssumed: boolean, language: Language): string =>
  isAssumed ? `${text} ${shownLine(platformWords[language].assumed)}` : text

const fieldsText = ({ fields }: Extract<Block, { kind: 'fields' }>, language: Language): string =>
  fields.map(({ name, value, assumed }) => `${bold(name)} ${marked(shownLine(value), assumed, language)}`).join('\n')

const plainText = ({ text, tone }: Extract<Block, { kind: 'text' }>, language: Language): string =>
  text.trim() === '' ? '' : marked(`${signs[tone]}${shown(text)}`, tone === 'assumed', language)

/** Inside a fence nothing is markup but the fence's own sign. */
const fenced = (text: string): string => oneLine(text).replaceAll('`', 'ˋ')

const padded = (cells: readonly string[], widths: readonly number[]): string =>
  cells
    .map((cell, at) => cell.padEnd(widths[at] ?? 0))
    .join('  ')
    .trimEnd()

const fence = (lines: readonly string[]): string => `\`\`\`\n${lines.join('\n')}\n\`\`\``

const narrowTable = (head: readonly string[], rows: readonly (readonly string[])[], most: number): readonly string[] => {
  const widths = head.map((_, at) => Math.max(...[head, ...rows].map((row) => row[at]?.length ?? 0)))
  const title = padded(head, widths)
  const chunks: string[][] = []
  let size = most
  for (const line of rows.map((row) => padded(row, widths))) {
    if (size + line.length + 1 > most - 8) {
      chunks.push([title])
      size = title.length + 1
    }
    chunks.at(-1)?.push(line)
    size += line.length + 1
  }
  return (chunks.length === 0 ? [[title]] : chunks).map(fence)
}

const wideTable = (head: readonly string[], rows: readonly (readonly string[])[], most: number): readonly string[] => {
  const text = rows.map((row) => row.map((cell, at) => `${bold(head[at] ?? '')} ${shownLine(cell)}`).join(' · '))
  return splitText(text.join('\n'), most)
}

const tableTexts = ({ head, rows }: Extract<Block, { kind: 'table' }>, most: number): readonly string[] => {
  const plainHead = head.map(fenced)
  const plainRows = rows.map((row) => row.map(fenced))
  const width = plainHead.reduce(
    (sum, _, at) => sum + 2 + Math.max(...[plainHead, ...plainRows].map((row) => row[at]?.length ?? 0)),
    0,
  )
  return width > widest ? wideTable(head, rows, most) : narrowTable(plainHead, plainRows, most)
}

const progressText = ({ text, done, of }: Extract<Block, { kind: 'progress' }>): string => {
  const steps = 10
  const full = of > 0 ? Math.max(0, Math.min(steps, Math.round((done / of) * steps))) : 0
  return `${shown(text)}\n${'▰'.repeat(full)}${'▱'.repeat(steps - full)} ${done}/${of}`
}

/** The texts of a block, each at most so many signs and whole in itself. */
export const blockTexts = (block: Block, language: Language, most: number): readonly string[] => {
  switch (block.kind) {
    case 'text':
      return splitText(plainText(block, language), most)
    case 'list':
      return splitText(listText(block), most)
    case 'fields':
      return splitText(fieldsText(block, language), most)
    case 'table':
      return tableTexts(block, most)
    case 'progress':
      return splitText(progressText(block), most)
  }
}
