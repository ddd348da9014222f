import { randomBytes } from 'node:crypto'
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

const length = 32

/** The key that signs sessions: made once and kept in the data folder for its owner alone, so that sessions outlive restarts. */
export const sessionKey = async (data: string): Promise<Uint8Array> => {
  const file = join(data, 'session.key')
  const known = await readFile(file).catch(() => null)
  if (known !== null && known.length === length) return known
  await mkdir(data, { recursive: true })
  await writeFile(file, randomBytes(length), { mode: 0o600, flag: 'wx' }).catch((error: unknown) => {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error
  })
  return readFile(file)
}
