import { existsSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const isRoot = (folder: string): boolean => {
  const manifest = join(folder, 'package.json')
  return existsSync(manifest) && readFileSync(manifest, 'utf8').includes('"name": "platenpost"')
}

const upFrom = (folder: string): string => {
  if (isRoot(folder)) return folder
  const parent = dirname(folder)
  if (parent === folder) throw new Error('the project folder was not found above the program')
  return upFrom(parent)
}

/** The project's folder: assets (shop folder, faces, page) are found from here, wherever the compiled program lies. */
export const projectRoot = (): string => upFrom(dirname(fileURLToPath(import.meta.url)))
