import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canonical, contentHash, sha256 } from '../../../src/domain/understanding/content-hash.ts'

test('the hash of "abc" is the one FIPS 180-4 gives as its example', () => {
  expect(sha256('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
})

test('any text has the hash that the machine’s own library computes', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => {
      expect(sha256(text)).toBe(createHash('sha256').update(text, 'utf8').digest('hex'))
    }),
  )
})

test('the order of keys does not change a document’s hash, a value does', () => {
  expect(contentHash({ a: 1, b: [{ c: '07' }] })).toBe(contentHash({ b: [{ c: '07' }], a: 1 }))
  expect(contentHash({ number: '07' })).not.toBe(contentHash({ number: '7' }))
  expect(canonical({ b: undefined, a: null })).toBe('{"a":null}')
})
