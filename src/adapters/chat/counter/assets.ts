import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'

export type Asset = { readonly bytes: Uint8Array<ArrayBuffer>; readonly mime: string }
export type Assets = { readonly find: (name: string) => Asset | null; readonly address: (name: string) => string }

const page = (file: string): string => join('templates', 'page', file)
const font = (face: string, file: string): string => join('node_modules', '@fontsource', face, 'files', `${file}.woff2`)
const woff2 = 'font/woff2'

/** Everything the page may load, by the name it is asked for; nothing else of the disk can be reached. */
const shelf: { readonly [name: string]: { readonly file: string; readonly mime: string } } = {
  'counter.css': { file: page('counter.css'), mime: 'text/css; charset=utf-8' },
  'floor.css': { file: page('floor.css'), mime: 'text/css; charset=utf-8' },
  'counter.js': { file: page('counter.js'), mime: 'text/javascript; charset=utf-8' },
  'icon.svg': { file: page('icon.svg'), mime: 'image/svg+xml' },
  'marker.woff2': { file: font('permanent-marker', 'permanent-marker-latin-400-normal'), mime: woff2 },
  'plain.woff2': { file: font('ibm-plex-sans-condensed', 'ibm-plex-sans-condensed-latin-400-normal'), mime: woff2 },
  'plain-ext.woff2': { file: font('ibm-plex-sans-condensed', 'ibm-plex-sans-condensed-latin-ext-400-normal'), mime: woff2 },
  'strong.woff2': { file: font('ibm-plex-sans-condensed', 'ibm-plex-sans-condensed-latin-600-normal'), mime: woff2 },
  'strong-ext.woff2': { file: font('ibm-plex-sans-condensed', 'ibm-plex-sans-condensed-latin-ext-600-normal'), mime: woff2 },
}

/** Reads every asset once; its address carries its content hash, so it may be kept by the browser for good. */
export const readAssets = (root: string): Assets => {
  const held = new Map(
    Object.entries(shelf).map(([name, { file, mime }]) => {
      const bytes = new Uint8Array(readFileSync(join(root, file)))
      return [name, { bytes, mime, hash: createHash('sha256').update(bytes).digest('hex').slice(0, 12) }]
    }),
  )
  return {
    find: (name) => held.get(name) ?? null,
    address: (name) => `/assets/${name}?v=${held.get(name)?.hash ?? ''}`,
  }
}
