import type { Language } from './facts.ts'
import type { Sign, SignalWord } from './hazards.ts'

/** How a line of text is set; the printer knows the sizes. */
export type Style = 'small' | 'body' | 'strong' | 'large' | 'title' | 'figure' | 'giant'

export type TextBlock = { readonly kind: 'text'; readonly text: string; readonly style: Style }

/** A heading is kept with what follows; `note` is a line under it. */
export type HeadingBlock = { readonly kind: 'heading'; readonly level: 1 | 2 | 3; readonly text: string; readonly note?: string }

export type Field = { readonly label: string; readonly value: string; readonly style: Style }
export type FieldsBlock = { readonly kind: 'fields'; readonly columns: number; readonly fields: readonly Field[] }

/** Lines in a frame that must be seen: what has changed, what is thrown away. */
export type FrameBlock = { readonly kind: 'frame'; readonly title: string; readonly lines: readonly string[] }

export type SignalBlock = {
  readonly kind: 'signal'
  readonly word: SignalWord
  readonly label: string
  readonly items: readonly { readonly symbol: Sign; readonly alternative: string; readonly text: string }[]
}

/** The first figure of a row is set largest: the temperature. */
export type PressBoxBlock = {
  readonly kind: 'press-box'
  readonly title: string
  /** Stays on one page with the block after it. */
  readonly leads?: boolean
  readonly rows: readonly {
    readonly covers: string
    readonly figures: readonly { readonly label: string; readonly value: string }[]
    readonly notes: readonly string[]
  }[]
}

/** A cell of a table: text, and how many boxes to tick stand after it. */
export type Cell = { readonly text: string; readonly boxes: number; readonly bold: boolean }
export type Column = { readonly title: string; readonly share: number; readonly align: 'left' | 'right' | 'centre' }
/** Groups keep their heading with their first rows; the column heads are repeated on every page. */
export type TableBlock = {
  readonly kind: 'table'
  readonly columns: readonly Column[]
  readonly groups: readonly { readonly heading: string | null; readonly rows: readonly (readonly Cell[])[] }[]
  readonly style: 'body' | 'strong'
}

/** Things to tick: what is asked, the answers with a box each, what is written on a line. */
export type ChecksBlock = {
  readonly kind: 'checks'
  readonly items: readonly {
    readonly title: string
    readonly text: string
    readonly answers: readonly string[]
    readonly writes: readonly string[]
  }[]
}

export type StepsBlock = {
  readonly kind: 'steps'
  readonly steps: readonly {
    readonly no: string
    readonly title: string
    readonly figures: readonly string[]
    readonly lines: readonly string[]
    readonly cautions: readonly {
      readonly label: string
      readonly items: readonly { readonly symbol: Sign; readonly alternative: string; readonly text: string }[]
    }[]
  }[]
}

/** Curves in whole µm, x right, y down, in the view's own axes. */
export type DrawnMark = {
  readonly atMicrometres: readonly [x: number, y: number]
  readonly paths: readonly string[]
  readonly stones: readonly { readonly diameterMicrometres: number; readonly at: readonly (readonly [x: number, y: number])[] }[]
}
export type View = {
  readonly title: string
  readonly widthMicrometres: number
  readonly heightMicrometres: number
  readonly outline: readonly string[]
  readonly marks: readonly DrawnMark[]
  /** Measured lines, drawn with ends. */
  readonly measures: readonly { readonly from: readonly [x: number, y: number]; readonly to: readonly [x: number, y: number] }[]
  /** Text beside the view, with the point each is about. */
  readonly notes: readonly { readonly about: readonly [x: number, y: number]; readonly lines: readonly string[] }[]
  /** What stands at the reader's left and right under the view. */
  readonly ends: readonly [left: string, right: string]
}
export type DrawingBlock = { readonly kind: 'drawing'; readonly alternative: string; readonly views: readonly View[] }

/** Dark modules of a QR code, row by row, without the quiet zone. */
export type CodeBlock = {
  readonly kind: 'code'
  readonly rows: readonly (readonly boolean[])[]
  readonly alternative: string
  readonly caption: string
}

export type BesideBlock = {
  readonly kind: 'beside'
  readonly share: number
  readonly left: readonly Block[]
  readonly right: readonly Block[]
}

/** Blocks that stay on one page where a page has room for them all. */
export type TogetherBlock = { readonly kind: 'together'; readonly blocks: readonly Block[] }

export type StripsBlock = {
  readonly kind: 'strips'
  readonly hint: string
  readonly strips: readonly {
    readonly head: string
    readonly figure: string
    readonly name: string
    readonly lines: readonly string[]
  }[]
}

/** Curves drawn one to one, with a ruler to check the print by; both in whole µm, y down. */
export type PlateBlock = {
  readonly kind: 'plate'
  readonly alternative: string
  readonly widthMicrometres: number
  readonly heightMicrometres: number
  readonly paths: readonly string[]
  /** How far the paths are moved; the circles stand where they are. */
  readonly shiftMicrometres: readonly [x: number, y: number]
  readonly circles: readonly { readonly diameterMicrometres: number; readonly at: readonly (readonly [x: number, y: number])[] }[]
  /** Straight strokes to lay it by, where they stand. */
  readonly ticks: readonly { readonly from: readonly [x: number, y: number]; readonly to: readonly [x: number, y: number] }[]
}

export type RulerBlock = {
  readonly kind: 'ruler'
  readonly alternative: string
  readonly lengthMicrometres: number
  readonly tickMicrometres: number
  readonly labels: readonly { readonly atMicrometres: number; readonly text: string }[]
}

export type Block =
  | TextBlock
  | HeadingBlock
  | FieldsBlock
  | FrameBlock
  | SignalBlock
  | PressBoxBlock
  | TableBlock
  | ChecksBlock
  | StepsBlock
  | DrawingBlock
  | CodeBlock
  | BesideBlock
  | StripsBlock
  | TogetherBlock
  | PlateBlock
  | RulerBlock

/** Blocks that start on a page of their own and run over as many as they need. */
export type Sheet = { readonly title: string; readonly blocks: readonly Block[] }

/** A printed document as data: all text finished, nothing measured. */
export type Ticket = {
  readonly title: string
  readonly language: Language
  readonly paper: 'letter' | 'a4'
  /** The minute it was made, YYYY-MM-DDTHH:MM. */
  readonly made: string
  /** What stands at the top of every page. */
  readonly running: string
  /** What stands at the foot of every page, with {page} and {pages} where their numbers go. */
  readonly foot: string
  /** What stands at the foot of a page that shows a character as its code point. */
  readonly lacking: string
  readonly sheets: readonly Sheet[]
}
