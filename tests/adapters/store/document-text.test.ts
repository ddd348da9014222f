import fc from 'fast-check'
import { expect, it } from 'vitest'
import { noParts, readDocument, writeDocument } from '../../../src/adapters/store/sql/document-text.ts'

/** Versions of one document: each is made of some entries that were in it before, and some that are new. */
const versions = fc.array(
  fc.record({
    name: fc.string(),
    keep: fc.array(fc.nat(20), { maxLength: 8 }),
    add: fc.array(fc.oneof(fc.dictionary(fc.string(), fc.jsonValue()), fc.array(fc.jsonValue())), { maxLength: 3 }),
    beside: fc.dictionary(fc.string(), fc.jsonValue({ noUnicodeString: false })),
  }),
  { minLength: 1, maxLength: 6 },
)

const bareOf = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

it('reads and writes version after version as JSON itself does', () => {
  fc.assert(
    fc.property(versions, (all) => {
      const entries: object[] = []
      let [wrote, read] = [noParts, noParts]
      for (const { name, keep, add, beside } of all) {
        const list = [...keep.flatMap((at) => entries[at] ?? []), ...add]
        entries.push(...add)
        const document = { ...beside, [name]: list }
        const written = writeDocument(document, wrote)
        expect(JSON.parse(written.text)).toEqual(bareOf(document))
        const back = readDocument(written.text, read)
        expect(back.document).toEqual(bareOf(document))
        ;[wrote, read] = [written.parts, back.parts]
      }
    }),
  )
})

it('reads JSON text of one line', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const text = JSON.stringify(value)
      expect(readDocument(text, noParts).document).toEqual(JSON.parse(text))
      expect(readDocument(writeDocument(value, noParts).text, noParts).document).toEqual(JSON.parse(text))
    }),
  )
})

it('refuses a text that was cut off, or whose lists do not end', () => {
  const { text } = writeDocument({ version: 1, sold: [{ id: 'o1' }], slots: [{ order: 'o1' }] }, noParts)
  for (let kept = 0; kept < text.length; kept += 1) {
    expect(() => readDocument(text.slice(0, kept), noParts)).toThrow(SyntaxError)
  }
  expect(() => readDocument(text.replace('\n]', ''), noParts)).toThrow(SyntaxError)
  expect(() => readDocument(text.replaceAll('\n]', ''), noParts)).toThrow(SyntaxError)
})

/** An entry that says how often it was written. */
const counted = (id: string) => {
  const state = { written: 0 }
  const toJSON = () => {
    state.written += 1
    return { id, nth: state.written }
  }
  return { state, entry: { id, toJSON } }
}

it('writes an entry once, wherever it stands in later versions', () => {
  const [one, two, three] = [counted('one'), counted('two'), counted('three')]
  const first = writeDocument({ sold: [one.entry, two.entry, three.entry] }, noParts)
  const second = writeDocument({ sold: [three.entry, one.entry] }, first.parts)
  const third = writeDocument({ sold: [one.entry, two.entry, three.entry] }, second.parts)
  expect([one, two, three].map(({ state }) => state.written)).toEqual([1, 2, 1])
  expect(JSON.parse(third.text)).toEqual({
    sold: [
      { id: 'one', nth: 1 },
      { id: 'two', nth: 2 },
      { id: 'three', nth: 1 },
    ],
  })
})

it('gives the same objects again for what was read before, and others for what is new', () => {
  const order = (id: string, minutes: number) => ({ id, operations: [{ minutes }] })
  const read = (sold: readonly object[], known = noParts) => readDocument(writeDocument({ sold }, noParts).text, known)
  const soldIn = ({ document }: { readonly document: unknown }): readonly unknown[] => (document as { sold: unknown[] }).sold
  const before = read([order('o1', 10), order('o2', 20), order('o3', 30)])
  const after = read([order('o0', 5), order('o2', 20), order('o3', 31), order('o1', 10)], before.parts)
  const [o1, o2, o3] = soldIn(before)
  const [n0, n2, n3, n1] = soldIn(after)
  expect([n1 === o1, n2 === o2, n3 === o3, n0]).toEqual([true, true, false, order('o0', 5)])
})
