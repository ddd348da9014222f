import fc from 'fast-check'
import { expect, it } from 'vitest'
import { pack, unpack } from '../../../src/adapters/store/sql/packed.ts'

it('gives back every document that was packed', () => {
  fc.assert(
    fc.property(fc.jsonValue({ noUnicodeString: false }), (document) => {
      const bare: unknown = JSON.parse(JSON.stringify(document))
      expect(unpack(pack(bare).bytes).document).toEqual(bare)
    }),
  )
})

it('reads the text that was kept before documents were packed', () => {
  expect(unpack(Buffer.from('{"slots":[{"order":"Ñandú"}]}')).document).toEqual({ slots: [{ order: 'Ñandú' }] })
  expect(unpack(Buffer.from('null')).document).toBe(null)
})

it('packs a plan, which says the same words over and over, to less than a tenth', () => {
  const slots = Array.from({ length: 2_000 }, (_, at) => ({
    order: `o${at}`,
    operation: 'press-1-1',
    stations: ['press-1', 'person-2'],
    start: 29_000_000 + at,
    end: 29_000_012 + at,
  }))
  expect(pack({ slots }).bytes.length).toBeLessThan(JSON.stringify({ slots }).length / 10)
})

it('refuses bytes that are no stream of its own', () => {
  expect(() => unpack(Buffer.of(0x78, 1, 2, 3))).toThrow()
})
