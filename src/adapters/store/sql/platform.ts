import { sql } from 'kysely'
import type { GuildSettings } from '../../../ports/platform-desk.ts'
import type { DeliveryBook, HeardBook, KeptTalk, PlatformRecords, ServerBook, Talks } from '../../../ports/platform-records.ts'
import { atomic } from './atomic.ts'
import { compiled } from './compiled.ts'
import { deliveriesIn } from './deliveries.ts'
import { text } from './json.ts'
import { postingsIn } from './postings.ts'
import type { Database, Scope } from './tables.ts'

const serverColumns = [
  'guild',
  'shopId as shop',
  'name',
  'language',
  'talks',
  'bench',
  'owner',
  'orders',
  'staffRoles',
  'ownerRoles',
] as const
const talkColumns = ['shopId as shop', 'conversationId as conversation', 'person', 'channel', 'language'] as const

const serverOf = (db: Database, shopId: string) => db.selectFrom('server').select(serverColumns).where('shopId', '=', shopId)

type ServerKey = { readonly shopId: string }
const theServer = compiled((db, { shopId }: ServerKey) => serverOf(db, shopId))
const heldServer = compiled((db, { shopId }: ServerKey) => serverOf(db, shopId).forUpdate())

export const serverIn = ({ db, shopId }: Scope): ServerBook => ({
  read: async (): Promise<GuildSettings | null> =>
    (await (db.isTransaction ? heldServer : theServer).first(db, { shopId })) ?? null,
  save: async (settings) => {
    const row = {
      ...settings,
      name: text(settings.name),
      staffRoles: [...settings.staffRoles],
      ownerRoles: [...settings.ownerRoles],
    }
    await db
      .insertInto('server')
      .values({ shopId, ...row })
      .onConflict((on) => on.column('shopId').doUpdateSet(row))
      .execute()
  },
})

const talksOver = (db: Database) => db.selectFrom('talk').select(talkColumns).orderBy('usedAt', 'desc')

export const talksIn = ({ db, shopId }: Scope): Talks => ({
  of: async (conversationId): Promise<KeptTalk | null> =>
    (await talksOver(db).where('shopId', '=', shopId).where('conversationId', '=', conversationId).executeTakeFirst()) ?? null,
  ofPerson: (person) => talksOver(db).where('shopId', '=', shopId).where('person', '=', person).execute(),
  alone: async (person) => {
    await sql`select pg_advisory_xact_lock(hashtextextended(${`talks of ${person} in ${shopId}`}, 0))`.execute(db)
  },
  use: async ({ conversation, person, channel, language }) => {
    const usedAt = sql<Date>`clock_timestamp()`
    await db
      .insertInto('talk')
      .values({ shopId, conversationId: conversation, person, channel, language, usedAt })
      .onConflict((on) => on.columns(['shopId', 'conversationId']).doUpdateSet({ channel, language, usedAt }))
      .execute()
  },
})

export const heardIn = ({ db, shopId }: Scope): HeardBook => ({
  isNew: async (deliveryId) => {
    const row = await db
      .insertInto('heard')
      .values({ shopId, deliveryId: text(deliveryId) })
      .onConflict((on) => on.doNothing())
      .returning('deliveryId')
      .executeTakeFirst()
    return row !== undefined
  },
  count: async () => {
    const { many } = await db
      .selectFrom('heard')
      .select(sql<number>`count(*)::integer`.as('many'))
      .where('shopId', '=', shopId)
      .executeTakeFirstOrThrow()
    return many
  },
  clear: async (hours) => {
    await db
      .deleteFrom('heard')
      .where('shopId', '=', shopId)
      .where(sql<boolean>`at <= now() - make_interval(hours => ${hours})`)
      .execute()
  },
})

export const deliveryBookIn = (outer: Scope): DeliveryBook => ({
  again: (nonce) =>
    atomic(outer, async ({ db, shopId }) => {
      const message = await db
        .selectFrom('message')
        .select(['channel', 'seq', 'changed'])
        .where('shopId', '=', shopId)
        .where('nonce', '=', nonce)
        .executeTakeFirst()
      if (message === undefined) return false
      await db
        .updateTable('posting')
        .set({ round: sql<number>`round + 1`, channel: null, firstAttemptAt: null, message: null, body: null })
        .where('shopId', '=', shopId)
        .where('nonce', '=', nonce)
        .execute()
      await db
        .insertInto('delivery')
        .values({ shopId, nonce, ...message })
        .onConflict((on) => on.columns(['shopId', 'nonce']).doUpdateSet({ dueAt: sql<Date>`now()`, tries: 0 }))
        .execute()
      await sql`select pg_notify('platenpost_delivery', ${JSON.stringify({ shopId, topic: 'delivery', id: nonce })})`.execute(db)
      return true
    }),
})

export const platformIn = (db: Database): PlatformRecords => ({
  servers: () => db.selectFrom('server').select(['guild', 'shopId as shop', 'name', 'language']).orderBy('guild').execute(),
  shopOf: async (guild) => {
    const row = await db.selectFrom('server').select('shopId').where('guild', '=', guild).executeTakeFirst()
    return row?.shopId ?? null
  },
  talksIn: (channel) => talksOver(db).where('channel', '=', channel).execute(),
  talksOf: (person) => talksOver(db).where('person', '=', person).execute(),
  shopOfMessage: async (channel, message) => {
    const row = await db
      .selectFrom('posting')
      .select('shopId')
      .where('channel', '=', channel)
      .where('message', '=', message)
      .executeTakeFirst()
    return row?.shopId ?? null
  },
  postings: postingsIn(db),
  deliveries: deliveriesIn(db),
})
