import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { platformDeliver } from '../../../../src/adapters/chat/platform/deliver.ts'
import type { Postings } from '../../../../src/ports/platform-desk.ts'
import { openTestStore } from '../../../support/embedded.ts'
import { deliveryDesk } from '../../../support/platform/delivery-desk.ts'
import { message, ticketActions } from '../../../support/platform/messages.ts'
import { filePostings } from '../../../support/platform/postings.ts'
import type { Call } from '../../../support/platform/rest.ts'
import { type StandIn, startStandIn, token } from '../../../support/platform/stand-in.ts'

const isLong = process.env['LONG'] !== undefined
const rounds = isLong ? 50 : 4
const support = join(import.meta.dirname, '../../../support/platform')
const folder = mkdtempSync(join(tmpdir(), 'postings-'))
const file = join(folder, 'postings.json')
let platform: StandIn

beforeAll(async () => {
  platform = await startStandIn()
})
afterAll(async () => {
  await platform.stop()
  rmSync(folder, { recursive: true, force: true })
})

type Round = { readonly channel: string; readonly nonce: string; readonly records: string }

const startPoster = ({ channel, nonce, records }: Round, halt: string): ChildProcess =>
  spawn(
    process.execPath,
    ['--import', join(support, 'typescript-loader.mjs'), join(support, 'poster.ts'), platform.api, channel, records, nonce, halt],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  )

const heard = (child: ChildProcess, word: string): Promise<void> =>
  new Promise((resolve, reject) => {
    let said = ''
    child.stdout?.on('data', (chunk) => {
      said += String(chunk)
      if (said.includes(word)) resolve()
    })
    child.once('exit', (code) => (said.includes(word) ? resolve() : reject(new Error(`ended with ${code} before ${word}`))))
  })

const isPost = (call: Call): boolean => call.method === 'POST' && call.path.endsWith('/messages')

/** Kills the poster after the platform has the message: before its answer arrives, or between the answer and the record. */
const killBetween = async (round: number, posted: Round): Promise<void> => {
  if (round % 2 === 1) {
    const child = startPoster(posted, 'halt')
    await heard(child, 'posted')
    child.kill('SIGKILL')
    await once(child, 'exit')
    return
  }
  const child = startPoster(posted, '')
  const gone = once(child, 'exit')
  platform.fail(isPost, {
    kind: 'hook',
    run: async () => {
      child.kill('SIGKILL')
      await gone
    },
  })
  await gone
}

/** What a poster keeps its records in, and which message it recorded for a ticket. */
type Records = { readonly at: string; readonly postings: Postings; readonly close: () => Promise<void> }

const inFile = async (): Promise<Records> => ({ at: file, postings: filePostings(file), close: async () => undefined })
const inStore = async (): Promise<Records> => {
  const opened = await openTestStore()
  await opened.store.openShop('shop-1')
  return { at: opened.data, postings: opened.store.platform.postings, close: opened.close }
}

const recordedOf = async ({ postings }: Records, nonce: string): Promise<string | null> => {
  const far = Date.now() * 2
  const record = await postings.lease({ shop: 'shop-1', nonce, part: 1 }, { channel: '', now: far, until: far })
  return record?.message ?? null
}

const kinds = [['the store', inStore], ...(isLong ? ([['a file', inFile]] as const) : [])] as const
for (const [name, open] of kinds) {
  describe(`a poster with its records in ${name} that is killed between the post and the record`, () => {
    it(
      `leaves exactly one message for each of ${rounds} tickets, soon after or much later`,
      async () => {
        const records = await open()
        const bench = platform.addChannel(platform.addGuild('Cedar Flats Press', platform.addUser('Owner')), 'bench')
        const clock = {
          now: () => platform.world.now(),
          pause: async (milliseconds: number) => {
            platform.world.advance(milliseconds)
            await new Promise((resolve) => setImmediate(resolve))
          },
        }
        const nonces = Array.from({ length: rounds }, (_, round) => `ticket-R${round}-1`)
        for (const [round, nonce] of nonces.entries()) {
          await killBetween(round, { channel: bench.id, nonce, records: records.at })
          expect(platform.shown(bench)).toHaveLength(round + 1)
          if (round % 4 > 1) platform.world.advance(10 * 60_000)
          const { desk, places } = deliveryDesk(records.postings)
          places.set('bench', bench.id)
          const done = await platformDeliver(desk, { token, api: platform.api, clock })({
            shop: 'shop-1',
            channel: { kind: 'shop', name: 'bench' },
            nonce,
            message: message({ actions: ticketActions(nonce) }),
          })
          expect(done.messageId).toBe(platform.shown(bench).at(-1)?.id)
        }
        expect(platform.shown(bench)).toHaveLength(rounds)
        const recorded: (string | null)[] = []
        for (const nonce of nonces) recorded.push(await recordedOf(records, nonce))
        expect(recorded).toEqual(platform.shown(bench).map((one) => one.id))
        await records.close()
      },
      rounds * 30_000,
    )
  })
}
