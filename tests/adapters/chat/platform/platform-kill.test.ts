import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { platformDeliver } from '../../../../src/adapters/chat/platform/deliver.ts'
import { deliveryDesk } from '../../../support/platform/delivery-desk.ts'
import { message, ticketActions } from '../../../support/platform/messages.ts'
import { filePostings } from '../../../support/platform/postings.ts'
import type { Call } from '../../../support/platform/rest.ts'
import { type StandIn, startStandIn, token } from '../../../support/platform/stand-in.ts'

const rounds = process.env['LONG'] === undefined ? 4 : 50
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

const startPoster = (channel: string, nonce: string, halt: string): ChildProcess =>
  spawn(
    process.execPath,
    ['--import', join(support, 'typescript-loader.mjs'), join(support, 'poster.ts'), platform.api, channel, file, nonce, halt],
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
const killBetween = async (round: number, channel: string, nonce: string): Promise<void> => {
  if (round % 2 === 1) {
    const child = startPoster(channel, nonce, 'halt')
    await heard(child, 'posted')
    child.kill('SIGKILL')
    await once(child, 'exit')
    return
  }
  const child = startPoster(channel, nonce, '')
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

describe('a poster that is killed between the post and the record', () => {
  it(
    `leaves exactly one message for each of ${rounds} tickets, soon after or much later`,
    async () => {
      const bench = platform.addChannel(platform.addGuild('Cedar Flats Press', platform.addUser('Owner')), 'bench')
      const clock = {
        now: () => platform.world.now(),
        pause: async (milliseconds: number) => {
          platform.world.advance(milliseconds)
          await new Promise((resolve) => setImmediate(resolve))
        },
      }
      for (let round = 0; round < rounds; round += 1) {
        const nonce = `ticket-R${round}-1`
        await killBetween(round, bench.id, nonce)
        expect(platform.shown(bench)).toHaveLength(round + 1)
        if (round % 4 > 1) platform.world.advance(10 * 60_000)
        const { desk, places } = deliveryDesk(filePostings(file))
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
      const recorded = [...filePostings(file).all().values()].map((row) => row.message)
      expect(recorded).toEqual(platform.shown(bench).map((one) => one.id))
    },
    rounds * 15_000,
  )
})
