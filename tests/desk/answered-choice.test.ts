import { afterAll, beforeAll, expect, test } from 'vitest'
import { counterDesk, openNews } from '../../src/desk/service/counter-desk.ts'
import type { Line } from '../../src/ports/counter-desk.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const order =
  '3 practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the Twice Terns, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl.\n4 Abel, youth M\n7 Bea, youth L\n9 Cid, youth S'

const asking = (lines: readonly Line[]) =>
  lines.flatMap(({ message: { choice }, isAnswered }) => {
    const values = choice?.options.map(({ value }) => value) ?? []
    return values.includes('all-13-up') ? [isAnswered === true] : []
  })

test('a question’s buttons are asked until it is answered, and over from then on', { timeout: 60_000 }, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  const news = await openNews(desk)
  const counter = counterDesk(desk, news)
  const { id } = await counter.startConversation('en')
  const lines = () => counter.lines({ kind: 'conversation', id }, 0)
  await counter.hear(id, { kind: 'said', id: 'order', text: order, files: [] })
  expect(asking(await lines())).toEqual([false])
  await counter.hear(id, { kind: 'said', id: 'aside', text: 'where is my order?', files: [] })
  expect(asking(await lines()).at(-1)).toBe(false)
  expect(asking(await lines()).filter((isAnswered) => !isAnswered)).toHaveLength(1)
  await counter.hear(id, { kind: 'chose', id: 'ages', choice: 'c:choice', value: 'all-13-up' })
  expect(asking(await lines()).every((isAnswered) => isAnswered)).toBe(true)
  await news.close()
})
