import { expect, test } from 'vitest'
import { packsText } from '../../src/desk/service/stock/item-name.ts'

const say = (pack: number): string => `${pack} pieces`

test.each([
  [[1440, 1440, 1440, 1440, 720, 144], '4 × 1440 pieces + 720 pieces + 144 pieces'],
  [[720], '720 pieces'],
  [[], ''],
])('packs %j are bought as "%s"', (packs, words) => {
  expect(packsText(packs, say)).toBe(words)
})
