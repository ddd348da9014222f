import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { unpackWoff } from '../../../domain/ticket/woff.ts'

/** The bytes of the paper's face: latin and latin-ext, regular and bold. */
export type PaperFonts = {
  readonly regular: { readonly latin: Uint8Array; readonly extended: Uint8Array }
  readonly bold: { readonly latin: Uint8Array; readonly extended: Uint8Array }
}

const FOLDER = 'node_modules/@fontsource/ibm-plex-sans-condensed/files'

const read = async (root: string, part: string): Promise<Uint8Array> =>
  unpackWoff(await readFile(join(root, FOLDER, `ibm-plex-sans-condensed-${part}-normal.woff`)), inflateSync)

/** Reads the paper's face from the project's own packages; unpacked once here, where each print would unpack it again. */
export const loadPaperFonts = async (root: string): Promise<PaperFonts> => {
  const [latin, extended, boldLatin, boldExtended] = await Promise.all([
    read(root, 'latin-400'),
    read(root, 'latin-ext-400'),
    read(root, 'latin-700'),
    read(root, 'latin-ext-700'),
  ])
  return { regular: { latin, extended }, bold: { latin: boldLatin, extended: boldExtended } }
}
