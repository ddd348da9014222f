import { type CautionCode, cautionCodes } from '../press/step-codes.ts'

/** Signal words after ANSI Z535.4, greatest first: DANGER will, WARNING could, CAUTION minor or moderate, NOTICE no injury. */
export const signalWords = ['danger', 'warning', 'caution', 'notice'] as const
export type SignalWord = (typeof signalWords)[number]

/** Simple signs of our own drawing: hot surface, crushing, gloves, air, floor, child, mark of attention. */
export type Sign = 'hot' | 'crush' | 'gloves' | 'air' | 'floor' | 'child' | 'mark'

/** Hazards of the shop that belong to no single step. */
export const standingCodes = ['unknown-vinyl', 'small-parts', 'no-pins'] as const

export const hazardCodes = [...cautionCodes, ...standingCodes] as const
export type HazardCode = CautionCode | (typeof standingCodes)[number]

export type Hazard = { readonly word: SignalWord; readonly symbol: Sign }

/**
 * How grave each hazard is and which sign stands beside it. Bare metal burns within a second from 65-70 °C (ISO 13732-1,
 * from memory) and a platen runs at 120-170 °C; a press of 16 × 20 in at 20 psi closes with 6,400 lbf (computed); PVC gives
 * off hydrogen chloride when heated (common practice: never heat vinyl of unknown make); what harms only the garment is a
 * NOTICE.
 */
export const hazards: Readonly<Record<HazardCode, Hazard>> = {
  'hot-platen': { word: 'warning', symbol: 'hot' },
  'hands-out-before-closing': { word: 'warning', symbol: 'crush' },
  'never-leave-closed': { word: 'warning', symbol: 'hot' },
  'unknown-vinyl': { word: 'warning', symbol: 'air' },
  'small-parts': { word: 'warning', symbol: 'child' },
  'gloves-for-pillow-and-stones': { word: 'caution', symbol: 'gloves' },
  ventilate: { word: 'caution', symbol: 'air' },
  'hood-and-strings-clear': { word: 'caution', symbol: 'crush' },
  'stones-on-floor': { word: 'caution', symbol: 'floor' },
  'keep-25-mm-off': { word: 'notice', symbol: 'mark' },
  'zip-in-two-halves': { word: 'notice', symbol: 'mark' },
  'do-not-bend-stones': { word: 'notice', symbol: 'mark' },
  'do-not-move-tape': { word: 'notice', symbol: 'mark' },
  'stones-never-on-bare-platen': { word: 'notice', symbol: 'mark' },
  'over-margin': { word: 'notice', symbol: 'mark' },
  'no-pins': { word: 'notice', symbol: 'mark' },
}
