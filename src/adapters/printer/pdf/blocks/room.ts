import type { Style } from '../../../../domain/ticket/ticket.ts'
import { type Node, node } from '../marks.ts'
import { type Align, type Look, lineHeight, lineMarks, type TypeSetter } from '../type-setter.ts'

/** What a block is set with: the type setter and the width it has, in points. */
export type Room = { readonly setter: TypeSetter; readonly width: number }

const LOOKS: Readonly<Record<Style, Look>> = {
  small: { size: 8, bold: false },
  body: { size: 9.5, bold: false },
  strong: { size: 11, bold: true },
  large: { size: 17, bold: true },
  title: { size: 22, bold: true },
  figure: { size: 21, bold: true },
  giant: { size: 35, bold: true },
}

export const lookOf = (style: Style): Look => LOOKS[style]

export const SMALL = LOOKS.small
export const BODY = LOOKS.body
export const BODY_BOLD: Look = { size: 9.5, bold: true }
export const SMALL_BOLD: Look = { size: 8, bold: true }

export type Set = { readonly node: Node; readonly height: number; readonly width: number }

export type Place = {
  readonly look: Look
  readonly x: number
  readonly y: number
  readonly width: number
  readonly align?: Align
  readonly tag?: string
}

/** A text wrapped into a width at a place: its node, and the height it takes. */
export const setText = (room: Room, text: string, place: Place): Set => {
  const { look } = place
  const lines = room.setter.wrap(text, place.width, look)
  const marks = lineMarks(room.setter, lines, { x: place.x, y: place.y, room: place.width, align: place.align ?? 'left', look })
  const width = marks.reduce((most, mark) => (mark.kind === 'text' ? Math.max(most, mark.width) : most), 0)
  return { node: node(place.tag ?? 'P', marks), height: lines.length * lineHeight(look), width }
}

export const BOX = 10
