import { afterAll, beforeAll, expect, test } from 'vitest'
import { conversationChannel } from '../../src/desk/service/desk.ts'
import { messageFrom } from '../../src/desk/service/records/records.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const wordsOf = (style: string): string =>
  `2 practice tees, navy, 100% cotton, names on the back in ${style}. Team is the Melting Magpies, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abel, adult M\n7 Martinez, adult L`

test('whoever signs is told on the proof that names are too small for their stones, and what would help', {
  timeout: 120_000,
}, async () => {
  const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
  const told = async (id: string, style: string): Promise<string> => {
    await toProof(desk, id, wordsOf(style))
    const said = await desk.store.shop(desk.shopId).messages.after(conversationChannel(id), 0)
    return said
      .flatMap(({ body }) => messageFrom(body).blocks.flatMap((block) => ('text' in block ? [block.text] : [])))
      .join('\n')
  }
  const small = await told('c-melt', '1 inch white vinyl with an SS10 crystal outline in one row')
  expect(small).toMatch(/Martinez.* at 1 in .*small for SS10 stones.*run together/)
  expect(small).toContain('Would help: larger letters, a smaller stone, vinyl without stones.')
  expect(await told('c-clear', '3 inch white vinyl with an SS10 crystal outline in one row')).not.toContain('run together')
})
