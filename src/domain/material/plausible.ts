import type { Stone, Vinyl, VinylClass } from './material.ts'

type Range = { readonly least: number; readonly most: number }
export type Plausible = {
  readonly tenthsC: Range
  readonly seconds: Range
  readonly mark: 'quoted' | 'common practice'
  readonly source: string
}

/** Whole tenths of °C that lie inside a range given in °F. */
const fromF = (least: number, most: number): Range => ({
  least: Math.ceil(((least - 32) * 50) / 9),
  most: Math.floor(((most - 32) * 50) / 9),
})

const sheets = "makers' public sheets (quoted)"

/** What makers' public sheets give per class; classes without a line have none. They only catch implausible entries. */
const plausibleVinyl: Partial<Readonly<Record<VinylClass, Plausible>>> = {
  standard: { tenthsC: fromF(305, 330), seconds: { least: 10, most: 15 }, mark: 'quoted', source: sheets },
  glitter: { tenthsC: fromF(305, 340), seconds: { least: 10, most: 20 }, mark: 'quoted', source: sheets },
  'low-temperature': { tenthsC: fromF(266, 302), seconds: { least: 10, most: 15 }, mark: 'quoted', source: sheets },
  stretch: { tenthsC: fromF(305, 320), seconds: { least: 10, most: 20 }, mark: 'common practice', source: 'common practice' },
  flock: { tenthsC: fromF(305, 330), seconds: { least: 15, most: 20 }, mark: 'common practice', source: 'common practice' },
}

/** Hot-fix stones: glue active at 120-170 °C, 10-25 s from the face, 10-15 s from the inside (quoted). */
const plausibleStones: Plausible & { readonly insideSeconds: Range } = {
  tenthsC: fromF(248, 338),
  seconds: { least: 10, most: 25 },
  insideSeconds: { least: 10, most: 15 },
  mark: 'quoted',
  source: "a maker's public sheet: glue active at 120-170 °C (quoted)",
}

export type Odd = {
  readonly field: string
  readonly value: number
  readonly least: number
  readonly most: number
  readonly source: string
}

const outside = (field: string, value: number, range: Range & { readonly source: string }): readonly Odd[] =>
  value < range.least || value > range.most ? [{ field, value, ...range }] : []

/** Entries of a record that lie outside what makers of its class publish; an empty list when it looks right or nothing is known. */
export const oddEntries = (material: Vinyl | Stone): readonly Odd[] => {
  const range = material.kind === 'stone' ? plausibleStones : plausibleVinyl[material.class]
  if (range === undefined) return []
  const { tenthsC, seconds } = material.window
  const { source } = range
  const inside =
    material.kind === 'stone' && material.insideSeconds.most > 0
      ? (['least', 'most'] as const).flatMap((end) =>
          outside(`insideSeconds/${end}`, material.insideSeconds[end], { ...plausibleStones.insideSeconds, source }),
        )
      : []
  const ends = ['least', 'usual', 'most'] as const
  return [
    ...ends.flatMap((end) => outside(`window/tenthsC/${end}`, tenthsC[end], { ...range.tenthsC, source })),
    ...ends.flatMap((end) => outside(`window/seconds/${end}`, seconds[end], { ...range.seconds, source })),
    ...inside,
  ]
}
