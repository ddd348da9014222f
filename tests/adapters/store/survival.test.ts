import { join } from 'node:path'
import pg from 'pg'
import { afterEach, describe, expect, it } from 'vitest'
import { startEmbedded } from '../../../src/adapters/store/embedded/start-embedded.ts'
import { holdService } from '../../../src/adapters/store/hold.ts'
import { runChild } from '../../support/child.ts'
import { temporaryFolder, unwrap } from '../../support/embedded.ts'

const after: (() => Promise<void> | void)[] = []
afterEach(async () => {
  for (const undo of after.splice(0).toReversed()) await undo()
})
const dataFolder = (): string => {
  const folder = temporaryFolder()
  after.push(folder.remove)
  return join(folder.path, 'data')
}

const service = (data: string): string => `
  const { startEmbedded } = await import(built + '/src/adapters/store/embedded/start-embedded.js')
  const { holdService } = await import(built + '/src/adapters/store/hold.js')
  const { default: pg } = await import('pg')
  const embedded = await startEmbedded(${JSON.stringify(data)})
  const held = await holdService(embedded.value.service)
  setInterval(() => undefined, 1_000)
  process.on('SIGINT', async () => {
    const client = new pg.Client(embedded.value.owner)
    await client.connect()
    await client.query('create table last_words as select 7 as number')
    await client.end()
    await held.value.release()
    await embedded.value.stop()
    console.log('stopped')
    process.exit(0)
  })
  console.log('ready')
`

describe('the embedded PostgreSQL of a service', () => {
  it('outlives a service that is killed, and is adopted and held by the next one', async () => {
    const data = dataFolder()
    const child = runChild(service(data))
    await child.says('ready')
    await child.signal('SIGKILL')
    const next = unwrap(await startEmbedded(data))
    after.push(next.stop)
    expect(next.adopted).toBe(true)
    const held = unwrap(await holdService(next.service))
    await held.release()
  })

  it('outlives Ctrl-C, so that the service can end its work and then stop it', async () => {
    const data = dataFolder()
    const child = runChild(service(data))
    await child.says('ready')
    await Promise.all([child.says('stopped'), child.signal('SIGINT')])
    const next = unwrap(await startEmbedded(data))
    after.push(next.stop)
    expect(next.adopted).toBe(false)
    const client = new pg.Client(next.owner)
    await client.connect()
    const { rows } = await client.query('select number from last_words')
    await client.end()
    expect(rows).toEqual([{ number: 7 }])
  })

  it('stays untouched by a second service that is refused', async () => {
    const data = dataFolder()
    const child = runChild(service(data))
    await child.says('ready')
    const second = unwrap(await startEmbedded(data))
    after.push(second.stop)
    expect(second.adopted).toBe(true)
    expect(await holdService(second.service)).toMatchObject({ ok: false, problems: [{ code: 'store-in-use' }] })
    await child.signal('SIGKILL')
  })
})
