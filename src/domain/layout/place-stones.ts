import { regionGap } from '../geometry/nearness.ts'
import { boxGap, item, shiftBox } from '../geometry/point.ts'
import { perimeter, type Region, regionArea, shiftRegion } from '../geometry/region.ts'
import { ok, type Result } from '../result/result.ts'
import { type Micrometres, micrometres } from '../units/units.ts'
import { contentKey } from './content-key.ts'
import { gatherFlags } from './gather-flags.ts'
import type {
  LayoutCache,
  Letter,
  PieceStones,
  StoneLayout,
  StonePiece,
  StoneSetting,
  StoneStyle,
  TextShape,
  VinylForm,
} from './layout.ts'
import { layPiece } from './piece.ts'
import type { LayoutProblem } from './problems.ts'
import { roomForRows } from './room.ts'
import { pitchOf } from './rows.ts'
import { formRegion, letterRegion } from './vinyl-shape.ts'

const MOST_ROWS = 3
const MOST_INNER_ROWS = 12
/** More stones than this on one text are a slip of the pen: over two hundred gross. */
const MOST_STONES = 30_000

export type StonePlan = {
  readonly setting: StoneSetting
  readonly style: StoneStyle
  /** The outermost vinyl the stones stand beside or on. */
  readonly around?: VinylForm
  readonly under?: 'vinyl' | 'cloth'
  readonly cache?: LayoutCache
}

const refusePlan = ({ setting, style }: StonePlan): readonly LayoutProblem[] => {
  const { size, hole, web, edgeGap } = setting
  const problems: LayoutProblem[] = []
  if (!(hole >= 500 && hole <= 30_000 && web >= 0 && web <= 30_000 && edgeGap >= 0 && edgeGap <= 30_000))
    problems.push({
      code: 'stone-setting-impossible',
      at: '',
      severity: 'stop',
      facts: { size, holeMicrometres: hole, webMicrometres: web },
    })
  if (style.style === 'outline' || style.style === 'rows') {
    const most = style.style === 'outline' ? MOST_ROWS : MOST_INNER_ROWS
    if (!(Number.isInteger(style.rows) && style.rows >= 1 && style.rows <= most))
      problems.push({ code: 'too-many-rows', at: '', severity: 'stop', facts: { rows: style.rows, most } })
  }
  return problems
}

const perRow = (style: StoneStyle): number => (style.style === 'outline' || style.style === 'rows' ? style.rows : 1)

/** About how many stones a style takes: along the edges, or over the area of a fill. */
const expected = (regions: readonly Region[], { setting, style }: StonePlan): number => {
  const pitch = pitchOf(setting)
  if (style.style === 'solid')
    return Math.round(regions.reduce((sum, region) => sum + Math.abs(regionArea(region)), 0) / (0.866 * pitch * pitch))
  const edges = regions.flat().reduce((sum, polygon) => sum + perimeter(polygon), 0)
  return Math.round((edges * perRow(style)) / pitch)
}

type Group = readonly Letter[]

/** Neighbours nearer than the rows need, joined transitively. */
const groupLetters = (letters: readonly Letter[], regions: readonly Region[], room: number): readonly (readonly number[])[] => {
  const owner = letters.map((_, index) => index)
  const root = (index: number): number => (owner[index] === index ? index : root(item(owner, index)))
  for (let one = 0; one < letters.length; one += 1) {
    for (let two = one + 1; two < letters.length; two += 1) {
      const [a, b] = [item(letters, one), item(letters, two)]
      if (root(one) === root(two) || boxGap(shiftBox(a.box, a.at), shiftBox(b.box, b.at)) >= room) continue
      if (regionGap(item(regions, one), item(regions, two), room) < room) owner[root(two)] = root(one)
    }
  }
  const groups = new Map<number, number[]>()
  for (const index of letters.keys()) groups.set(root(index), [...(groups.get(root(index)) ?? []), index])
  return [...groups.values()]
}

const extraRoom = (form: VinylForm): number => {
  if (form === 'face') return 0
  return 'surround' in form ? 2 * form.surround : Math.abs(form.shadow[0]) + Math.abs(form.shadow[1])
}

const joinedNote = (group: Group, room: Micrometres, shape: TextShape): readonly LayoutProblem[] =>
  group.length < 2 || !/^\d+$/.test(shape.text)
    ? []
    : [
        {
          code: 'letters-joined',
          at: '',
          severity: 'note',
          facts: {
            text: group.map(({ text }) => text).join(''),
            neededMicrometres: room,
            remedies: ['wider-tracking', 'fewer-rows', 'smaller-stone'],
          },
        },
      ]

/**
 * Stones for a text, piece by piece: letters whose rows would crowd each other are one piece, laid out as their union.
 * Whole micrometres, each piece relative to its `at`. Refuses impossible settings, more rows than can be made, and text that
 * leaves no room for a single stone.
 */
export const placeStones = (shape: TextShape, plan: StonePlan): Result<StoneLayout, LayoutProblem> => {
  const refused = refusePlan(plan)
  if (refused.length > 0) return { ok: false, problems: refused }
  const { setting, style, around = 'face', under = 'vinyl' } = plan
  const room = roomForRows(setting, style)
  const flatness = pitchOf(setting) / 165
  const regions = shape.letters.map((letter) => letterRegion(letter, flatness))
  const about = expected(regions, plan)
  if (about > MOST_STONES) {
    const remedies = ['larger-stone', 'fewer-rows', 'shorter-text']
    const facts = { text: shape.text, about, most: MOST_STONES, remedies }
    return { ok: false, problems: [{ code: 'stones-too-many', at: '', severity: 'stop', facts }] }
  }
  const groups = groupLetters(shape.letters, regions, room + extraRoom(around))
  const notes: LayoutProblem[] = []
  const pieces = groups.map((indexes): StonePiece => {
    const letters = indexes.map((index) => item(shape.letters, index))
    const origin = item(letters, 0).at
    const text = letters.map((letter) => letter.text).join('')
    const key = contentKey(shape, letters, { setting, style, around, under })
    const lay = (): PieceStones => {
      const region = formRegion(
        shiftRegion(
          indexes.flatMap((index) => item(regions, index)),
          { x: -origin.x, y: -origin.y },
        ),
        around,
      )
      return layPiece(region, { text, setting, style, under, pen: shape.pen })
    }
    const stones = plan.cache?.get(key) ?? lay()
    plan.cache?.set(key, stones)
    notes.push(...joinedNote(letters, room, shape))
    return {
      ...stones,
      text,
      key,
      at: [micrometres(origin.x), micrometres(origin.y)],
      count: stones.stones.length,
    }
  })
  const count = pieces.reduce((sum, piece) => sum + piece.count, 0)
  if (count === 0)
    return {
      ok: false,
      problems: [
        {
          code: 'no-room-for-stones',
          at: '',
          severity: 'stop',
          facts: { text: shape.text, size: setting.size, remedies: ['smaller-stone', 'larger-letters'] },
        },
      ],
    }
  return ok({
    setting,
    style,
    pieces,
    count,
    flags: gatherFlags([...notes, ...pieces.flatMap(({ evidence }) => evidence.flags)]),
  })
}
