const SIGNATURE = 0x774f4646
const HEADER = 44
const ENTRY = 20

const padded = (length: number): number => Math.ceil(length / 4) * 4

/** Unpacks one zlib stream; given by the caller, because the domain has none. */
export type Inflate = (packed: Uint8Array) => Uint8Array

type Table = { readonly tag: number; readonly checksum: number; readonly bytes: Uint8Array }

const readTable = (woff: Uint8Array, at: number, inflate: Inflate): Table => {
  const view = new DataView(woff.buffer, woff.byteOffset, woff.byteLength)
  const offset = view.getUint32(at + 4)
  const packed = view.getUint32(at + 8)
  const length = view.getUint32(at + 12)
  const raw = woff.subarray(offset, offset + packed)
  const bytes = packed < length ? inflate(raw) : raw
  if (bytes.length !== length) throw new RangeError(`a table of the font is ${bytes.length} bytes long, not ${length}`)
  return { tag: view.getUint32(at), checksum: view.getUint32(at + 16), bytes }
}

const tableHead = (view: DataView, flavour: number, count: number): void => {
  const power = Math.floor(Math.log2(count))
  view.setUint32(0, flavour)
  view.setUint16(4, count)
  view.setUint16(6, 16 * 2 ** power)
  view.setUint16(8, power)
  view.setUint16(10, 16 * count - 16 * 2 ** power)
}

/**
 * The plain OpenType bytes of a WOFF 1.0 font (W3C recommendation of 2012, section 4: a header, a directory, tables stored as
 * zlib streams), for programs that read no WOFF. Bytes that are none are a bug and thrown.
 */
export const unpackWoff = (woff: Uint8Array, inflate: Inflate): Uint8Array => {
  const source = new DataView(woff.buffer, woff.byteOffset, woff.byteLength)
  if (source.getUint32(0) !== SIGNATURE) throw new RangeError('these bytes are no WOFF 1.0 font')
  const count = source.getUint16(12)
  const tables = Array.from({ length: count }, (_table, at) => readTable(woff, HEADER + at * ENTRY, inflate))
  const start = 12 + 16 * count
  const font = new Uint8Array(tables.reduce((sum, table) => sum + padded(table.bytes.length), start))
  const view = new DataView(font.buffer)
  tableHead(view, source.getUint32(4), count)
  let offset = start
  tables.forEach((table, at) => {
    view.setUint32(12 + 16 * at, table.tag)
    view.setUint32(16 + 16 * at, table.checksum)
    view.setUint32(20 + 16 * at, offset)
    view.setUint32(24 + 16 * at, table.bytes.length)
    font.set(table.bytes, offset)
    offset += padded(table.bytes.length)
  })
  return font
}
