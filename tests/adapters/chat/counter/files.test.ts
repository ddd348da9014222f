import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { kindOf } from '../../../../src/adapters/chat/counter/file-kind.ts'
import { asAttachment, safeName } from '../../../../src/adapters/chat/counter/file-name.ts'
import { navyPicture, smallPdf } from '../../../support/page-scene.ts'

const latin = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'))

describe('the kind of a file', () => {
  it('comes from its content, whatever its name says', () => {
    expect(kindOf(navyPicture(4, 4), 'roster.csv')?.mime).toBe('image/png')
    expect(kindOf(smallPdf, 'photo.jpg')?.mime).toBe('application/pdf')
    expect(kindOf(latin('\xff\xd8\xff\xe0 rest'), 'x')?.mime).toBe('image/jpeg')
    expect(kindOf(latin('PK\x03\x04\x14\x00\x06\x00\x08\x00[Content_Types].xml'), 'x.zip')?.mime).toContain('spreadsheetml')
  })

  it('takes lists in the encodings spreadsheets save', () => {
    expect(kindOf(latin('7,N\xfa\xf1ez,M\r\n'), 'roster.CSV')?.mime).toBe('text/csv')
    expect(kindOf(new TextEncoder().encode('7\tNúñez\tM\n'), 'roster.txt')?.mime).toBe('text/plain')
    expect(kindOf(latin('\xff\xfe7\x00,\x00'), 'roster.txt')?.mime).toBe('text/plain')
  })

  it('shows markup and scripts as plain text', () => {
    expect(kindOf(latin('<svg xmlns="http://www.w3.org/2000/svg" onload="alert(1)"/>'), 'logo.svg')?.mime).toBe('text/plain')
    expect(kindOf(latin('<!doctype html><script>alert(1)</script>'), 'page.html')?.mime).toBe('text/plain')
  })

  it('refuses programs, other archives and old spreadsheets', () => {
    expect(kindOf(latin('MZ\x90\x00\x03\x00'), 'roster.csv')).toBeNull()
    expect(kindOf(latin('PK\x03\x04\x14\x00\x00\x00\x00\x00malware.exe'), 'roster.xlsx')).toBeNull()
    expect(kindOf(latin('\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1'), 'roster.xls')).toBeNull()
    expect(kindOf(latin('\x7fELF\x02\x01'), 'x')).toBeNull()
  })

  it('allows a list 1 MB and a picture 8 MB', () => {
    expect(kindOf(latin('1,A,M'), 'a.csv')?.most).toBe(1024 * 1024)
    expect(kindOf(navyPicture(4, 4), 'a.png')?.most).toBe(8 * 1024 * 1024)
  })
})

describe('the name of a file', () => {
  it('keeps what people call their lists', () => {
    expect(safeName('Lista de jugadoras 2026 – Núñez.csv')).toBe('Lista de jugadoras 2026 – Núñez.csv')
  })

  it('drops folders, control and direction signs, and names a disk reserves', () => {
    expect(safeName('../../etc/passwd')).toBe('passwd')
    expect(safeName('C:\\Users\\me\\roster.csv')).toBe('roster.csv')
    expect(safeName('roster\u202Efdp.csv\r\nx: y')).toBe('roster_fdp.csv__x_ y')
    expect(safeName('con.txt')).toBe('_con.txt')
    expect(safeName('...')).toBe('file')
    expect(safeName('')).toBe('file')
  })

  it('is short, keeps its ending, and never breaks out of a header', () => {
    void fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (name) => {
        const safe = safeName(`${name}.csv`)
        expect([...safe].length).toBeLessThanOrEqual(100)
        expect(safe).not.toMatch(/[\p{Cc}/\\"]/u)
        expect(safe.endsWith('.csv') || safe === 'csv').toBe(true)
        const value = asAttachment(name)
        expect(value).toMatch(/^attachment; filename="[\x20-\x21\x23-\x7e]*"; filename\*=UTF-8''[A-Za-z0-9%._~!#$&+^`|-]*$/)
      }),
    )
  })
})
