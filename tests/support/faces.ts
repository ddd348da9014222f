import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { loadFaces } from '../../src/adapters/folder/faces.ts'
import type { Face } from '../../src/domain/face/face.ts'
import { faceListingsSchema, type PackagedFace } from '../../src/domain/face/listing.ts'

const root = new URL('../..', import.meta.url).pathname

const shop = join(root, 'templates', 'shop')

/** The faces that ship with the program. */
export const faceListings = async (): Promise<readonly PackagedFace[]> =>
  faceListingsSchema.parse(JSON.parse(await readFile(join(shop, 'faces.json'), 'utf8'))).filter((listing) => 'package' in listing)

/** All offered faces, opened from the installed packages. */
export const offeredFaces = async (): Promise<ReadonlyMap<string, Face>> => {
  const faces = await loadFaces(await faceListings(), { root, shop })
  if (!faces.ok) throw new Error(JSON.stringify(faces.problems))
  return faces.value
}

/** The bytes of every file of a listed face, in its order. */
export const faceBytes = (listing: PackagedFace): Promise<readonly Uint8Array[]> =>
  Promise.all(listing.files.map(({ file }) => readFile(join(root, 'node_modules', listing.package, 'files', file))))
