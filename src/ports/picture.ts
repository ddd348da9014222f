/** Renders an SVG to PNG bytes at a width in pixels; the same SVG gives the same bytes on every machine. */
export type Picture = { readonly render: (svg: string, widthPixels: number) => Uint8Array }
