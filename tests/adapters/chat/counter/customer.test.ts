import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Channel } from '../../../../src/ports/chat.ts'
import { openCounter, type TestCounter } from '../../../support/page-counter.ts'
import { message, plainText } from '../../../support/page-desk.ts'
import { ask, post, upload } from '../../../support/page-request.ts'
import { layOutConversation, navyPicture } from '../../../support/page-scene.ts'

let counter: TestCounter
let token: string
let channel: Channel
beforeAll(async () => {
  counter = await openCounter()
})
beforeEach(async () => {
  ;({ token, channel } = await layOutConversation(counter.desk))
})
afterAll(() => counter.close())

const latest = () => counter.desk.heard.at(-1)
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text)
const send = (fields: { readonly [name: string]: string }, files: Parameters<typeof upload>[2]['files']) =>
  upload(counter.address, `/c/${token}/say`, { fields: { id: crypto.randomUUID(), ...fields }, files })

describe('starting', () => {
  it('opens a conversation in the language chosen, with the first words in it', async () => {
    const answer = await post(counter.address, '/start', {
      fields: { id: 'start-0001', language: 'es', text: 'Doce camisetas\r\npara el viernes' },
    })
    expect(answer.status).toBe(303)
    const address = answer.headers.location ?? ''
    expect(latest()).toEqual({
      token: address.slice(3),
      incoming: { kind: 'said', id: 'start-0001', text: 'Doce camisetas\npara el viernes', files: [] },
    })
    const page = await ask(counter.address, address)
    expect(page.text).toContain('<html lang="es">')
    expect(page.text).toContain('Doce camisetas\npara el viernes')
  })

  it('speaks the browser’s language unless another is asked for', async () => {
    const spanish = { headers: { 'accept-language': 'es-MX,es;q=0.9,en;q=0.8' } }
    expect((await ask(counter.address, '/', spanish)).text).toContain('¿Qué necesita su equipo?')
    expect((await ask(counter.address, '/?language=en', spanish)).text).toContain('What does your team need?')
    expect((await ask(counter.address, '/', { headers: { 'accept-language': 'fr' } })).text).toContain(
      'What does your team need?',
    )
  })

  it('opens no more than a person would in a minute', async () => {
    const other = await openCounter()
    try {
      const answers = []
      for (let n = 0; n < 22; n += 1)
        answers.push(await post(other.address, '/start', { fields: { id: `start-${n}-aa`, text: 'x' } }))
      expect(answers.map((answer) => answer.status).filter((status) => status === 429).length).toBe(2)
      expect(answers.at(-1)?.headers['retry-after']).toBe('60')
      other.moveClock(60_000)
      expect((await post(other.address, '/start', { fields: { id: 'start-last', text: 'x' } })).status).toBe(303)
    } finally {
      await other.close()
    }
  })
})

