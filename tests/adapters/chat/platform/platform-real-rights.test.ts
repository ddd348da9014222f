import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { minutes } from '../../../../src/domain/units/units.ts'
import { openRealGround, type RealGround } from '../../../support/platform/ground.ts'
import { everyComponent } from '../../../support/platform/limits.ts'
import { carrying, customerAt, found, oursIn, until, wholeJob } from '../../../support/platform/real-job.ts'
import { openRealShops, type RealShops } from '../../../support/platform/real-shop.ts'
import { textsOf, toldTo } from '../../../support/platform/shop-in-server.ts'
import type { Asked, Room, User } from '../../../support/platform/world.ts'

let ground: RealGround
let shops: RealShops
beforeAll(async () => {
  ground = await openRealGround()
  shops = await openRealShops(ground)
}, 240_000)
afterAll(async () => {
  await shops.close()
  await ground.close()
})

/** Refusals of both shops that were written down so far, as they name what was wanted. */
const refusals = async (): Promise<readonly unknown[]> => {
  const { at } = ground.clock
  const both = await Promise.all(
    [shops.ourShop, shops.theirShop].map((shop) => shop.events.between(minutes(at - 1), minutes(at + 1))),
  )
  return both.flat().filter(({ code }) => code === 'refused')
}

/** Everything that may not change by a refused deed. */
const workOf = async (): Promise<unknown> => {
  const { ourShop } = shops
  const orders = await ourShop.orders.list(['asked', 'quoted', 'on-bench', 'cancelled'])
  const tickets = await ourShop.tickets.list(['open', 'done'])
  return { orders, tickets: tickets.map(({ ticketId, state, version }) => [ticketId, state, version]) }
}

/** Another customer of the shop with an order of their own that waits for its sign-off. */
const addCustomer = async (name: string) => {
  const { platform, ours } = shops
  const user = platform.addUser(name)
  platform.join(ours.guild, user)
  const where = { user, room: platform.directRoom(user) }
  platform.command({ user, room: ours.lobby }, 'order', { text: 'eight hoodies' })
  await until(() => oursIn(shops, where.room).length > 2).toBe(true)
  return where
}

describe('who may do what in a shop over the store', () => {
  it('is decided by role, order and shop; what is forbidden is refused in private, once, in writing, and changes nothing', async () => {
    for (const event of wholeJob.slice(0, 3)) await event.play(shops)
    const { platform, ours, theirs } = shops
    const { owner, staff, customer, bench, lobby, guild } = ours
    const other = await addCustomer('Other customer')
    const outsider = platform.addUser('Outsider')
    platform.join(theirs.guild, outsider)
    platform.join(guild, theirs.staff)
    platform.join(guild, theirs.owner)
    const ticket = found(shops, bench, /^t:[^:]+:open:/)
    const id = (act: string): string => ticket.id.replace(':open:', `:${act}:`)
    const direct = customerAt(shops)
    const proof = found(shops, direct.room, /^c:sign-off:/)
    const hello = oursIn(shops, other.room).at(-1) ?? proof.message
    const press = (user: User, room: Room, action: string) => () => platform.forge({ user, room }, ticket.message, action)
    const command = (user: User, room: Room, word: string) => () => platform.command({ user, room }, word)
    const table: readonly (readonly [string, boolean, () => Asked])[] = [
      ['customer takes a ticket', false, press(customer, bench, id('take'))],
      ['other customer takes a ticket', false, press(other.user, bench, id('take'))],
      ['other customer opens a ticket', false, press(other.user, bench, id('open'))],
      ['outsider takes a ticket', false, press(outsider, theirs.bench, id('take'))],
      ['staff of another shop, on our bench', false, press(theirs.staff, bench, id('take'))],
      ['staff of another shop, on their bench, with our ticket', false, press(theirs.staff, theirs.bench, id('take'))],
      ['owner of another shop, on their bench, opens our ticket', false, press(theirs.owner, theirs.bench, id('open'))],
      ['owner of another shop, on their bench, with our ticket', false, press(theirs.owner, theirs.bench, id('collected'))],
      ['staff with a ticket nobody has', false, press(staff, bench, 't:tnobody-1:take:1')],
      ['staff with an order nobody has', false, press(staff, bench, 'o:onobody:again-plan:1')],
      ['customer takes a ticket from their conversation', false, () => platform.forge(direct, proof.message, id('take'))],
      ['customer names another order', false, () => platform.forge(direct, proof.message, 'o:oother:sign-off:1')],
      [
        'other customer signs in the customer’s room',
        false,
        () => platform.forge({ user: other.user, room: direct.room }, proof.message, proof.id),
      ],
      ['staff sign for the customer', false, () => platform.forge({ user: staff, room: direct.room }, proof.message, proof.id)],
      [
        'owner cancels for the customer',
        false,
        () => platform.forge({ user: owner, room: direct.room }, proof.message, 'c:cancel:1'),
      ],
      ['customer wants the morning sheet', false, command(customer, lobby, 'morning')],
      ['staff want the morning sheet', false, command(staff, bench, 'morning')],
      ['owner of another shop wants our load', false, command(theirs.owner, bench, 'load')],
      ['customer lists tickets', false, command(customer, lobby, 'tickets')],
      ['staff of another shop list our tickets', false, command(theirs.staff, lobby, 'tickets')],
      ['customer opens the set-up', false, command(customer, lobby, 'setup')],
      ['staff open the set-up', false, command(staff, lobby, 'setup')],
      ['owner wants the morning sheet', true, command(owner, bench, 'morning')],
      ['staff list tickets', true, command(staff, lobby, 'tickets')],
      ['staff open the ticket', true, press(staff, bench, id('open'))],
      ['owner opens the set-up', true, command(owner, lobby, 'setup')],
    ]
    const before = await workOf()
    const [order] = await shops.ourShop.orders.list(['on-bench'])
    const mend = `o:${order?.orderId}:mend-move-promise:1`
    const mending = ['staff move a promise', false, press(staff, bench, mend)] as const
    for (const [name, allowed, deed] of [...table, mending]) {
      const written = (await refusals()).length
      const asked = deed()
      if (allowed) {
        await until(() => toldTo(asked)).not.toBe('')
        expect(toldTo(asked), name).not.toContain('not yours')
        expect(await refusals(), name).toHaveLength(written)
        continue
      }
      await until(() => toldTo(asked)).toContain('not yours to do')
      expect(await refusals(), name).toHaveLength(written + 1)
      const isPrivate = asked.private.every(({ body }) => (Number(body['flags']) & 64) !== 0 || asked.acknowledged === 5)
      expect(isPrivate, name).toBe(true)
    }
    expect(await workOf()).toEqual(before)
    // The hash of a sign-off belongs to one order: in another conversation it signs nothing.
    platform.forge(other, hello, proof.id)
    await expect.poll(() => shops.waiting(), { timeout: 20_000, interval: 50 }).toBe(0)
    expect(await workOf()).toEqual(before)
  }, 240_000)

  it('draws the load for the owner into their channel, outside of the bot', async () => {
    const { platform, ours } = shops
    const asked = platform.command({ user: ours.owner, room: ours.bench }, 'load')
    await until(() => toldTo(asked)).toContain('being drawn')
    await until(() => oursIn(shops, ours.office).map(({ files }) => files.map(({ type }) => type))).toEqual([['image/png']])
  }, 120_000)

  it('shows staff the open tickets by station and day, and posts one that was deleted once more', async () => {
    const { platform, ours } = shops
    const where = { user: ours.staff, room: ours.bench }
    const all = platform.command(where, 'tickets')
    await until(() => toldTo(all)).toContain('Lantern Hill Lynx')
    const none = platform.command(where, 'tickets', { station: 'press-1', day: '2026-11-01' })
    await until(() => toldTo(none)).toContain('No open ticket there')
    const typed = platform.type(where, 'tickets', { name: 'station', value: 'press' })
    await until(() => typed.suggestions.map(({ name }) => name)).toEqual(['press-1', 'press-2'])

    const [posted] = oursIn(shops, ours.bench)
    if (posted === undefined) throw new Error('no ticket')
    posted.deleted = true
    const list = all.private.at(-1)
    const again = everyComponent(list?.body['components']).find((part) => String(part['custom_id']).includes('post-again'))
    expect(oursIn(shops, ours.bench)).toHaveLength(0)
    if (list === undefined || again === undefined) throw new Error('no way to post again')
    const id = posted.body['components']
    const ticketId = /"t:([^:"]+):/.exec(JSON.stringify(id))?.[1] ?? ''
    platform.choose(where, list, { customId: String(again['custom_id']), values: [ticketId] })
    await until(() => carrying(shops, ours.bench, /^t:[^:]+:take:/) !== null).toBe(true)
    expect(oursIn(shops, ours.bench)).toHaveLength(1)
    expect(oursIn(shops, ours.bench)[0]?.files.map(({ type }) => type)).toEqual(posted.files.map(({ type }) => type))
    expect(oursIn(shops, ours.bench)[0]?.files[0]?.type).toBe('application/pdf')
  }, 120_000)
})

