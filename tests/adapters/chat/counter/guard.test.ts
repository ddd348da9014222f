import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openCounter, type TestCounter } from '../../../support/page-counter.ts'
import { ask, post } from '../../../support/page-request.ts'
import { layOutConversation } from '../../../support/page-scene.ts'

describe('the counter’s doors', () => {
  let counter: TestCounter
  let home: string
  beforeAll(async () => {
    counter = await openCounter()
    home = `/c/${(await layOutConversation(counter.desk)).token}`
  })
  afterAll(() => counter.close())

  const say = (headers: { readonly [name: string]: string }) =>
    post(counter.address, `${home}/say`, { fields: { id: 'delivery-1', text: 'hello' }, headers })

  it('answer to this machine’s own names and to no other host', async () => {
    const { port } = new URL(counter.address)
    for (const host of [`127.0.0.1:${port}`, `localhost:${port}`, `[::1]:${port}`, `LOCALHOST:${port}`]) {
      expect((await ask(counter.address, '/', { headers: { host } })).status).toBe(200)
    }
    for (const host of [
      'evil.example',
      `evil.example:${port}`,
      `127.0.0.1.evil.example:${port}`,
      '127.0.0.1',
      `127.0.0.1:${Number(port) + 1}`,
    ]) {
      const answer = await ask(counter.address, home, { headers: { host } })
      expect(answer.status).toBe(421)
      expect(answer.text).not.toContain('jerseys')
    }
  })

  it('refuse a form sent from another page, from nowhere, or with a host that is not its origin’s', async () => {
    const { port } = new URL(counter.address)
    const before = counter.desk.heard.length
    const forged = [
      { origin: 'https://evil.example' },
      { origin: 'null' },
      { origin: `http://127.0.0.1:${Number(port) + 1}` },
      { origin: `https://127.0.0.1:${port}` },
      { origin: `http://localhost:${port}` },
      { 'sec-fetch-site': 'cross-site' },
      { 'sec-fetch-site': 'same-site' },
    ]
    for (const headers of forged) expect((await say(headers)).status).toBe(403)
    const bare = await ask(counter.address, `${home}/say`, {
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded' },
      body: 'id=delivery-2&text=hello',
    })
    expect(bare.status).toBe(403)
    expect(counter.desk.heard.length).toBe(before)
    expect((await say({ 'sec-fetch-site': 'same-origin' })).status).toBe(303)
  })

  it('put the same safe headers on every answer, wrong ones too', async () => {
    for (const path of [
      '/',
      home,
      '/sign-in',
      '/bench',
      '/nowhere',
      '/assets/counter.js',
      `${home}/file/proof`,
      '/c/none-such-none-such',
    ]) {
      const { headers } = await ask(counter.address, path)
      expect(headers['x-content-type-options']).toBe('nosniff')
      expect(headers['content-security-policy']).toContain("default-src 'none'")
      expect(headers['content-security-policy']).not.toContain('unsafe')
      expect(headers['referrer-policy']).toBe('same-origin')
      expect(headers['x-frame-options']).toBe('DENY')
    }
    expect((await ask(counter.address, home)).headers['content-security-policy']).toContain("frame-ancestors 'none'")
  })

  it('let no private page or file be stored', async () => {
    for (const path of ['/', home, `${home}/file/proof`, '/bench']) {
      expect((await ask(counter.address, path)).headers['cache-control']).toBe('no-store')
    }
  })

  it('reach nothing of the disk but the assets named', async () => {
    for (const name of ['..%2F..%2Fpackage.json', 'words.ts', '%2e%2e/package.json', 'counter.css/..', 'constructor']) {
      expect((await ask(counter.address, `/assets/${name}`)).status).toBe(404)
    }
    expect((await ask(counter.address, '/assets/counter.css')).headers['content-type']).toContain('text/css')
  })

  it('tell people of a bug in general words and the shop of the bug itself', async () => {
    counter.desk.breakOn('break now')
    const answer = await post(counter.address, `${home}/say`, { fields: { id: 'delivery-3', text: 'break now' } })
    expect(answer.status).toBe(500)
    expect(answer.text).not.toContain('secret detail')
    expect(answer.text).toContain('Something broke on our side')
    expect(counter.bugs.map(String)).toEqual(['Error: the desk fell over: secret detail'])
  })
})

describe('opening the counter', () => {
  it('takes the next free port when the usual one is taken and nobody said where people come', async () => {
    const first = await openCounter({ port: null })
    const second = await openCounter({ port: null })
    try {
      expect(Number(new URL(second.address).port)).toBeGreaterThan(Number(new URL(first.address).port))
      expect((await ask(second.address, '/up')).text).toBe('up')
    } finally {
      await Promise.all([first.close(), second.close()])
    }
  })

  it('never moves from a port that was asked for, nor from under an address that leads to it', async () => {
    const first = await openCounter()
    try {
      await expect(openCounter({ port: first.port })).rejects.toThrow(`port ${first.port} is taken by another program`)
    } finally {
      await first.close()
    }
    const usual = await openCounter({ port: null })
    try {
      const led = openCounter({ port: null, url: 'https://counter.shop.example' })
      await expect(led).rejects.toThrow('port 4180 is taken by another program; set another COUNTER_PORT')
    } finally {
      await usual.close()
    }
  })

  it('to a network without the address people open is refused with what to set', async () => {
    await expect(openCounter({ host: '0.0.0.0' })).rejects.toThrow(/COUNTER_URL/)
  })

  it('behind an address of its own answers to that address, and makes its cookies for https alone', async () => {
    const counter = await openCounter({ url: 'https://counter.shop.example/' })
    const inside = `http://127.0.0.1:${counter.port}`
    try {
      expect(counter.address).toBe('https://counter.shop.example')
      const answer = await post(inside, '/owner/the-first-owner-link', {
        fields: {},
        headers: { host: 'counter.shop.example', origin: 'https://counter.shop.example' },
      })
      expect(answer.status).toBe(303)
      expect(answer.headers['set-cookie']?.[0]).toMatch(
        /^__Host-counter=[\w.-]+; Max-Age=1209600; Path=\/; HttpOnly; Secure; SameSite=Strict$/,
      )
    } finally {
      await counter.close()
    }
  })

  it('says at which host and port it cannot listen', async () => {
    await expect(openCounter({ host: '192.0.2.1', url: 'http://192.0.2.1:4180' })).rejects.toThrow(
      /cannot listen at 192\.0\.2\.1/,
    )
  })

  it('frees its port when closed, though live pages are open', async () => {
    const counter = await openCounter()
    const { token } = await counter.desk.startConversation('en')
    const live = ask(counter.address, `/c/${token}/live`)
    await ask(counter.address, '/up')
    await counter.close()
    await expect(ask(counter.address, '/up')).rejects.toThrow(/ECONNREFUSED/)
    expect((await live).text).toContain('retry:')
  })
})
