import { REST } from 'discord.js'
import nock from 'nock'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { failureOf, hasCode } from '../../../../src/adapters/chat/platform/rest-failure.ts'

beforeEach(() => {
  nock.disableNetConnect()
})
afterEach(() => {
  nock.cleanAll()
  nock.enableNetConnect()
  nock.restore()
  nock.activate()
})

/** Only in this test: the interceptor does not see the library's own way of asking. */
const client = (): REST =>
  new REST({
    version: '10',
    retries: 0,
    rejectOnRateLimit: () => true,
    makeRequest: async (url, init) => {
      const body = typeof init.body === 'string' ? init.body : null
      const response = await globalThis.fetch(url, {
        method: init.method ?? 'GET',
        body,
        headers: { 'content-type': 'application/json' },
      })
      const { ok, status, statusText, headers } = response
      return {
        ...{ ok, status, statusText, headers, body: null, bodyUsed: false },
        arrayBuffer: () => response.arrayBuffer(),
        json: () => response.json(),
        text: () => response.text(),
      }
    },
  }).setToken('token')

const failing = async (status: number, body: object, headers: Record<string, string> = {}): Promise<unknown> => {
  nock('https://discord.com').post('/api/v10/channels/1/messages').reply(status, body, headers)
  return await client()
    .post('/channels/1/messages', { body: { content: 'x' } })
    .then(
      () => new Error('it was taken'),
      (error: unknown) => error,
    )
}

describe('the platform’s REST errors', () => {
  for (const [status, code, trouble] of [
    [404, 10_003, 'channel-gone'],
    [404, 10_004, 'channel-gone'],
    [404, 10_008, 'message-gone'],
    [403, 50_001, 'no-access'],
    [403, 50_013, 'no-access'],
    [403, 50_007, 'direct-closed'],
    [403, 50_278, 'direct-closed'],
    [400, 50_083, 'channel-gone'],
    [403, 160_002, 'no-access'],
    [400, 50_035, 'refused-by-platform'],
  ] as const) {
    it(`${code} means ${trouble}`, async () => {
      const error = await failing(status, { code, message: 'refused' })
      expect(failureOf(error)).toEqual({ kind: 'never', trouble })
      expect(hasCode(error, code)).toBe(true)
    })
  }

  it('a request too large is told apart from one that is refused', async () => {
    expect(failureOf(await failing(413, { code: 40_005, message: 'Request entity too large' }))).toEqual({ kind: 'too-large' })
  })

  it('a refused token is nobody’s trouble but the operator’s', async () => {
    expect(failureOf(await failing(401, { code: 0, message: '401: Unauthorized' }))).toBeNull()
  })

  it('5xx means that nobody knows whether it was done', async () => {
    for (const status of [500, 502, 503, 504]) expect(failureOf(await failing(status, {}))).toEqual({ kind: 'unknown' })
  })

  it('429 says for how long to wait', async () => {
    const error = await failing(
      429,
      { message: 'slow down', retry_after: 3, global: false },
      { 'retry-after': '3', 'x-ratelimit-scope': 'user' },
    )
    const failure = failureOf(error)
    expect(failure?.kind).toBe('later')
    expect(failure?.kind === 'later' ? failure.milliseconds : 0).toBeGreaterThanOrEqual(3_000)
  })

  it('a line that breaks is unknown, a mistake of ours is not', async () => {
    nock('https://discord.com')
      .get('/api/v10/users/@me')
      .replyWithError(Object.assign(new Error('reset'), { code: 'ECONNRESET' }))
    const error = await client()
      .get('/users/@me')
      .catch((thrown: unknown) => thrown)
    expect(failureOf(error)).toEqual({ kind: 'unknown' })
    expect(failureOf(new RangeError('ours'))).toBeNull()
    expect(failureOf('ours')).toBeNull()
  })
})
