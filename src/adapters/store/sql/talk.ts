import { sql } from 'kysely'
import { ok } from '../../../domain/result/result.ts'
import type { Minutes } from '../../../domain/units/units.ts'
import type { Kept, Seen } from '../../../ports/keeping.ts'
import type {
  Conversations,
  Messages,
  PostedNotes,
  Posting,
  StoredConversation,
  StoredMessage,
} from '../../../ports/talk-records.ts'
import { atomic } from './atomic.ts'
import { compiled, compiledText } from './compiled.ts'
import { changeOrFail } from './hopeful.ts'
import { json } from './json.ts'
import { noteMessage, settle } from './pending.ts'
import type { Scope } from './tables.ts'
import { languageIn } from './talk-language.ts'
import { alreadyThere, outdated } from './versions.ts'
import { writeMessage } from './write-messages.ts'

const columns = ['conversationId', 'state', 'version'] as const

type TalkKey = { readonly shopId: string; readonly conversationId: string }

const theLanguage = compiledText(
  ({ shopId, conversationId }: TalkKey) => sql<{ readonly language: string | null }>`
  select state->>'language' as language from conversation where shop_id = ${shopId} and conversation_id = ${conversationId}`,
)

type Opened = { readonly conversationId: string; readonly language: string | null }

const opened = compiledText(
  ({ shopId, hash, now }: { readonly shopId: string; readonly hash: string; readonly now: number }) => sql<Opened>`
  select talk.conversation_id, talk.state->>'language' as language
  from key join conversation talk on talk.shop_id = ${shopId} and talk.conversation_id = key.holder
  where key.shop_id = ${shopId} and key.kind = 'customer' and key.hash = ${hash} and (key.until is null or key.until > ${now})`,
)

const openedBy = async ({ db, shopId }: Scope, hash: string, now: Minutes): ReturnType<Conversations['openedBy']> => {
  const row = await opened.first(db, { shopId, hash, now })
  const language = languageIn(row?.language ?? null)
  return row === undefined || language === null ? null : { conversationId: row.conversationId, language }
}

const theTalk = compiled((db, { shopId, conversationId }: TalkKey) =>
  db.selectFrom('conversation').select(columns).where('shopId', '=', shopId).where('conversationId', '=', conversationId),
)

const read = async ({ db, shopId }: Scope, conversationId: string): Promise<StoredConversation | null> =>
  (await theTalk.first(db, { shopId, conversationId })) ?? null

type SavedTalk = TalkKey & { readonly state: string; readonly seen: number; readonly version: number }

const saving = ({ shopId, conversationId, state, seen, version }: SavedTalk) => sql<{ readonly version: number }>`
  update conversation set state = ${state}, version = ${version}
  where shop_id = ${shopId} and conversation_id = ${conversationId} and version = ${seen}
  returning version`

const saveTalk = compiledText(saving)
const saveTalkLater = compiled((db, values: SavedTalk) => changeOrFail(db, saving(values)))

const addTalk = compiled((db, { shopId, conversationId, state }: TalkKey & { readonly state: string }) =>
  db
    .insertInto('conversation')
    .values({ shopId, conversationId, state })
    .onConflict((on) => on.doNothing())
    .returning(columns),
)

const save = async (scope: Scope, seen: Seen, state: unknown): Kept<Seen> => {
  const { db, shopId } = scope
  const saved = { id: seen.id, version: seen.version + 1 }
  const values = { shopId, conversationId: seen.id, seen: seen.version, version: saved.version, state: json(state) }
  if (scope.hopeful === true) {
    await saveTalkLater.all(db, values)
    return ok(saved)
  }
  const row = await saveTalk.first(db, values)
  return row === undefined ? outdated('conversation', seen, (await read(scope, seen.id))?.version) : ok(saved)
}

