import { ok } from '../../../domain/result/result.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { Key, Keys, Members } from '../../../ports/talk-records.ts'
import { atomic } from './atomic.ts'
import { compiled } from './compiled.ts'
import { text } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'
import { alreadyThere } from './versions.ts'

const columns = ['memberId', 'name', 'role'] as const

const allMembers = ({ db, shopId }: Scope) => db.selectFrom('member').select(columns).where('shopId', '=', shopId)

export const membersIn = (scope: Scope): Members => ({
  add: async (member) => {
    const { db, shopId } = scope
    const row = await db
      .insertInto('member')
      .values({ shopId, ...member, name: text(member.name) })
      .onConflict((on) => on.doNothing())
      .returning(columns)
      .executeTakeFirst()
    return row === undefined ? alreadyThere('member', member.memberId) : ok(row)
  },
  read: async (memberId) => {
    const row = await allMembers(scope).where('memberId', '=', memberId).executeTakeFirst()
    return row ?? null
  },
  list: () => allMembers(scope).orderBy('memberId').execute(),
  remove: (memberId) =>
    atomic(scope, async ({ db, shopId }) => {
      await db.deleteFrom('key').where('shopId', '=', shopId).where('holder', '=', memberId).execute()
      await db.deleteFrom('member').where('shopId', '=', shopId).where('memberId', '=', memberId).execute()
    }),
})

const isOpen = (until: Minutes | null, now: Minutes): boolean => until === null || until > now

type KeyName = Pick<Key, 'kind' | 'hash'> & { readonly shopId: string }

const theKey = compiled((db, { shopId, kind, hash }: KeyName) =>
  db.selectFrom('key').select(['holder', 'until']).where('shopId', '=', shopId).where('kind', '=', kind).where('hash', '=', hash),
)

const addKey = compiled((db, { shopId, hash, kind, holder, until }: Key & KeyName) =>
  db.insertInto('key').values({ shopId, hash, kind, holder, until }).modifyEnd(unawaited),
)

const drop = ({ db, shopId }: Scope, kind: Key['kind'], hash: string) =>
  db.deleteFrom('key').where('shopId', '=', shopId).where('kind', '=', kind).where('hash', '=', hash)

export const keysIn = (scope: Scope): Keys => ({
  add: async (key) => {
    await addKey.all(scope.db, { shopId: scope.shopId, ...key })
  },
  read: async (kind, hash, now) => {
    const row = await theKey.first(scope.db, { shopId: scope.shopId, kind, hash })
    return row !== undefined && isOpen(row.until, now) ? row.holder : null
  },
  use: async (kind, hash, now) => {
    const row = await drop(scope, kind, hash).returning(['holder', 'until']).executeTakeFirst()
    return row !== undefined && isOpen(row.until, now) ? row.holder : null
  },
  drop: async (kind, hash) => {
    await drop(scope, kind, hash).execute()
  },
  sweep: async (now) => {
    const { numDeletedRows } = await scope.db
      .deleteFrom('key')
      .where('shopId', '=', scope.shopId)
      .where('until', '<=', now)
      .executeTakeFirst()
    return Number(numDeletedRows)
  },
  revoke: async (kind, holder) => {
    const of = scope.db.deleteFrom('key').where('shopId', '=', scope.shopId)
    await of.where('kind', '=', kind).where('holder', '=', holder).execute()
  },
})
