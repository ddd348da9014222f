import { createHash } from 'node:crypto'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Face } from '../../domain/face/face.ts'
import type { FaceListing, OwnFace, PackagedFace } from '../../domain/face/listing.ts'
import { openFace } from '../../domain/face/open-face.ts'
import type { FaceProblem } from '../../domain/face/problems.ts'
import { collect, ok, type Result, refuse } from '../../domain/result/result.ts'
import { readOwnFace } from './own-face.ts'

const readPinned = async (
  face: string,
  path: string,
  file: PackagedFace['files'][number],
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

/** A face of the installed packages; its files must have the listed SHA-256. */
const loadPackaged = async (listing: PackagedFace, root: string): Promise<Result<Face, FaceProblem>> => {
  const folder = join(root, 'node_modules', listing.package, 'files')
  const files = collect(await Promise.all(listing.files.map((file) => readPinned(listing.id, join(folder, file.file), file))))
  return files.ok ? openFace(listing, files.value) : files
}

const loadOwn = async ({ id, kind, own }: OwnFace, places: FacePlaces): Promise<Result<Face, FaceProblem>> => {
  const file = join(places.shop, 'faces', own)
  const bytes = await readFile(file).catch(() => undefined)
  if (bytes === undefined) return refuse({ code: 'face-file-missing', at: '', severity: 'stop', facts: { face: id, file } })
  return readOwnFace({ id, kind, bytes }, places.thread)
}

/** The project's root, which has the packages; the shop's folder, which may have `faces`; the thread that opens those. */
export type FacePlaces = { readonly root: string; readonly shop: string; readonly thread?: URL | string }

const shared = (listings: readonly FaceListing[]): readonly FaceProblem[] => {
  const ids = listings.map(({ id }) => id)
  return ids
    .filter((id, index) => ids.indexOf(id) !== index)
    .map((face) => ({ code: 'face-listed-twice', at: '', severity: 'stop', facts: { face } }))
}

/**
 * All offered faces by id, or every problem with them. A shop's own files are opened and checked in a limited thread, one after
 * the other.
 */
export const loadFaces = async (
  listings: readonly FaceListing[],
  places: FacePlaces,
): Promise<Result<ReadonlyMap<string, Face>, FaceProblem>> => {
  const twice = shared(listings)
  if (twice.length > 0) return { ok: false, problems: twice }
  const loaded: Result<Face, FaceProblem>[] = []
  for (const listing of listings)
    loaded.push(await ('own' in listing ? loadOwn(listing, places) : loadPackaged(listing, places.root)))
  const faces = collect(loaded)
  return faces.ok ? ok(new Map(faces.value.map((face) => [face.id, face]))) : faces
}
