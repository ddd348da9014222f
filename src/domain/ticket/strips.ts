import type { RosterFacts } from './facts.ts'
import { garmentName, type Scene, sizeText } from './names.ts'
import { specialText } from './roster-sheets.ts'
import type { Sheet, StripsBlock } from './ticket.ts'

const stripsOf = (scene: Scene, row: RosterFacts): StripsBlock['strips'] => {
  const { facts, words } = scene
  const marks = row.marks.map((mark) => `${words.place.ids[mark.place]}: ${mark.text}`)
  const special = specialText(scene, row)
  return Array.from({ length: row.quantity }, (_piece, at) => ({
    head: [`${facts.ticket}-${facts.revision}`, words.roster.row(row.line), garmentName(scene, row.garment)].join(' · '),
    figure: row.number ?? '',
    name: [row.name ?? words.roster.nameless, sizeText(words, row.fit, row.size)].join(' · '),
    lines: [marks.join(' · '), special, row.quantity > 1 ? words.roster.strip(at + 1, row.quantity) : ''].filter(
      (text) => text !== '',
    ),
  }))
}

/** A strip for every garment, to tuck under the hem; it comes off before pressing. */
export const stripSheets = (scene: Scene): readonly Sheet[] => {
  const { roster } = scene.words
  const strips = scene.facts.roster.flatMap((row) => stripsOf(scene, row))
  return [
    {
      title: roster.strips,
      blocks: [
        { kind: 'heading', level: 1, text: roster.strips },
        { kind: 'strips', hint: roster.stripHint, strips },
      ],
    },
  ]
}
