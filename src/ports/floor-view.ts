import type { Form } from './chat.ts'

/** One garment line at a step, as a tile that can be chosen. */
export type TileView = {
  readonly line: number
  readonly label: string
  readonly state: 'waiting' | 'taken' | 'started' | 'done' | 'spoiled'
  readonly by: string | null
}

/** One step of a ticket as it is worked: its figures large, its cautions, how long the press stays closed. */
export type StepView = {
  readonly no: number
  readonly title: string
  readonly figures: readonly string[]
  readonly cautions: readonly string[]
  readonly seconds: number | null
  readonly tiles: readonly TileView[]
  /** Every tile is done. */
  readonly isDone: boolean
}

/** A ticket at the press. `tick` is the form's id that ticks go to; null when nobody may tick now. */
export type PressView = {
  readonly ticketId: string
  readonly title: string
  readonly needed: string
  readonly gates: readonly string[]
  readonly warnings: readonly string[]
  readonly steps: readonly StepView[]
  readonly tick: string | null
  readonly acts: readonly { readonly id: string; readonly label: string }[]
  readonly forms: readonly Form[]
}

export type ShelfRow = {
  readonly item: string
  readonly lot: string
  readonly bin: string
  readonly certificate: string
  readonly free: string
  readonly reserved: string
  readonly short: string
}
export type ShelfView = {
  readonly head: readonly string[]
  readonly rows: readonly ShelfRow[]
  readonly shopping: { readonly title: string; readonly lines: readonly string[] }
  readonly coming: { readonly title: string; readonly lines: readonly string[] }
  readonly templates: { readonly title: string; readonly lines: readonly string[] }
  readonly forms: readonly Form[]
}
