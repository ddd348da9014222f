import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import * as z from 'zod'
import type { News } from '../../../ports/store.ts'
import type { Address } from '../address.ts'

const newsSchema = z.object({ shopId: z.string(), topic: z.string(), id: z.string() })

const parse = (payload: string | undefined): News | undefined => {
  try {
    return newsSchema.safeParse(JSON.parse(payload ?? '')).data
  } catch {
    return undefined
  }
}

/** Each topic has a channel of its own: nobody is woken for what they do not listen to. */
const channelOf = (topic: string): string => pg.escapeIdentifier(`platenpost_${topic}`)

export type Ear = { readonly topics: readonly string[]; readonly listener: (news: News) => void }

const connect = async (address: Address, { topics, listener }: Ear, lost: () => void): Promise<pg.Client> => {
  const client = new pg.Client({ ...address, keepAlive: true })
  client.on('error', () => undefined)
  client.on('end', lost)
  client.on('notification', ({ payload }) => {
    const news = parse(payload)
    if (news !== undefined) listener(news)
  })
  await client.connect()
  for (const topic of topics) await client.query(`listen ${channelOf(topic)}`)
  return client
}

const longestPause = 5_000

/** Listens on a connection of its own; when that breaks it is made anew, and what was said meanwhile is not heard. */
export const listenTo = async (address: Address, ear: Ear): Promise<() => Promise<void>> => {
  const state: { client: pg.Client | null; stopped: boolean } = { client: null, stopped: false }

  const renew = async (wait: number): Promise<void> => {
    await pause(wait)
    if (state.stopped) return
    try {
      state.client = await connect(address, ear, lost)
      if (state.stopped) await state.client.end()
    } catch {
      await renew(Math.min(wait * 2, longestPause))
    }
  }
  const lost = (): void => {
    if (!state.stopped && state.client !== null) {
      state.client = null
      void renew(100)
    }
  }

  state.client = await connect(address, ear, lost)
  return async () => {
    state.stopped = true
    await state.client?.end()
  }
}
