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

/** How much must fit before a piece is begun: itself and all it is kept with; a gap alone is nothing to end with. */
const needed = (pieces: readonly Piece[], at: number): number => {
  let height = 0
  for (const one of pieces.slice(at)) {
    height += one.height
    if (!one.keep && one.nodes.length > 0) return height
  }
  return height
}

/** How high a group is that begins here, 0 where none begins. */
const groupHeight = (pieces: readonly Piece[], at: number): number => {
  const group = pieces[at]?.together ?? null
  if (group === null || pieces[at - 1]?.together === group) return 0
  let height = 0
  for (const one of pieces.slice(at)) {
    if (one.together !== group) return height
    height += one.height
  }
  return height
}

/** What must fit for a piece to begin here: its whole group where a page has room for that, else what it is kept with. */
const roomFor = (pieces: readonly Piece[], at: number, area: Area): number => {
  const group = groupHeight(pieces, at)
  return group > 0 && group <= area.bottom - area.top ? group : needed(pieces, at)
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
      if (!fresh && spread.y + roomFor(pieces, at, area) > area.bottom) {
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
