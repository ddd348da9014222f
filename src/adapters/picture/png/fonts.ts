import { mkdtemp, readdir, readFile, rm, stat, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { inflateSync } from 'node:zlib'
import { unpackWoff } from '../../../domain/ticket/woff.ts'

const FOLDER = 'node_modules/@fontsource/ibm-plex-sans-condensed/files'
const PARTS = ['latin-400', 'latin-ext-400'] as const

const PREFIX = 'platenpost-fonts-'

const isAlive = (pid: number): boolean => {
  try {
    process.kill(pid, 0)
    return true
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM'
  }
}

/** A process that was killed could not take its folder away; those of processes that are gone and were ours go now. */
const sweep = async (): Promise<void> => {
  const left = (await readdir(tmpdir())).filter((name) => name.startsWith(PREFIX))
  for (const name of left) {
    const pid = Number(/^(\d+)-/.exec(name.slice(PREFIX.length))?.[1])
    const folder = join(tmpdir(), name)
    const owner = await stat(folder).catch(() => null)
    if (Number.isSafeInteger(pid) && !isAlive(pid) && owner?.uid === process.getuid?.())
      await rm(folder, { recursive: true, force: true })
  }
}

/**
 * The picture's face as font files that the renderer can open: it reads no WOFF, so the tables are unpacked into a private
 * folder under the system's temporary folder.
 */
export const loadPictureFonts = async (root: string): Promise<readonly string[]> => {
  await sweep()
  const folder = await mkdtemp(join(tmpdir(), `${PREFIX}${process.pid}-`))
  return Promise.all(
    PARTS.map(async (part) => {
      const woff = await readFile(join(root, FOLDER, `ibm-plex-sans-condensed-${part}-normal.woff`))
      const file = join(folder, `${part}.ttf`)
      await writeFile(file, unpackWoff(woff, inflateSync))
      return file
    }),
  )
}
