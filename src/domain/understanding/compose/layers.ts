import type { Layer, StoneLayer, VinylLayer } from '../../order/order.ts'
import type { Shop } from '../../shop/shop.ts'
import type { Edge, Style } from '../draft.ts'

/** Layers with the paths (from the decoration) of what nobody said. */
export type ComposedLayers = {
  readonly layers: readonly Layer[]
  readonly assumed: readonly string[]
  readonly missing: readonly string[]
}

const usualOutline = 6_350
const usualShadow = 4_000

const stoneLayout = (style: Style): StoneLayer['layout'] => {
  const wish = style.stones ?? {}
  switch (wish.style ?? 'outline') {
    case 'solid':
      return { style: 'solid' }
    case 'single-line':
      return { style: 'single-line' }
    case 'rows':
      return { style: 'rows', rows: wish.rows ?? 2 }
    case 'outline': {
      const rows = wish.rows ?? 1
      return { style: 'outline', rows: rows === 1 || rows === 2 ? rows : 3, contours: wish.contours ?? 'both' }
    }
  }
}

const wantsStones = (style: Style): boolean => style.stones !== undefined && style.stones.wanted !== false

const stoneLayers = (shop: Shop, style: Style): readonly Layer[] => {
  if (!wantsStones(style)) return []
  const { usual } = shop.profile
  const size = style.stones?.size ?? usual.stoneSize
  return [{ kind: 'stones', size, colour: style.stones?.colour ?? usual.stoneColour, layout: stoneLayout(style) }]
}

const outlineLayers = (style: Style, kind: Layer & { kind: 'vinyl' }): readonly Layer[] => {
  let width = 0
  const layers: Layer[] = []
  for (const edge of style.outlines ?? []) {
    width += edge.micrometres ?? usualOutline
    layers.unshift({ ...kind, colour: edge.colour ?? 'black', shape: { surround: Math.min(width, 50_000) } })
  }
  return layers
}

const shadowLayers = (style: Style, kind: Layer & { kind: 'vinyl' }): readonly Layer[] => {
  const shadow: Edge | false = style.shadow ?? false
  if (shadow === false) return []
  const far = shadow.micrometres ?? usualShadow
  return [{ ...kind, colour: shadow.colour ?? 'black', shape: { shadow: [far, -far] } }]
}

const blockerLayers = (shop: Shop, style: Style): readonly Layer[] => {
  if (style.blocker !== true) return []
  const colours = shop.vinyl.filter((vinyl) => vinyl.class === 'blocker').map((vinyl) => vinyl.colour)
  const colour = colours.find((one) => one === style.colour) ?? colours[0] ?? 'white'
  return [{ kind: 'vinyl', class: 'blocker', colour, shape: 'face' }]
}

const stoneAssumptions = (style: Style, layer: StoneLayer): readonly string[] => {
  const wish = style.stones ?? {}
  const open: readonly (readonly [boolean, string])[] = [
    [wish.size === undefined, '/size'],
    [wish.colour === undefined, '/colour'],
    [wish.style === undefined, '/layout/style'],
    ['rows' in layer.layout && wish.rows === undefined, '/layout/rows'],
    ['contours' in layer.layout && wish.contours === undefined, '/layout/contours'],
  ]
  return open.flatMap(([assumed, path]) => (assumed ? [path] : []))
}

const vinylAssumptions = (style: Style, layer: VinylLayer): readonly string[] => {
  const plain = layer.shape === 'face' && layer.class !== 'blocker'
  return [...(style.class === undefined || !plain ? ['/class'] : []), ...(layer.shape === 'face' ? ['/shape'] : [])]
}

const assumptions = (style: Style, layers: readonly Layer[]): readonly string[] =>
  layers.flatMap((layer, index) => {
    const paths = layer.kind === 'vinyl' ? vinylAssumptions(style, layer) : stoneAssumptions(style, layer)
    return paths.map((path) => `/layers/${index}${path}`)
  })

/**
 * The layers of a decoration from what was said of its make, bottom first: blocker, shadow, outlines from the outermost in, the
 * figure, stones. Without a colour for the figure there is no layer for it yet and its colour is missing.
 */
export const composeLayers = (shop: Shop, style: Style): ComposedLayers => {
  const stones = stoneLayers(shop, style)
  if (style.vinyl === false && stones.length > 0) return { layers: stones, assumed: assumptions(style, stones), missing: [] }
  if (style.colour === undefined) return { layers: stones, assumed: assumptions(style, stones), missing: ['/layers/0/colour'] }
  const kind = {
    kind: 'vinyl',
    class: style.class ?? shop.profile.usual.vinylClass,
    colour: style.colour,
    shape: 'face',
  } as const
  const edge = { ...kind, class: shop.profile.usual.vinylClass }
  const layers = [...blockerLayers(shop, style), ...shadowLayers(style, edge), ...outlineLayers(style, edge), kind, ...stones]
  return { layers: layers.slice(-6), assumed: assumptions(style, layers), missing: [] }
}
