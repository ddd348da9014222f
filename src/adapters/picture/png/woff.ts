import { inflateSync } from 'node:zlib'

const SIGNATURE = 0x774f4646
const HEADER = 44
const ENTRY = 20
const padded = (length: number): number => Math.ceil(length / 4) * 4

type Table = { readonly tag: number; readonly checksum: number; readonly bytes: Buffer }

const readTable = (woff: Buffer, at: number): Table => {
  const offset = woff.readUInt32BE(at + 4)
  const packed = woff.readUInt32BE(at + 8)
  const length = woff.readUInt32BE(at + 12)
  const raw = woff.subarray(offset, offset + packed)
  const bytes = packed < length ? inflateSync(raw) : Buffer.from(raw)
  if (bytes.length !== length) throw new RangeError(`a table of the font is ${bytes.length} bytes long, not ${length}`)
  return { tag: woff.readUInt32BE(at), checksum: woff.readUInt32BE(at + 16), bytes }
}

/** The plain OpenType bytes of a WOFF 1.0 file (W3C recommendation of 2012, section 4: tables stored as zlib streams). */
export const unpackWoff = (input: Uint8Array): Uint8Array => {
  const woff = Buffer.from(input)
  if (woff.readUInt32BE(0) !== SIGNATURE) throw new RangeError('these bytes are no WOFF 1.0 font')
  const count = woff.readUInt16BE(12)
  const tables = Array.from({ length: count }, (_table, at) => readTable(woff, HEADER + at * ENTRY))
  const power = Math.floor(Math.log2(count))
  const head = Buffer.alloc(12 + 16 * count)
  head.writeUInt32BE(woff.readUInt32BE(4), 0)
  head.writeUInt16BE(count, 4)
  head.writeUInt16BE(16 * 2 ** power, 6)
  head.writeUInt16BE(power, 8)
  head.writeUInt16BE(16 * count - 16 * 2 ** power, 10)
  let offset = head.length
  tables.forEach((table, at) => {
    head.writeUInt32BE(table.tag, 12 + 16 * at)
    head.writeUInt32BE(table.checksum, 16 + 16 * at)
    head.writeUInt32BE(offset, 20 + 16 * at)
    head.writeUInt32BE(table.bytes.length, 24 + 16 * at)
    offset += padded(table.bytes.length)
  })
  const bodies = tables.map((table) =>
    Buffer.concat([table.bytes, Buffer.alloc(padded(table.bytes.length) - table.bytes.length)]),
  )
  return new Uint8Array(Buffer.concat([head, ...bodies]))
}
