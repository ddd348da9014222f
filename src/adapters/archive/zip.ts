import { zipSync } from 'fflate'
import type { Pack } from '../../ports/archive.ts'

/** A fixed moment for every entry, so that the same job gives the same archive. */
const entryTime = new Date(1980, 0, 1)

/** A ZIP archive. */
export const zipPack: Pack = (entries) =>
  zipSync(Object.fromEntries(entries.map(({ name, bytes }) => [name, [bytes, { mtime: entryTime, level: 6 }]])))
