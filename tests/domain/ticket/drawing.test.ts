import { describe, expect, it } from 'vitest'
import { placeIds } from '../../../src/domain/garment/place.ts'
import { composeTicket } from '../../../src/domain/ticket/compose.ts'
import type { PlacementFacts } from '../../../src/domain/ticket/facts.ts'
import { sizeSets, viewsOf } from '../../../src/domain/ticket/lay-out-marks.ts'
import { previewSvg } from '../../../src/domain/ticket/preview.ts'
import { silhouette } from '../../../src/domain/ticket/silhouette.ts'
import { ticketWordsEn } from '../../../templates/ticket/en.ts'
import { everythingFacts } from './everything.builder.ts'
import { blockArt, footballFacts, homeGarment, rosterRow } from './facts.builder.ts'
import { blocksOf } from './ticket-text.ts'

const garment = homeGarment([rosterRow(1, { size: 'M' })])

const at = (
  place: PlacementFacts['place'],
  side: PlacementFacts['side'],
  more: Partial<PlacementFacts> = {},
): PlacementFacts => ({
  decoration: place,
  garment: 'home',
  place,
  side,
  content: 'text',
  face: 'anton',
  measuredFrom: 'collar',
  groups: [
    { fit: 'men', sizes: ['M'], heightMicrometres: 50_800, offsetMicrometres: 100_000, sample: 'C', art: blockArt(1, 50_800) },
  ],
  ...more,
})

const laid = (...placements: readonly PlacementFacts[]) => {
  const [set] = sizeSets(garment, placements)
  if (set === undefined) throw new Error('no sizes')
  return viewsOf(garment, set)
}

describe('left and right', () => {
  it('are the wearer’s: left lies at the reader’s right on the front and at the reader’s left on the back', () => {
    const [front] = laid(at('left-chest', 'front'))
    const [back] = laid(at('left-shoulder', 'back'))
    const [chest, shoulder] = [front?.marks[0], back?.marks[0]]
    if (front === undefined || back === undefined || chest === undefined || shoulder === undefined) throw new Error('not drawn')
    expect(chest.left + chest.width / 2).toBeGreaterThan(front.shape.middle)
    expect(shoulder.left + shoulder.width / 2).toBeLessThan(back.shape.middle)
  })

  it('are written under each view at their ends', () => {
    const views = blocksOf(composeTicket(footballFacts(3), ticketWordsEn), 'drawing').flatMap((block) => block.views)
    const front = views.find((view) => view.title === 'FRONT')
    const back = views.find((view) => view.title === 'BACK')
    expect(front?.ends).toEqual(["WEARER'S RIGHT", "WEARER'S LEFT"])
    expect(back?.ends).toEqual(["WEARER'S LEFT", "WEARER'S RIGHT"])
  })
})

describe('a mark on the drawing', () => {
  it('lies its offset below the collar seam, in true scale', () => {
    const [view] = laid(at('front-number', 'front'))
    expect(view?.marks[0]?.top).toBe((view?.shape.collarY ?? 0) + 100_000)
  })

  it('lies its offset below the place it is measured from', () => {
    const under = at('back-number', 'back', { measuredFrom: 'other-place' })
    const [view] = laid(under, at('name', 'back'))
    const [name, number] = view?.marks ?? []
    expect(number?.top).toBe((name?.top ?? 0) + (name?.height ?? 0) + 100_000)
    expect(number?.under).toBe('name')
  })

  it('is drawn once for the sizes that share everything, and apart for those that do not', () => {
    const blocks = blocksOf(composeTicket(footballFacts(12), ticketWordsEn), 'drawing')
    expect(blocks).toHaveLength(2)
  })

  it('has a side for every place', () => {
    for (const place of placeIds) expect(laid(at(place, 'front'))).toHaveLength(1)
  })
})

describe('the picture', () => {
  it('shows every vinyl path and every stone of what is ordered, and escapes what people wrote', () => {
    const facts = footballFacts(3)
    const named = { ...facts, garments: facts.garments.map((one) => ({ ...one, name: 'a <b> & "c"' })) }
    const svg = previewSvg(named, ticketWordsEn)
    const inks = facts.placements.flatMap((placement) => placement.groups[0]?.art?.inks ?? [])
    const stones = inks.reduce((sum, ink) => sum + (ink.kind === 'stones' ? ink.at.length : 0), 0)
    expect(svg.match(/<circle /g)).toHaveLength(stones)
    expect(svg).toContain('a &lt;b&gt; &amp; &quot;c&quot;')
  })

  it('shows every garment', () => {
    expect(previewSvg(everythingFacts(), ticketWordsEn).match(/FRONT/g)).toHaveLength(2)
  })
})

type Place = readonly [x: number, y: number]

/** Points along a path of lines and quadratics, by the curve's own formula. */
const pointsOf = (path: string): readonly Place[] => {
  const points: Place[] = []
  for (const [, letter = '', rest = ''] of path.matchAll(/([MLQ])([^MLQZ]*)/g)) {
    const [a = 0, b = 0, c = 0, d = 0] = (rest.match(/-?\d+/g) ?? []).map(Number)
    const [fromX, fromY] = points.at(-1) ?? [a, b]
    const along = letter === 'Q' ? [0.25, 0.5, 0.75, 1] : []
    if (letter !== 'Q') points.push([a, b])
    for (const t of along) {
      const u = 1 - t
      points.push([u * u * fromX + 2 * u * t * a + t * t * c, u * u * fromY + 2 * u * t * b + t * t * d])
    }
  }
  return points
}

describe('a garment laid flat', () => {
  it('grows with its size', () => {
    const widths = (['S', 'M', 'L', 'XL'] as const).map(
      (size) => silhouette({ kind: 'jersey', fit: 'men', size, zipped: false }, 'front').width,
    )
    expect(widths).toEqual([...widths].sort((a, b) => a - b))
    expect(new Set(widths).size).toBe(4)
  })

  it('has a closed outline inside its own box for every kind', () => {
    for (const kind of ['jersey', 't-shirt', 'hoodie', 'polo', 'shorts', 'jacket', 'bodysuit'] as const) {
      const shape = silhouette({ kind, fit: 'men', size: 'M', zipped: true }, 'front')
      const [first] = shape.outline
      expect(first?.endsWith('Z')).toBe(true)
      for (const [x, y] of shape.outline.flatMap(pointsOf)) {
        expect(x).toBeGreaterThanOrEqual(0)
        expect(x).toBeLessThanOrEqual(shape.width)
        expect(y).toBeGreaterThanOrEqual(0)
        expect(y).toBeLessThanOrEqual(shape.height)
      }
    }
  })
})