describe('what people type, over the store', () => {
  it('never takes effect in any payload that leaves us', async () => {
    const { platform, ours } = shops
    const nasty =
      '@everyone <@123456789012345678> <@&1> <#2> [free](https://evil.example) **b** `c` ||s|| # big > quote \u202egnp.exe\u0007'
    const user = platform.addUser(`@here <@1> **x** \`y\``)
    platform.join(ours.guild, user, { roles: [ours.guild.roles[1]?.id ?? ''] })
    const where = { user, room: platform.directRoom(user) }
    platform.command({ user, room: ours.lobby }, 'order', {
      text: `3 practice tees, navy, 100% cotton, white vinyl names on the back. Team is the ${nasty}, sport is soccer. We need them December 10 at 5 pm. My name is ${nasty}. All are 13 or older.\n4 @everyone, adult M\n7 **Bea** [x](https://evil.example), adult L`,
    })
    await until(() => oursIn(shops, where.room).length > 2).toBe(true)
    const { message, id } = found(shops, ours.bench, /^t:[^:]+:take:/)
    platform.press({ user, room: ours.bench }, message, id)
    await until(() => oursIn(shops, ours.bench).map(textsOf).join('\n')).toContain('Taken by')
    await expect.poll(() => shops.waiting(), { timeout: 20_000, interval: 50 }).toBe(0)
    const sent = platform.calls.filter(({ body }) => body['components'] !== undefined)
    expect(sent.length).toBeGreaterThan(20)
    for (const { body } of sent) {
      expect(body['allowed_mentions']).toEqual({ parse: [] })
      const text = textsOf({ id: '', author: '', nonce: null, at: 0, body, files: [], edits: 0, deleted: false })
      const fences = text.split('```')
      const plain = fences.filter((_, at) => at % 2 === 0).join('\n')
      expect(fences.length % 2).toBe(1)
      const bare = plain.replace(/\\[^0-9A-Za-z\s]/g, '').replaceAll('**', '')
      expect(bare).not.toMatch(/[@<>[\]`|#*~]|:\/\/|(?![\n\u200d])[\p{Cc}\p{Cf}]/u)
      expect(text).not.toMatch(/(?![\n\u200d])[\p{Cc}\p{Cf}]/u)
    }
  }, 120_000)
})
