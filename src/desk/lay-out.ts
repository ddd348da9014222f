import type { Face } from '../domain/face/face.ts'
import { gatherFlags } from '../domain/layout/gather-flags.ts'
import type {
  LayoutCache,
  StoneLayout,
  StoneSetting,
  StoneStyle,
  TextLine,
  TextShape,
  VinylForm,
  VinylShape,
} from '../domain/layout/layout.ts'
import type { StonePlan } from '../domain/layout/piece-work.ts'
import { pieceKeys, placeStones } from '../domain/layout/place-stones.ts'
import type { LayoutProblem } from '../domain/layout/problems.ts'
import { roomForRows } from '../domain/layout/room.ts'
import { setText } from '../domain/layout/set-text.ts'
import { vinylShape } from '../domain/layout/vinyl-shape.ts'
import type { StoneSettingRecord } from '../domain/material/material.ts'
import type { Decoration, StoneLayer, VinylLayer } from '../domain/order/order.ts'
import type { Application, ResolvedLayer, ResolvedOrder } from '../domain/order/resolve.ts'
import { ok, type Problem, type Result } from '../domain/result/result.ts'
import { type Micrometres, micrometres } from '../domain/units/units.ts'

export type Faces = ReadonlyMap<string, Face>

export type LaidVinyl = { readonly layer: ResolvedLayer; readonly shape: VinylShape }
export type LaidStones = { readonly layer: ResolvedLayer; readonly layout: StoneLayout }

/** One decoration drawn: the letters, the vinyl of each layer, the stones of each layer. µm, y up from the baseline. */
export type Drawing = {
  readonly key: string
  readonly shape: TextShape
  readonly vinyl: readonly LaidVinyl[]
  readonly stones: readonly LaidStones[]
}

/** What is put on one row, drawn; artwork has no drawing. Equal texts at equal heights share one drawing. */
export type LaidApplication = { readonly application: Application; readonly drawing: Drawing | null }

export type LaidOut = { readonly applications: readonly LaidApplication[]; readonly problems: readonly Problem[] }

export type LayoutMeans = {
  readonly faces: Faces
  readonly settings: readonly StoneSettingRecord[]
  readonly leastNameMicrometres: number
  readonly cache: LayoutCache
}

/** The shop's setting for a size, with the hole that the layer's own lot got on its coupon. */
const settingFor = (means: LayoutMeans, { material }: ResolvedLayer, layer: StoneLayer): StoneSetting | null => {
  const record = means.settings.find((setting) => setting.size === layer.size)
  if (record === undefined) return null
  return {
    size: record.size,
    hole: micrometres((material.kind === 'stone' ? material.coupon?.holeMicrometres : undefined) ?? record.holeMicrometres),
    web: micrometres(record.webMicrometres),
    edgeGap: micrometres(record.edgeGapMicrometres),
  }
}

const formOf = (layer: VinylLayer): VinylForm => {
  if (layer.shape === 'face') return 'face'
  if ('surround' in layer.shape) return { surround: micrometres(layer.shape.surround) }
  const [right, up] = layer.shape.shadow
  return { shadow: [micrometres(right), micrometres(up)] }
}

const reach = (form: VinylForm): number => {
  if (form === 'face') return 0
  return 'surround' in form ? form.surround : Math.max(...form.shadow.map(Math.abs))
}

/** Stones keep their room from the widest vinyl of the decoration. */
const widestForm = (layers: readonly ResolvedLayer[]): VinylForm | null =>
  layers
    .flatMap(({ layer }) => (layer.kind === 'vinyl' ? [formOf(layer)] : []))
    .reduce<VinylForm | null>((widest, form) => (widest === null || reach(form) > reach(widest) ? form : widest), null)

const styleOf = (layer: StoneLayer): StoneStyle => layer.layout

const lineOf = (decoration: Decoration): TextLine =>
  decoration.line.kind === 'straight'
    ? { kind: 'straight' }
    : { kind: decoration.line.kind, rise: micrometres(decoration.line.rise) }

/** The stone rows on both sides of the letters take their part of the free width. */
const marginOf = (means: LayoutMeans, layers: readonly ResolvedLayer[]): Micrometres => {
  const outside = layers.map((resolved) => {
    const { layer } = resolved
    if (layer.kind === 'vinyl') return reach(formOf(layer))
    const setting = settingFor(means, resolved, layer)
    if (setting === null || layer.layout.style !== 'outline') return 0
    return setting.edgeGap + setting.hole + (layer.layout.rows - 1) * (setting.hole + setting.web)
  })
  return micrometres(Math.max(0, ...outside))
}

const gapOf = (means: LayoutMeans, layers: readonly ResolvedLayer[]): Micrometres | null => {
  const gaps = layers.flatMap((resolved) => {
    const { layer } = resolved
    if (layer.kind !== 'stones') return []
    const setting = settingFor(means, resolved, layer)
    return setting === null ? [] : [roomForRows(setting, styleOf(layer))]
  })
  return gaps.length === 0 ? null : micrometres(Math.max(...gaps))
}

