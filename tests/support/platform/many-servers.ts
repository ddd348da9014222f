import { platformDesk } from '../../../src/desk/platform/platform-desk.ts'
import type { WorkerDesk } from '../../../src/desk/service/desk.ts'
import { until } from '../until.ts'
import { addServer, idsOf } from './shop-in-server.ts'
import type { StandIn } from './stand-in.ts'
import type { Room, Stored, User } from './world.ts'

type Server = ReturnType<typeof addServer>
type Place = { readonly user: User; readonly room: Room }

/** The first servers of a stand-in; the first of all is the house's own. */
export const addServers = (platform: StandIn, many: number): readonly Server[] =>
  Array.from({ length: many }, (_, at) => addServer(platform, `Press of Street ${at + 1}`))

/** Every server is set up, as its owner would with the first-run dialogue; answers with the shops' ids. */
export const setUpAll = async (house: WorkerDesk, servers: readonly Server[]): Promise<readonly string[]> => {
  const desk = platformDesk(house, servers[0]?.guild.id ?? '')
  const shops: string[] = []
  for (const { guild, owner, bench, office, lobby } of servers) {
    const [owners, floor] = guild.roles
    const rooms = { bench: bench.id, owner: office.id, orders: lobby.id }
    const roles = { ownerRoles: [owners?.id ?? ''], staffRoles: [floor?.id ?? ''] }
    const by = { id: owner.id, name: 'Owner', language: 'en' } as const
    shops.push((await desk.setUp({ id: guild.id, name: guild.name }, by, { ...rooms, ...roles })).shop)
  }
  return shops
}

const patience = 180_000

const carrying = (
  platform: StandIn,
  room: Room,
  pattern: RegExp,
): { readonly message: Stored; readonly id: string } | undefined => {
  for (const message of platform.shown(room).toReversed()) {
    const id = idsOf(message).find((one) => pattern.test(one))
    if (id !== undefined) return { message, id }
  }
  return undefined
}

const awaited = (platform: StandIn, room: Room, pattern: RegExp) =>
  until(`${pattern} stands in ${room.name ?? room.id}`, () => carrying(platform, room, pattern), patience)

const textIn = (platform: StandIn, room: Room): string => JSON.stringify(platform.shown(room).map(({ body }) => body))

/** When it never comes, what stands there last says why. */
const awaitText = async (platform: StandIn, room: Room, text: string): Promise<void> => {
  try {
    await until(`"${text}" stands in ${room.name ?? room.id}`, () => textIn(platform, room).includes(text), patience)
  } catch (cause) {
    throw new Error(`"${text}" never stood there; last of all ${textIn(platform, room).slice(-1_500)}`, { cause })
  }
}

export type Wish = { readonly server: Server; readonly name: string; readonly words: string }

/** A customer of their own orders in a server and signs off; settles when the ticket is on the bench. */
export const orderIn = async (platform: StandIn, { server, name, words }: Wish): Promise<Place> => {
  const user = platform.addUser(name)
  platform.join(server.guild, user)
  platform.command({ user, room: server.lobby }, 'order', { text: words })
  const room = platform.directRoom(user)
  const where = { user, room }
  const ages = await awaited(platform, room, /^s:1:c:choice$/)
  platform.choose(where, ages.message, { customId: ages.id, values: ['all-13-up'] })
  const proof = await awaited(platform, room, /^c:sign-off:/)
  platform.press(where, proof.message, proof.id)
  await awaitText(platform, room, 'is on the bench')
  return where
}

/** The customer thinks better of it while nothing is cut. */
export const cancelFor = async (platform: StandIn, where: Place): Promise<void> => {
  platform.say(where, 'please cancel the order')
  await awaitText(platform, where.room, 'Do you want to cancel this order?')
  platform.say(where, 'yes')
  await awaitText(platform, where.room, 'is cancelled')
}
