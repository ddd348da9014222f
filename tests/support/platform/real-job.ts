import { expect } from 'vitest'
import { makeAll, makeFirstPieces } from '../floor.ts'
import { everyComponent } from './limits.ts'
import type { RealShops } from './real-shop.ts'
import { idsOf, textsOf, toldTo } from './shop-in-server.ts'
import type { Asked, Room, Stored, User } from './world.ts'

/** Long forms run beside whatever else the machine does. */
const patience = process.env['LONG'] === undefined ? 60_000 : 600_000

export const until = <T>(read: () => T) => expect.poll(read, { timeout: patience, interval: 20 })

export const wishes = `3 practice tees, red, 100% polyester, white vinyl numbers on the back. Team is the Lantern Hill Lynx, sport is soccer.
We need them December 10 at 5 pm. My name is Imke Dahl.
4 Abel, adult M
7 Bea, adult L
9 Cid, adult S`

export type Place = { readonly user: User; readonly room: Room }
/** One thing somebody does, and the wait for what everybody sees of it. */
export type Event = { readonly name: string; readonly play: (shops: RealShops) => Promise<void> }

export const customerAt = ({ platform, ours }: RealShops): Place => ({
  user: ours.customer,
  room: platform.directRoom(ours.customer),
})
export const staffAt = ({ ours }: RealShops): Place => ({ user: ours.staff, room: ours.bench })

/** What the bot has written there, oldest first. */
export const oursIn = ({ platform }: RealShops, room: Room): readonly Stored[] =>
  platform.shown(room).filter((one) => one.author === platform.world.bot.id)

/** The newest message of ours there that carries such an id, and the id. */
export const carrying = (
  shops: RealShops,
  room: Room,
  pattern: RegExp,
): { readonly message: Stored; readonly id: string } | null => {
  for (const message of oursIn(shops, room).toReversed()) {
    const id = idsOf(message).find((one) => pattern.test(one))
    if (id !== undefined) return { message, id }
  }
  return null
}
export const found = (shops: RealShops, room: Room, pattern: RegExp) => {
  const one = carrying(shops, room, pattern)
  if (one === null) throw new Error(`nothing carries ${pattern} in ${room.name}: ${oursIn(shops, room).map(textsOf).join(' | ')}`)
  return one
}
export const awaitIn = async (shops: RealShops, room: Room, pattern: RegExp): Promise<void> =>
  until(() => carrying(shops, room, pattern) !== null).toBe(true)

export const benchText = (shops: RealShops): string => oursIn(shops, shops.ours.bench).map(textsOf).join('\n')

/** A customer's first words, in the shop's own server. */
export const ordering = (words: string): Event => ({
  name: 'the customer orders',
  play: async (shops) => {
    const { platform, ours } = shops
    platform.command({ user: ours.customer, room: ours.lobby }, 'order', { text: words })
    await awaitIn(shops, customerAt(shops).room, /^s:1:c:choice$/)
  },
})
const order = ordering(wishes)
export const ages: Event = {
  name: 'the customer says how old they are',
  play: async (shops) => {
    const where = customerAt(shops)
    const { message, id } = found(shops, where.room, /^s:1:c:choice$/)
    shops.platform.choose(where, message, { customId: id, values: ['all-13-up'] })
    await awaitIn(shops, where.room, /^c:sign-off:/)
  },
}
export const sign: Event = {
  name: 'the customer signs off',
  play: async (shops) => {
    const where = customerAt(shops)
    const { message, id } = found(shops, where.room, /^c:sign-off:/)
    shops.platform.press(where, message, id)
    await awaitIn(shops, shops.ours.bench, /^t:[^:]+:take:/)
    await until(() => oursIn(shops, where.room).map(textsOf).join('\n')).toContain('is on the bench')
  },
}

/** Staff press a button of the ticket; its message says so afterwards. */
export const press = (act: string, shown: string): Event => ({
  name: `staff: ${act}`,
  play: async (shops) => {
    const { message, id } = found(shops, shops.ours.bench, new RegExp(`^t:[^:]+:${act}:`))
    shops.platform.press(staffAt(shops), message, id)
    await until(() => benchText(shops)).toContain(shown)
  },
})
const takenByTwo: Event = {
  name: 'somebody else wants to take it too',
  play: async (shops) => {
    const { platform, ours } = shops
    const { message, id } = found(shops, ours.bench, /^t:[^:]+:open:/)
    const asked = platform.forge({ user: ours.owner, room: ours.bench }, message, id.replace(':open:', ':take:'))
    await until(() => asked.acknowledged).toBe(6)
    await until(() => toldTo(asked) !== '' || shops.platform.calls.some(({ path }) => path.includes(asked.token))).toBe(true)
  },
}

