import { deflateSync, inflateSync } from 'node:zlib'

/** No document of ours comes near; bytes that would swell beyond are not ours. */
const mostBytes = 256 * 1_024 * 1_024

/** The first byte of every stream that is deflated in a window of 32 KB (RFC 1950, CMF); no JSON text starts with an `x`. */
const packed = 0x78

/** The JSON text of a document, deflated for speed: a plan shrinks to a twentieth. */
export const pack = (value: unknown): Buffer => deflateSync(JSON.stringify(value ?? null), { level: 1 })

/** What `pack` was given; the bytes of a document that was kept before documents were packed are its JSON text. */
export const unpack = (bytes: Buffer): unknown =>
  JSON.parse((bytes[0] === packed ? inflateSync(bytes, { maxOutputLength: mostBytes }) : bytes).toString())
