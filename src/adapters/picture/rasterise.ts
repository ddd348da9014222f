import { Resvg } from '@resvg/resvg-js'

/** A drawing as PNG, so many pixels wide; the drawing brings no text and needs no fonts. */
export const rasterise = (svg: string, pixelsWide: number): Uint8Array =>
  new Resvg(svg, { fitTo: { mode: 'width', value: pixelsWide }, font: { loadSystemFonts: false } }).render().asPng()
