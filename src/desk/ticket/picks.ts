import type { Colour, Vinyl } from '../../domain/material/material.ts'
import { stoneSizes } from '../../domain/material/material.ts'
import type { Stock } from '../../domain/stock/stock.ts'
import type { ColourShown } from '../../domain/ticket/art.ts'
import type { DigitTally, Language, StoneFacts, TemplateFacts } from '../../domain/ticket/facts.ts'
import type { Counted } from '../count.ts'
import type { LaidApplication } from '../lay-out.ts'
import { colourShown } from './garments.ts'

export type PickMeans = { readonly colours: readonly Colour[]; readonly stock: Stock; readonly language: Language }

export const shownColour = (means: PickMeans, id: string): ColourShown => {
  const colour = means.colours.find((known) => known.id === id)
  return colour === undefined ? { id, name: id, hex: '#808080' } : colourShown(colour, means.language)
}

/** Stones to fetch, by lot and bin; the weight covers pieces and spare. */
export const stonePicks = (counted: Counted, means: PickMeans): readonly StoneFacts[] =>
  counted.stones.map(({ material, line }) => ({
    size: material.size,
    colour: shownColour(means, material.colour),
    material: material.id,
    bin: means.stock.stones.find((entry) => entry.material === material.id)?.bin ?? null,
    lot: material.lot,
    pieces: line.pieces,
    spare: line.spare,
    gross: line.gross,
    milligrams: line.milligrams ?? 0,
  }))

/** Templates to fetch from the shelf or to cut. */
export const templatePicks = (counted: Counted, means: PickMeans): readonly TemplateFacts[] =>
  counted.templates.flatMap(({ size, colour, piece: _piece, hole: _hole, ...template }) => {
    const known = stoneSizes.find((one) => one === size)
    const box = means.stock.templates.find((entry) => entry.key === template.key)?.box ?? null
    return known === undefined ? [] : [{ ...template, size: known, colour: shownColour(means, colour), box }]
  })

/** Digits of numbers per place, face and height, as often as each is cut. */
export const digitTallies = (applications: readonly LaidApplication[]): readonly DigitTally[] => {
  const tallies = new Map<string, DigitTally & { readonly counts: Map<string, number> }>()
  for (const { application } of applications) {
    if (application.decoration.content.kind !== 'number') continue
    const { place, decoration, height, text, quantity } = application
    const key = JSON.stringify([place.id, decoration.face, height])
    const common = { place: place.id, face: decoration.face, heightMicrometres: height, digits: [] }
    const tally = tallies.get(key) ?? { ...common, counts: new Map<string, number>() }
    for (const digit of text) tally.counts.set(digit, (tally.counts.get(digit) ?? 0) + quantity)
    tallies.set(key, tally)
  }
  return [...tallies.values()].map(({ counts, ...tally }) => ({
    ...tally,
    digits: [...counts].map(([digit, count]) => ({ digit, count })).sort((a, b) => (a.digit < b.digit ? -1 : 1)),
  }))
}

/** Vinyl records in use, each with the places it is used at. */
export const vinylUses = (
  applications: readonly LaidApplication[],
): readonly { readonly material: Vinyl; readonly laid: readonly LaidApplication[] }[] => {
  const uses = new Map<string, { readonly material: Vinyl; readonly laid: LaidApplication[] }>()
  for (const laid of applications) {
    for (const { layer } of laid.drawing?.vinyl ?? []) {
      if (layer.material.kind !== 'vinyl') continue
      const known = uses.get(layer.material.id) ?? { material: layer.material, laid: [] }
      known.laid.push(laid)
      uses.set(layer.material.id, known)
    }
  }
  return [...uses.values()]
}
