import type { VinylClass } from '../../../src/domain/material/material.ts'
import type { GateReason } from '../../../src/domain/press/gate-state.ts'
import type { FormAct, PlainAct, ShopAct } from '../../../src/domain/ticket/acts.ts'
import type { PieceWait } from '../../../src/domain/ticket/first-piece.ts'
import type { WorkKind } from '../../../src/domain/ticket/work-steps.ts'
import type { Complaint } from '../../../src/domain/understanding/conversation.ts'

export const spoiledReasons = [
  'scorched',
  'shine',
  'crooked',
  'wrong-name',
  'wrong-number',
  'wrong-size',
  'reads-backwards',
  'stones-lost',
  'lifted',
  'bled',
  'hole',
  'stain',
  'other',
] as const
export type SpoiledReason = (typeof spoiledReasons)[number]
export const faultOwners = ['shop', 'maker', 'customer'] as const
/** How a garment was dried; whoever runs the machines may be somebody else than who brings it. */
export const dryings = ['air', 'home-dryer', 'laundry-dryer', 'unknown'] as const
export type Drying = (typeof dryings)[number]
export type FaultOwner = (typeof faultOwners)[number]

type Field =
  | 'garment'
  | 'missing'
  | 'faults'
  | 'label'
  | 'bin'
  | 'drops'
  | 'result'
  | 'signedBy'
  | 'subject'
  | 'certificate'
  | 'hole'
  | 'photo'
  | 'note'
  | 'step'
  | 'lines'
  | 'deed'
  | 'line'
  | 'quantity'
  | 'reason'
  | 'whose'
  | 'remake'
  | 'collector'
  | 'press'
  | 'set'
  | 'readings'
  | 'item'
  | 'lot'
  | 'amount'
  | 'weight'
  | 'box'
  | 'key'
  | 'coming'
  | 'kind'
  | 'washes'
  | 'drying'

