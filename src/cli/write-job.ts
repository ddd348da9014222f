import { createHash } from 'node:crypto'
import { mkdir, rename, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { resultFile } from '../desk/file-names.ts'
import type { Made } from '../desk/make-job.ts'

/** A number for a ticket made outside the service: the first letters of the document's SHA-256, so the same order has the same. */
export const ticketNumber = (document: unknown): string =>
  `T${createHash('sha256').update(JSON.stringify(document)).digest('hex').slice(0, 6).toUpperCase()}`

const put = async (folder: string, name: string, bytes: Uint8Array | string): Promise<void> => {
  const path = join(folder, name)
  await mkdir(dirname(path), { recursive: true })
  const draft = `${path}.part`
  await writeFile(draft, bytes)
  await rename(draft, path)
}

/** Writes the files of a job, the result document last; a refused job writes the result document alone. */
export const writeJob = async (folder: string, made: Made): Promise<void> => {
  for (const file of made.files) await put(folder, file.name, file.bytes)
  await put(folder, resultFile, `${JSON.stringify(made.result, null, 2)}\n`)
}
