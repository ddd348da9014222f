import type { Feature, Fibre, Fit, Knit, Size } from '../garment/garment.ts'
import type { PlaceId, Side } from '../garment/place.ts'
import type { PressureWord, VinylClass } from '../material/material.ts'
import type { Order, Use } from '../order/order.ts'
import type { Gate, PressAction, PressStep } from '../press/press-plan.ts'
import type { CautionCode, LookForCode, WhyCode } from '../press/step-codes.ts'
import type { ChangedField } from './changes.ts'
import type { Language, RosterFacts, Show } from './facts.ts'
import type { HazardCode, Sign, SignalWord } from './hazards.ts'
import type { Moment, NamedMoment } from './moment.ts'
import type { SlipWords, TemplateWords } from './slip-words.ts'

type Of<Key extends string> = Readonly<Record<Key, string>>

/** What a gate asks for, the answers that are ticked, and what is written by hand. */
export type GateWords = {
  readonly title: string
  readonly ask: string
  readonly answers: readonly string[]
  readonly writes: readonly string[]
}

/** Words for the codes that press steps carry: what to look for, why, and, in few words, what to be careful about. */
export type StepWords = {
  readonly lookFor: Of<LookForCode>
  readonly why: Of<WhyCode>
  readonly cautions: Of<CautionCode>
}

export type HeadWords = {
  readonly jobTicket: string
  readonly title: (ticket: string, team: string) => string
  readonly revision: (revision: number) => string
  readonly replaces: (revision: number) => string
  /** With {page} and {pages} where the numbers go. */
  readonly page: string
  readonly made: (when: string) => string
  readonly needed: string
  readonly promised: string
  readonly needFor: (what: string) => string
  readonly gameDay: (day: string) => string
  readonly handOver: Of<Order['handOver']>
  readonly team: string
  readonly order: string
  readonly use: string
  readonly pieces: (count: number) => string
  readonly people: Of<'orders' | 'signsOff' | 'collects' | 'ask'>
  readonly notes: string
  readonly code: (content: string) => string
  readonly changed: string
  readonly change: {
    readonly added: (line: number, row: string) => string
    readonly dropped: (line: number, row: string) => string
    readonly row: (line: number, field: string, change: string) => string
    readonly fromTo: (was: string, now: string) => string
    readonly nothing: string
    readonly fields: Of<ChangedField | 'number' | 'name' | 'size' | 'garment' | 'quantity' | 'extras' | 'note'>
  }
  readonly throwAway: string
  readonly thrown: Of<'line' | 'place' | 'piece' | 'state' | 'cut' | 'pressed' | 'done'>
  readonly lacking: string
}

export type GarmentWords = {
  readonly title: string
  readonly roles: Of<'home' | 'away'>
  readonly from: Of<'shop' | 'customer'>
  readonly cloth: string
  readonly unknown: string
  readonly fibre: (percent: number, fibre: string) => string
  readonly total: string
  readonly sum: (quantity: number) => string
  readonly finish: Of<Order['garments'][number]['finish']>
  readonly dye: Of<Order['garments'][number]['dye']>
  readonly knits: Of<Knit>
  readonly fibres: Of<Fibre>
  readonly features: Of<Feature>
  readonly fits: Of<Fit>
  readonly sizes: Of<Size>
}

export type PressWords = {
  readonly box: (garment: string) => string
  readonly figures: Of<'temperature' | 'same' | 'seconds' | 'pressure' | 'peel' | 'inside' | 'cover' | 'machine'>
  readonly seconds: (count: number) => string
  readonly gauge: (word: string, gauge: string) => string
  readonly measured: (word: string, range: string, unit: 'psi' | 'bar') => string
  readonly correction: (machine: string, correction: string, aim: string) => string
  readonly onOther: (other: { readonly machine: string; readonly figures: string | null; readonly own: string }) => string
  readonly lesser: (action: string, figures: string) => string
  /** Whose word goes before the figures of a press box. */
  readonly defer: string
  readonly covers: (places: string) => string
  readonly pressures: Of<PressureWord>
  readonly peels: Of<'hot' | 'warm' | 'cold'>
  readonly insides: Of<PressStep['inside']>
  readonly pillowAndSheet: string
  readonly overs: Of<PressStep['cover']>
  readonly actions: Of<PressAction>
  readonly sides: Of<Side | 'inside'>
  readonly sequence: string
  readonly group: (garments: string, side: string) => string
  readonly lines: (lines: string, pieces: number) => string
  readonly lookFor: string
}

