import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { openCounter, type TestCounter } from '../../../support/page-counter.ts'
import { bench, message, plainText } from '../../../support/page-desk.ts'
import { ask, cookieOf, post } from '../../../support/page-request.ts'
import { layOutBench, layOutMorning, smallPdf } from '../../../support/page-scene.ts'

let counter: TestCounter
beforeEach(async () => {
  counter = await openCounter()
  layOutBench(counter.desk)
  layOutMorning(counter.desk)
})
afterEach(() => counter.close())

const asOwner = async (): Promise<string> =>
  cookieOf(await post(counter.address, '/owner/the-first-owner-link', { fields: { language: 'en' } }))
const asStaff = async (): Promise<string> => {
  const { code } = await counter.desk.newPairingCode('Ana')
  return cookieOf(await post(counter.address, '/sign-in', { fields: { name: 'Ana', code, language: 'en' } }))
}
const get = (path: string, cookie: string) => ask(counter.address, path, { headers: { cookie } })

describe('the owner’s link', () => {
  it('is not used up by looking at it, signs in once, and never again', async () => {
    expect((await ask(counter.address, '/owner/the-first-owner-link')).text).toContain('Sign in as the owner')
    const answer = await post(counter.address, '/owner/the-first-owner-link', { fields: {} })
    expect([answer.status, answer.headers.location]).toEqual([303, '/morning'])
    expect(answer.headers['set-cookie']?.[0]).toMatch(
      /^counter-\d+=[\w.-]+; Max-Age=1209600; Path=\/; HttpOnly; SameSite=Strict$/,
    )
    const again = await post(counter.address, '/owner/the-first-owner-link', { fields: {} })
    expect(again.status).toBe(401)
    expect(again.headers['set-cookie']).toBeUndefined()
  })

  it('for another device is made by the owner and works there', async () => {
    const made = await post(counter.address, '/people/link', { fields: {}, headers: { cookie: await asOwner() } })
    const path = /http:\/\/127\.0\.0\.1:\d+(\/owner\/[\w-]+)/.exec(made.text)?.[1] ?? ''
    expect((await post(counter.address, path, { fields: {} })).headers.location).toBe('/morning')
  })
})

describe('a pairing code', () => {
  it('made by the owner lets one person in, once', async () => {
    const page = await post(counter.address, '/people/code', { fields: { name: 'Tomás' }, headers: { cookie: await asOwner() } })
    expect(page.text).toContain('Pairing code for Tomás')
    const fields = { name: 'Tomás', code: 'PAIR-1', language: 'es' }
    const answer = await post(counter.address, '/sign-in', { fields })
    expect([answer.status, answer.headers.location]).toEqual([303, '/bench'])
    expect((await get('/bench', cookieOf(answer))).text).toContain('<html lang="es">')
    expect((await post(counter.address, '/sign-in', { fields })).status).toBe(401)
  })

  it('cannot be found by trying: after a few tries the person must wait', async () => {
    const statuses = []
    for (let n = 0; n < 10; n += 1) {
      statuses.push((await post(counter.address, '/sign-in', { fields: { name: `Ana ${n}`, code: `PAIR-${n}` } })).status)
    }
    expect(statuses).toEqual([401, 401, 401, 401, 401, 401, 401, 401, 429, 429])
  })

  it('lets in nobody more once its person is taken off the list, which the owner alone can do', async () => {
    const owner = await asOwner()
    const cookie = await asStaff()
    const list = await get('/people', owner)
    const [, member = ''] = /name="member" value="(staff-[^"]+)"/.exec(list.text) ?? []
    expect(member).not.toBe('')
    const remove = (from: string) => post(counter.address, '/people/remove', { fields: { member }, headers: { cookie: from } })
    expect((await remove(cookie)).status).toBe(403)
    expect((await get('/bench', cookie)).status).toBe(200)
    expect((await remove(owner)).headers.location).toBe('/people')
    expect((await get('/people', owner)).text).not.toContain(member)
    expect((await get('/bench', cookie)).status).not.toBe(200)
  })

  it('is made by the owner alone', async () => {
    const cookie = await asStaff()
    expect((await post(counter.address, '/people/code', { fields: { name: 'Eve' }, headers: { cookie } })).status).toBe(403)
    expect((await post(counter.address, '/people/link', { fields: {}, headers: { cookie } })).status).toBe(403)
    expect((await post(counter.address, '/people/code', { fields: { name: 'Eve' } })).status).toBe(401)
  })
})

