import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, describe, expect, test } from 'vitest'
import { loadFaces } from '../../../src/adapters/folder/faces.ts'
import { readOwnFace } from '../../../src/adapters/folder/own-face.ts'
import { setText } from '../../../src/domain/layout/set-text.ts'
import { fromInches } from '../../../src/domain/units/units.ts'
import { freshFolder } from '../../support/command.ts'
import { faceBytes, faceListings } from '../../support/faces.ts'

const root = new URL('../../..', import.meta.url).pathname
const thread = join(root, '.build/src/adapters/folder/face-thread.js')

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

describe('the faces folder of a shop', () => {
  const shop = freshFolder('own-faces')
  afterAll(shop.remove)
  mkdirSync(join(shop.path, 'faces'))

  const load = async (own: string, bytes: Uint8Array | undefined, id = 'club-block') => {
    if (bytes !== undefined) writeFileSync(join(shop.path, 'faces', own), bytes)
    const listings = [...(await faceListings()), { id, kind: 'numeral' as const, name: 'Club block', own }]
    return loadFaces(listings, { root, shop: shop.path, thread: pathToFileURL(thread) })
  }

  const troubles = async (...given: Parameters<typeof load>) => {
    const faces = await load(...given)
    return faces.ok ? [] : faces.problems.map(({ code, facts }) => `${code} ${'face' in facts ? facts.face : ''}`)
  }

  test('offers its file by id beside the faces that ship', async () => {
    const faces = await load('club-block.woff', await shipped('russo-one'))
    expect(faces.ok && [...faces.value.keys()].slice(-2)).toEqual(['lobster', 'club-block'])
    expect(faces.ok && faces.value.get('club-block')?.has('7')).toBe(true)
  })

  test('refuses a PDF named as a font, a font without digits, a file that is not there and an id that is taken', async () => {
    const extended = await readFile(join(root, 'node_modules/@fontsource/pacifico/files/pacifico-latin-ext-400-normal.woff'))
    expect(await troubles('paper.ttf', new TextEncoder().encode('%PDF-1.7'))).toEqual(['face-unreadable club-block'])
    expect(await troubles('extended.woff', extended)).toEqual(['face-without-digits club-block'])
    expect(await troubles('nowhere.otf', undefined)).toEqual(['face-file-missing club-block'])
    expect(await troubles('again.woff', await shipped('russo-one'), 'anton')).toEqual(['face-listed-twice anton'])
  })
})
