import type { ProblemOf } from '../result/result.ts'

/** Trouble inside an order document, or between the document and what the shop has. */
export type OrderProblems = {
  'order-not-json': { reason: string }
  'id-twice': { id: string; kind: string }
  'garment-not-in-order': { id: string; known: readonly string[] }
  'decoration-not-in-order': { id: string; known: readonly string[] }
  'line-twice': { line: number }
  'row-without-number': { line: number; decoration: string }
  'row-without-name': { line: number; decoration: string }
  'decoration-on-nobody': { decoration: string }
  'garment-not-sold': { id: string; sold: readonly string[] }
  'colour-unknown': { id: string; known: readonly string[] }
  'colour-not-sold': { garment: string; colour: string; sold: readonly string[] }
  'cut-not-sold': { garment: string; fit: string; size: string; line: number }
  'material-unknown': { id: string }
  'material-not-stocked': { kind: 'vinyl' | 'stones'; what: string; colour: string; colours: readonly string[] }
  'material-kind': { id: string; wanted: string }
  'place-without-figures': { place: string; fit: string; size: string }
  'face-not-offered': { face: string; offered: readonly string[] }
  'artwork-needs-a-person': { decoration: string; file: string }
  'stone-size-not-set': { size: string }
  'size-later': { line: number }
}
export type OrderProblem = ProblemOf<OrderProblems>
