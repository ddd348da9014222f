import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { readCorpus, score } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const folder = fileURLToPath(new URL('../../fixtures/conversations', import.meta.url))

test('of what careful order-takers read in the frozen conversations, 98 % is understood and nothing that would ruin an order', async () => {
  const shop = await starterShop()
  const corpus = readCorpus(folder)
  const scores = corpus.map((one) => ({ id: one.id, ...score(one, shop) }))
  for (const { id, missed, wrong } of scores) {
    for (const line of missed) console.log(`missed ${id} ${line}`)
    for (const line of wrong) console.log(`WRONG ${id} ${line}`)
  }
  const facts = scores.reduce((sum, one) => sum + one.facts, 0)
  const missed = scores.reduce((sum, one) => sum + one.missed.length, 0)
  const wrong = scores.flatMap((one) => one.wrong)
  console.log(
    `${corpus.length} conversations, ${facts - missed} of ${facts} facts (${((100 * (facts - missed)) / facts).toFixed(2)} %), ${wrong.length} wrong`,
  )
  expect(scores.flatMap(({ played }) => played.unanswered)).toEqual([])
  expect(wrong).toEqual([])
  expect((facts - missed) / facts).toBeGreaterThanOrEqual(0.98)
})
