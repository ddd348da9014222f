import { existsSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, test } from 'vitest'
import { readOwnFace } from '../../../src/adapters/face/own-face.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { fromInches } from '../../../src/domain/units/units.ts'
import { faceBytes, faceListings } from '../../support/faces.ts'

const root = new URL('../../..', import.meta.url).pathname
const thread = join(root, '.build/src/adapters/face/face-thread.js')

const read = (bytes: Uint8Array) => readOwnFace({ id: 'own', kind: 'numeral', bytes }, pathToFileURL(thread))

const codes = async (bytes: Uint8Array): Promise<readonly string[]> => {
  const face = await read(bytes)
  return face.ok ? [] : face.problems.map(({ code }) => code)
}

const shipped = async (id: string): Promise<Uint8Array> => {
  const listing = (await faceListings()).find((one) => one.id === id)
  const [bytes] = listing === undefined ? [] : await faceBytes(listing)
  if (bytes === undefined) throw new Error(id)
  return bytes
}

describe("a shop's own face", () => {
  test('the thread that opens it was built', () => {
    expect(existsSync(thread)).toBe(true)
  })

  test('a good file is opened in the thread and sets numbers', async () => {
    const face = await read(await shipped('anton'))
    const shape = face.ok ? setText({ face: face.value, text: '20', height: fromInches(8) }) : face
    expect(shape.ok && shape.value.letters.map(({ text }) => text)).toEqual(['2', '0'])
  })

  test('a PDF, a text and an empty file are not fonts', async () => {
    for (const text of ['%PDF-1.7 …', 'hello', ''])
      expect(await codes(new TextEncoder().encode(text))).toEqual(['face-unreadable'])
  })

  test('a font cut short or with its bytes stirred is refused, and nothing hangs', async () => {
    const good = await shipped('quantico-700')
    expect(await codes(good.subarray(0, 2_000))).toEqual(['face-unreadable'])
    const stirred = Uint8Array.from(good, (byte, index) => (index > 200 && index % 7 === 0 ? byte ^ 0x5a : byte))
    expect((await codes(stirred)).length).toBeGreaterThan(0)
  }, 60_000)

  test('a font without digits is refused with the digits it lacks', async () => {
    const extended = await readFile(join(root, 'node_modules/@fontsource/pacifico/files/pacifico-latin-ext-400-normal.woff'))
    expect(await codes(extended)).toEqual(['face-without-digits'])
  })
})
