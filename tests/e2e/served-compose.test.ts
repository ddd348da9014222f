import { spawn, spawnSync } from 'node:child_process'
import { once } from 'node:events'
import { cpSync, existsSync, mkdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { findAccount } from '../../src/adapters/store/embedded/account.ts'
import { type ComposeName, commandOf, environmentOf, folderAt, healthOf, takenFrom } from '../support/compose.ts'
import { root, temporaryFolder, unwrap } from '../support/embedded.ts'
import { followOrders, makeOrders, nothingWrong, wrongsOf } from '../support/many-orders.ts'
import { findProgram, needs } from '../support/needs.ts'
import { type ServedPostgres, startServedPostgres } from '../support/served-postgres.ts'
import { freePort } from '../support/service.ts'
import { openRecordsAt, type Records } from '../support/service-watch.ts'
import { until } from '../support/until.ts'

type Values = { readonly [name: string]: string }
type Running = {
  readonly name: ComposeName
  readonly environment: Values
  readonly said: () => string
  readonly stop: () => Promise<void>
}

/**
 * No engine is at hand: each command of the file is run as it stands there, by a user who is not root, in a folder that holds
 * what the image holds; host names and ports, which the engine would give, are this machine's.
 */
describe.runIf(needs('redis-server'))('each service of docker-compose.yml', () => {
  const folder = temporaryFolder()
  const program = join(folder.path, 'program')
  const dataOf = { chat: join(folder.path, 'chat'), redis: join(folder.path, 'redis') }
  const running: Running[] = []
  let postgres: ServedPostgres
  let account: { readonly uid: number; readonly gid: number } | null
  let records: Records
  let values: Values
  let ports: { readonly redis: string; readonly counter: string }

  /** What the engine would do: names become addresses, folders become volumes. */
  const local = (text: string): string =>
    text
      .replaceAll('@postgres:5432/platenpost', `@127.0.0.1:${postgres.port}/postgres`)
      .replaceAll('@redis:6379', `@127.0.0.1:${ports.redis}`)
      .replaceAll(':4180', `:${ports.counter}`)
      .replaceAll('/tmp/pulse', join(folder.path, 'pulse'))
      .replaceAll('--dir /data', `--dir ${dataOf.redis} --port ${ports.redis} --bind 127.0.0.1`)
      .replace(/^\/data/, dataOf.chat)

  const asUser = () => (account === null ? {} : { uid: account.uid, gid: account.gid })

  const start = async (name: ComposeName, ready: RegExp): Promise<Running> => {
    const given = Object.entries(environmentOf(name, values)).map(([key, value]) => [
      key,
      key === 'COUNTER_PORT' ? ports.counter : (folderAt(name, value, values) ?? local(value)),
    ])
    const environment: Values = {
      PATH: process.env['PATH'] ?? '',
      NODE_ENV: 'production',
      HOME: '/nonexistent',
      ...Object.fromEntries(given),
    }
    const [command = '', ...words] = commandOf(name, values).map(local)
    const child = spawn(command, words, {
      cwd: program,
      env: environment,
      detached: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      ...asUser(),
    })
    const parts: string[] = []
    for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (part: string) => parts.push(part))
    const said = (): string => parts.join('')
    await until(
      `${name} is ready`,
      () => ready.test(said()) || (child.exitCode !== null && Promise.reject(new Error(said()))) || undefined,
      60_000,
    )
    const one: Running = {
      name,
      environment,
      said,
      stop: async () => {
        if (child.exitCode !== null || child.pid === undefined) return
        process.kill(-child.pid, 'SIGTERM')
        await once(child, 'exit')
      },
    }
    running.push(one)
    return one
  }

  const health = (one: Running): number | null => {
    const [command = '', ...words] = healthOf(one.name, values).map(local)
    const port =
      one.name === 'redis' ? words.map((word) => word.replace('redis-cli ping', `redis-cli -p ${ports.redis} ping`)) : words
    return spawnSync(command, port, { env: one.environment, cwd: program, ...asUser() }).status
  }

  beforeAll(async () => {
    account = unwrap(await findAccount(join(folder.path, 'none')))
    postgres = await startServedPostgres()
    ports = { redis: await freePort(), counter: await freePort() }
    values = {
      POSTGRES_PASSWORD: 'apasswordoftheowner',
      SERVICE_PASSWORD: 'apasswordoftheservice',
      REDIS_PASSWORD: 'apasswordofthequeue',
      COUNTER_URL: `http://127.0.0.1:${ports.counter}`,
      SHOP: join(folder.path, 'our-shop'),
    }
    cpSync(join(root, 'templates/shop'), join(folder.path, 'our-shop'), { recursive: true })
    const ourShop = join(folder.path, 'our-shop', 'shop.json')
    writeFileSync(ourShop, readFileSync(ourShop, 'utf8').replace('Mesa Street Team Wear', 'Copper Lane Kits'))
    records = await openRecordsAt(postgres.ownerUrl)
    await records.rows(`alter role owner password 'apasswordoftheowner'`)
    // The image holds what its lines copy, and nothing else of the project.
    const dockerfile = String(parse(readFileSync(join(root, 'docker-compose.yml'), 'utf8'))['x-image'].build.dockerfile_inline)
    const copied = [...dockerfile.matchAll(/^COPY --from=build \/program\/(\S+) (\S+)$/gm)].map(([, from = '']) => from)
    expect(copied).toEqual(['package.json', 'node_modules', '.build', 'templates', 'src/adapters/store/sql/migrations'])
    mkdirSync(program)
    for (const part of copied) {
      mkdirSync(join(program, part, '..'), { recursive: true })
      if (part === 'node_modules') symlinkSync(join(root, part), join(program, part))
      else cpSync(join(root, part), join(program, part), { recursive: true })
    }
    for (const data of Object.values(dataOf)) {
      mkdirSync(data)
      if (account !== null) spawnSync('chown', [`${account.uid}:${account.gid}`, data])
    }
    spawnSync('chmod', ['a+rwx', folder.path])
  }, 120_000)
  afterAll(async () => {
    await records.close()
    for (const one of running.toReversed()) await one.stop()
    await postgres.remove()
    folder.remove()
  })

  it('starts by its own command as nobody special, is healthy by its own check, and writes nothing but its volumes', {
    timeout: 180_000,
  }, async () => {
    const before = statSync(program).mtimeMs
    const redis = await start('redis', /Ready to accept connections/)
    const chat = await start('chat', /Stop with Ctrl-C/)
    const workers = [await start('worker', /worker ready/), await start('worker', /worker ready/)]
    await until('the pulse beats', () => existsSync(join(folder.path, 'pulse')) || undefined)
    for (const one of [redis, chat, ...workers]) expect([one.name, health(one)]).toEqual([one.name, 0])
    expect(statSync(program).mtimeMs).toBe(before)
    expect(await records.rows(`select count(*)::int > 0 as seen from pg_stat_activity where usename = 'service'`)).toEqual([
      { seen: true },
    ])
    expect(await records.rows(`select rolsuper from pg_roles where rolname = 'service'`)).toEqual([{ rolsuper: false }])
  })

  it('opens the shop that SHOP names, for the service and for the workers, and the example where it names none', async () => {
    const page = await fetch(`http://127.0.0.1:${ports.counter}/`)
    expect(await page.text()).toContain('Copper Lane Kits')
    for (const name of ['chat', 'worker'] as const) {
      const inside = environmentOf(name, values)['SHOP'] ?? ''
      expect(folderAt(name, inside, values)).toBe(values['SHOP'])
      expect(folderAt(name, inside, {})).toBe('./templates/shop')
    }
  })

  it('hands on what the chat server, the watch and the backups are set to', () => {
    const both = ['PLATFORM_TOKEN', 'PLATFORM_GUILD', 'PLATFORM_CONTENT', 'WATCH_PORT', 'WATCH_HOST', 'WATCH_TOKEN']
    expect(takenFrom('worker')).toEqual(both)
    expect(takenFrom('chat')).toEqual([...both, 'SESSION_KEY', 'BACKUP_HOURS', 'BACKUP_KEEP'])
  })

  it('checks its health by something that fails when it is ill', () => {
    const asked = findProgram('pg_isready')
    expect(healthOf('postgres', values)).toEqual([
      'pg_isready',
      '--quiet',
      '--username=owner',
      '--dbname=platenpost',
      '--host=127.0.0.1',
    ])
    if (asked !== undefined) {
      expect(spawnSync(asked, ['--quiet', '--host=127.0.0.1', `--port=${postgres.port}`]).status).toBe(0)
      expect(spawnSync(asked, ['--quiet', '--host=127.0.0.1', '--port=1']).status).not.toBe(0)
    }
    const [chat] = running.filter(({ name }) => name === 'chat')
    if (chat === undefined) throw new Error('the service runs')
    const [command = '', ...words] = healthOf('chat', values)
    expect(
      spawnSync(
        command,
        words.map((word) => word.replace(':4180', ':1')),
        { env: chat.environment },
      ).status,
    ).toBe(1)
    const stale = healthOf('worker', values).map((word) => word.replace('/tmp/pulse', join(folder.path, 'no-pulse')))
    expect(spawnSync(stale[0] ?? '', stale.slice(1)).status).not.toBe(0)
  })

  it('makes a ticket together with the others, and the backup of the night was put back and compared', {
    timeout: 180_000,
  }, async () => {
    const progress = followOrders(() => records)
    const front = { address: () => `http://127.0.0.1:${ports.counter}`, records: () => records }
    const made = await makeOrders({ front, progress, many: 2, atOnce: 2 })
    await progress.close()
    const wrongs = await wrongsOf(records, made)
    expect(wrongs).toEqual(nothingWrong(2, wrongs))
    const [chat] = running.filter(({ name }) => name === 'chat')
    await until(
      'the backup is proved',
      () => /Backup: \S+\.backup, \d+ rows, put back and compared\./.test(chat?.said() ?? '') || undefined,
      60_000,
    )
  })
})
