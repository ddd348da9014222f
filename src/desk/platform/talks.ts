import { ok } from '../../domain/result/result.ts'
import type { PlatformDesk, PlatformPerson, Talk } from '../../ports/platform-desk.ts'
import type { KeptTalk } from '../../ports/platform-records.ts'
import type { ShopStore } from '../../ports/store.ts'
import type { Desk } from '../service/desk.ts'
import { orderIdOf } from '../service/records/order-id.ts'
import { startTalk } from '../service/talk/start-talk.ts'
import type { House } from './servers.ts'

const isOver = async (shop: ShopStore, conversation: string): Promise<boolean> => {
  const order = await shop.orders.read(orderIdOf(conversation))
  return order?.state === 'collected' || order?.state === 'cancelled'
}

const talkOf = async (shop: ShopStore, kept: KeptTalk): Promise<Talk> => ({
  ...kept,
  over: await isOver(shop, kept.conversation),
})

const running = async (shop: ShopStore, person: string): Promise<Talk | null> => {
  for (const kept of await shop.talks.ofPerson(person)) {
    const talk = await talkOf(shop, kept)
    if (!talk.over) return talk
  }
  return null
}

const open = async (desk: Desk, person: PlatformPerson, channel: string): Promise<Talk> => {
  const { shopId } = desk
  const opened = await desk.store.together(shopId, async (shop) => {
    await shop.talks.alone(person.id)
    const known = await running(shop, person.id)
    const conversation = known?.conversation ?? desk.ids.fresh('c')
    const language = known?.language ?? person.language
    const talk = { conversation, person: person.id, channel, language }
    await shop.talks.use(talk)
    if (known === null) await startTalk(desk, shop, { id: conversation, language })
    return ok({ ...talk, shop: shopId, over: false })
  })
  if (!opened.ok) throw new Error(`no conversation could be opened in ${shopId}`)
  return opened.value
}

/** Which conversation is whose, and where it is held. */
export const talksOf = ({ desk, tenants }: House): Pick<PlatformDesk, 'shopsOf' | 'talkOf' | 'talkIn' | 'openTalk'> => {
  const { store } = desk
  const { platform } = store
  return {
    shopsOf: async (person) => {
      const shops = new Set((await platform.talksOf(person)).map(({ shop }) => shop))
      const servers = await platform.servers()
      return [...shops].flatMap((shop) => servers.filter((server) => server.shop === shop))
    },
    talkOf: async (person, shop) => {
      if (shop !== null) return running(store.shop(shop), person)
      for (const one of new Set((await platform.talksOf(person)).map((talk) => talk.shop))) {
        const talk = await running(store.shop(one), person)
        if (talk !== null) return talk
      }
      return null
    },
    talkIn: async (channel, message) => {
      const talks = await platform.talksIn(channel)
      const shop = message === null || talks.length < 2 ? null : await platform.shopOfMessage(channel, message)
      const kept = talks.find((talk) => talk.shop === shop) ?? talks[0]
      return kept === undefined ? null : talkOf(store.shop(kept.shop), kept)
    },
    openTalk: async (shop, person, channel) => open(await tenants(shop), person, channel),
  }
}
