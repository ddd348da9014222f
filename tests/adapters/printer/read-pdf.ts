import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

/** One run of text as an independent reader finds it: points, y up, from its baseline. */
export type Found = {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly width: number
  readonly size: number
}

export type ReadPage = { readonly width: number; readonly height: number; readonly found: readonly Found[] }

export type TagNode = { readonly role: string; readonly alt?: string; readonly children: readonly TagNode[] }

export type ReadPdf = {
  readonly pages: readonly ReadPage[]
  readonly text: string
  readonly info: Readonly<Record<string, unknown>>
  readonly language: string | null
  readonly marked: boolean
  readonly tags: readonly TagNode[]
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null

const tagOf = (value: unknown): TagNode => {
  if (!isRecord(value)) return { role: '', children: [] }
  const children = Array.isArray(value['children']) ? value['children'].map(tagOf) : []
  const role = typeof value['role'] === 'string' ? value['role'] : ''
  return typeof value['alt'] === 'string' ? { role, alt: value['alt'], children } : { role, children }
}

const foundOf = (item: unknown): readonly Found[] => {
  if (!isRecord(item) || typeof item['str'] !== 'string' || item['str'].trim() === '') return []
  const transform: unknown = item['transform']
  if (!Array.isArray(transform)) return []
  const [, , , size, x, y] = transform.map(Number)
  return [{ text: item['str'], x: x ?? 0, y: y ?? 0, width: Number(item['width']), size: size ?? 0 }]
}

/** Reads a PDF back with pdf.js, which shares no code with the printer: text with places, metadata, tags. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
  const task = getDocument({ data: bytes.slice(), useSystemFonts: false, verbosity: 0 })
  const document = await task.promise
  const pages: ReadPage[] = []
  const tags: TagNode[] = []
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number)
    const content = await page.getTextContent()
    const { width, height } = page.getViewport({ scale: 1 })
    pages.push({ width, height, found: content.items.flatMap(foundOf) })
    tags.push(tagOf(await page.getStructTree()))
  }
  const meta = await document.getMetadata()
  const mark = await document.getMarkInfo()
  const info: unknown = meta.info
  await task.destroy()
  const text = pages.flatMap((page) => page.found.map((one) => one.text)).join(' ')
  const language = isRecord(info) && typeof info['Language'] === 'string' ? info['Language'] : null
  return { pages, text, info: isRecord(info) ? info : {}, language, marked: isRecord(mark) && mark['Marked'] === true, tags }
}

type Box = { readonly left: number; readonly right: number; readonly low: number; readonly high: number; readonly text: string }

/** The ink of a run: from a fifth below the baseline to seven tenths above it, a hair smaller than the font's own box. */
const boxOf = ({ text, x, y, width, size }: Found): Box => ({
  left: x,
  right: x + width,
  low: y - size * 0.2,
  high: y + size * 0.7,
  text,
})

const GRACE = 0.6

/** Pairs of runs on one page whose boxes share room. */
export const overlaps = (page: ReadPage): readonly (readonly [string, string])[] => {
  const boxes = page.found.map(boxOf).sort((a, b) => a.left - b.left)
  const pairs: (readonly [string, string])[] = []
  boxes.forEach((box, at) => {
    for (const other of boxes.slice(at + 1)) {
      if (other.left > box.right - GRACE) break
      const shared = Math.min(box.high, other.high) - Math.max(box.low, other.low)
      if (shared > GRACE && Math.min(box.right, other.right) - other.left > GRACE) pairs.push([box.text, other.text])
    }
  })
  return pairs
}

/** Runs that reach over the edge of the page or into the margin a printer cannot reach (a quarter inch). */
export const outside = (page: ReadPage): readonly string[] =>
  page.found
    .map(boxOf)
    .filter((box) => box.left < 18 || box.right > page.width - 18 || box.low < 18 || box.high > page.height - 18)
    .map((box) => box.text)

export const flat = (nodes: readonly TagNode[]): readonly TagNode[] => nodes.flatMap((one) => [one, ...flat(one.children)])
