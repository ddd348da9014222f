import { platformDeliver } from '../../../src/adapters/chat/platform/deliver.ts'
import { startDeliveries } from '../../../src/adapters/chat/platform/deliver-waiting.ts'
import { type Platform, startPlatform } from '../../../src/adapters/chat/platform/platform.ts'
import { platformDesk } from '../../../src/desk/platform/platform-desk.ts'
import { readyDelivery } from '../../../src/desk/platform/ready-delivery.ts'
import { type Tenants, tenantsOf } from '../../../src/desk/platform/tenants.ts'
import type { WorkerDesk } from '../../../src/desk/service/desk.ts'
import { openShop } from '../../../src/desk/service/shop/open-shop.ts'
import type { PlatformDesk } from '../../../src/ports/platform-desk.ts'
import { work } from '../desk.ts'
import type { RealGround } from './ground.ts'
import { addServer } from './shop-in-server.ts'
import { type StandIn, startStandIn, token } from './stand-in.ts'

type Working = { readonly stop: () => Promise<void> }

/** Works on what is due in these shops, as workers would, until it is stopped. */
const startWorkers = (
  { store }: WorkerDesk,
  { tenants, shops }: { readonly tenants: Tenants<WorkerDesk>; readonly shops: readonly string[] },
  report: (error: unknown) => void,
): Working => {
  const state = { stopped: false }
  const workIn = async (shop: string): Promise<void> => {
    if ((await store.shop(shop).steps.overdue(0)).length > 0) await work(await tenants(shop))
  }
  const loop = async (): Promise<void> => {
    while (!state.stopped) {
      for (const shop of shops) await workIn(shop).catch(report)
      await new Promise((resolve) => setTimeout(resolve, 25))
    }
  }
  const ended = loop()
  return {
    stop: async () => {
      state.stopped = true
      await ended
    },
  }
}

const settle = async (desk: PlatformDesk, server: ReturnType<typeof addServer>): Promise<string> => {
  const { guild, bench, office, lobby } = server
  const [owners, floor] = guild.roles
  const settings = await desk.setUp(
    { id: guild.id, name: guild.name },
    { id: server.owner.id, name: 'Owner', language: 'en' },
    {
      bench: bench.id,
      owner: office.id,
      orders: lobby.id,
      ownerRoles: [owners?.id ?? ''],
      staffRoles: [floor?.id ?? ''],
    },
  )
  return settings.shop
}

const download = (platform: StandIn) => async (url: string) => {
  const file = platform.download(url)
  return file === undefined ? new Response(null, { status: 404 }) : new Response(new Uint8Array(file.bytes))
}

/** The bot, its deliveries and workers over the store, in two servers that are set up: the house's own and a stranger's. */
export const openRealShops = async ({ desk: base }: RealGround, options: { readonly readsContent?: boolean } = {}) => {
  const platform = await startStandIn()
  const reports: unknown[] = []
  const report = (error: unknown): void => void reports.push(error)
  const ours = addServer(platform, 'Cedar Flats Press')
  const theirs = addServer(platform, 'Birch Hollow Prints')
  const house: WorkerDesk = { ...base, shopId: base.ids.fresh('shop') }
  await openShop(house)
  const desk = platformDesk(house, ours.guild.id)
  const shops = [await settle(desk, ours), await settle(desk, theirs)] as const
  const tenants = tenantsOf(house)
  const workers = startWorkers(house, { tenants, shops }, report)
  const connect = async (): Promise<{ bot: Platform; deliveries: { close: () => Promise<void> } }> => {
    const deliver = platformDeliver(desk, { token, api: platform.api, spacing: 20, timeout: 1_500 })
    const deliveries = await startDeliveries({
      store: house.store,
      deliver,
      ready: (waiting) => readyDelivery(tenants, waiting),
      report,
      milliseconds: 50,
    })
    const bot = await startPlatform(desk, {
      token,
      api: platform.api,
      readsContent: options.readsContent ?? false,
      timeout: 1_500,
      report,
      fetch: download(platform),
    })
    return { bot, deliveries }
  }
  let open = await connect()
  const disconnect = async (): Promise<void> => {
    await open.bot.stop()
    await open.deliveries.close()
  }
  return {
    platform,
    desk,
    house,
    reports,
    ours,
    theirs,
    ourDesk: await tenants(shops[0]),
    ourShop: house.store.shop(shops[0]),
    theirShop: house.store.shop(shops[1]),
    restart: async (): Promise<void> => {
      await disconnect()
      open = await connect()
    },
    /** Everything that was said stands on the platform. */
    waiting: async (): Promise<number> => (await house.store.platform.deliveries.claim(1, 0)).length,
    close: async (): Promise<void> => {
      await workers.stop()
      await disconnect()
      const { deliveries } = house.store.platform
      for (const left of await deliveries.claim(1_000, 0)) await deliveries.drop(left)
      await platform.stop()
    },
  }
}
export type RealShops = Awaited<ReturnType<typeof openRealShops>>
