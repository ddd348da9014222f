import { sql } from 'kysely'
import type { Files, HashedFile, StoredBytes } from '../../../ports/talk-records.ts'
import { atomic } from './atomic.ts'
import { compiled } from './compiled.ts'
import { text } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

/** The bytes once for all, and who may show them, in one statement. */
const keep = async ({ db, shopId }: Scope, owner: string, { hash, ...file }: HashedFile): Promise<void> => {
  await sql`
    with bytes as (insert into file (shop_id, hash, bytes) values (${shopId}, ${hash}, ${file.bytes}) on conflict do nothing)
    insert into file_use (shop_id, owner, hash, name, mime)
    values (${shopId}, ${owner}, ${hash}, ${text(file.name)}, ${text(file.mime)}) on conflict do nothing ${unawaited}`.execute(db)
}

/** Lets one more owner show a file that is kept already, by the name its first owner gave it. */
const show = async ({ db, shopId }: Scope, owner: string, hash: string): Promise<void> => {
  await db
    .insertInto('fileUse')
    .columns(['shopId', 'owner', 'hash', 'name', 'mime'])
    .expression((from) =>
      from
        .selectFrom('fileUse')
        .select((row) => ['shopId', row.val(owner).as('owner'), 'hash', 'name', 'mime'])
        .where('shopId', '=', shopId)
        .where('hash', '=', hash)
        .orderBy('owner')
        .limit(1),
    )
    .onConflict((on) => on.doNothing())
    .execute()
}

const hide = (outer: Scope, owner: string, hash: string): Promise<void> =>
  atomic(outer, async ({ db, shopId }) => {
    await db.deleteFrom('fileUse').where('shopId', '=', shopId).where('owner', '=', owner).where('hash', '=', hash).execute()
    await db
      .deleteFrom('file')
      .where('shopId', '=', shopId)
      .where('hash', '=', hash)
      .where(({ not, exists, selectFrom }) =>
        not(
          exists(
            selectFrom('fileUse')
              .select('owner')
              .whereRef('fileUse.shopId', '=', 'file.shopId')
              .whereRef('fileUse.hash', '=', 'file.hash'),
          ),
        ),
      )
      .execute()
  })

const theFile = compiled(
  (db, { shopId, owner, hash }: { readonly shopId: string; readonly owner: string; readonly hash: string }) =>
    db
      .selectFrom('fileUse')
      .innerJoin('file', (on) => on.onRef('file.shopId', '=', 'fileUse.shopId').onRef('file.hash', '=', 'fileUse.hash'))
      .select(['fileUse.name', 'fileUse.mime', 'file.bytes'])
      .where('fileUse.shopId', '=', shopId)
      .where('fileUse.owner', '=', owner)
      .where('fileUse.hash', '=', hash),
)

const read = async ({ db, shopId }: Scope, owner: string, hash: string): Promise<StoredBytes | null> =>
  (await theFile.first(db, { shopId, owner, hash })) ?? null

export const filesIn = (scope: Scope): Files => ({
  keep: (owner, file) => keep(scope, owner, file),
  show: (owner, hash) => show(scope, owner, hash),
  hide: (owner, hash) => hide(scope, owner, hash),
  read: (owner, hash) => read(scope, owner, hash),
  ofOwner: (owner) =>
    scope.db
      .selectFrom('fileUse')
      .select(['hash', 'name', 'mime'])
      .where('shopId', '=', scope.shopId)
      .where('owner', '=', owner)
      .orderBy('name')
      .execute(),
})
