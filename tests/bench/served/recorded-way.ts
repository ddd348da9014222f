import { once } from 'node:events'
import { connect, createServer, type Socket } from 'node:net'
import { type Message, messagesIn, type Sent, statementsIn } from './postgres-messages.ts'

/** What a connection did between two moments at which it was in no transaction. */
export type Recorded = {
  /** Statements in the order of their writes; what left at once stands together. */
  readonly writes: readonly (readonly Sent[])[]
  /** What the server said to each statement that it ran: `INSERT 0 1`. */
  readonly answers: readonly string[]
  readonly bytesUp: number
  readonly bytesDown: number
}

export type RecordedWay = {
  readonly port: number
  /** All that ended since this was asked last, in the order in which it ended. */
  readonly taken: () => readonly Recorded[]
  readonly close: () => Promise<void>
}

type Going = { writes: Sent[][]; answers: string[]; bytesUp: number; bytesDown: number }

/** As much as one look at a socket hands over: what comes after it belongs to the same write. */
const wholeLook = 65_536

const nothingYet = (): Going => ({ writes: [], answers: [], bytesUp: 0, bytesDown: 0 })

/** What the server says of a statement that it has run, without the zero at its end. */
const answerIn = ({ kind, body }: Message): string | null => {
  if (kind === 'C') return body.toString('utf8', 0, body.length - 1)
  return kind === 'E' ? 'refused' : null
}

/** It is ready, and in no transaction. */
const isIdle = ({ body }: Message): boolean => body.toString('latin1') === 'I'

/** Both directions of one connection; `ended` gets what it did whenever it is idle again. */
const watched = (ended: (all: Recorded) => void) => {
  const [up, down, statement] = [messagesIn(true), messagesIn(false), statementsIn()]
  const state = { going: nothingYet(), last: 0, open: 0 }
  const end = (): void => {
    ended(state.going)
    state.going = nothingYet()
  }
  return {
    sent: (bytes: Buffer): void => {
      if (state.last < wholeLook || state.going.writes.length === 0) state.going.writes.push([])
      state.last = bytes.length
      state.going.bytesUp += bytes.length
      for (const message of up(bytes)) {
        const sent = statement(message)
        if (sent === null) continue
        state.going.writes.at(-1)?.push(sent)
        state.open += 1
      }
    },
    answered: (bytes: Buffer): void => {
      state.going.bytesDown += bytes.length
      for (const message of down(bytes)) {
        const answer = answerIn(message)
        if (answer !== null) state.going.answers.push(answer)
        if (message.kind === 'Z' && state.open > 0) state.open -= 1
        else continue
        if (state.open === 0 && isIdle(message)) end()
      }
    },
  }
}

/** A way to a PostgreSQL server of this machine on which all that goes by is kept. */
export const startRecordedWay = async (target: number): Promise<RecordedWay> => {
  const state: { all: Recorded[] } = { all: [] }
  const sockets = new Set<Socket>()
  const joined = (near: Socket, far: Socket): void => {
    const { sent, answered } = watched((one) => state.all.push(one))
    near.on('data', (bytes: Buffer) => {
      sent(bytes)
      far.write(bytes)
    })
    far.on('data', (bytes: Buffer) => {
      answered(bytes)
      near.write(bytes)
    })
  }
  const server = createServer({ noDelay: true }, (near) => {
    const far = connect({ port: target, host: '127.0.0.1', noDelay: true })
    joined(near, far)
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
    taken: () => {
      const all = state.all
      state.all = []
      return all
    },
    close: async () => {
      for (const socket of sockets) socket.destroy()
      server.close()
      await once(server, 'close')
    },
  }
}
