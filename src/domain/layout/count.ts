import type { StoneLayout } from './layout.ts'

/** One layout in one stone colour on so many garments. */
export type StoneUse = { readonly layout: StoneLayout; readonly colour: string; readonly quantity: number }

/** Spare pieces as a share of those laid, with the lot's own weight of a gross where it is known. */
export type SparePolicy = {
  readonly percent: number
  readonly grossMilligrams?: (size: string, colour: string) => number | undefined
}

export type StoneLine = {
  readonly size: string
  readonly colour: string
  readonly pieces: number
  readonly spare: number
  /** Whole gross of 144 that cover pieces and spare. */
  readonly gross: number
  /** Of pieces and spare together, by the lot's own figure; null when the shop has none. */
  readonly milligrams: number | null
}

export type TemplateLine = {
  readonly key: string
  readonly text: string
  readonly size: string
  readonly colour: string
  readonly holes: number
  /** How often its stones are brushed in. */
  readonly brushed: number
}

export type StoneCount = { readonly stones: readonly StoneLine[]; readonly templates: readonly TemplateLine[] }

const GROSS = 144

const stoneLine = (size: string, colour: string, pieces: number, policy: SparePolicy): StoneLine => {
  const spare = Math.ceil((pieces * policy.percent) / 100)
  const perGross = policy.grossMilligrams?.(size, colour)
  return {
    size,
    colour,
    pieces,
    spare,
    gross: Math.ceil((pieces + spare) / GROSS),
    milligrams: perGross === undefined ? null : Math.round(((pieces + spare) * perGross) / GROSS),
  }
}

/**
 * Stones of a roster per size and colour, in pieces, spare, whole gross and weight; and one template per distinct piece with
 * how often it is brushed. Lines come in the order in which their first use comes.
 */
export const countStones = (uses: readonly StoneUse[], policy: SparePolicy): StoneCount => {
  const pieces = new Map<string, { size: string; colour: string; count: number }>()
  const templates = new Map<string, TemplateLine>()
  for (const { layout, colour, quantity } of uses) {
    const { size } = layout.setting
    const line = JSON.stringify([size, colour])
    const known = pieces.get(line)?.count ?? 0
    pieces.set(line, { size, colour, count: known + layout.count * quantity })
    for (const piece of layout.pieces) {
      const key = JSON.stringify([piece.key, size, colour])
      const brushed = (templates.get(key)?.brushed ?? 0) + quantity
      templates.set(key, { key: piece.key, text: piece.text, size, colour, holes: piece.count, brushed })
    }
  }
  return {
    stones: [...pieces.values()].map(({ size, colour, count }) => stoneLine(size, colour, count, policy)),
    templates: [...templates.values()],
  }
}