const letters = (means: LayoutMeans, application: Application, layers: readonly ResolvedLayer[]) => {
  const { decoration, text, height, freeWidth } = application
  const face = means.faces.get(decoration.face)
  if (face === undefined) throw new Error(`the face ${decoration.face} was offered but is not loaded`)
  const gap = decoration.content.kind === 'number' ? gapOf(means, layers) : null
  return setText({
    face,
    text,
    height,
    line: lineOf(decoration),
    fitWidth: micrometres(Math.max(1, freeWidth - 2 * marginOf(means, layers))),
    offered: [...means.faces.values()],
    ...(gap === null ? {} : { leastGap: gap }),
    ...(decoration.content.kind === 'number' ? {} : { leastHeight: micrometres(Math.min(height, means.leastNameMicrometres)) }),
  })
}

type StoneWork = { readonly layer: ResolvedLayer; readonly plan: StonePlan }

/** How each stone layer is to be laid; `stone-size-not-set` where the shop has no hole for its size. */
const stonePlans = (means: LayoutMeans, layers: readonly ResolvedLayer[]): Result<readonly StoneWork[]> => {
  const form = widestForm(layers)
  const work: StoneWork[] = []
  const problems: Problem[] = []
  for (const resolved of layers) {
    if (resolved.layer.kind !== 'stones') continue
    const setting = settingFor(means, resolved, resolved.layer)
    if (setting === null) {
      problems.push({ code: 'stone-size-not-set', at: '', severity: 'stop', facts: { size: resolved.layer.size } })
      continue
    }
    const style = styleOf(resolved.layer)
    const under = form === null ? 'cloth' : 'vinyl'
    work.push({ layer: resolved, plan: { setting, style, around: form ?? 'face', under, cache: means.cache } })
  }
  return problems.length > 0 ? { ok: false, problems } : ok(work)
}

const stonesOf = (means: LayoutMeans, shape: TextShape, layers: readonly ResolvedLayer[]): Result<readonly LaidStones[]> => {
  const work = stonePlans(means, layers)
  if (!work.ok) return work
  const laid: LaidStones[] = []
  const problems: Problem[] = []
  for (const { layer, plan } of work.value) {
    const layout = placeStones(shape, plan)
    if (layout.ok) laid.push({ layer, layout: layout.value })
    if (!layout.ok) problems.push(...layout.problems)
  }
  return problems.length > 0 ? { ok: false, problems } : ok(laid)
}

type Drawn = {
  readonly at: string
  readonly drawing: Drawing | null
  readonly problems: readonly Problem[]
  /** What the stones' evidence says of this text; a decoration's texts are told of together. */
  readonly flags: readonly LayoutProblem[]
}

const undrawn = (at: string, problems: readonly Problem[]): Drawn => ({
  at,
  drawing: null,
  problems: problems.map((problem) => ({ ...problem, at })),
  flags: [],
})

const draw = (means: LayoutMeans, application: Application, layers: readonly ResolvedLayer[]): Drawn => {
  const { at } = application
  const shape = letters(means, application, layers)
  if (!shape.ok) return undrawn(at, shape.problems)
  const stones = stonesOf(means, shape.value, layers)
  if (!stones.ok) return undrawn(at, stones.problems)
  const vinyl = layers.flatMap((resolved) =>
    resolved.layer.kind === 'vinyl' ? [{ layer: resolved, shape: vinylShape(shape.value, formOf(resolved.layer)) }] : [],
  )
  return {
    at,
    drawing: { key: drawingKey(application), shape: shape.value, vinyl, stones: stones.value },
    problems: shape.value.notes.map((note) => ({ ...note, at })),
    flags: stones.value.flatMap(({ layout }) => layout.flags),
  }
}

/** One note of each kind for a decoration, naming the texts or pieces it is about. */
const gathered = (drawn: readonly Drawn[]): readonly Problem[] =>
  [...new Set(drawn.map(({ at }) => at))].flatMap((at) =>
    gatherFlags(drawn.flatMap((one) => (one.at === at ? one.flags : []))).map((flag) => ({ ...flag, at })),
  )

const drawingKey = ({ decoration, text, height, freeWidth }: Application): string =>
  JSON.stringify([decoration.id, text, height, freeWidth])

/** Draws every decoration of a resolved order once per distinct text, height and free width. */
export const layOut = (resolved: ResolvedOrder, means: LayoutMeans): LaidOut => {
  const drawn = new Map<string, Drawn>()
  const applications = resolved.applications.map((application): LaidApplication => {
    if (application.decoration.content.kind === 'artwork') return { application, drawing: null }
    const key = drawingKey(application)
    const known = drawn.get(key) ?? draw(means, application, resolved.layers.get(application.decoration.id) ?? [])
    drawn.set(key, known)
    return { application, drawing: known.drawing }
  })
  const all = [...drawn.values()]
  return { applications, problems: [...all.flatMap((one) => one.problems), ...gathered(all)] }
}

/** Content keys of every piece that `layOut` will ask its cache for, without laying any. */
export const wantedPieces = (resolved: ResolvedOrder, means: LayoutMeans): readonly string[] => {
  const distinct = new Map(resolved.applications.map((application) => [drawingKey(application), application]))
  const keys = [...distinct.values()].flatMap((application) => {
    const layers = resolved.layers.get(application.decoration.id) ?? []
    const work = stonePlans(means, layers)
    if (application.decoration.content.kind === 'artwork' || !work.ok || work.value.length === 0) return []
    const shape = letters(means, application, layers)
    return shape.ok ? work.value.flatMap(({ plan }) => pieceKeys(shape.value, plan)) : []
  })
  return [...new Set(keys)]
}
