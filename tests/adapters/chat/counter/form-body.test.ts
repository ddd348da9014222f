import { describe, expect, it } from 'vitest'
import { readForm } from '../../../../src/adapters/chat/counter/form.ts'

const type = 'multipart/form-data; boundary=b'
const part = (head: string, body: string): string => `--b\r\ncontent-disposition: form-data; ${head}\r\n\r\n${body}\r\n`
const list = part('name="files"; filename="roster.csv"', 'number,name\n4,Abel\n7,Bea\n')
const field = part('name="text"', '12 navy jerseys')

type Sent = { readonly type: string; readonly body: string }
const bodies: { readonly [what: string]: Sent } = {
  'a field': { type: 'application/x-www-form-urlencoded', body: 'text=12+navy+jerseys&id=a' },
  'no field': { type: 'application/x-www-form-urlencoded', body: '&' },
  'more fields than there are': {
    type: 'application/x-www-form-urlencoded',
    body: Array.from({ length: 70 }, (_, at) => `f${at}=1`).join('&'),
  },
  'a list': { type, body: `${field}${list}--b--\r\n` },
  'four lists': { type, body: `${list}${list}${list}${list}--b--\r\n` },
  'a program': { type, body: `${part('name="files"; filename="run.exe"', 'MZ\0\0')}--b--\r\n` },
  'a list that ends before it ends': { type, body: `${field}${list.slice(0, -12)}` },
  'a head that ends before it ends': { type, body: `${field}--b\r\ncontent-disp` },
  'parts without a name for where they end': { type: 'multipart/form-data', body: `${list}--b--\r\n` },
  'nothing of what it says': { type, body: 'hello' },
}

const request = ({ type: contentType, body }: Sent, headers: { readonly [name: string]: string }): Request =>
  new Request('http://127.0.0.1/start', { method: 'POST', headers: { 'content-type': contentType, ...headers }, body })

/** As it is known how long it is, and as it comes. */
const bothWays = (sent: Sent) =>
  Promise.all([readForm(request(sent, { 'content-length': String(Buffer.byteLength(sent.body)) })), readForm(request(sent, {}))])

describe('a body that is read whole is read as one that streams in', () => {
  for (const [what, sent] of Object.entries(bodies))
    it(what, async () => {
      const [whole, streamed] = await bothWays(sent)
      expect(whole).toEqual(streamed)
    })

  it('and what it says is there', async () => {
    const [whole] = await bothWays({ type, body: `${field}${list}--b--\r\n` })
    expect(whole.ok && [whole.form.fields.get('text'), whole.form.files.map(({ name }) => name)]).toEqual([
      '12 navy jerseys',
      ['roster.csv'],
    ])
    const [broken] = await bothWays({ type, body: `${field}${list.slice(0, -12)}` })
    expect(broken).toMatchObject({ ok: false, trouble: { code: 'broken-form' } })
  })
})
