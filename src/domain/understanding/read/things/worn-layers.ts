import type { Draft, Mark, Style } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import type { LayerKind } from './layers-named.ts'

type Path = readonly string[]
/** A place of the draft where a make is kept. */
type Kept = { readonly path: Path; readonly style: Style }
/** Something that is put on, with all that is said of its make, what overrules it last. */
export type Worn = { readonly id: string; readonly mark: Mark; readonly kept: readonly Kept[] }

const keptOf = ({ styles }: Draft, id: string, mark: Mark): readonly Kept[] => {
  const at = (key: string): readonly Kept[] => {
    const style = styles[key]
    return style === undefined ? [] : [{ path: ['styles', key], style }]
  }
  const apart = (key: string) =>
    Object.keys(styles)
      .filter((one) => one.startsWith(`${key}@`))
      .flatMap(at)
  const own = mark.style === undefined ? [] : [{ path: ['marks', id, 'style'], style: mark.style }]
  const place = mark.place === undefined || mark.place === 'name' ? [] : at(mark.place)
  return [...at('all'), ...apart('all'), ...at(mark.content), ...apart(mark.content), ...own, ...place, ...apart(id)]
}

/** All that is put on. */
export const wornIn = (draft: Draft): readonly Worn[] =>
  Object.entries(draft.marks).flatMap(([id, mark]) =>
    mark.wanted === false ? [] : [{ id, mark, kept: keptOf(draft, id, mark) }],
  )

const stoneColours: Readonly<Record<string, string>> = { black: 'jet', pink: 'rose', white: 'crystal' }

const isHue = (hues: readonly string[], colour: string): boolean => hues.length === 0 || hues.includes(colour)

/** Whether a make of its own has such a layer in one of these colours. */
const has = (
  style: Style,
  kind: LayerKind,
  { hues, stone }: { readonly hues: readonly string[]; readonly stone: string },
): boolean => {
  if (kind === 'outline') return (style.outlines ?? []).some(({ colour = 'black' }) => isHue(hues, colour))
  if (kind === 'shadow')
    return style.shadow !== undefined && style.shadow !== false && isHue(hues, style.shadow.colour ?? 'black')
  const asStones = hues.map((hue) => stoneColours[hue] ?? hue)
  return (
    style.stones !== undefined && style.stones.wanted !== false && isHue([...hues, ...asStones], style.stones.colour ?? stone)
  )
}

const fields = { outline: 'outlines', shadow: 'shadow', stones: 'stones' } as const

const laid = (below: Style, above: Style): Style => {
  const stones = above.stones === undefined ? below.stones : { ...below.stones, ...above.stones }
  return { ...below, ...above, ...(stones === undefined ? {} : { stones }) }
}

const over = (kept: readonly Kept[]): Style => kept.reduce<Style>((below, { style }) => laid(below, style), {})

/** `into`: the colour that comes in its stead. */
export type Layer = { readonly kind: LayerKind; readonly hues: readonly string[]; readonly into: string | null }

/** Whether something has such a layer, in its own make or in one of a garment. */
export const wears = ({ kept }: Worn, { kind, hues }: Pick<Layer, 'kind' | 'hues'>, stone: string): boolean => {
  const plain = kept.filter(({ path }) => !path.some((step) => step.includes('@')))
  return (
    has(over(plain), kind, { hues, stone }) || kept.some((one) => !plain.includes(one) && has(one.style, kind, { hues, stone }))
  )
}

/** The change that takes a layer out of a make, or gives it another colour. */
const offAt = (path: Path, { kind, hues, into }: Layer, style: Style): Patch => {
  const isMeant = ({ colour = 'black' }: { readonly colour?: string | undefined }) => isHue(hues, colour)
  const outlines = style.outlines ?? []
  if (kind === 'outline' && into === null)
    return { path: [...path, 'outlines'], value: outlines.filter((edge) => !isMeant(edge)) }
  if (kind === 'outline')
    return {
      path: [...path, 'outlines'],
      value: outlines.map((edge) => (isMeant(edge) ? { ...edge, colour: into ?? '' } : edge)),
    }
  if (kind === 'shadow')
    return into === null ? { path: [...path, kind], value: false } : { path: [...path, kind, 'colour'], value: into }
  return into === null
    ? { path: [...path, kind, 'wanted'], value: false }
    : { path: [...path, kind, 'colour'], value: stoneColours[into] ?? into }
}

const isShared = ({ path }: Kept): boolean => path[0] === 'styles' && (path[1] === 'all' || path[1]?.startsWith('all@') === true)

/** Off everything, off all of a kind, or at some places alone. */
export const offOf = (worn: Worn, layer: Layer, of: 'all' | 'content' | 'place'): readonly Patch[] => {
  const { id, mark, kept } = worn
  const had = kept.filter(({ style }) => style[fields[layer.kind]] !== undefined)
  const whole = over(kept)
  if (of === 'all') return had.map(({ path, style }) => offAt(path, layer, style))
  if (of === 'content')
    return [
      ...had.filter((one) => !isShared(one)).map(({ path, style }) => offAt(path, layer, style)),
      ...(had.some(isShared) ? [offAt(['styles', mark.content], layer, whole)] : []),
    ]
  const own = had.filter(({ path }) => path[1] === mark.place || path[1]?.startsWith(`${id}@`) === true)
  return [offAt(['marks', id, 'style'], layer, whole), ...own.map(({ path, style }) => offAt(path, layer, style))]
}

/** Whether its stones stand around it. */
export const isAround = ({ kept }: Worn): boolean => ['outline', undefined].includes(over(kept).stones?.style)
