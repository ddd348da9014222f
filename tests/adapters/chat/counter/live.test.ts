import { get, type IncomingMessage } from 'node:http'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Channel } from '../../../../src/ports/chat.ts'
import { openCounter, type TestCounter } from '../../../support/page-counter.ts'
import { bench, plainText } from '../../../support/page-desk.ts'
import { ask, cookieOf, post } from '../../../support/page-request.ts'

const bot = { kind: 'bot', name: 'bot' } as const

type Listening = {
  readonly status: number
  readonly text: () => string
  readonly ended: Promise<void>
  readonly hangUp: () => void
}

/** An open live page: what it was told so far. */
const listen = (address: string, path: string, headers: { readonly [name: string]: string } = {}): Promise<Listening> =>
  new Promise((resolve, reject) => {
    const asked = get(`${address}${path}`, { headers, agent: false }, (answer: IncomingMessage) => {
      const told: string[] = []
      answer.setEncoding('utf8').on('data', (text: string) => told.push(text))
      const ended = new Promise<void>((done) => answer.on('close', done))
      resolve({ status: answer.statusCode ?? 0, text: () => told.join(''), ended, hangUp: () => asked.destroy() })
    })
    asked.on('error', reject)
  })

let counter: TestCounter
let token: string
let channel: Channel
beforeEach(async () => {
  counter = await openCounter()
  token = (await counter.desk.startConversation('en')).token
  channel = { kind: 'conversation', id: (await counter.desk.conversation(token))?.id ?? '' }
})
afterEach(() => counter.close())

describe('a live page', () => {
  it('is told what it has not seen, edits too, in the order it happened', async () => {
    const first = counter.desk.post(channel, bot, plainText('first'))
    counter.desk.post(channel, bot, plainText('second'))
    counter.desk.edit(channel, first.id, plainText('first, edited'))
    const live = await listen(counter.address, `/c/${token}/live?after=1`)
    await expect.poll(live.text).toContain('first, edited')
    expect([...live.text().matchAll(/^id: (\d+)$/gm)].map((match) => match[1])).toEqual(['2', '3'])
    counter.desk.post(channel, bot, plainText('third'))
    await expect.poll(live.text).toContain('third')
    live.hangUp()
  })

  it('that comes back goes on where it was cut off', async () => {
    for (const text of ['one', 'two', 'three']) counter.desk.post(channel, bot, plainText(text))
    const live = await listen(counter.address, `/c/${token}/live?after=0`, { 'last-event-id': '2' })
    await expect.poll(live.text).toContain('three')
    expect(live.text()).not.toContain('two')
    live.hangUp()
  })

  it('may be open eight times by one person, and again when one was closed', async () => {
    const open = await Promise.all(Array.from({ length: 8 }, () => listen(counter.address, `/c/${token}/live`)))
    expect(open.map((live) => live.status)).toEqual(Array.from({ length: 8 }, () => 200))
    expect((await ask(counter.address, `/c/${token}/live`)).status).toBe(429)
    open[0]?.hangUp()
    const again = async () => {
      const live = await listen(counter.address, `/c/${token}/live`)
      live.hangUp()
      return live.status
    }
    await expect.poll(again).toBe(200)
    for (const live of open) live.hangUp()
  })

  it('is not taken up by those who ask for its head alone', async () => {
    for (let times = 0; times < 12; times += 1) {
      expect((await ask(counter.address, `/c/${token}/live`, { method: 'HEAD' })).status).toBe(200)
    }
    const live = await listen(counter.address, `/c/${token}/live`)
    expect(live.status).toBe(200)
    live.hangUp()
  })

  it('of a person taken off the list ends with the next news', async () => {
    const { code } = await counter.desk.newPairingCode('Ana')
    const cookie = cookieOf(await post(counter.address, '/sign-in', { fields: { name: 'Ana', code } }))
    const live = await listen(counter.address, '/bench/live', { cookie })
    await expect.poll(live.text).toContain(': beat')
    counter.desk.removeMember('staff-Ana')
    counter.desk.post(bench, bot, plainText('not for Ana'))
    await live.ended
    expect(live.text()).toContain('event: over')
    expect(live.text()).not.toContain('not for Ana')
  })
})
