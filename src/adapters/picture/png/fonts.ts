import { mkdtemp, readFile, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { unpackWoff } from '../../../domain/ticket/woff.ts'

const FOLDER = 'node_modules/@fontsource/ibm-plex-sans-condensed/files'
const PARTS = ['latin-400', 'latin-ext-400'] as const

/**
 * The picture's face as font files that the renderer can open: it reads no WOFF, so the tables are unpacked into a private
 * folder under the system's temporary folder.
 */
export const loadPictureFonts = async (root: string): Promise<readonly string[]> => {
  const folder = await mkdtemp(join(tmpdir(), 'platenpost-fonts-'))
  return Promise.all(
    PARTS.map(async (part) => {
      const woff = await readFile(join(root, FOLDER, `ibm-plex-sans-condensed-${part}-normal.woff`))
      const file = join(folder, `${part}.ttf`)
      await writeFile(file, unpackWoff(woff, inflateSync))
      return file
    }),
  )
}
