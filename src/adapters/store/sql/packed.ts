import { deflateSync, inflateSync } from 'node:zlib'
import { noParts, type Parts, type Read, readDocument, writeDocument } from './document-text.ts'

/** No document of ours comes near; bytes that would swell beyond are not ours. */
const mostBytes = 256 * 1_024 * 1_024

/** The first byte of every stream that is deflated in a window of 32 KB (RFC 1950, CMF); no JSON text starts with an `x`. */
const packed = 0x78

/** A document deflated for speed, and the parts of it: a plan shrinks to a twentieth. */
export const pack = (document: unknown, known = noParts): { readonly bytes: Buffer; readonly parts: Parts } => {
  const { text, parts } = writeDocument(document, known)
  return { bytes: deflateSync(text, { level: 1 }), parts }
}

/** What `pack` was given; the bytes of a document that was kept before documents were packed are its JSON text. */
export const unpack = (bytes: Buffer, known = noParts): Read =>
  readDocument((bytes[0] === packed ? inflateSync(bytes, { maxOutputLength: mostBytes }) : bytes).toString(), known)
