import { getEventListeners, once } from 'node:events'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { comeIn } from '../../../../src/adapters/chat/platform/come-in.ts'
import { startPlatform } from '../../../../src/adapters/chat/platform/platform.ts'
import { smallDesk } from '../../../support/platform/desk.ts'
import { startStandIn, token } from '../../../support/platform/stand-in.ts'

const closing: (() => Promise<unknown>)[] = []
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close()
})

const pauses = { first: 200, shortest: 20, longest: 80 }
const api = (port: number): string => `http://127.0.0.1:${port}/api`

/** A server of this kind on a port of its own, and the way to close it. */
const listening = async (answer: { readonly status: number; readonly body: string } | null) => {
  const server = createServer((_, response) => {
    if (answer !== null) response.writeHead(answer.status, { 'content-type': 'application/json' }).end(answer.body)
  })
  server.listen(0, '127.0.0.1')
  await once(server, 'listening')
  const close = async (): Promise<void> => {
    server.closeAllConnections()
    server.close()
    await once(server, 'close')
  }
  return { port: (server.address() as AddressInfo).port, close }
}

/** The bot on its way in to this port. */
const approach = async (port: number, secret = token) => {
  const reports: string[] = []
  const { desk } = smallDesk()
  const settings = { token: secret, api: api(port), readsContent: false }
  const report = (cause: unknown): void => void reports.push(String(cause))
  const { stop } = await comeIn({
    connect: (signal) => startPlatform(desk, { ...settings, report, signal }),
    report,
    pauses,
  })
  closing.push(stop)
  return { reports }
}

/** Whether the bot answers a command there. */
const answers = async (platform: Awaited<ReturnType<typeof startStandIn>>): Promise<void> => {
  const owner = platform.addUser('Owner')
  const room = platform.addChannel(platform.addGuild('Cedar Flats Press', owner), 'lobby')
  const asked: ReturnType<typeof platform.command>[] = []
  const tried = () => {
    asked.push(platform.command({ user: owner, room }, 'order', { text: '12 jerseys' }))
    return asked.some(({ acknowledged }) => acknowledged === 5)
  }
  await expect.poll(tried, { timeout: 8_000 }).toBe(true)
}

describe('the bot on its way in', () => {
  it('lets the rest open while nobody answers at the platform’s address, and comes in once somebody does', async () => {
    const gone = await listening(null)
    await gone.close()
    const { reports } = await approach(gone.port)
    expect(reports).toEqual([expect.stringContaining('cannot be reached')])
    const platform = await startStandIn({ port: gone.port })
    closing.push(platform.stop)
    await answers(platform)
  })

  it.each([
    { what: 'a server that is down', answer: { status: 503, body: '{}' } },
    { what: 'the page of a network that wants a login first', answer: { status: 200, body: '<html>welcome</html>' } },
    { what: 'one who takes the call and says nothing', answer: null },
  ])('takes $what for nobody', async ({ answer }) => {
    const other = await listening(answer)
    const { reports } = await approach(other.port)
    expect(reports[0]).toContain('cannot be reached')
    await other.close()
    const platform = await startStandIn({ port: other.port })
    closing.push(platform.stop)
    await answers(platform)
  })

  it('leaves nothing of a try that failed on the signal that ends the next one', async () => {
    const gone = await listening(null)
    await gone.close()
    const leaving = new AbortController()
    const settings = { token, api: api(gone.port), readsContent: false, report: () => undefined, signal: leaving.signal }
    for (let tries = 0; tries < 3; tries += 1)
      await expect(startPlatform(smallDesk().desk, settings)).rejects.toThrow('ECONNREFUSED')
    expect(getEventListeners(leaving.signal, 'abort')).toEqual([])
  })

  it('is told at once of a secret that the platform refuses', async () => {
    const platform = await startStandIn()
    closing.push(platform.stop)
    await expect(approach(platform.port, 'MTIz.another.secret')).rejects.toThrow('invalid token')
  })

  it('can be called back from the way, whoever keeps silent', async () => {
    const silent = await listening(null)
    await approach(silent.port)
    await closing.pop()?.()
    await silent.close()
  })
})
