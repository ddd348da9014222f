import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Address } from '../../../src/adapters/store/address.ts'
import { readBackup, writeBackup } from '../../../src/adapters/store/backup.ts'
import { keptAnchor } from '../../../src/adapters/store/sql/anchor.ts'
import { openStore } from '../../../src/adapters/store/sql/open-store.ts'
import { derivedTables, ownTables, recordTables } from '../../../src/adapters/store/sql/record-tables.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import { openTestStore, root, type TestStore, temporaryFolder, unwrap } from '../../support/embedded.ts'
import { fillFloor } from '../../support/fill-floor.ts'

let test: TestStore
let copy: Address
const folder = temporaryFolder()
const file = join(folder.path, 'records.backup')

const rowsOf = async (address: Address, text: string): Promise<readonly Record<string, unknown>[]> => {
  const client = new pg.Client({ ...address, options: '-c search_path=platenpost' })
  await client.connect()
  try {
    return (await client.query(text)).rows
  } finally {
    await client.end()
  }
}
const everything = async (address: Address) => {
  const tables = await Promise.all(
    [...recordTables, ...derivedTables].map(
      async (table): Promise<[string, readonly unknown[]]> => [
        table,
        (await rowsOf(address, `select t::text as row from "${table}" t order by 1`)).map(({ row }) => row),
      ],
    ),
  )
  return Object.fromEntries(tables)
}

/** At least one row in every table, with texts and numbers that are easily lost. */
const fill = async (): Promise<void> => {
  const at = minutes(29_000_000)
  unwrap(await keptAnchor(test.embedded.service, { real: 1_790_000_000_123, simulated: 1_795_000_000_000, speed: 0.1 }))
  const shop = await test.store.openShop('shop-1')
  unwrap(await shop.conversations.add('c-1', { words: 'a "quoted", (bracketed) \\ line\nand ñ 🧢', nothing: null }))
  unwrap(await shop.orders.add({ orderId: 'o-1', conversationId: 'c-1' }))
  unwrap(await shop.orders.revise({ id: 'o-1', version: 1 }, { document: null, hash: 'h1' }))
  unwrap(await shop.orders.change({ id: 'o-1', version: 2 }, { hold: { why: 'no-answer', by: 'm-1', since: at } }))
  await shop.orders.setRows('o-1', [{ line: 1, state: 'cut' }])
  await shop.quotes.put({ orderId: 'o-1', revision: 1, hash: 'h1' }, { total: 0.1 + 0.2 })
  await shop.pieces.put('o-1', [{ hash: 'p1', body: [[1, 2]] }])
  const ticket = unwrap(await shop.tickets.add({ ticketId: 't-1', orderId: 'o-1', revision: 1, body: {} }))
  unwrap(await shop.tickets.tick({ id: 't-1', version: ticket.version }, [{ step: 1, line: 1, state: 'done', by: null }]))
  await shop.tickets.find('t-1', { code: 'water-drops', facts: {}, by: 'm-1', at })
  await shop.events.add({ code: 'asked', orderId: 'o-1', ticketId: null, by: 'm-1', at, facts: {} })
  await shop.stock.move([{ item: 'stone', amount: 9_007_199_254_740_991, kind: 'seed', orderId: null, at }])
  unwrap(await shop.plan.write(0, { slots: [] }))
  await shop.steps.want({ step: 'plan', orderId: 'o-1', revision: 1 })
  await shop.messages.put({ channel: 'shop:bench', nonce: 'n1', by: 'bot', body: { text: '\\x41' } })
  await shop.posted.note('n1', { messageId: '1', hash: 'h' })
  const rooms = { bench: '2', owner: '3', orders: null, staffRoles: ['{"a"}', 'b,c'], ownerRoles: [] }
  await shop.server.save({ guild: '1', name: "Our 'server'", language: 'es', talks: 'thread', ...rooms })
  await shop.talks.use({ conversation: 'c-1', person: 'p-1', channel: '4', language: 'en' })
  await shop.heard.isNew('d-1')
  await fillFloor(shop, { orderId: 'o-1', ticketId: 't-1', word: "O'Neil, \\ñ", at })
  await shop.deliveries.again('n1')
  await rowsOf(
    test.embedded.owner,
    `insert into platenpost.posting (shop_id, nonce, part, channel, message, fence, until) values ('shop-1', 'n1', 0, '2', '5', 1, 0)`,
  )
  await shop.files.keep('order:o-1', {
    hash: 'f1',
    name: 'a.bin',
    mime: 'x/y',
    bytes: Uint8Array.from({ length: 70_000 }, (_, n) => n % 256),
  })
  unwrap(await shop.members.add({ memberId: 'm-1', name: "O'Neil", role: 'owner' }))
  await shop.keys.add({ kind: 'session', hash: 'k1', holder: 'm-1', until: null })
  await shop.stock.move(
    Array.from({ length: 450 }, (_, n) => ({ item: `item-${n}`, amount: n, kind: 'seed' as const, orderId: null, at })),
  )
}

