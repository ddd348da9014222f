import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { gunzipSync, gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { keepBackup } from '../../src/adapters/store/keep-backups.ts'
import { proveBackup } from '../../src/adapters/store/prove-backup.ts'
import { recordTables } from '../../src/adapters/store/sql/record-tables.ts'
import { root, temporaryFolder } from '../support/embedded.ts'
import { followOrders, makeOrders } from '../support/many-orders.ts'
import { type ServedPostgres, startServedPostgres } from '../support/served-postgres.ts'
import { type OpenService, runProgram, startService } from '../support/service.ts'
import { openRecords, openRecordsAt, type Records } from '../support/service-watch.ts'

const folder = temporaryFolder()
const data = join(folder.path, 'data')
const first = join(folder.path, 'first.backup')

const command = async (name: string, settings: { readonly [name: string]: string }, ...words: readonly string[]) => {
  const run = runProgram(`src/cli/${name}.js`, settings, ...words)
  return { code: await run.ended, said: run.said() }
}

const everything = async (records: Records): Promise<{ readonly [table: string]: readonly unknown[] }> => {
  const tables: { [table: string]: readonly unknown[] } = {}
  for (const table of recordTables) {
    const rows = await records.rows(`select t::text as row from platenpost."${table}" t order by 1`)
    tables[table] = rows.map(({ row }) => row)
  }
  await records.close()
  return tables
}

describe('a shop that moves', () => {
  let service: OpenService
  let postgres: ServedPostgres
  let served: { readonly [name: string]: string }
  let original: Awaited<ReturnType<typeof everything>>

  beforeAll(async () => {
    service = await startService(data)
    postgres = await startServedPostgres()
    served = { DATABASE_URL: postgres.serviceUrl, DATABASE_OWNER_URL: postgres.ownerUrl, DATA: join(folder.path, 'keys') }
    const records = await openRecords(data)
    const progress = followOrders(() => records)
    const front = { address: () => service.address, records: () => records }
    await makeOrders({ front, progress, many: 2, atOnce: 2 })
    await progress.close()
    await records.close()
  }, 180_000)
  afterAll(async () => {
    await service.signal('SIGINT')
    await postgres.remove()
    folder.remove()
  }, 120_000)

  it('from one computer to served is the same shop, row by row', { timeout: 180_000 }, async () => {
    await service.signal('SIGINT')
    await service.ended
    const { code, said } = await command('backup', { DATA: data }, '--out', first, '--prove')
    expect([code, said]).toEqual([0, expect.stringMatching(/ \d+ rows were put back and are the same\.\n$/)])
    expect(await command('restore', served, first)).toMatchObject({ code: 0 })
    service = await startService(data)
    original = await everything(await openRecords(data))
    await service.signal('SIGINT')
    // The start after the backup made one more link for the owner; nothing else.
    const moved = await everything(await openRecordsAt(postgres.ownerUrl))
    expect({ ...moved, key: [] }).toEqual({ ...original, key: [] })
    expect(original['key']?.length).toBe((moved['key']?.length ?? 0) + 1)
    expect(moved['ticket']).toHaveLength(2)
    expect(moved['file']?.length).toBeGreaterThan(3)
  })

  it('goes on making tickets there, and back on one computer is the same again', { timeout: 240_000 }, async () => {
    service = await startService(join(folder.path, 'keys'), served)
    const records = await openRecordsAt(postgres.ownerUrl)
    const progress = followOrders(() => records)
    const front = { address: () => service.address, records: () => records }
    await makeOrders({ front, progress, many: 1, atOnce: 1, first: 50 })
    await progress.close()
    const [newest] = await records.rows('select max(number) as number from platenpost.ticket')
    expect(newest).toEqual({ number: 3 })
    await records.close()
    await service.signal('SIGINT')
    await service.ended
    const second = join(folder.path, 'second.backup')
    expect(await command('backup', served, '--out', second)).toMatchObject({ code: 0 })
    const home = join(folder.path, 'home')
    // Said from where the command is given, as people say folders.
    expect(await command('restore', { DATA: relative(process.cwd(), home) }, second)).toMatchObject({ code: 0 })
    const was = await everything(await openRecordsAt(postgres.ownerUrl))
    service = await startService(home)
    const is = await everything(await openRecords(home))
    expect({ ...is, key: [] }).toEqual({ ...was, key: [] })
  })

  it('keeps the newest backups of its own making, and no more', { timeout: 120_000 }, async () => {
    const into = join(folder.path, 'nightly')
    mkdirSync(into)
    writeFileSync(join(into, 'a-file-of-the-owner.txt'), 'mine')
    for (const day of [1, 2]) {
      const kept = await keepBackup(
        { address: { connectionString: postgres.ownerUrl }, folder: into, keep: 1, root },
        new Date(Date.UTC(2026, 11, day)),
      )
      expect(kept).toEqual({ ok: true, value: { file: expect.stringContaining(into), rows: expect.any(Number) } })
    }
    expect(readdirSync(into).toSorted()).toEqual(['a-file-of-the-owner.txt', 'records-20261202T000000Z.backup'])
  })

  it('is told when a backup cannot be put back', { timeout: 120_000 }, async () => {
    const bad = join(folder.path, 'bad.backup')
    writeFileSync(bad, gzipSync(gunzipSync(readFileSync(first)).toString().replace('Herons', 'Kites')))
    expect(await proveBackup(bad, root)).toMatchObject({ ok: false, problems: [{ code: 'backup-damaged' }] })
  })
})
