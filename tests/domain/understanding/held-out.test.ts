import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { readCorpus, score } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Sets written without a look at the recognisers: facts and silent wrong readings may get no worse than they have been. */
const sets = [
  { folder: 'conversations-held-out', understood: 814, wrong: 0 },
  { folder: 'conversations-second-held-out', understood: 290, wrong: 0 },
  { folder: 'conversations-third-held-out', understood: 232, wrong: 0 },
  { folder: 'conversations-fourth-held-out', understood: 173, wrong: 0 },
  { folder: 'conversations-fifth-held-out', understood: 324, wrong: 0 },
  { folder: 'conversations-sixth-held-out', understood: 269, wrong: 0 },
  { folder: 'conversations-seventh-held-out', understood: 348, wrong: 0 },
  { folder: 'conversations-eighth-held-out', understood: 319, wrong: 0 },
  { folder: 'conversations-ninth-held-out', understood: 285, wrong: 1 },
  { folder: 'conversations-tenth-held-out', understood: 328, wrong: 1 },
  { folder: 'conversations-eleventh-held-out', understood: 324, wrong: 1 },
  { folder: 'conversations-twelfth-held-out', understood: 223, wrong: 2 },
]

test.each(sets)('$folder is understood no worse than it has been', async ({ folder, understood, wrong }) => {
  const shop = await starterShop()
  const path = fileURLToPath(new URL(`../../fixtures/${folder}`, import.meta.url))
  const scores = readCorpus(path).map((one) => ({ id: one.id, ...score(one, shop) }))
  for (const one of scores) {
    for (const line of one.missed) console.log(`missed ${one.id} ${line}`)
    for (const line of one.wrong) console.log(`WRONG ${one.id} ${line}`)
  }
  const sum = (amount: (one: (typeof scores)[number]) => number) => scores.reduce((total, one) => total + amount(one), 0)
  const facts = sum((one) => one.facts)
  const found = facts - sum((one) => one.missed.length)
  const silent = sum((one) => one.wrong.length)
  console.log(`${folder}: ${found} of ${facts} facts (${((found / facts) * 100).toFixed(1)} %), ${silent} wrong`)
  expect(silent).toBeLessThanOrEqual(wrong)
  expect(found).toBeGreaterThanOrEqual(understood)
})
