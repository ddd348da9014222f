import { Resvg } from '@resvg/resvg-js'
import type { Picture } from '../../../ports/picture.ts'

/** Renders SVG to PNG with the given font files and none of the machine's, so that every machine draws the same bytes. */
export const pngPicture = (fontFiles: readonly string[]): Picture => ({
  render: (svg, widthPixels) => {
    const font = { loadSystemFonts: false, fontFiles: [...fontFiles], defaultFontFamily: 'IBM Plex Sans Condensed' }
    return new Uint8Array(new Resvg(svg, { fitTo: { mode: 'width', value: widthPixels }, font }).render().asPng())
  },
})
