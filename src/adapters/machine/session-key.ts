import { createHmac, randomBytes } from 'node:crypto'
import { mkdir, readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'

const length = 32

/** Made once and kept in the data folder for its owner alone, so that sessions outlive restarts. */
const keptKey = async (data: string): Promise<Uint8Array> => {
  const file = join(data, 'session.key')
  const known = await readFile(file).catch(() => null)
  if (known !== null && known.length === length) return known
  await mkdir(data, { recursive: true })
  await writeFile(file, randomBytes(length), { mode: 0o600, flag: 'wx' }).catch((error: unknown) => {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error
  })
  return readFile(file)
}

export type SessionKeySettings = { readonly data: string; readonly given: string | null; readonly shopId: string }

/**
 * The key that signs one shop's sessions (HMAC-SHA256 of its id): made from the secret that is given, which several services
 * share, or from the one in the data folder. Another shop's session is no session here, whatever the two share.
 */
export const sessionKey = async ({ data, given, shopId }: SessionKeySettings): Promise<Uint8Array> =>
  createHmac('sha256', given ?? (await keptKey(data)))
    .update(`sessions of ${shopId}`)
    .digest()
