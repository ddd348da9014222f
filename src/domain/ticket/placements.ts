import type { CutGroup } from './facts.ts'
import { type LaidMark, type LaidView, sizeSets, viewsOf } from './lay-out-marks.ts'
import { garmentName, lengthOf, type Scene, sizesText } from './names.ts'
import type { Block, DrawnMark, View } from './ticket.ts'

const drawn = (mark: LaidMark): DrawnMark => {
  const { art } = mark.group
  if (art === null) {
    const frame = `M0 0L${mark.width} 0L${mark.width} ${mark.height}L0 ${mark.height}ZM0 0L${mark.width} ${mark.height}`
    return { atMicrometres: [mark.left, mark.top], paths: [frame], stones: [] }
  }
  const paths = art.inks.flatMap((ink) => (ink.kind === 'vinyl' ? [ink.path] : []))
  const stones = art.inks.flatMap((ink) =>
    ink.kind === 'stones' ? [{ diameterMicrometres: ink.diameterMicrometres, at: ink.at }] : [],
  )
  return { atMicrometres: [mark.left - art.box.left, mark.top - art.box.top], paths, stones }
}

/** The height as it is cut: from the lowest to the highest where some texts are set lower to fit. */
const heightText = (scene: Scene, { heightMicrometres, highestMicrometres, lowestMicrometres }: CutGroup): string => {
  const { place } = scene.words
  const highest = lengthOf(scene, highestMicrometres ?? heightMicrometres)
  const lowest = lengthOf(scene, lowestMicrometres ?? heightMicrometres)
  return lowest === highest ? place.high(highest) : place.highFrom(lowest, highest)
}

const noteOf = (scene: Scene, mark: LaidMark): View['notes'][number] => {
  const { place } = scene.words
  const { placement, group } = mark
  return {
    about: [mark.left + mark.width / 2, mark.top + mark.height / 2],
    lines: [
      place.ids[placement.place],
      heightText(scene, group),
      place.below[mark.under === null && placement.measuredFrom === 'other-place' ? 'collar' : placement.measuredFrom](
        lengthOf(scene, group.offsetMicrometres),
        mark.under === null ? '' : place.ids[mark.under],
      ),
      ...(placement.content === 'artwork' ? [place.artwork] : []),
    ],
  }
}

/** The line along which a place is measured: from the collar seam, the hem or the place above to the edge of the ink. */
const measureOf = (view: LaidView, mark: LaidMark): View['measures'][number] => {
  const x = Math.round(mark.left + mark.width / 2)
  const { offsetMicrometres } = mark.group
  const bottom = mark.top + mark.height
  if (mark.placement.measuredFrom === 'hem') return { from: [x, bottom], to: [x, bottom + offsetMicrometres] }
  const from = mark.placement.measuredFrom === 'collar' ? view.shape.collarY : mark.top - offsetMicrometres
  return { from: [x, from], to: [x, mark.top] }
}

const viewOf = (scene: Scene, view: LaidView): View => {
  const { place, press } = scene.words
  return {
    title: press.sides[view.side],
    widthMicrometres: view.shape.width,
    heightMicrometres: view.shape.height,
    outline: view.shape.outline,
    marks: view.marks.map(drawn),
    measures: view.marks.map((mark) => measureOf(view, mark)),
    notes: view.marks.map((mark) => noteOf(scene, mark)),
    ends: view.side === 'front' ? [place.right, place.left] : [place.left, place.right],
  }
}

const alternativeOf = (title: string, views: readonly View[]): string =>
  [title, ...views.flatMap((view) => view.notes.map((note) => `${view.title}, ${note.lines.join(', ')}`))].join('. ')

const garmentBlocks = (scene: Scene, id: string): readonly Block[] => {
  const garment = scene.facts.garments.find((one) => one.id === id)
  if (garment === undefined) return []
  return sizeSets(garment, scene.facts.placements).flatMap((set): readonly Block[] => {
    const views = viewsOf(garment, set).map((view) => viewOf(scene, view))
    if (views.length === 0) return []
    const title = scene.words.place.group(garmentName(scene, id), sizesText(scene.words, set.fit, set.sizes))
    return [
      { kind: 'heading', level: 2, text: title },
      { kind: 'drawing', alternative: alternativeOf(title, views), views },
    ]
  })
}

/** Where everything goes: each garment from the front and the back for every set of sizes that is placed alike. */
export const placementBlocks = (scene: Scene): readonly Block[] => {
  const { title, hint } = scene.words.place
  const blocks = scene.facts.garments.flatMap((garment) => garmentBlocks(scene, garment.id))
  if (blocks.length === 0) return []
  const [heading, drawing, ...others] = blocks
  const first = [heading, drawing].filter((block) => block !== undefined)
  return [
    {
      kind: 'together',
      blocks: [{ kind: 'heading', level: 1, text: title }, { kind: 'text', style: 'small', text: hint }, ...first],
    },
    ...others,
  ]
}