/** What the shop floor reads: acts, gates, forms, remakes, stock. Names of people, garments and teams come finished. */
export type FloorWords = {
  readonly acts: { readonly [act in PlainAct | FormAct | ShopAct]: string }
  readonly done: { readonly [act in PlainAct]: (name: string, hour: string) => string }
  /** The one press that ticks the cutting of the whole ticket; a ticket that a tick of one step began is only started. */
  readonly allCut: (name: string, hour: string) => string
  /** Counted in, and nothing is missing. */
  readonly allHere: string
  readonly found: { readonly [act in FormAct]: (what: string, name: string, hour: string) => string }
  readonly fields: { readonly [field in Field]: string }
  readonly results: { readonly [result: string]: string }
  readonly reasons: { readonly [reason in SpoiledReason]: string }
  readonly complaints: { readonly [kind in Complaint['kind']]: string }
  readonly dryings: { readonly [drying in Drying]: string }
  readonly whose: { readonly [whose in FaultOwner]: string }
  readonly deeds: { readonly [deed in 'take' | 'start' | 'done' | 'back']: string }
  readonly steps: { readonly [kind in WorkKind]: string }
  readonly pressActions: { readonly [action: string]: string }
  readonly pressWords: { readonly [word: string]: string }
  readonly gateIs: { readonly [why in GateReason]: string }
  readonly save: string
  readonly line: (row: {
    readonly number: string
    readonly name: string
    readonly size: string
    readonly quantity: number
  }) => string
  readonly progress: (step: string, done: number, of: number) => string
  readonly stepHeld: (name: string) => string
  readonly first: (gates: string) => string
  /** What leads to a first piece that a second person signed, by what it waits for. */
  readonly firstPiece: { readonly [wait in PieceWait]: string }
  readonly sayFirst: string
  readonly badForm: (field: string) => string
  readonly lookAt: (when: string) => string
  /** Whoever finds a bleed test clean before its wait is over, or before a piece was pressed. */
  readonly looksEarly: (when: string) => string
  readonly pressFirst: string
  readonly throwAway: string
  readonly lineNo: (line: number) => string
  readonly throwLine: (line: number, place: string, text: string) => string
  readonly handTo: (name: string) => string
  readonly handOnlyTo: (name: string) => string
  readonly correction: (press: string, by: string) => string
  readonly notChecked: (press: string) => string
  readonly pressShut: (press: string) => string
  /** A ticket whose test failed, and one that nobody works from any more. */
  readonly stopped: (gates: string) => string
  /** A change that was shown to the customer, who has not signed it. */
  readonly changing: (revision: number) => string
  readonly notThis: { readonly replaced: (by: string) => string; readonly closed: string; readonly cancelled: string }
  readonly remakes: string
  readonly remakeLine: (line: string, reason: string, whose: string) => string
  readonly beadedCustomer: (garment: string, vinyl: string) => string
  readonly vinylNames: { readonly [name in VinylClass]: string }
  readonly beadedNoWay: (garment: string) => string
  /** What a customer hears when a test stops their order, and when it goes on after all. */
  readonly stoppedCustomer: { readonly [found in 'failed' | 'bled' | 'strings']: (garment: string) => string }
  readonly goesOnCustomer: (garment: string) => string
  /** A piece was spoiled after its customer heard that all is bagged. */
  readonly notReadyYet: string
  /** Garments of one kind that a customer brings, where nothing else names them in their language. */
  readonly theirGarments: string
  /** Who finds a test clean, or skips it, after dye came through once. */
  readonly bledBefore: string
  readonly ownerNote: {
    readonly beaded: (ticket: string, garment: string) => string
    readonly shut: (ticket: string, gate: string) => string
    readonly strings: (ticket: string, garments: string) => string
    readonly short: (ticket: string, item: string) => string
    readonly counted: (ticket: string, missing: number) => string
    readonly spoiled: (loss: {
      readonly ticket: string
      readonly line: string
      readonly reason: string
      readonly cost: string
    }) => string
    /** The same of a garment that the customer brought: the shop has no other. */
    readonly spoiledOwn: (loss: { readonly ticket: string; readonly line: string; readonly reason: string }) => string
    readonly late: (trouble: {
      readonly ticket: string
      readonly why: string
      readonly from: string
      readonly to: string
    }) => string
    readonly pressShut: (press: string) => string
    /** `worn`: what is known of its days and washes; `made`: how it was pressed, of which lots, by whom, who signed the first piece. */
    readonly complaint: (about: { readonly ticket: string; readonly line: string; readonly kind: string }) => string
    readonly worn: (days: number, washes: number, drying: string) => string
    readonly made: {
      readonly pressed: (setting: string, by: string) => string
      readonly lots: (lots: string) => string
      readonly signed: (by: string) => string
      readonly decide: string
    }
  }
  readonly lateFor: { readonly short: (item: string) => string; readonly remake: (line: string) => string }
  readonly movePromise: (when: string) => string
  readonly asked: (question: string) => string
  readonly noConversation: string
  readonly keepPromise: string
  readonly promiseMoved: (was: string, now: string) => string
  readonly promiseKept: string
  readonly ownerOnly: string
  readonly tomorrow: (when: string) => string
  readonly units: {
    readonly pieces: (count: number) => string
    readonly metres: string
    readonly garments: (count: number) => string
  }
  readonly shelf: {
    readonly free: string
    readonly reserved: string
    readonly wanted: string
    readonly short: string
    readonly item: string
    readonly lot: string
    readonly bin: string
    readonly certificate: string
    readonly shopping: string
    readonly templates: string
    readonly coming: string
    readonly kinds: { readonly [kind in 'short' | 'stones' | 'vinyl' | 'garments' | 'other']: string }
    readonly orderBy: (packs: string, when: string) => string
    readonly orderNow: (packs: string) => string
    readonly templateLine: (box: string, made: string, brushed: number) => string
    readonly comingLine: (amount: string, when: string) => string
  }
}

/** What was done and what was found; where nothing more was, nothing stands behind a colon. */
export const told = (done: string, what: string): string => (what === '' ? done : `${done}: ${what}`)