describe('a long bench', () => {
  it('shows the newest tickets whole and older ones by what they are called, and opens one that an address points into', async () => {
    for (let n = 1; n <= 9; n += 1) {
      const blocks = [`Ticket T${n} r1 · Herons`, 'Wanted Friday'].map((text) => ({ kind: 'text', text, tone: 'plain' }) as const)
      const actions = [{ id: `t:long-${n}:take:1`, label: 'Take', weight: 'main' }] as const
      counter.desk.post(bench, { kind: 'bot', name: 'bot' }, message({ blocks, actions }))
    }
    counter.desk.post(bench, { kind: 'staff', name: 'Ana' }, plainText('the cutter is out of blades'))
    const { text } = await get('/bench', await asStaff())
    const folded = [...text.matchAll(/<details class="slip-fold" id="[^"]+"( open)?><summary dir="auto">(Ticket T\d)/g)]
    expect(folded.filter(([, open]) => open !== undefined).map(([, , name]) => name)).toEqual([
      'Ticket T5',
      'Ticket T6',
      'Ticket T7',
      'Ticket T8',
      'Ticket T9',
    ])
    expect(folded.filter(([, open]) => open === undefined).map(([, , name]) => name)).toEqual([
      'Ticket T1',
      'Ticket T2',
      'Ticket T3',
      'Ticket T4',
    ])
    expect(text).toMatch(/<summary dir="auto">Ticket T1 [^<]*<\/summary><span class="anchor" id="ticket-long-1">/)
    expect(text).toMatch(/<p class="text plain" dir="auto">the cutter is out of blades/)
  })
})

describe('the bench', () => {
  it('is closed to everyone not signed in: page, files, news and deeds', async () => {
    const page = await ask(counter.address, '/bench')
    expect([page.status, page.headers.location]).toEqual([303, '/sign-in?language=en'])
    expect(page.text).not.toContain('Riverside')
    expect((await ask(counter.address, '/bench/live')).status).toBe(401)
    expect((await ask(counter.address, '/bench/file/ticket-17')).text).not.toContain('PDF')
    expect((await post(counter.address, '/bench/press', { fields: { id: 'press-001', action: 't:17:take:2' } })).status).toBe(401)
    expect((await get('/bench', `counter-${new URL(counter.address).port}=eyJtZW1iZXIiOiJvd25lci0xIn0.forged`)).status).toBe(303)
    expect(counter.desk.acted).toEqual([])
  })

  it('shows tickets with their paper, and passes on who did what', async () => {
    const cookie = await asStaff()
    const page = await get('/bench', cookie)
    expect(page.text).toContain('Ticket 17, revision 2')
    expect(page.text).toContain('id="ticket-17"')
    const paper = await get('/bench/file/ticket-17', cookie)
    expect([paper.headers['content-type'], Buffer.compare(paper.bytes, Buffer.from(smallPdf))]).toEqual(['application/pdf', 0])
    await post(counter.address, '/bench/press', { fields: { id: 'press-001', action: 't:17:take:2' }, headers: { cookie } })
    expect(counter.desk.acted).toEqual([
      {
        member: { id: 'staff-Ana', name: 'Ana', role: 'staff' },
        incoming: { kind: 'pressed', id: 'press-001', action: 't:17:take:2' },
      },
    ])
  })

  it('tells the desk’s answer to the person who asked, with script and without', async () => {
    const cookie = await asStaff()
    counter.desk.answerWith('Taken by you <until 5>.')
    const fields = { id: 'press-001', action: 't:17:take:2' }
    const page = await post(counter.address, '/bench/press', { fields, headers: { cookie } })
    expect(page.text).toContain('Taken by you &lt;until 5&gt;.')
    const script = await post(counter.address, '/bench/press', {
      fields: { ...fields, id: 'press-002' },
      headers: { cookie, accept: 'application/json' },
    })
    expect(JSON.parse(script.text)).toEqual({ said: 'Taken by you <until 5>.', isDone: true })
  })

  it('is closed at once to a person taken off the list, and after signing out', async () => {
    const cookie = await asStaff()
    counter.desk.removeMember('staff-Ana')
    expect((await get('/bench', cookie)).status).toBe(303)
    expect((await post(counter.address, '/sign-out', { fields: {} })).headers['set-cookie']?.[0]).toMatch(
      /^counter-\d+=; Max-Age=0/,
    )
  })

  it('keeps a person signed in who comes back within two weeks', async () => {
    const cookie = await asStaff()
    counter.moveClock(13 * 24 * 3_600_000)
    const renewed = cookieOf(await get('/bench', cookie))
    counter.moveClock(13 * 24 * 3_600_000)
    expect((await get('/bench', cookie)).status).toBe(303)
    expect((await get('/bench', renewed)).status).toBe(200)
  })
})

describe('the morning sheet', () => {
  it('shows the owner every section, each line ending in a thing to do', async () => {
    const { text } = await get('/morning', await asOwner())
    expect(text).toContain('Monday, March 16, 2026')
    expect(text.match(/<section class="sheet"/g)?.length).toBe(8)
    expect(text).toContain('Press the last 5 on press 1 by noon')
    expect(text).toContain('href="/bench#ticket-17"')
    expect(text).toContain('Order 21 asks for a deposit to be waived.')
  })

  it('is the owner’s alone', async () => {
    const cookie = await asStaff()
    for (const path of ['/morning', '/morning/live', '/people']) expect((await get(path, cookie)).status).toBe(403)
    expect(
      (await post(counter.address, '/morning/say', { fields: { id: 'said-0001', text: 'x' }, headers: { cookie } })).status,
    ).toBe(403)
    expect(counter.desk.acted).toEqual([])
  })

  it('changes its language and goes back only to pages of the shop', async () => {
    const cookie = await asOwner()
    const answer = await post(counter.address, '/language', { fields: { language: 'es', back: '/people' }, headers: { cookie } })
    expect(answer.headers.location).toBe('/people')
    expect((await get('/morning', cookieOf(answer))).text).toContain('lunes, 16 de marzo de 2026')
    const away = await post(counter.address, '/language', {
      fields: { language: 'es', back: '//evil.example' },
      headers: { cookie },
    })
    expect(away.headers.location).toBe('/morning')
  })
})

describe('a file of one channel', () => {
  it('is not found through another', async () => {
    const cookie = await asOwner()
    counter.desk.putFile(bench, 'only-bench', { name: 'a.txt', mime: 'text/plain', bytes: new TextEncoder().encode('a') })
    expect((await get('/bench/file/only-bench', cookie)).status).toBe(200)
    expect((await get('/morning/file/only-bench', cookie)).status).toBe(404)
  })
})
