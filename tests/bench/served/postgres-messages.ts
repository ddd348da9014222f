/** One message of the protocol between a client and PostgreSQL, without its length (PostgreSQL 15, 55.7 Message Formats). */
export type Message = { readonly kind: string; readonly body: Buffer }

/** The first message of some bytes, and where it ends; null: it has not come whole. Only what a client says first has no kind. */
const firstOf = (bytes: Buffer, hasKind: boolean): { readonly message: Message; readonly end: number } | null => {
  const at = hasKind ? 1 : 0
  if (bytes.length < at + 4) return null
  const end = at + bytes.readUInt32BE(at)
  if (bytes.length < end) return null
  return { message: { kind: hasKind ? String.fromCharCode(bytes.readUInt8(0)) : '', body: bytes.subarray(at + 4, end) }, end }
}

/** Reads one direction of a connection message by message: a kind, a length that counts itself, and the rest. */
export const messagesIn = (isFromClient: boolean): ((bytes: Buffer) => readonly Message[]) => {
  const state: { rest: Buffer; hasKind: boolean } = { rest: Buffer.alloc(0), hasKind: !isFromClient }
  return (bytes) => {
    state.rest = state.rest.length === 0 ? bytes : Buffer.concat([state.rest, bytes])
    const found: Message[] = []
    for (let first = firstOf(state.rest, state.hasKind); first !== null; first = firstOf(state.rest, true)) {
      found.push(first.message)
      state.hasKind = true
      state.rest = state.rest.subarray(first.end)
    }
    return found
  }
}

/** A statement as a client has sent it. */
export type Sent = { readonly text: string; readonly name: string; readonly values: readonly (string | Buffer | null)[] }

type Reading = { readonly body: Buffer; at: number }

const word = (reading: Reading): string => {
  const end = reading.body.indexOf(0, reading.at)
  const read = reading.body.toString('utf8', reading.at, end)
  reading.at = end + 1
  return read
}

const short = (reading: Reading): number => {
  reading.at += 2
  return reading.body.readInt16BE(reading.at - 2)
}

const value = (reading: Reading, isBinary: boolean): string | Buffer | null => {
  const length = reading.body.readInt32BE(reading.at)
  reading.at += 4
  if (length < 0) return null
  const read = reading.body.subarray(reading.at, reading.at + length)
  reading.at += length
  return isBinary ? Buffer.from(read) : read.toString('utf8')
}

/** Values of a Bind message: one format for each of them, one for all, or none for text. */
const valuesOf = (reading: Reading): Sent['values'] => {
  const formats = Array.from({ length: short(reading) }, () => short(reading))
  return Array.from({ length: short(reading) }, (_, at) =>
    value(reading, (formats.length === 1 ? formats[0] : formats[at]) === 1),
  )
}

/** The statements that a client sends, each when it is told to run; what is prepared is known by its name. */
export const statementsIn = (): ((message: Message) => Sent | null) => {
  const prepared = new Map<string, string>()
  const state: { bound: Sent } = { bound: { text: '', name: '', values: [] } }
  return ({ kind, body }) => {
    const reading = { body, at: 0 }
    if (kind === 'Q') return { text: word(reading), name: '', values: [] }
    if (kind === 'P') prepared.set(word(reading), word(reading))
    if (kind === 'B') {
      word(reading)
      const name = word(reading)
      state.bound = { text: prepared.get(name) ?? '', name, values: valuesOf(reading) }
    }
    return kind === 'E' ? state.bound : null
  }
}
