import { cpSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { startEmbedded } from '../../src/adapters/store/embedded/start-embedded.ts'
import { recordTables } from '../../src/adapters/store/sql/record-tables.ts'
import { temporaryFolder, unwrap } from '../support/embedded.ts'
import { ask } from '../support/page-request.ts'
import { type OpenService, runProgram, startService } from '../support/service.ts'
import { arrive, type Customer, giveAges, orderOf, pageOf, say, signOff, wordsFor } from '../support/service-customer.ts'
import { eventsOf, leftOf, openRecords, type Records, untilEvent } from '../support/service-watch.ts'

const folder = temporaryFolder()
const data = join(folder.path, 'data')
const copy = join(folder.path, 'copy')
const file = join(folder.path, 'backups', 'records.backup')

const command = async (name: string, settings: { readonly [name: string]: string }, ...words: readonly string[]) => {
  const run = runProgram(`src/cli/${name}.js`, settings, ...words)
  const code = await run.ended
  return { code, said: run.said() }
}

/** Every row of every table as text. */
const everything = async (records: Records): Promise<{ readonly [table: string]: readonly unknown[] }> => {
  const tables: { [table: string]: readonly unknown[] } = {}
  for (const table of recordTables) {
    const rows = await records.rows(`select t::text as row from platenpost."${table}" t order by 1`)
    tables[table] = rows.map(({ row }) => row)
  }
  return tables
}

/** The rows of a table but for the pictures of the load that the owner gets each morning from seven: they are nobody's. */
const withoutLoads = (tables: Awaited<ReturnType<typeof everything>>) => {
  const uses = (tables['file_use'] ?? []).map(String)
  const loads = uses.flatMap((row) => /,shop:owner,([0-9a-f]+),load\.png,/.exec(row)?.[1] ?? [])
  return (table: string): readonly unknown[] =>
    (tables[table] ?? []).filter((row) => !loads.some((hash) => String(row).includes(hash)))
}

let service: OpenService
let records: Records
let customer: Customer
let orderId: string
const team = 'Riverbend Otters'

beforeAll(async () => {
  service = await startService(data)
  records = await openRecords(data)
  customer = await arrive(service.address, wordsFor(team, 3))
  orderId = await orderOf(records, customer)
  await giveAges(customer)
  await signOff(customer)
  await untilEvent(records, orderId, 'posted')
  await say(customer, 'I want to talk to a person about Quist please')
})
afterAll(async () => {
  await records.close()
  if (service.process.exitCode === null) await service.signal('SIGINT')
  folder.remove()
})

describe('the records of a shop', () => {
  it('are backed up while the service runs, into one file for its owner alone', async () => {
    const { code, said } = await command('backup', { DATA: data }, '--out', file)
    expect([code, said]).toEqual([0, expect.stringContaining(`${file} holds every record of ${data} (orders: 1; rows: `)])
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect((await ask(service.address, '/up')).text).toBe('up')
  })

  it('are never written over a file that is there', async () => {
    const before = readFileSync(file)
    const { code, said } = await command('backup', { DATA: data }, '--out', file)
    expect([code, said]).toEqual([1, expect.stringContaining(`There is a file ${file} already`)])
    expect(readFileSync(file).equals(before)).toBe(true)
  })

  it('of an order that is being made are not forgotten', async () => {
    const { code, said } = await command('forget', { DATA: data }, orderId)
    expect([code, said]).toEqual([1, expect.stringContaining('its people are needed until it is handed over')])
    expect(await command('forget', { DATA: data }, 'o0')).toEqual({
      code: 1,
      said: expect.stringMatching(/^stop: There is no order o0 in this shop\. .+orders\.csv/),
    })
    const byTicket = await command('forget', { DATA: data }, 'T0001')
    expect(byTicket).toEqual({ code: 1, said: expect.stringMatching(/^stop: T0001 is the number of a ticket, .+orders\.csv/) })
    expect((await command('forget', { DATA: data })).code).toBe(2)
  })

  it('come back from a backup equal to the original, table by table, and go on', { timeout: 60_000 }, async () => {
    await records.close()
    await service.signal('SIGINT')
    rmSync(file)
    const { code } = await command('backup', { DATA: data }, '--out', file)
    expect(code).toBe(0)
    expect(leftOf(data, [])).toEqual([])
    expect(await command('restore', { DATA: copy }, file)).toEqual({
      code: 0,
      said: `The records of ${file} are back. Start the service.\n`,
    })
    const both = await Promise.all([data, copy].map(async (at) => unwrap(await startEmbedded(at))))
    const [original, restored] = await Promise.all([data, copy].map(openRecords))
    if (original === undefined || restored === undefined) throw new Error('both stores run')
    const [was, is] = await Promise.all([everything(original), everything(restored)])
    await Promise.all([original.close(), restored.close()])
    await Promise.all(both.map(({ stop }) => stop()))
    expect(is).toEqual(was)
    for (const table of ['order', 'message', 'ticket', 'event', 'file', 'stock_move', 'quote']) {
      expect([table, was[table]?.length]).not.toEqual([table, 0])
    }
    service = await startService(copy)
    records = await openRecords(copy)
    customer = { ...customer, address: service.address }
    expect(await pageOf(customer)).toContain('is on the bench')
  })

  it('are not put over others, nor from a damaged file, nor under a running service', async () => {
    expect(await command('restore', { DATA: copy }, file)).toMatchObject({
      code: 1,
      said: expect.stringContaining('Another service runs'),
    })
    expect(await command('restore', { DATA: data }, file)).toMatchObject({
      code: 1,
      said: expect.stringContaining('There are records in the shop’s own store'),
    })
    const damaged = join(folder.path, 'damaged')
    writeFileSync(damaged, readFileSync(file).subarray(0, 5_000))
    expect(await command('restore', { DATA: join(folder.path, 'new') }, damaged)).toMatchObject({
      code: 1,
      said: expect.stringContaining('is damaged, cut short, or no backup'),
    })
    expect(await command('backup', { DATA: join(folder.path, 'nothing') }, '--out', file)).toMatchObject({
      code: 1,
      said: expect.stringContaining('There are no records in'),
    })
  })

  it('lose every name when their order is over and forgotten; events stay', async () => {
    await records.rows(`update platenpost."order" set state = 'collected', handed_over_at = 1 where order_id = $1`, orderId)
    const names = /Otters|Whitlow|Lindqvist|Banerjee|Quist/
    const whole = JSON.stringify(await everything(records))
    expect(whole).toMatch(names)
    const events = await eventsOf(records, orderId)
    expect(events).toContain('person-asked')
    const { code, said } = await command('forget', { DATA: copy }, '--due', '--json')
    expect([code, JSON.parse(said)]).toEqual([0, { forgotten: [orderId] }])
    const after = await everything(records)
    expect(JSON.stringify(after)).not.toMatch(names)
    const ofPeople = withoutLoads(after)
    expect([ofPeople('file'), ofPeople('file_use'), after['conversation'], after['quote']]).toEqual([[], [], [], []])
    expect(await eventsOf(records, orderId)).toEqual([...events, 'forgotten'])
    expect((await ask(service.address, customer.base)).status).toBe(404)
    expect(await command('forget', { DATA: copy }, '--due')).toEqual({ code: 0, said: 'Nobody is due to be forgotten.\n' })
    expect(await command('forget', { DATA: copy }, orderId)).toEqual({ code: 0, said: `Forgotten: ${orderId}\n` })
    expect(await eventsOf(records, orderId)).toEqual([...events, 'forgotten'])
  })

  it('are missed aloud when the shop is opened by another id', async () => {
    const shop = join(folder.path, 'shop')
    cpSync('templates/shop', shop, { recursive: true })
    const profile = readFileSync(join(shop, 'shop.json'), 'utf8')
    writeFileSync(join(shop, 'shop.json'), profile.replace('"id": "mesa-street"', '"id": "our-own"'))
    const renamed = await startService(data, { SHOP: shop })
    await renamed.signal('SIGINT')
    expect(renamed.said()).toContain('caution at /id: There are orders of “mesa-street” here and none of “our-own”')
    const again = await startService(data)
    await again.signal('SIGINT')
    expect(again.said()).not.toContain('There are orders of')
  })
})
