import { createHash } from 'node:crypto'
import { copyFileSync, cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import * as z from 'zod'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { freshFolder, type Ran, runCompiled } from '../support/command.ts'
import { decoration, order, row } from '../support/orders.ts'
import { pdfPages } from '../support/pdf-text.ts'

const folder = freshFolder('make')
afterAll(folder.remove)

const names = [
  'ORTEGA',
  'LINDQVIST',
  "O'HARA",
  'NGUYEN',
  'ABARA',
  'DE LA CRUZ',
  'PETROV',
  'SANTOS',
  'WILLOUGHBY',
  'KAPOOR',
  'MCBRIDE',
  'NÚÑEZ',
]
const numbers = ['4', '7', '12', '15', '21', '22', '30', '33', '44', '52', '66', '88']
const team = order({
  decorations: [
    decoration(),
    decoration({ id: 'front-number', place: 'front-number' }),
    decoration({
      id: 'name',
      place: 'name',
      content: { kind: 'name' },
      layers: [{ kind: 'vinyl', class: 'glitter', colour: 'white', shape: 'face' }],
    }),
  ],
  roster: names.map((name, index) => row(index + 1, { name, number: numbers[index] ?? '0', size: index % 2 === 0 ? 'M' : 'L' })),
})

const resultSchema = z.looseObject({
  problems: z.array(z.looseObject({ code: z.string(), at: z.string(), severity: z.string(), text: z.string() })),
  stones: z.array(z.looseObject({ size: z.string(), pieces: z.number(), spare: z.number(), gross: z.number() })),
  press: z.array(
    z.looseObject({ no: z.number(), action: z.string(), tenthsC: z.number().nullable(), seconds: z.number().nullable() }),
  ),
  gates: z.array(z.looseObject({ code: z.string() })),
  files: z.array(z.string()),
})

const write = (name: string, document: unknown): string => {
  const file = join(folder.path, name)
  writeFileSync(file, typeof document === 'string' ? document : JSON.stringify(document))
  return file
}

const make = (file: string, out: string, ...words: readonly string[]): Ran =>
  runCompiled('make', [file, '--out', join(folder.path, out), '--now', '2026-11-25T09:00', ...words])

const resultIn = (out: string) => resultSchema.parse(JSON.parse(readFileSync(join(folder.path, out, 'result.json'), 'utf8')))

const filesBelow = (out: string): readonly string[] =>
  readdirSync(join(folder.path, out), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()

describe('make, the whole job for one order', () => {
  let ran: Ran
  let pages: readonly string[] = []

  beforeAll(async () => {
    ran = make(write('order.json', team), 'first')
    pages = await pdfPages(readFileSync(join(folder.path, 'first', 'ticket.pdf')))
  }, 60_000)

  test('writes the ticket, the picture, the cut files and the result', () => {
    expect(ran.err).toBe('')
    expect(ran.status).toBe(0)
    const { files } = resultIn('first')
    expect(files).toEqual(
      expect.arrayContaining(['ticket.pdf', 'preview.png', 'cut/vinyl-glitter-white.svg', 'cut/vinyl-glitter-white.dxf']),
    )
    for (const file of files) expect(existsSync(join(folder.path, 'first', file))).toBe(true)
  })

  test('prints a ticket on which another program reads number, roster, stones, gate, steps and cautions', () => {
    const { stones, press, gates } = resultIn('first')
    const text = pages.join('\n')
    expect(text).toMatch(/T[0-9A-F]{6}/)
    for (const [index, name] of names.entries()) {
      expect(text).toContain(name)
      expect(text).toMatch(new RegExp(`\\b${numbers[index]}\\b`))
    }
    for (const { size, pieces, gross } of stones) expect(text).toMatch(new RegExp(`${size}[\\s\\S]*${pieces}[\\s\\S]*${gross}`))
    expect(gates.map(({ code }) => code)).toContain('bleed-test')
    expect(text).toContain('Bleed test')
    expect(text).toContain('WARNING')
    expect(
      press.filter(({ action }) => action === 'press').every(({ tenthsC, seconds }) => tenthsC !== null && seconds !== null),
    ).toBe(true)
  })

  test('prints the press steps in their order with temperature and seconds', () => {
    const { press } = resultIn('first')
    const text = pages.join('\n')
    const full = press.filter(({ action }) => action === 'press')
    // Common practice: vinyl and stones finished together at 320-325 °F for 15 s, within the stones' cap of 170 °C less the swing.
    expect(full.map(({ tenthsC, seconds }) => [tenthsC, seconds])).toEqual([
      [1600, 15],
      [1600, 15],
    ])
    expect(text).toContain('320 °F')
    expect(text).toContain('15 s')
    const actions = press.map(({ action }) => action)
    expect(actions.indexOf('tack')).toBeLessThan(actions.indexOf('press'))
    expect(actions.indexOf('press')).toBeLessThan(actions.indexOf('cool'))
    expect(actions.indexOf('cool')).toBeLessThan(actions.lastIndexOf('peel'))
  })

  test('counts whole gross that cover pieces and spare', () => {
    for (const { pieces, spare, gross } of resultIn('first').stones) {
      expect(pieces).toBeGreaterThan(0)
      expect(gross).toBe(Math.ceil((pieces + spare) / 144))
    }
  })

  test('gives identical bytes for the same order and the same minute', () => {
    make(write('order.json', team), 'second')
    const sums = (out: string) => filesBelow(out).map((file) => createHash('sha256').update(readFileSync(file)).digest('hex'))
    expect(sums('second')).toEqual(sums('first'))
  }, 60_000)
})

describe('make, when something is wrong', () => {
  test('refuses a broken document with every problem and its path, and writes the result only', () => {
    const broken = { ...team, needBy: 'soon', roster: [{ ...row(1), size: '6XL' }], colour: 'navy' }
    const { status, out } = make(write('broken.json', broken), 'broken')
    expect(status).toBe(1)
    expect(
      resultIn('broken')
        .problems.map(({ at }) => at)
        .sort(),
    ).toEqual(['/colour', '/needBy', '/roster/0/size'])
    for (const at of ['/colour', '/needBy', '/roster/0/size']) expect(out).toContain(at)
    expect(filesBelow('broken')).toEqual([join(folder.path, 'broken', 'result.json')])
  })

  test('refuses what would hurt: polypropylene, stones for a child under three', () => {
    const vest = order({ garments: [{ ...team.garments[0], fibres: [{ fibre: 'polypropylene', percent: 100 }] } as never] })
    expect(make(write('vest.json', vest), 'vest').status).toBe(1)
    expect(
      resultIn('vest')
        .problems.filter(({ severity }) => severity === 'stop')
        .map(({ code }) => code),
    ).toContain('fibre-melts')
    const toddler = order({
      use: 'fan',
      garments: [
        { ...team.garments[0], catalogue: 'toddler-tee', fibres: [{ fibre: 'cotton', percent: 100 }], knit: 'jersey' } as never,
      ],
      roster: [row(1, { fit: 'toddler', size: '2T', age: 'under-3' })],
    })
    expect(make(write('toddler.json', toddler), 'toddler').status).toBe(1)
    expect(resultIn('toddler').problems.map(({ code }) => code)).toContain('stones-under-three')
  }, 60_000)

  test('refuses a file that is not JSON and says why', () => {
    expect(make(write('words.json', 'twelve jerseys'), 'words').status).toBe(1)
    expect(resultIn('words').problems.map(({ code }) => code)).toEqual(['order-not-json'])
  })

  test('answers a missing file, a missing folder and a strange word with the usage and exit code 2', () => {
    const missing = make(join(folder.path, 'nowhere.json'), 'nowhere')
    expect(missing.status).toBe(2)
    expect(missing.err).toContain('nowhere.json')
    expect(existsSync(join(folder.path, 'nowhere'))).toBe(false)
    expect(runCompiled('make', [write('order.json', team)]).status).toBe(2)
    expect(make(write('order.json', team), 'odd', '--colour', 'navy').status).toBe(2)
    expect(runCompiled('make', [write('order.json', team), '--out', folder.path, '--now', 'noon']).status).toBe(2)
  })

  test('names file, path and value of a wrong shop record', () => {
    const shop = join(folder.path, 'shop')
    mkdirSync(shop)
    const root = new URL('../../templates/shop/', import.meta.url).pathname
    for (const name of readdirSync(root)) {
      const text = readFileSync(join(root, name), 'utf8')
      const changed = name === 'prices.json' ? text.replace('"setUp": 2500', '"setUp": "a lot"') : text
      writeFileSync(join(shop, name), changed)
    }
    const { status, err } = make(write('order.json', team), 'shopless', '--shop', shop)
    expect(status).toBe(1)
    expect(err).toContain('prices.json#/setUp')
    expect(err).toContain('a lot')
  })
})

describe("a shop's own face", () => {
  const shop = join(folder.path, 'shop')
  const own = join(shop, 'faces', 'club-block.ttf')
  const words = ['--shop', shop]
  const inOwnFace = order({ decorations: [decoration({ face: 'club-block' })], roster: [row(1, { number: '7' })] })

  beforeAll(() => {
    cpSync(join(projectRoot(), 'templates', 'shop'), shop, { recursive: true })
    mkdirSync(join(shop, 'faces'))
    const faces: unknown[] = JSON.parse(readFileSync(join(shop, 'faces.json'), 'utf8'))
    const listing = { id: 'club-block', kind: 'numeral', name: 'Club block', own: 'club-block.ttf' }
    writeFileSync(join(shop, 'faces.json'), JSON.stringify([...faces, listing]))
  })

  test('is set by its id in an order and by the command that places stones', { timeout: 120_000 }, () => {
    const packages = join(projectRoot(), 'node_modules', '@fontsource', 'russo-one', 'files')
    copyFileSync(join(packages, 'russo-one-latin-400-normal.woff'), own)
    expect(make(write('own.json', inOwnFace), 'own', ...words).status).toBe(0)
    expect(resultIn('own').stones[0]?.pieces).toBeGreaterThan(100)
    const { status, out } = runCompiled('stones', ['--text', '7', '--face', 'club-block', ...words])
    expect([status, out.includes('stones SS10')]).toEqual([0, true])
  })

  test('that is a PDF by another name is refused in words, by both', { timeout: 120_000 }, () => {
    writeFileSync(own, '%PDF-1.7\n')
    for (const ran of [
      make(write('own.json', inOwnFace), 'own-pdf', ...words),
      runCompiled('stones', ['--text', '7', '--face', 'club-block', ...words]),
    ]) {
      expect(ran.status).toBe(1)
      expect(ran.err).toContain('“club-block” cannot be read: it is not a TTF, OTF or WOFF font file')
    }
  })
})
