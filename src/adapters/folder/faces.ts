import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Face } from '../../domain/face/face.ts'
import type { FaceListing } from '../../domain/face/listing.ts'
import { openFace } from '../../domain/face/open-face.ts'
import type { FaceProblem } from '../../domain/face/problems.ts'
import { collect, ok, type Result, refuse } from '../../domain/result/result.ts'

const readPinned = async (
  face: string,
  path: string,
  file: FaceListing['files'][number],
): Promise<Result<Uint8Array, FaceProblem>> => {
  const bytes = await readFile(path).catch(() => undefined)
  if (bytes === undefined) {
    return refuse({ code: 'face-file-missing', at: '', severity: 'stop', facts: { face, file: path } })
  }
  const found = createHash('sha256').update(bytes).digest('hex')
  if (found === file.sha256) return ok(bytes)
  return refuse({
    code: 'face-changed',
    at: '',
    severity: 'stop',
    facts: { face, file: path, expected: file.sha256, found },
  })
}

/** One offered face from the installed packages under the project's root; its files must have the listed SHA-256. */
const loadFace = async (listing: FaceListing, root: string): Promise<Result<Face, FaceProblem>> => {
  const folder = join(root, 'node_modules', listing.package, 'files')
  const files = collect(await Promise.all(listing.files.map((file) => readPinned(listing.id, join(folder, file.file), file))))
  return files.ok ? openFace(listing, files.value) : files
}

/** All offered faces by id, or every problem with them. */
export const loadFaces = async (
  listings: readonly FaceListing[],
  root: string,
): Promise<Result<ReadonlyMap<string, Face>, FaceProblem>> => {
  const faces = collect(await Promise.all(listings.map((listing) => loadFace(listing, root))))
  return faces.ok ? ok(new Map(faces.value.map((face) => [face.id, face]))) : faces
}