describe('a conversation', () => {
  it('shows every kind of part', async () => {
    const { text } = await ask(counter.address, `/c/${token}`)
    for (const part of [
      'assumed',
      'Careful',
      'Thursday 5 pm',
      'What we still need',
      '<dt>Garment</dt>',
      'Núñez',
      '9 of 14',
      'max="14" value="9"',
    ]) {
      expect(text).toContain(part)
    }
    for (const part of [
      'alt="Navy jersey, back',
      'roster as read.csv',
      'value="o:17:sign-off:2"',
      'value="3-12"',
      'name="field.hour"',
      'name="field.logo"',
    ]) {
      expect(text).toContain(part)
    }
  })

  it('never leaves a slip without a name', async () => {
    counter.desk.post(channel, { kind: 'staff', name: '' }, plainText('from someone at the shop'))
    const { text } = await ask(counter.address, `/c/${token}`)
    expect(text).not.toContain('<h2 dir="auto"></h2>')
  })

  it('shows words that look like markup as words', async () => {
    const nasty = '<img src=x onerror=alert(1)>"\'></textarea><script>alert(1)</script>&lt;'
    counter.desk.post(
      channel,
      { kind: 'staff', name: nasty },
      message({
        blocks: [
          { kind: 'text', text: nasty, tone: 'plain' },
          { kind: 'list', title: nasty, items: [nasty] },
          { kind: 'fields', fields: [{ name: nasty, value: nasty, assumed: true }] },
          { kind: 'table', head: [nasty], rows: [[nasty]] },
          { kind: 'progress', text: nasty, done: 1, of: 2 },
        ],
        picture: { file: nasty, alt: nasty },
        file: { file: nasty, name: nasty, mime: nasty, bytes: 1 },
        actions: [{ id: nasty, label: nasty, weight: 'grave' }],
        choice: { id: nasty, label: nasty, options: [{ value: nasty, label: nasty }] },
        form: {
          id: nasty,
          title: nasty,
          submit: nasty,
          fields: [{ name: nasty, label: nasty, kind: 'select', options: [{ value: nasty, label: nasty }], required: true }],
        },
      }),
    )
    const { text } = await ask(counter.address, `/c/${token}`)
    expect(text.match(/<script/g)?.length).toBe(1)
    expect(text).not.toContain('<img src=x')
    expect(text).toContain('&lt;img src=x onerror=alert(1)&gt;')
  })

  it('passes on what was pressed, chosen and filled in, ids only', async () => {
    const of = (deed: string, fields: { readonly [name: string]: string }) =>
      post(counter.address, `/c/${token}/${deed}`, { fields })
    expect((await of('press', { id: 'press-001', action: 'o:17:sign-off:2' })).headers.location).toBe(`/c/${token}#newest`)
    expect(latest()?.incoming).toEqual({ kind: 'pressed', id: 'press-001', action: 'o:17:sign-off:2' })
    await of('choose', { id: 'chose-001', choice: 'age', value: '3-12' })
    expect(latest()?.incoming).toEqual({ kind: 'chose', id: 'chose-001', choice: 'age', value: '3-12' })
    await of('fill', { id: 'fill-0001', form: 'bus', 'field.hour': '3 pm', 'field.note': 'a\r\nb', 'field.__proto__': 'x' })
    expect(latest()?.incoming).toEqual({
      kind: 'filled',
      id: 'fill-0001',
      form: 'bus',
      values: { hour: '3 pm', note: 'a\nb', ['__proto__']: 'x' },
    })
  })

  it('refuses forms that did not arrive whole, empty words and endless ones, and says what to do', async () => {
    const of = (deed: string, fields: { readonly [name: string]: string }) =>
      post(counter.address, `/c/${token}/${deed}`, { fields })
    const before = counter.desk.heard.length
    expect((await of('press', { id: 'press-001' })).status).toBe(400)
    expect((await of('press', { id: 'no', action: 'c:yes' })).status).toBe(400)
    expect((await of('press', { id: 'press-001', action: 'c:yes', extra: '1' })).status).toBe(400)
    expect((await of('dance', { id: 'press-001' })).status).toBe(404)
    expect((await of('say', { id: 'said-0001', text: ' \r\n ' })).text).toContain('Nothing was written')
    const endless = await of('say', { id: 'said-0002', text: 'x'.repeat(20_001) })
    expect(endless.status).toBe(413)
    expect(endless.text).toContain('two parts')
    const json = await ask(counter.address, `/c/${token}/say`, {
      method: 'POST',
      headers: { origin: counter.address, 'content-type': 'application/json' },
      body: '{"text":"x"}',
    })
    expect(json.status).toBe(400)
    expect(counter.desk.heard.length).toBe(before)
  })

  it('asks a person who sends very much to wait', async () => {
    const statuses = []
    for (let n = 0; n < 31; n += 1) {
      statuses.push((await post(counter.address, `/c/${token}/say`, { fields: { id: `many-${n}-aa`, text: 'x' } })).status)
    }
    expect(statuses.slice(0, 30).every((status) => status === 303)).toBe(true)
    expect(statuses[30]).toBe(429)
    const other = await counter.desk.startConversation('en')
    expect((await post(counter.address, `/c/${other.token}/say`, { fields: { id: 'other-001', text: 'x' } })).status).toBe(303)
  })
})

describe('another customer', () => {
  it('sees nothing of a conversation, not its page, its files, its news, and cannot speak in it', async () => {
    const other = await counter.desk.startConversation('en')
    const page = await ask(counter.address, `/c/${other.token}`)
    expect(page.text).not.toContain('volleyball')
    expect((await ask(counter.address, `/c/${other.token}/file/proof`)).status).toBe(404)
    const unknown = 'token-that-nobody-was-given'
    for (const path of [
      `/c/${unknown}`,
      `/c/${unknown}/live`,
      `/c/${unknown}/file/proof`,
      '/c/short',
      `/c/${channel.kind === 'conversation' ? channel.id : ''}`,
    ]) {
      expect((await ask(counter.address, path)).status).toBe(404)
    }
    expect((await post(counter.address, `/c/${unknown}/say`, { fields: { id: 'said-0009', text: 'x' } })).status).toBe(404)
  })

  it('who tries many addresses is asked to stop', async () => {
    const strange = await openCounter()
    try {
      const statuses = []
      for (let n = 0; n < 45; n += 1) statuses.push((await ask(strange.address, `/c/guess-guess-guess-${n}`)).status)
      expect(statuses.filter((status) => status === 429).length).toBe(5)
    } finally {
      await strange.close()
    }
  })
})

