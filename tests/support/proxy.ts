import { once } from 'node:events'
import { connect, createServer, type Socket } from 'node:net'

export type Way = {
  readonly port: number
  /** Breaks every connection and takes no new one, as a cable that is pulled. */
  readonly cut: () => void
  /** Every packet comes so much later, both ways. */
  readonly slow: (milliseconds: number) => void
  /** Connections stay open and nothing goes through. */
  readonly stall: () => void
  /** As new; what waited goes on. */
  readonly heal: () => void
  readonly close: () => Promise<void>
}

type Weather = { mode: 'fair' | 'cut' | 'stall'; lateMs: number }

/** Hands bytes over in their order, each not before its time and none while the way is stalled. */
const carry = (from: Socket, to: Socket, weather: Weather): (() => void) => {
  const waiting: { readonly bytes: Buffer; readonly at: number }[] = []
  const drain = (): void => {
    while (weather.mode === 'fair' && waiting[0] !== undefined && waiting[0].at <= Date.now()) {
      const next = waiting.shift()
      if (next !== undefined && !to.destroyed) to.write(next.bytes)
    }
    if (waiting[0] !== undefined && weather.mode === 'fair') setTimeout(drain, Math.max(1, waiting[0].at - Date.now()))
  }
  from.on('data', (bytes: Buffer) => {
    waiting.push({ bytes, at: Date.now() + weather.lateMs })
    drain()
  })
  return drain
}

/** A way to a server of this machine that can be made slow, stalled or cut. */
export const startProxy = async (target: number): Promise<Way> => {
  const weather: Weather = { mode: 'fair', lateMs: 0 }
  const sockets = new Set<Socket>()
  const drains = new Set<() => void>()
  const server = createServer((near) => {
    if (weather.mode === 'cut') {
      near.destroy()
      return
    }
    const far = connect(target, '127.0.0.1')
    const both = [near, far]
    const ways = [carry(near, far, weather), carry(far, near, weather)]
    for (const way of ways) drains.add(way)
    for (const socket of both) {
      sockets.add(socket)
      socket.on('error', () => undefined)
      socket.on('close', () => {
        sockets.delete(socket)
        for (const other of both) other.destroy()
        for (const way of ways) drains.delete(way)
      })
    }
  }).listen(0, '127.0.0.1')
  await once(server, 'listening')
  const bound = server.address()
  const breakAll = (): void => {
    for (const socket of sockets) socket.destroy()
  }
  return {
    port: bound !== null && typeof bound === 'object' ? bound.port : 0,
    cut: () => {
      weather.mode = 'cut'
      breakAll()
    },
    slow: (milliseconds) => {
      weather.lateMs = milliseconds
    },
    stall: () => {
      weather.mode = 'stall'
    },
    heal: () => {
      weather.mode = 'fair'
      weather.lateMs = 0
      for (const drain of drains) drain()
    },
    close: async () => {
      breakAll()
      server.close()
      await once(server, 'close')
    },
  }
}
