import { once } from 'node:events'
import { connect, createServer, type Socket } from 'node:net'

/** What went to a PostgreSQL server and came back, since it was first asked. */
export type Traffic = {
  /** Statements that were run, the beginnings and ends of transactions too. */
  readonly statements: number
  readonly begins: number
  /** Times that somebody wrote to the server: what leaves at once is one. */
  readonly writes: number
  readonly bytesUp: number
  readonly bytesDown: number
}

export type CountedWay = { readonly port: number; readonly traffic: () => Traffic; readonly close: () => Promise<void> }

type Counts = { -readonly [Key in keyof Traffic]: Traffic[Key] }

/** As much as one look at a socket hands over: what comes after it belongs to the same write. */
const wholeLook = 65_536

const letter = (text: string): number => text.charCodeAt(0)

/**
 * Reads what a client of PostgreSQL sends, message by message: a first one without a kind, then a kind, a length that counts
 * itself, and the rest (PostgreSQL 15, 55.7 Message Formats).
 */
const reader = (counts: Counts): ((bytes: Buffer) => void) => {
  const state = { rest: Buffer.alloc(0), isStarted: false }
  const isMessage = (kind: number, body: Buffer): void => {
    if (kind === letter('E')) counts.statements += 1
    if (kind !== letter('Q')) return
    counts.statements += 1
    if (body.toString('latin1').startsWith('begin')) counts.begins += 1
  }
  return (bytes) => {
    state.rest = Buffer.concat([state.rest, bytes])
    for (;;) {
      const at = state.isStarted ? 1 : 0
      if (state.rest.length < at + 4) return
      const end = at + state.rest.readUInt32BE(at)
      if (state.rest.length < end) return
      if (state.isStarted) isMessage(state.rest.readUInt8(0), state.rest.subarray(at + 4, end))
      state.isStarted = true
      state.rest = state.rest.subarray(end)
    }
  }
}

const joined = (near: Socket, far: Socket, counts: Counts): void => {
  const read = reader(counts)
  const state = { last: 0 }
  near.on('data', (bytes: Buffer) => {
    if (state.last < wholeLook) counts.writes += 1
    state.last = bytes.length
    counts.bytesUp += bytes.length
    read(bytes)
    far.write(bytes)
  })
  far.on('data', (bytes: Buffer) => {
    counts.bytesDown += bytes.length
    near.write(bytes)
  })
}

/** A way to a PostgreSQL server of this machine on which all that goes by is counted. */
export const startCountedWay = async (target: number): Promise<CountedWay> => {
  const counts: Counts = { statements: 0, begins: 0, writes: 0, bytesUp: 0, bytesDown: 0 }
  const sockets = new Set<Socket>()
  const server = createServer({ noDelay: true }, (near) => {
    const far = connect({ port: target, host: '127.0.0.1', noDelay: true })
    joined(near, far, counts)
    for (const [socket, other] of [
      [near, far],
      [far, near],
    ] as const) {
      sockets.add(socket)
      socket.on('error', () => undefined)
      socket.on('close', () => {
        sockets.delete(socket)
        other.destroy()
      })
    }
  }).listen(0, '127.0.0.1')
  await once(server, 'listening')
  const bound = server.address()
  return {
    port: bound !== null && typeof bound === 'object' ? bound.port : 0,
    traffic: () => ({ ...counts }),
    close: async () => {
      for (const socket of sockets) socket.destroy()
      server.close()
      await once(server, 'close')
    },
  }
}