type Given = { readonly [field: string]: string }

/** Fills a form that an action of the ticket opened: what is given, else the first of the choices. */
export const submit = async (shops: RealShops, where: Place, filled: { readonly act: string; readonly given: Given }) => {
  const { message, id } = found(shops, shops.ours.bench, new RegExp(`^t:[^:]+:${filled.act}:`))
  return submitAt(shops, where, { message, id, given: filled.given })
}

/** Opens a form; a person presses again where the desk was too busy to have it in the platform's three seconds. */
const openForm = async (
  shops: RealShops,
  where: Place,
  { message, id, tries = 5 }: { readonly message: Stored; readonly id: string; readonly tries?: number },
): Promise<Asked> => {
  const opened = shops.platform.press(where, message, id)
  await until(() => opened.acknowledged).not.toBeNull()
  if (opened.acknowledged !== 9 && tries > 1) return openForm(shops, where, { message, id, tries: tries - 1 })
  expect(opened.acknowledged).toBe(9)
  return opened
}

type Filled = { readonly message: Stored; readonly id: string; readonly given: Given }

/** Fills the form that a button of any message opened. */
export const submitAt = async (shops: RealShops, where: Place, { message, id, given }: Filled): Promise<Asked> => {
  const opened = await openForm(shops, where, { message, id })
  const parts = everyComponent(opened.modal?.['components']).filter((part) => typeof part['custom_id'] === 'string')
  const values = parts.map((part): [string, string | readonly string[]] => {
    const name = String(part['custom_id'])
    const options = Array.isArray(part['options']) ? part['options'] : []
    const first = String(options[0]?.value ?? '')
    if (part['type'] === 3) return [name, [given[name] ?? first]]
    return [name, given[name] ?? '']
  })
  return shops.platform.submit(where, opened, Object.fromEntries(values))
}

/** Staff fill in what an action of the ticket asks for; its message says so afterwards. */
const fill = (act: string, given: Given, shown: string): Event => ({
  name: `staff: ${act}`,
  play: async (shops) => {
    await submit(shops, staffAt(shops), { act, given })
    await until(() => benchText(shops)).toContain(shown)
  },
})

/** The owner's hands are the second pair: whoever made the first piece does not sign it. */
const secondLook: Event = {
  name: 'the owner signs the first piece',
  play: async (shops) => {
    await submit(shops, { user: shops.ours.owner, room: shops.ours.bench }, { act: 'second-look', given: { result: 'right' } })
    await until(() => benchText(shops)).toContain('First piece looked at')
  },
}

const ask: Event = {
  name: 'staff ask the customer',
  play: async (shops) => {
    await submit(shops, staffAt(shops), { act: 'ask', given: { note: 'Is Bea with one e?' } })
    await until(() => oursIn(shops, customerAt(shops).room).map(textsOf).join('\n')).toContain('Is Bea with one e?')
  },
}

/** Ticks at the bench that belong between the deeds of its buttons; afterwards the ticket stands there with the act that they allow. */
const made = (act: string, make: (desk: RealShops['ourDesk'], ticketId: string) => Promise<void>): Event => ({
  name: `staff make what ${act} wants`,
  play: async (shops) => {
    const [ticket] = await shops.ourShop.tickets.list(['open'])
    await make(shops.ourDesk, ticket?.ticketId ?? '')
    await awaitIn(shops, shops.ours.bench, new RegExp(`^t:[^:]+:${act}:`))
  },
})

/** From the order to the bag in the customer's hands. */
export const wholeJob: readonly Event[] = [
  order,
  ages,
  sign,
  press('take', 'Taken by'),
  takenByTwo,
  fill('count-in', { missing: '0', bin: 'rail 2' }, 'Counted in'),
  fill('water-drops', { drops: '2 3 2 2 3' }, 'Water drops: '),
  fill('bleed-test', { result: 'skipped', signedBy: 'Imke Dahl' }, 'Bleed test: '),
  press('start', 'All is cut, says'),
  made('first-piece', makeFirstPieces),
  fill('first-piece', {}, 'First piece made'),
  secondLook,
  ask,
  fill('short', { note: 'last sheet' }, 'Short: '),
  fill('spoiled', { quantity: '1' }, 'Spoiled: '),
  fill('remade', {}, 'Remake bagged: '),
  made('checked', makeAll),
  press('checked', 'Checked by'),
  press('bagged', 'Bagged by'),
  press('collected', 'Handed over by'),
  fill('complaint', { kind: 'lift', washes: '3', drying: 'home-dryer' }, 'Complaint: '),
]
