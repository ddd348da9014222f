import type { StoredFile } from '../../../ports/counter-desk.ts'
import type { GivenFile } from './payload.ts'
import { fileName } from './plain-text.ts'

export type Fetch = (url: string, init: { readonly redirect: 'error'; readonly signal: AbortSignal }) => Promise<Response>
export type FetchRules = {
  readonly hosts: readonly string[]
  readonly mostBytes: number
  readonly milliseconds: number
  readonly fetch: Fetch
}
export type Fetched =
  | { readonly ok: true; readonly file: StoredFile }
  | { readonly ok: false; readonly why: 'too-large' | 'not-trusted' | 'failed'; readonly name: string }

export const fetchRules: FetchRules = {
  hosts: ['cdn.discordapp.com'],
  mostBytes: 8 * 1024 * 1024,
  milliseconds: 10_000,
  fetch: (url, init) => globalThis.fetch(url, init),
}

/** https, exactly one of the platform's hosts, its own port, nobody's name or password in it. */
export const isTrusted = (address: string, hosts: readonly string[]): boolean => {
  const url = URL.canParse(address) ? new URL(address) : null
  if (url === null || url.protocol !== 'https:' || url.port !== '' || url.username !== '' || url.password !== '') return false
  return hosts.includes(url.hostname)
}

const readCapped = async (response: Response, mostBytes: number): Promise<Uint8Array | null> => {
  if (Number(response.headers.get('content-length') ?? 0) > mostBytes) return null
  const chunks: Uint8Array[] = []
  let size = 0
  if (response.body === null) return new Uint8Array()
  for await (const chunk of response.body) {
    const bytes = chunk instanceof Uint8Array ? chunk : Buffer.from(chunk)
    size += bytes.length
    if (size > mostBytes) return null
    chunks.push(bytes)
  }
  return new Uint8Array(Buffer.concat(chunks))
}

/** Fetches at once, because the platform's links expire: no redirect, caps on the declared and the real size, a time limit. */
export const fetchAttachment = async (given: GivenFile, rules: FetchRules): Promise<Fetched> => {
  const name = fileName(given.filename)
  if (given.size > rules.mostBytes) return { ok: false, why: 'too-large', name }
  if (!isTrusted(given.url, rules.hosts)) return { ok: false, why: 'not-trusted', name }
  try {
    const response = await rules.fetch(given.url, { redirect: 'error', signal: AbortSignal.timeout(rules.milliseconds) })
    if (!response.ok) return { ok: false, why: 'failed', name }
    const bytes = await readCapped(response, rules.mostBytes)
    if (bytes === null) return { ok: false, why: 'too-large', name }
    return { ok: true, file: { name, mime: given.content_type ?? 'application/octet-stream', bytes } }
  } catch {
    return { ok: false, why: 'failed', name }
  }
}
