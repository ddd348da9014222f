import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { shopFiles } from '../../../src/domain/shop/shop.ts'

const read = (file: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../templates/shop/${file}`, import.meta.url), 'utf8'))

describe('the starter shop', () => {
  it.each(['fabrics', 'vinyl', 'stones', 'auxiliaries', 'stoneSettings', 'presses', 'rulebooks'] as const)(
    'has valid %s',
    (part) => {
      const { file, schema } = shopFiles[part]
      const parsed = schema.safeParse(read(file))
      expect(parsed.error?.issues ?? []).toEqual([])
    },
  )
})