describe('files', () => {
  it('go down as attachments of the kind they are', async () => {
    const picture = await ask(counter.address, `/c/${token}/file/proof`)
    expect(picture.headers['content-type']).toBe('image/png')
    expect(picture.headers['content-disposition']).toBe(`attachment; filename="proof.png"; filename*=UTF-8''proof.png`)
    expect(picture.headers['content-security-policy']).toContain('sandbox')
    counter.desk.putFile(channel, 'trap', {
      name: 'a"b\r\n.html',
      mime: 'text/html',
      bytes: bytesOf('<script>alert(1)</script>'),
    })
    const trap = await ask(counter.address, `/c/${token}/file/trap`)
    expect(trap.headers['content-type']).toBe('text/plain; charset=utf-8')
    expect(trap.headers['content-disposition']).toMatch(/^attachment; filename="a_b__\.html"/)
  })

  it('are kept by their content with a safe name, beside the words sent with them', async () => {
    const answer = await send({ text: 'our list' }, [
      { field: 'files', name: '..\\..\\roster.CSV', bytes: bytesOf('7,Núñez,M\n') },
    ])
    expect(answer.status).toBe(200)
    const said = latest()?.incoming
    expect(said).toMatchObject({ kind: 'said', text: 'our list', files: [{ name: 'roster.CSV', mime: 'text/csv', bytes: 12 }] })
    const id = said?.kind === 'said' ? said.files[0]?.file : undefined
    expect(new TextDecoder().decode(counter.desk.kept.get(id ?? '')?.bytes)).toBe('7,Núñez,M\n')
  })

  it('in a form field are kept and named by their id', async () => {
    const answer = await upload(counter.address, `/c/${token}/fill`, {
      fields: { id: 'fill-0002', form: 'bus', 'field.hour': '3 pm' },
      files: [{ field: 'field.logo', name: 'logo.png', bytes: navyPicture(8, 8) }],
    })
    expect(answer.status).toBe(200)
    const values = latest()?.incoming
    expect(values?.kind === 'filled' ? counter.desk.kept.get(values.values['logo'] ?? '')?.name : '').toBe('logo.png')
  })

  it('that are too large, too many or of no kind we take are refused by name, and nothing of the form is heard', async () => {
    const before = { heard: counter.desk.heard.length, kept: counter.desk.kept.size }
    const list = bytesOf('7,Nunez,M\n'.repeat(110_000))
    const listAnswer = await send({ text: 'x' }, [{ field: 'files', name: 'long.csv', bytes: list }])
    expect([listAnswer.status, listAnswer.text]).toEqual([413, expect.stringContaining('“long.csv” is larger than 1 MB')])
    const big = new Uint8Array(9 * 1024 * 1024)
    big.set(navyPicture(2, 2))
    const bigAnswer = await send({ text: 'x' }, [{ field: 'files', name: 'big.png', bytes: big }])
    expect([bigAnswer.status, bigAnswer.text]).toEqual([413, expect.stringContaining('“big.png” is larger than 8 MB')])
    const odd = await send({ text: 'x' }, [{ field: 'files', name: 'roster.csv', bytes: new Uint8Array([77, 90, 0, 1]) }])
    expect([odd.status, odd.text]).toEqual([415, expect.stringContaining('roster.csv')])
    const small = { field: 'files', name: 'a.txt', bytes: bytesOf('a') }
    const many = await send({ text: 'x' }, [small, small, small, small])
    expect([many.status, many.text]).toEqual([413, expect.stringContaining('At most 3 files')])
    expect({ heard: counter.desk.heard.length, kept: counter.desk.kept.size }).toEqual(before)
  })

  it('sent without saying how long they are stop at the cap', async () => {
    const huge = new Uint8Array(26 * 1024 * 1024)
    const answer = await ask(counter.address, `/c/${token}/say`, {
      method: 'POST',
      headers: {
        origin: counter.address,
        accept: 'application/json',
        'transfer-encoding': 'chunked',
        'content-type': 'multipart/form-data; boundary=b',
      },
      body: Buffer.concat([
        Buffer.from('--b\r\ncontent-disposition: form-data; name="files"; filename="x.png"\r\n\r\n'),
        huge,
        Buffer.from('\r\n--b--\r\n'),
      ]),
    })
    expect(answer.status).toBe(413)
    expect(answer.text).toContain('more than 25 MB')
  })

  it('cut off halfway are refused and nothing is heard', async () => {
    const before = counter.desk.heard.length
    const answer = await ask(counter.address, `/c/${token}/say`, {
      method: 'POST',
      headers: { origin: counter.address, 'content-type': 'multipart/form-data; boundary=b' },
      body: '--b\r\ncontent-disposition: form-data; name="files"; filename="x.txt"\r\n\r\nhalf a fi',
    })
    expect(answer.status).toBe(400)
    expect(counter.desk.heard.length).toBe(before)
  })
})

describe('one delivery', () => {
  it('sent twice counts once', async () => {
    const fields = { id: 'same-delivery', text: 'once' }
    await post(counter.address, `/c/${token}/say`, { fields })
    await post(counter.address, `/c/${token}/say`, { fields })
    const { text } = await ask(counter.address, `/c/${token}`)
    expect(text.match(/>once</g)?.length).toBe(1)
    expect(plainText('once').blocks.length).toBe(1)
  })
})
