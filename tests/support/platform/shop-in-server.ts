import { platformDeliver } from '../../../src/adapters/chat/platform/deliver.ts'
import { type Platform, startPlatform } from '../../../src/adapters/chat/platform/platform.ts'
import { smallDesk } from './desk.ts'
import { everyComponent } from './limits.ts'
import { type StandIn, startStandIn, token } from './stand-in.ts'
import type { Asked, Guild, Room, Stored, User } from './world.ts'

type Server = {
  readonly guild: Guild
  readonly owner: User
  readonly staff: User
  readonly customer: User
  readonly bench: Room
  readonly office: Room
  readonly lobby: Room
}

export const textsOf = (stored: Stored | undefined): string =>
  everyComponent(stored?.body['components'])
    .flatMap((one) => one['content'] ?? [])
    .join('\n')

export const idsOf = (stored: Stored | undefined): readonly string[] =>
  everyComponent(stored?.body['components']).flatMap((one) => (typeof one['custom_id'] === 'string' ? [one['custom_id']] : []))

/** What the one who asked was told in private. */
export const toldTo = (asked: Asked): string => asked.private.map(textsOf).join('\n')

/** A server of the stand-in with its people and channels, before anybody has set up the shop. */
export const addServer = (platform: StandIn, name: string): Server => {
  const owner = platform.addUser(`${name} owner`)
  const guild = platform.addGuild(name, owner)
  const staff = platform.addUser(`${name} staff`)
  const customer = platform.addUser(`${name} customer`)
  platform.join(guild, owner, { roles: [platform.addRole(guild, 'owners')], permissions: '8' })
  platform.join(guild, staff, { roles: [platform.addRole(guild, 'floor')] })
  platform.join(guild, customer)
  return {
    guild,
    owner,
    staff,
    customer,
    bench: platform.addChannel(guild, 'bench'),
    office: platform.addChannel(guild, 'office'),
    lobby: platform.addChannel(guild, 'lobby'),
  }
}

/** The bot with a small desk behind it, in two servers that are both set up. */
export const openShops = async (options: { readonly readsContent?: boolean } = {}) => {
  const platform = await startStandIn()
  const small = smallDesk()
  const reports: unknown[] = []
  const ours = addServer(platform, 'Cedar Flats Press')
  const theirs = addServer(platform, 'Birch Hollow Prints')
  for (const { guild, bench, office, lobby } of [ours, theirs]) {
    const [owners, floor] = guild.roles
    await small.desk.setUp(
      { id: guild.id, name: guild.name },
      { id: '', name: '', language: 'en' },
      {
        bench: bench.id,
        owner: office.id,
        orders: lobby.id,
        ownerRoles: [owners?.id ?? ''],
        staffRoles: [floor?.id ?? ''],
      },
    )
  }
  const connect = async (): Promise<Platform> => {
    small.running.deliver = platformDeliver(small.desk, { token, api: platform.api, spacing: 20, timeout: 400 })
    return await startPlatform(small.desk, {
      token,
      api: platform.api,
      readsContent: options.readsContent ?? false,
      timeout: 400,
      report: (error) => reports.push(error),
      fetch: async (url) => {
        const file = platform.download(url)
        return file === undefined ? new Response(null, { status: 404 }) : new Response(new Uint8Array(file.bytes))
      },
    })
  }
  let bot = await connect()
  return {
    platform,
    small,
    reports,
    ours,
    theirs,
    restart: async (): Promise<void> => {
      await bot.stop()
      bot = await connect()
    },
    close: async (): Promise<void> => {
      await bot.stop()
      await platform.stop()
    },
  }
}
export type Shops = Awaited<ReturnType<typeof openShops>>