beforeAll(async () => {
  test = await openTestStore()
  await fill()
  await rowsOf(test.embedded.owner, 'create database copy')
  copy = { ...test.embedded.owner, database: 'copy' }
})
afterAll(async () => {
  await test.close()
  folder.remove()
})

describe('a backup', () => {
  it('knows every table of the records', async () => {
    const found = await rowsOf(
      test.embedded.owner,
      `select table_name as name from information_schema.tables where table_schema = 'platenpost' and table_name not like 'kysely%'`,
    )
    expect(found.map(({ name }) => name).toSorted()).toEqual([...recordTables, ...derivedTables, ...ownTables].toSorted())
  })

  it('that was changed or cut short is refused before anything is written', async () => {
    unwrap(await writeBackup(test.embedded.service, file))
    const text = gunzipSync(readFileSync(file)).toString()
    const spoiled: readonly Buffer[] = [
      gzipSync(text.replace('"table":"order"', '"table":"event"')),
      gzipSync(text.split('\n').toSpliced(5, 1).join('\n')),
      gzipSync(text.slice(0, -200)),
      readFileSync(file).subarray(0, 900),
      Buffer.from('no backup'),
      gzipSync(''),
    ]
    for (const [at, bytes] of spoiled.entries()) {
      const bad = join(folder.path, `bad-${at}`)
      writeFileSync(bad, bytes)
      const refused = await readBackup({ owner: copy, role: null, root }, bad)
      expect(refused).toMatchObject({ ok: false, problems: [{ code: 'backup-damaged', facts: { file: bad } }] })
    }
    expect(await rowsOf(copy, `select from information_schema.tables where table_schema = 'platenpost'`)).toEqual([])
  })

  it('that is not there is no damaged one', async () => {
    const nowhere = join(folder.path, 'no-such.backup')
    const refused = await readBackup({ owner: copy, role: null, root }, nowhere)
    expect(refused).toMatchObject({ ok: false, problems: [{ code: 'backup-missing', facts: { file: nowhere } }] })
  })

  it('put back equals the original, table by table', async () => {
    unwrap(await writeBackup(test.embedded.service, file))
    unwrap(await readBackup({ owner: copy, role: 'service', root }, file))
    const original = await everything(test.embedded.owner)
    expect(Object.entries(original).filter(([, rows]) => rows.length === 0)).toEqual([])
    expect(await everything(copy)).toEqual(original)
  })

  it('put back is another place, so that nobody takes what is queued for the original', async () => {
    const store = unwrap(await openStore({ address: { ...test.embedded.service, database: 'copy' }, time: Date.now }))
    expect(store.place).toMatch(/^[0-9a-f-]{36}$/)
    expect(store.place).not.toBe(test.store.place)
    await store.close()
  })

  it('goes on counting where the original stopped', async () => {
    const store = unwrap(await openStore({ address: { ...test.embedded.service, database: 'copy' }, time: Date.now }))
    const shop = store.shop('shop-1')
    await shop.events.add({ code: 'quoted', orderId: 'o-1', ticketId: null, by: 'm-1', at: minutes(29_000_001), facts: {} })
    expect((await shop.events.ofOrder('o-1')).map(({ code }) => code)).toEqual(['asked', 'quoted'])
    await shop.messages.put({ channel: 'shop:bench', nonce: 'n2', by: 'bot', body: {} })
    expect(await shop.messages.after('shop:bench', 0)).toHaveLength(2)
    await shop.steps.want({ step: 'quote', orderId: 'o-1', revision: 1 })
    expect(await store.outboxOf('shop-1').waiting(10)).toHaveLength(2)
    await store.close()
  })

  it('is not put over records that are there', async () => {
    expect(await readBackup({ owner: copy, role: null, root }, file)).toMatchObject({
      ok: false,
      problems: [{ code: 'store-not-empty' }],
    })
  })

  it('of a newer program is refused', async () => {
    const lines = gunzipSync(readFileSync(file)).toString().trimEnd().split('\n').slice(0, -1)
    const [head = '', ...rows] = lines
    const newer = [head.replace(']', ',"9999-future"]'), ...rows].map((line) => `${line}\n`).join('')
    const { createHash } = await import('node:crypto')
    const foot = JSON.stringify({ lines: lines.length, sha256: createHash('sha256').update(newer).digest('hex') })
    const path = join(folder.path, 'newer')
    writeFileSync(path, gzipSync(`${newer}${foot}\n`))
    expect(await readBackup({ owner: copy, role: null, root }, path)).toMatchObject({
      ok: false,
      problems: [{ code: 'store-newer' }],
    })
  })
})
