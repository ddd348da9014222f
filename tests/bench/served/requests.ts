import { subscribe, unsubscribe } from 'node:diagnostics_channel'
import type { ClientRequest } from 'node:http'

/** Requests that this process made, and the bytes that went up and came down for them, heads and all. */
export type Requests = { readonly many: number; readonly bytesUp: number; readonly bytesDown: number }

const isStart = (message: unknown): message is { readonly request: ClientRequest } =>
  typeof message === 'object' && message !== null && 'request' in message

/** Counts the requests of this process while the work lasts; each has a connection of its own. */
export const requestsDuring = async (work: () => Promise<unknown>): Promise<Requests> => {
  const counts = { many: 0, bytesUp: 0, bytesDown: 0 }
  const note = (message: unknown): void => {
    if (!isStart(message)) return
    const { request } = message
    request.once('close', () => {
      counts.many += 1
      counts.bytesUp += request.socket?.bytesWritten ?? 0
      counts.bytesDown += request.socket?.bytesRead ?? 0
    })
  }
  subscribe('http.client.request.start', note)
  try {
    await work()
  } finally {
    unsubscribe('http.client.request.start', note)
  }
  return counts
}
