import type { Page, Piece } from './marks.ts'

/** The part of a page that may be filled, in points. */
export type Area = { readonly top: number; readonly bottom: number }

type Spread = { readonly pages: Page['nodes'][number][][]; y: number }

const set = (spread: Spread, one: Piece, sheet: number): void => {
  const page = spread.pages.at(-1)
  if (page === undefined) return
  for (const node of one.nodes) page.push({ sheet, container: one.container, node, y: spread.y })
  spread.y += one.height
}

/** How much must fit before a piece is begun: itself and all it is kept with. */
const needed = (pieces: readonly Piece[], at: number): number => {
  let height = 0
  for (const one of pieces.slice(at)) {
    height += one.height
    if (!one.keep) return height
  }
  return height
}

const repeated = (head: Piece): Piece => ({
  ...head,
  container: null,
  nodes: head.nodes.map((part) => ({
    tag: null,
    marks: [...part.marks, ...part.children.flatMap((child) => child.marks)],
    children: [],
  })),
})

/** Sets pieces on pages: every sheet begins a page, nothing is cut, heads are set again. */
export const paginate = (sheets: readonly (readonly Piece[])[], area: Area): readonly Page[] => {
  const spread: Spread = { pages: [], y: area.top }
  sheets.forEach((pieces, sheet) => {
    spread.pages.push([])
    spread.y = area.top
    pieces.forEach((one, at) => {
      const fresh = spread.y === area.top
      if (!fresh && spread.y + needed(pieces, at) > area.bottom) {
        spread.pages.push([])
        spread.y = area.top
        if (one.head !== null) set(spread, repeated(one.head), sheet)
      }
      const isGap = one.nodes.length === 0
      if (isGap && spread.y === area.top) return
      set(spread, one, sheet)
    })
  })
  return spread.pages.map((nodes) => ({ nodes }))
}