export type PickWords = {
  readonly titles: Of<'vinyl' | 'stones' | 'both'>
  readonly vinyl: string
  readonly vinylHeads: Of<'material' | 'places' | 'amount' | 'lotBin' | 'reads' | 'peel' | 'done'>
  readonly reads: Of<'mirrored' | 'as-read'>
  readonly sheets: string
  readonly sheetHeads: Of<'file' | 'size' | 'pieces' | 'cut' | 'weeded'>
  readonly classes: Of<VinylClass>
  readonly vinylName: (colour: string, kind: string) => string
  readonly bin: (bin: string | null) => string
  readonly lot: (lot: string) => string
  readonly tally: string
  readonly tallyHeads: Of<'place' | 'height' | 'face' | 'digits'>
  readonly templates: string
  /** A template that serves whatever has its letter. */
  readonly allOn: string
  readonly templateHeads: Of<'box' | 'no' | 'character' | 'on' | 'height' | 'stone' | 'holes' | 'brushed' | 'done'>
  readonly cutNew: string
  readonly times: (count: number) => string
  readonly stones: string
  readonly stoneHeads: Of<'stone' | 'lotBin' | 'pieces' | 'spare' | 'gross' | 'weight' | 'done'>
  readonly coupon: string
}

export type RosterWords = {
  readonly bySize: string
  readonly byName: string
  readonly heads: Of<'line' | 'number' | 'name' | 'size' | 'quantity' | 'inspected' | 'bagged' | 'special' | 'garment'>
  /** One letter for each kind of place, printed over the boxes. */
  readonly letters: Of<'front' | 'back' | 'name' | 'sleeve' | 'other'>
  readonly legend: string
  readonly group: (garment: string, cut: string, pieces: number) => string
  readonly nameless: string
  readonly numberless: string
  readonly special: string
  readonly extra: (text: string) => string
  readonly without: (place: string) => string
  readonly setLower: (place: string, height: string) => string
  readonly setNarrower: (place: string, percent: number) => string
  readonly ages: Of<RosterFacts['age']>
  readonly row: (line: number) => string
  readonly strip: (of: number, all: number) => string
  readonly strips: string
  readonly stripHint: string
}

export type PlaceWords = {
  readonly title: string
  readonly hint: string
  readonly ids: Of<PlaceId>
  readonly left: string
  readonly right: string
  readonly high: (height: string) => string
  /** Where some of the sizes' texts are set lower to fit. */
  readonly highFrom: (lowest: string, highest: string) => string
  readonly below: Readonly<Record<'collar' | 'hem' | 'other-place', (offset: string, above: string) => string>>
  readonly group: (garment: string, sizes: string) => string
  readonly artwork: string
}

export type CareWords = {
  readonly inspection: string
  readonly inspect: readonly string[]
  readonly inspectStones: readonly string[]
  readonly pack: string
  readonly packing: readonly string[]
  readonly rest: (hours: number) => string
  readonly goOut: string
  /** When it was pressed and when it may be washed, written by hand: the paper is printed before either is known. */
  readonly firstWash: readonly string[]
  readonly wash: readonly string[]
}

export type LastWords = {
  readonly title: string
  readonly plan: string
  readonly promised: (when: string) => string
  readonly unpromised: string
  readonly slack: (span: string) => string
  readonly span: (days: number, hours: number, minutes: number) => string
  readonly freezes: (when: string) => string
  readonly hangsOn: string
  readonly slotHeads: Of<'work' | 'stations' | 'start' | 'end' | 'setUp'>
  readonly problems: string
  readonly heed: string
  readonly severities: Of<'stop' | 'needs-test' | 'caution' | 'note'>
  readonly rulebook: string
  readonly rule: (body: string, clause: string, edition: string) => string
  readonly marks: Of<'read' | 'quoted' | 'memory'>
  readonly askLeague: string
  readonly why: string
  readonly whyStep: (steps: string, reason: string) => string
  readonly sources: string
  readonly source: (of: string, sheet: string, date: string) => string
  readonly defer: readonly string[]
}

export type SignWords = {
  readonly words: Of<SignalWord>
  readonly symbols: Of<Sign>
  readonly hazards: Of<HazardCode>
  readonly burn: string
}

export type PieceWords = {
  readonly title: string
  readonly look: string
  readonly proof: string
  readonly cold: string
  readonly coldStones: string
  readonly again: string
  readonly pressed: string
  readonly second: string
  readonly when: string
}

/** The words of the paper in one language; implemented in templates/ticket. */
export type TicketWords = {
  readonly language: Language
  readonly date: (moment: NamedMoment, order: Show['dateOrder']) => string
  readonly shortDate: (moment: NamedMoment, order: Show['dateOrder']) => string
  readonly time: (moment: Moment) => string
  readonly at: (date: string, time: string) => string
  readonly list: (items: readonly string[]) => string
  readonly sports: { readonly [sport: string]: string }
  readonly uses: Of<Use>
  readonly head: HeadWords
  readonly garment: GarmentWords
  readonly place: PlaceWords
  readonly press: PressWords
  readonly pick: PickWords
  readonly roster: RosterWords
  readonly gateTitle: string
  readonly gateBlocks: Of<Gate['blocks']>
  readonly gateWait: (span: string) => string
  readonly gates: Readonly<Record<Gate['code'], GateWords>>
  readonly steps: StepWords
  readonly signs: SignWords
  readonly firstPiece: PieceWords
  readonly care: CareWords
  readonly last: LastWords
  readonly slip: SlipWords
  readonly template: TemplateWords
}
