import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Incoming } from '../../src/ports/chat.ts'
import type { Actor, PlatformDesk, PlatformPerson } from '../../src/ports/platform-desk.ts'

export type OpenedDesk = {
  readonly desk: PlatformDesk
  /** How many refusals of this shop were written down. */
  readonly refusals: (shop: string) => Promise<number>
  readonly close: () => Promise<void>
}

let serial = 0n
/** An id of the platform: 17 to 20 digits, each once. */
const id = (): string => {
  serial += 1n
  return (100_000_000_000_000_000n + BigInt(Date.now()) * 1_000n + serial).toString()
}
const person = (name: string): PlatformPerson => ({ id: id(), name, language: 'en' })
const said = (text: string): Incoming => ({ kind: 'said', id: id(), text, files: [] })
const pressed = (action: string): Incoming => ({ kind: 'pressed', id: id(), action })

/** What the adapter may rely on, whichever desk stands behind it. */
export const platformDeskContract = (name: string, open: () => Promise<OpenedDesk>): void => {
  describe(`the desk behind the chat platform: ${name}`, () => {
    let opened: OpenedDesk
    beforeAll(async () => {
      opened = await open()
    }, 120_000)
    afterAll(() => opened.close())

    const shopInServer = async () => {
      const server = { id: id(), name: 'Cedar Flats Press' }
      const { shop } = await opened.desk.setUp(server, person('Owner'), { bench: id(), ownerRoles: [id()], staffRoles: [id()] })
      return { server, shop }
    }

    it('makes a shop of its own of every server, and keeps each choice of its owner', async () => {
      const { desk } = opened
      expect(await desk.guild(id())).toBeNull()
      const one = await shopInServer()
      const other = await shopInServer()
      expect(one.shop).not.toBe(other.shop)
      const owner = id()
      const before = await desk.guild(one.server.id)
      await desk.setUp(one.server, person('Owner'), { owner, talks: 'thread', language: 'es' })
      expect(await desk.guild(one.server.id)).toEqual({ ...before, owner, talks: 'thread', language: 'es' })
      expect((await desk.guilds()).map(({ guild }) => guild)).toEqual(expect.arrayContaining([one.server.id, other.server.id]))
      expect(await desk.placeOf(one.shop, { kind: 'shop', name: 'owner' })).toEqual({ channel: owner, language: 'es' })
      expect(await desk.placeOf(other.shop, { kind: 'shop', name: 'owner' })).toBeNull()
    })

    it('holds one running conversation of a customer with a shop, wherever it is moved', async () => {
      const { desk } = opened
      const { shop } = await shopInServer()
      const customer = person('Imke')
      expect(await desk.talkOf(customer.id, shop)).toBeNull()
      const [first, second] = [id(), id()]
      const talk = await desk.openTalk(shop, customer, first)
      expect(await desk.talkIn(first, null)).toEqual(talk)
      const moved = await desk.openTalk(shop, customer, second)
      expect(moved).toEqual({ ...talk, channel: second })
      expect(await desk.talkOf(customer.id, shop)).toEqual(moved)
      expect(await desk.talkOf(customer.id, null)).toEqual(moved)
      expect(await desk.placeOf(shop, { kind: 'conversation', id: talk.conversation })).toMatchObject({ channel: second })
      expect((await desk.shopsOf(customer.id)).length).toBe(1)
    })

    it('hears the same delivery once', async () => {
      const { desk } = opened
      const { shop } = await shopInServer()
      const customer = person('Imke')
      const talk = await desk.openTalk(shop, customer, id())
      const words = said('twelve jerseys')
      expect((await desk.hear(talk, customer, words)).outcome).toBe('done')
      expect((await desk.hear(talk, customer, words)).outcome).toBe('known')
    })

    it('refuses everybody but the customer in their conversation, and ids that are not its own, each once and in writing', async () => {
      const { desk } = opened
      const { shop } = await shopInServer()
      const customer = person('Imke')
      const talk = await desk.openTalk(shop, customer, id())
      const deeds: readonly (readonly [PlatformPerson, Incoming])[] = [
        [person('Somebody'), said('cancel it')],
        [person('Somebody'), pressed('c:cancel:1')],
        [customer, pressed('t:T1:take:1')],
        [customer, pressed('o:O-another:sign-off:1')],
      ]
      for (const [at, [by, incoming]] of deeds.entries()) {
        expect((await desk.hear(talk, by, incoming)).outcome).toBe('refused')
        expect((await desk.hear(talk, by, incoming)).outcome).toBe('known')
        expect(await opened.refusals(shop)).toBe(at + 1)
      }
    })

    it('lets roles do what is theirs and refuses the rest in writing', async () => {
      const { desk } = opened
      const { shop } = await shopInServer()
      const as = (role: Actor['role']): Actor => ({ shop, person: person('Somebody'), role })
      const tickets: Incoming = { kind: 'filled', id: '', form: 'c:tickets', values: {} }
      const table: readonly (readonly [Actor['role'], Incoming, 'done' | 'refused'])[] = [
        [null, tickets, 'refused'],
        [null, pressed('c:morning'), 'refused'],
        [null, pressed('c:setup'), 'refused'],
        [null, pressed('t:T1:take:1'), 'refused'],
        ['staff', tickets, 'done'],
        ['staff', pressed('c:morning'), 'refused'],
        ['staff', pressed('c:setup'), 'refused'],
        ['owner', pressed('c:morning'), 'done'],
        ['owner', pressed('c:setup'), 'done'],
        ['owner', pressed('t:of-another-shop:take:1'), 'refused'],
      ]
      let refused = 0
      for (const [role, incoming, outcome] of table) {
        expect((await desk.act(as(role), { ...incoming, id: id() })).outcome, `${role} ${JSON.stringify(incoming)}`).toBe(outcome)
        refused += outcome === 'refused' ? 1 : 0
        expect(await opened.refusals(shop)).toBe(refused)
      }
    })

    it('keeps files for the shop they came in', async () => {
      const { desk } = opened
      const [one, other] = [await shopInServer(), await shopInServer()]
      const channel = { kind: 'shop', name: 'bench' } as const
      const file = { name: 'roster.csv', mime: 'text/csv', bytes: new Uint8Array([55, 44, 65]) }
      const kept = await desk.keepFile(one.shop, channel, file)
      expect(await desk.file(one.shop, channel, kept.id)).toMatchObject({ name: 'roster.csv', mime: 'text/csv' })
      expect(await desk.file(other.shop, channel, kept.id)).toBeNull()
      expect(await desk.file(one.shop, channel, 'nothing')).toBeNull()
    })

    it('leases a posting to one at a time, and lets only the newest holder write', async () => {
      const { desk } = opened
      const { shop } = await shopInServer()
      const { postings } = desk
      const key = { shop, nonce: `n${id()}`, part: 1 }
      const first = await postings.lease(key, { channel: '11', now: 1_000, until: 2_000 })
      expect(first).toMatchObject({ channel: '11', round: 1, firstAttemptAt: null, message: null, body: null, fence: 1 })
      expect(await postings.lease(key, { channel: '22', now: 1_999, until: 3_000 })).toBeNull()
      expect(await postings.attempt({ ...key, fence: 1 }, 1_100, 5_000)).toBe(true)
      expect(await postings.lease(key, { channel: '22', now: 4_999, until: 9_000 })).toBeNull()
      const second = await postings.lease(key, { channel: '22', now: 5_000, until: 9_000 })
      expect(second).toMatchObject({ channel: '11', firstAttemptAt: 1_100, fence: 2 })
      expect(await postings.record({ ...key, fence: 1 }, { message: 'm1', body: 'b1' })).toBe(false)
      expect(await postings.attempt({ ...key, fence: 2 }, 7_000, 9_500)).toBe(true)
      expect(await postings.record({ ...key, fence: 2 }, { message: 'm2', body: 'b2' })).toBe(true)
      await postings.release({ ...key, fence: 1 })
      expect(await postings.lease(key, { channel: '11', now: 7_100, until: 9_000 })).toBeNull()
      await postings.release({ ...key, fence: 2 })
      const third = await postings.lease(key, { channel: '11', now: 7_200, until: 9_000 })
      expect(third).toMatchObject({ channel: '11', round: 1, firstAttemptAt: 1_100, message: 'm2', body: 'b2', fence: 3 })
      expect(await postings.parts(shop, key.nonce)).toBe(1)
      await postings.drop({ ...key, fence: 2 })
      expect(await postings.parts(shop, key.nonce)).toBe(1)
      await postings.drop({ ...key, fence: 3 })
      expect(await postings.parts(shop, key.nonce)).toBe(0)
    })
  })
}
