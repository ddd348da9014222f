import type { Action, Form } from './chat.ts'

/** One garment line at a step, as a tile that can be chosen. */
export type TileView = {
  readonly line: number
  readonly label: string
  readonly state: 'waiting' | 'taken' | 'started' | 'done' | 'spoiled'
  readonly by: string | null
  /** It is to go through the step now: not done yet, and not waiting for a first piece of its kind. */
  readonly isChosen: boolean
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
  /** Something is to be done at it now; what only waits for a first piece to be made or signed is not. */
  readonly isNext: boolean
}

/** A gate in words. */
export type GateView = { readonly text: string; readonly isOpen: boolean }

/** One player's bag: whose it is, and its garments. */
export type BagView = {
  readonly player: string
  readonly garments: readonly { readonly text: string; readonly isBagged: boolean }[]
}

/** A ticket that can be worked on. `waits`: gates that are shut, by their names. */
export type TicketAtPress = {
  readonly ticketId: string
  readonly label: string
  /** When it is promised and when it is wanted, in words. */
  readonly hours: string
  /** The hottest setting of its press steps and the machine: what a change of ticket changes at the press. */
  readonly setting: string
  readonly stage: 'free' | 'held' | 'checked' | 'bagged' | 'collected'
  /** Who holds it. */
  readonly by: string | null
  readonly waits: readonly string[]
}

/** A ticket at the press. `tick` is the form's id that ticks go to; null when nobody may tick now. */
export type PressView = {
  readonly ticketId: string
  readonly title: string
  readonly needed: string
  /** Who holds the ticket; null when it is free. */
  readonly holder: string | null
  readonly gates: readonly GateView[]
  readonly warnings: readonly string[]
  readonly steps: readonly StepView[]
  readonly bags: readonly BagView[]
  readonly tick: string | null
  /** What leads on is `main`; handing on and pausing are not the next thing to do. */
  readonly acts: readonly Action[]
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
/** Rows of one kind of thing; what is short stands in a group of its own. */
export type ShelfGroup = {
  readonly kind: 'short' | 'stones' | 'vinyl' | 'garments' | 'other'
  readonly title: string
  readonly rows: readonly ShelfRow[]
}
export type ShelfView = {
  readonly head: readonly string[]
  readonly groups: readonly ShelfGroup[]
  readonly shopping: { readonly title: string; readonly lines: readonly string[] }
  readonly coming: { readonly title: string; readonly lines: readonly string[] }
  readonly templates: { readonly title: string; readonly lines: readonly string[] }
  readonly forms: readonly Form[]
}
