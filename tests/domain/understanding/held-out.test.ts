import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { readCorpus, score } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const folder = fileURLToPath(new URL('../../fixtures/conversations-held-out', import.meta.url))

test('the held-out conversations are understood no worse than they have been', async () => {
  const shop = await starterShop()
  const scores = readCorpus(folder).map((one) => ({ id: one.id, ...score(one, shop) }))
  for (const { id, missed, wrong } of scores) {
    for (const line of missed) console.log(`missed ${id} ${line}`)
    for (const line of wrong) console.log(`WRONG ${id} ${line}`)
  }
  const facts = scores.reduce((sum, one) => sum + one.facts, 0)
  const missed = scores.reduce((sum, one) => sum + one.missed.length, 0)
  const wrong = scores.reduce((sum, one) => sum + one.wrong.length, 0)
  console.log(`${facts - missed} of ${facts} facts, ${wrong} wrong`)
  expect(wrong).toBeLessThanOrEqual(2)
  expect(facts - missed).toBeGreaterThanOrEqual(690)
})
