import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { readCorpus, score } from './corpus.ts'
import { starterShop } from './starter-shop.ts'
import { wrongNamesOf } from './wrong-names.ts'

/**
 * Sets written without a look at the recognisers, which may be understood no worse than they have been: facts, readings that may
 * never hold, and names or numbers other than said of which the customer was told nothing.
 */
const sets = [
  { folder: 'conversations-held-out', understood: 814, wrong: 0, silent: 0 },
  { folder: 'conversations-second-held-out', understood: 293, wrong: 0, silent: 0 },
  { folder: 'conversations-third-held-out', understood: 232, wrong: 0, silent: 0 },
  { folder: 'conversations-fourth-held-out', understood: 174, wrong: 0, silent: 0 },
  { folder: 'conversations-fifth-held-out', understood: 324, wrong: 0, silent: 0 },
  { folder: 'conversations-sixth-held-out', understood: 269, wrong: 0, silent: 0 },
  { folder: 'conversations-seventh-held-out', understood: 348, wrong: 0, silent: 0 },
  { folder: 'conversations-eighth-held-out', understood: 326, wrong: 0, silent: 0 },
  { folder: 'conversations-ninth-held-out', understood: 288, wrong: 0, silent: 0 },
  { folder: 'conversations-tenth-held-out', understood: 330, wrong: 0, silent: 0 },
  { folder: 'conversations-eleventh-held-out', understood: 336, wrong: 0, silent: 0 },
  { folder: 'conversations-twelfth-held-out', understood: 244, wrong: 0, silent: 0 },
  { folder: 'conversations-thirteenth-held-out', understood: 335, wrong: 0, silent: 0 },
  { folder: 'conversations-fourteenth-held-out', understood: 333, wrong: 0, silent: 0 },
  { folder: 'conversations-fifteenth-held-out', understood: 423, wrong: 0, silent: 0 },
  { folder: 'conversations-sixteenth-held-out', understood: 418, wrong: 1, silent: 0 },
  { folder: 'conversations-seventeenth-held-out', understood: 469, wrong: 2, silent: 0 },
  { folder: 'conversations-eighteenth-held-out', understood: 498, wrong: 3, silent: 1 },
  { folder: 'conversations-nineteenth-held-out', understood: 232, wrong: 5, silent: 1 },
  { folder: 'conversations-twentieth-held-out', understood: 465, wrong: 3, silent: 1 },
]

test.each(sets)('$folder is understood no worse than it has been', async ({ folder, understood, wrong, silent }) => {
  const shop = await starterShop()
  const path = fileURLToPath(new URL(`../../fixtures/${folder}`, import.meta.url))
  const scores = readCorpus(path).map((one) => {
    const scored = score(one, shop)
    return { id: one.id, ...scored, names: wrongNamesOf(one, scored.played) }
  })
  for (const one of scores) {
    for (const line of one.missed) console.log(`missed ${one.id} ${line}`)
    for (const line of one.wrong) console.log(`WRONG ${one.id} ${line}`)
    for (const { line, told } of one.names) console.log(`${told ? 'told' : 'SILENT'} ${one.id} ${line}`)
  }
  const sum = (amount: (one: (typeof scores)[number]) => number) => scores.reduce((total, one) => total + amount(one), 0)
  const facts = sum((one) => one.facts)
  const found = facts - sum((one) => one.missed.length)
  const forbidden = sum((one) => one.wrong.length)
  const unsaid = sum((one) => one.names.filter(({ told }) => !told).length)
  const names = `${sum((one) => one.names.length)} names or numbers other than said, ${unsaid} of them in silence`
  console.log(`${folder}: ${found} of ${facts} facts (${((found / facts) * 100).toFixed(1)} %), ${forbidden} wrong; ${names}`)
  expect(scores.flatMap(({ played }) => played.unanswered)).toEqual([])
  expect(unsaid).toBeLessThanOrEqual(silent)
  expect(forbidden).toBeLessThanOrEqual(wrong)
  expect(found).toBeGreaterThanOrEqual(understood)
})
