/** JSON with sorted keys, so that equal documents have equal text. */
export const canonical = (value: unknown): string => {
  if (Array.isArray(value)) return `[${value.map(canonical).join(',')}]`
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'null'
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined)
  const sorted = entries.sort(([a], [b]) => (a < b ? -1 : Number(a > b)))
  return `{${sorted.map(([key, inner]) => `${JSON.stringify(key)}:${canonical(inner)}`).join(',')}}`
}

const isPrime = (n: number): boolean => {
  for (let divisor = 2; divisor * divisor <= n; divisor += 1) if (n % divisor === 0) return false
  return n > 1
}

const primes = Array.from({ length: 312 }, (_, n) => n).filter(isPrime)

/** The first 32 bits of the fraction of a root, as FIPS 180-4 makes its constants. */
const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * 2 ** 32) | 0

const rounds = primes.slice(0, 64).map((prime) => fraction(Math.cbrt(prime)))
const start = primes.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)))

const turn = (word: number, by: number): number => (word >>> by) | (word << (32 - by))

const padded = (bytes: Uint8Array): DataView => {
  const length = Math.ceil((bytes.length + 9) / 64) * 64
  const block = new Uint8Array(length)
  block.set(bytes)
  block[bytes.length] = 0x80
  const view = new DataView(block.buffer)
  view.setUint32(length - 8, Math.floor(bytes.length / 2 ** 29))
  view.setUint32(length - 4, bytes.length << 3)
  return view
}

const schedule = (view: DataView, offset: number): Int32Array => {
  const words = new Int32Array(64)
  for (let i = 0; i < 16; i += 1) words[i] = view.getInt32(offset + i * 4)
  for (let i = 16; i < 64; i += 1) {
    const near = words[i - 15] ?? 0
    const far = words[i - 2] ?? 0
    const low = turn(near, 7) ^ turn(near, 18) ^ (near >>> 3)
    const high = turn(far, 17) ^ turn(far, 19) ^ (far >>> 10)
    words[i] = (words[i - 16] ?? 0) + low + (words[i - 7] ?? 0) + high
  }
  return words
}

const compress = (state: readonly number[], words: Int32Array): readonly number[] => {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state
  for (let i = 0; i < 64; i += 1) {
    const choice = (e & f) ^ (~e & g)
    const first = h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + choice + (rounds[i] ?? 0) + (words[i] ?? 0)
    const second = (turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + ((a & b) ^ (a & c) ^ (b & c))
    ;[h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0]
  }
  return [a, b, c, d, e, f, g, h].map((word, index) => (word + (state[index] ?? 0)) | 0)
}

/** SHA-256 (FIPS 180-4) of a text's UTF-8 bytes, in hex; pure, for documents of a few kilobytes. */
export const sha256 = (text: string): string => {
  const view = padded(new TextEncoder().encode(text))
  let state: readonly number[] = start
  for (let offset = 0; offset < view.byteLength; offset += 64) state = compress(state, schedule(view, offset))
  return state.map((word) => (word >>> 0).toString(16).padStart(8, '0')).join('')
}

/** The name of a document's content: what a customer signs is this hash and nothing else. */
export const contentHash = (document: unknown): string => sha256(canonical(document)).slice(0, 32)
