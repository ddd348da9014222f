import type PDFDocument from 'pdfkit'
import { fontName } from './document-fonts.ts'
import type { Container, Mark, Node, Page } from './marks.ts'
import type { TypeSetter } from './type-setter.ts'

type Doc = InstanceType<typeof PDFDocument>
type Element = ReturnType<Doc['struct']>

export type Canvas = { readonly doc: Doc; readonly setter: TypeSetter; readonly left: number }

const drawText = ({ doc, setter, left }: Canvas, mark: Extract<Mark, { kind: 'text' }>, top: number): void => {
  let x = left + mark.x
  for (const run of setter.runs(mark.text)) {
    doc.font(fontName(run.font, mark.bold)).fontSize(mark.size).fillColor('#000000')
    doc.text(run.text, x, top + mark.y, { lineBreak: false })
    x += setter.width(run.text, mark)
  }
}

const paint = (doc: Doc, mark: { readonly weight: number; readonly fill: string | null }): void => {
  if (mark.fill !== null && mark.weight > 0) doc.lineWidth(mark.weight).fillAndStroke(mark.fill, '#000000', 'even-odd')
  else if (mark.fill !== null) doc.fill(mark.fill, 'even-odd')
  else doc.lineWidth(mark.weight).stroke('#000000')
}

const drawPath = ({ doc, left }: Canvas, mark: Extract<Mark, { kind: 'path' }>, top: number): void => {
  doc.save()
  doc.translate(left + mark.x, top + mark.y).scale(mark.scale)
  doc.path(mark.path)
  paint(doc, { weight: mark.weight / mark.scale, fill: mark.fill })
  doc.restore()
}

/** Full dots are points of a round pen, an eighth of the bytes of four curves; open circles are curves. */
const drawCircles = ({ doc, left }: Canvas, mark: Extract<Mark, { kind: 'circles' }>, top: number): void => {
  const at = mark.at.map(([x, y]) => [left + mark.x + x * mark.scale, top + mark.y + y * mark.scale] as const)
  if (mark.fill !== null && mark.weight === 0) {
    doc
      .save()
      .lineCap('round')
      .lineWidth(mark.radius * 2)
    for (const [x, y] of at) doc.moveTo(x, y).lineTo(x, y)
    doc.stroke(mark.fill).restore()
    return
  }
  for (const [x, y] of at) doc.circle(x, y, mark.radius)
  paint(doc, mark)
}

const drawLine = ({ doc, left }: Canvas, mark: Extract<Mark, { kind: 'line' }>, top: number): void => {
  if (mark.dash) doc.dash(4, { space: 3 })
  doc.moveTo(left + mark.from[0], top + mark.from[1]).lineTo(left + mark.to[0], top + mark.to[1])
  doc.lineWidth(mark.weight).stroke('#000000')
  if (mark.dash) doc.undash()
}

/** Draws one mark of a piece whose top lies `top` below the top of the page. */
export const drawMark = (canvas: Canvas, mark: Mark, top: number): void => {
  const { doc, left } = canvas
  switch (mark.kind) {
    case 'text':
      drawText(canvas, mark, top)
      break
    case 'line':
      drawLine(canvas, mark, top)
      break
    case 'box':
      doc.rect(left + mark.x, top + mark.y, mark.width, mark.height)
      paint(doc, mark)
      break
    case 'path':
      drawPath(canvas, mark, top)
      break
    case 'circles':
      drawCircles(canvas, mark, top)
      break
  }
}

const drawNode = (canvas: Canvas, node: Node, at: { readonly parent: Element; readonly top: number }): void => {
  if (node.tag === null) return
  const { doc } = canvas
  const options = {
    ...(node.alternative === undefined ? {} : { alt: node.alternative }),
    ...(node.scope === undefined ? {} : { scope: node.scope }),
  }
  const element = doc.struct(node.tag, options)
  at.parent.add(element)
  if (node.marks.length > 0) {
    const content = doc.markStructureContent(node.tag)
    for (const mark of node.marks) drawMark(canvas, mark, at.top)
    doc.endMarkedContent()
    element.add(content)
  }
  for (const child of node.children) drawNode(canvas, child, { parent: element, top: at.top })
  element.end()
}

const drawUnread = (canvas: Canvas, node: Node, top: number): void => {
  if (node.tag === null) for (const mark of node.marks) drawMark(canvas, mark, top)
  for (const child of node.children) drawUnread(canvas, child, top)
}

/** What a page begins with is not read aloud: lines, frames, boxes to tick, repeated heads. */
const drawDecor = (canvas: Canvas, page: Page): void => {
  canvas.doc.markContent('Artifact', { type: 'Layout' })
  for (const { node, y } of page.nodes) drawUnread(canvas, node, y)
  canvas.doc.endMarkedContent()
}

type Open = { sheet: number; section: Element | null; container: Container | null; element: Element | null }

const closeContainer = (open: Open): void => {
  open.element?.end()
  open.element = null
  open.container = null
}

const parentOf = (doc: Doc, root: Element, at: { readonly open: Open; readonly part: Page['nodes'][number] }): Element => {
  const { open, part } = at
  if (open.section === null || open.sheet !== part.sheet) {
    closeContainer(open)
    open.section?.end()
    open.section = doc.struct('Sect')
    open.sheet = part.sheet
    root.add(open.section)
  }
  if (part.container !== open.container) closeContainer(open)
  if (part.container === null) return open.section
  if (open.element === null) {
    open.element = doc.struct(part.container.tag)
    open.container = part.container
    open.section.add(open.element)
  }
  return open.element
}

/** Draws pages with their tag tree: a section for each sheet, a table or list for each block of that kind. */
export const drawPages = (canvas: Canvas, pages: readonly Page[], foot: (page: number) => void): void => {
  const { doc } = canvas
  const root = doc.struct('Document')
  doc.addStructure(root)
  const open: Open = { sheet: -1, section: null, container: null, element: null }
  pages.forEach((page, index) => {
    doc.addPage()
    drawDecor(canvas, page)
    doc.markContent('Artifact', { type: 'Pagination' })
    foot(index)
    doc.endMarkedContent()
    for (const part of page.nodes) {
      if (part.node.tag === null) continue
      drawNode(canvas, part.node, { parent: parentOf(doc, root, { open, part }), top: part.y })
    }
  })
  closeContainer(open)
  open.section?.end()
  root.end()
}