export const conversationsIn = (scope: Scope): Conversations => ({
  add: async (conversationId, state) => {
    const row = await addTalk.first(scope.db, { shopId: scope.shopId, conversationId, state: json(state) })
    return row === undefined ? alreadyThere('conversation', conversationId) : ok(row)
  },
  read: (conversationId) => read(scope, conversationId),
  save: (seen, state) => save(scope, seen, state),
  language: async (conversationId) => {
    const row = await theLanguage.first(scope.db, { shopId: scope.shopId, conversationId })
    return languageIn(row?.language ?? null)
  },
  openedBy: (hash, now) => openedBy(scope, hash, now),
})

/** When it is said, by the shop's time. */
const now = ({ time }: Scope): string => new Date(time()).toISOString()

const say = async (scope: Scope, posting: Posting): Promise<void> => {
  const { channel, nonce, by, body } = posting
  await noteMessage(scope, { channel, nonce, by, body, at: now(scope) })
}

const put = async (scope: Scope, posting: Posting): ReturnType<Messages['put']> => {
  await settle(scope)
  const row = await writeMessage(scope, { ...posting, at: now(scope) })
  if (row !== undefined) return { messageId: row.messageId, outcome: row.edits === 0 ? 'posted' : 'edited' }
  const known = await theMessage.first(scope.db, { shopId: scope.shopId, nonce: posting.nonce })
  if (known === undefined) throw new Error(`the message ${posting.nonce} was not written`)
  return { messageId: known.messageId, outcome: 'already-there' }
}

const messageColumns = ['messageId', 'channel', 'seq', 'changed', 'edits', 'by', 'at', 'body'] as const

const theMessage = compiled((db, { shopId, nonce }: { readonly shopId: string; readonly nonce: string }) =>
  db.selectFrom('message').select(messageColumns).where('shopId', '=', shopId).where('nonce', '=', nonce),
)

const of = async (scope: Scope, nonce: string): Promise<StoredMessage | null> => {
  await settle(scope)
  const row = await theMessage.first(scope.db, { shopId: scope.shopId, nonce })
  return row === undefined ? null : { ...row, at: row.at.getTime() }
}

type Newer = { readonly shopId: string; readonly channel: string; readonly changed: number }

const newer = compiled((db, { shopId, channel, changed }: Newer) =>
  db
    .selectFrom('message')
    .select(messageColumns)
    .where('shopId', '=', shopId)
    .where('channel', '=', channel)
    .where('changed', '>', changed)
    .orderBy('seq'),
)

const after = async (scope: Scope, channel: string, changed: number): Promise<readonly StoredMessage[]> => {
  await settle(scope)
  const rows = await newer.all(scope.db, { shopId: scope.shopId, channel, changed })
  return rows.map((row) => ({ ...row, at: row.at.getTime() }))
}

/** Words are looked for as the text of a document has them. */
const naming = async (scope: Scope, channel: string, words: readonly string[]): ReturnType<Messages['naming']> => {
  await settle(scope)
  const { db, shopId } = scope
  const written = words.map((word) => JSON.stringify(word).slice(1, -1))
  return db
    .selectFrom('message')
    .select(['nonce', 'body'])
    .where('shopId', '=', shopId)
    .where('channel', '=', channel)
    .where(sql<boolean>`exists (select from unnest(${written}::text[]) word where position(word in body::text) > 0)`)
    .orderBy('seq')
    .execute()
}

export const messagesIn = (scope: Scope): Messages => ({
  put: (posting) => atomic(scope, (inner) => put(inner, posting)),
  say: (posting) => atomic(scope, (inner) => say(inner, posting)),
  of: (nonce) => of(scope, nonce),
  after: (channel, changed) => after(scope, channel, changed),
  naming: (channel, words) => naming(scope, channel, words),
})

export const postedIn = ({ db, shopId }: Scope): PostedNotes => ({
  read: async (nonce) => {
    const row = await db
      .selectFrom('posted')
      .select(['messageId', 'hash'])
      .where('shopId', '=', shopId)
      .where('nonce', '=', nonce)
      .executeTakeFirst()
    return row ?? null
  },
  note: async (nonce, { messageId, hash }) => {
    await db
      .insertInto('posted')
      .values({ shopId, nonce, messageId, hash })
      .onConflict((on) => on.columns(['shopId', 'nonce']).doUpdateSet({ messageId, hash }))
      .execute()
  },
})
