import { sql } from 'kysely'
import type { FileMark, Files, HashedFile, StoredBytes } from '../../../ports/talk-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledText } from './compiled.ts'
import { text } from './json.ts'
import type { Scope } from './tables.ts'
import { unawaited } from './unawaited.ts'

/** The bytes once for all, and who may show them, in one statement. */
const keepFile = compiledText(
  ({ shopId, owner, hash, name, mime, bytes }: HashedFile & { readonly shopId: string; readonly owner: string }) => sql`
    with bytes as (insert into file (shop_id, hash, bytes) values (${shopId}, ${hash}, ${bytes}) on conflict do nothing)
    insert into file_use (shop_id, owner, hash, name, mime)
    values (${shopId}, ${owner}, ${hash}, ${name}, ${mime}) on conflict do nothing ${unawaited}`,
)

const keep = async ({ db, shopId }: Scope, owner: string, { hash, name, mime, bytes }: HashedFile): Promise<void> => {
  await keepFile.all(db, { shopId, owner, hash, name: text(name), mime: text(mime), bytes })
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

type Shared = { readonly shopId: string; readonly owner: string; readonly hash: string }
type Other = { readonly other: string; readonly name: string }

const shareFile = compiledText(
  ({ shopId, owner, hash, other, name }: Shared & Other) => sql<FileMark>`
  with shown as (
    select use.mime, octet_length(file.bytes) as size
    from file_use use join file on file.shop_id = ${shopId} and file.hash = use.hash
    where use.shop_id = ${shopId} and use.owner = ${owner} and use.hash = ${hash}
  ), shared as (
    insert into file_use (shop_id, owner, hash, name, mime)
    select ${shopId}, ${other}, ${hash}, ${name}, mime from shown on conflict do nothing
  )
  select mime, size from shown`,
)

const markFile = compiledText(
  ({ shopId, owner, hash }: Shared) => sql<FileMark>`
  select use.mime, octet_length(file.bytes) as size
  from file_use use join file on file.shop_id = ${shopId} and file.hash = use.hash
  where use.shop_id = ${shopId} and use.owner = ${owner} and use.hash = ${hash}`,
)

const share = async ({ db, shopId }: Scope, shown: Omit<Shared, 'shopId'>, other: Other): Promise<FileMark | null> =>
  (await shareFile.first(db, { shopId, ...shown, ...other })) ?? null

export const filesIn = (scope: Scope): Files => ({
  keep: (owner, file) => keep(scope, owner, file),
  show: (owner, hash) => show(scope, owner, hash),
  hide: (owner, hash) => hide(scope, owner, hash),
  read: (owner, hash) => read(scope, owner, hash),
  share: (owner, hash, other) => share(scope, { owner, hash }, { other: other.owner, name: text(other.name) }),
  mark: async (owner, hash) => (await markFile.first(scope.db, { shopId: scope.shopId, owner, hash })) ?? null,
  ofOwner: (owner) =>
    scope.db
      .selectFrom('fileUse')
      .select(['hash', 'name', 'mime'])
      .where('shopId', '=', scope.shopId)
      .where('owner', '=', owner)
      .orderBy('name')
      .execute(),
})
