import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import pg from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { type Certificates, makeCertificates } from '../support/certificates.ts'
import { temporaryFolder } from '../support/embedded.ts'
import { needs } from '../support/needs.ts'
import { ask } from '../support/page-request.ts'
import { type RedisServer, safeRedis, startTlsRedis } from '../support/redis-server.ts'
import { type ServedPostgres, startServedPostgres } from '../support/served-postgres.ts'
import { freePort, type OpenService, runProgram, type Service, startService } from '../support/service.ts'
import { arrive, giveAges, orderOf, signOff, wordsFor } from '../support/service-customer.ts'
import { eventsOf, openRecordsAt, processes, type Records, untilEvent } from '../support/service-watch.ts'
import { until } from '../support/until.ts'

/** How long both work before PostgreSQL is killed, in milliseconds: spread over more than the beat of whoever asks it by the clock. */
const instants = Array.from({ length: process.env['LONG'] === undefined ? 4 : 40 }, (_, turn) => (turn * 617) % 1_500)

const token = 'a-word-that-only-the-watchman-knows'

describe.runIf(needs('redis-server') && needs('openssl'))('a shop that is served', () => {
  const folder = temporaryFolder()
  let tls: Certificates
  let postgres: ServedPostgres
  let redis: RedisServer
  let service: OpenService
  let worker: Service
  let records: Records
  let settings: { readonly [name: string]: string }
  const watch = { service: '', worker: '' }

  beforeAll(async () => {
    tls = await makeCertificates()
    postgres = await startServedPostgres(tls)
    redis = await startTlsRedis(tls, ...safeRedis, '--requirepass', 'a-password-of-the-queue')
    settings = {
      DATABASE_URL: postgres.serviceUrl,
      REDIS_URL: redis.url.replace('//', '//:a-password-of-the-queue@'),
      NODE_EXTRA_CA_CERTS: tls.authority,
      STEP_LOCK_SECONDS: '1',
      STEP_OVERDUE_SECONDS: '1',
      DATA: join(folder.path, 'keys'),
      LOG: 'steps',
    }
    watch.service = await freePort()
    watch.worker = await freePort()
    const served = { ...settings, DATABASE_OWNER_URL: postgres.ownerUrl, WORKERS: 'none', WATCH_PORT: watch.service }
    service = await startService(settings['DATA'] ?? '', served)
    worker = runProgram('workers/main.js', { ...settings, WATCH_PORT: watch.worker, WATCH_TOKEN: token })
    await worker.says(/worker ready/)
    records = await openRecordsAt(postgres.ownerUrl)
  })
  afterAll(async () => {
    await records.close()
    await Promise.all([worker.signal('SIGTERM'), service.signal('SIGTERM')])
    await Promise.all([postgres.remove(), redis.stop()])
    tls.remove()
    folder.remove()
  })

  const order = async (team: string): Promise<string> => {
    const customer = await arrive(service.address, wordsFor(team, 3))
    const id = await orderOf(records, customer)
    await giveAges(customer)
    await signOff(customer)
    await untilEvent(records, id, 'posted')
    return id
  }
  const asked = async (port: string, path: string, authorization?: string): Promise<readonly [number, string]> => {
    const headers = authorization === undefined ? {} : { authorization }
    const { status, text } = await ask(`http://127.0.0.1:${port}`, path, { headers })
    return [status, text]
  }

  const bothReady = (): Promise<unknown> =>
    until('both are ready', async () => {
      const all = await Promise.all([asked(watch.service, '/ready'), asked(watch.worker, '/ready')])
      return all.every(([status]) => status === 200)
    })

  it('makes tickets over TLS alone, as a role that may do nothing but its work', { timeout: 90_000 }, async () => {
    await order('Harbor Point Herons')
    expect(
      await records.rows(`select ssl from pg_stat_ssl join pg_stat_activity using (pid) where usename = 'counter' and not ssl`),
    ).toEqual([])
    expect(
      await records.rows(`select rolsuper, rolcreaterole, rolcreatedb, rolbypassrls from pg_roles where rolname = 'counter'`),
    ).toEqual([{ rolsuper: false, rolcreaterole: false, rolcreatedb: false, rolbypassrls: false }])
    const client = new pg.Client({ connectionString: postgres.serviceUrl })
    await client.connect()
    for (const statement of [
      'delete from platenpost.event',
      `update platenpost.event set code = 'posted'`,
      'truncate platenpost.event',
      'drop table platenpost."order"',
      'alter table platenpost.event disable trigger all',
      'create table platenpost.extra (id int)',
      'delete from platenpost.kysely_migration',
      'create role another',
      `copy platenpost.member to program 'cat'`,
    ])
      await expect(client.query(statement), statement).rejects.toThrow(/permission denied|must be owner/)
    await client.end()
  })

  it('shows figures to whoever knows the word, and none of them names anybody', async () => {
    const [status, text] = await asked(watch.worker, '/metrics', `Bearer ${token}`)
    expect(status).toBe(200)
    for (const line of [
      /^platenpost_steps_due\{shop="mesa-street",step="quote"\} 0$/m,
      /^platenpost_step_oldest_seconds\{shop="mesa-street",step="plan"\} 0$/m,
      /^platenpost_promises_last_hour\{shop="mesa-street"\} [1-9]/m,
      /^platenpost_promise_seconds\{shop="mesa-street",quantile="0.95"\} \d+\.\d+/m,
      /^platenpost_plan_age_seconds\{shop="mesa-street"\} \d/m,
      /^platenpost_posts_pending\{shop="mesa-street"\} 0$/m,
      /^platenpost_tight_jobs\{shop="mesa-street"\} \d+$/m,
      /^platenpost_outbox_waiting\{shop="mesa-street"\} 0$/m,
      /^platenpost_queue_jobs\{state="waiting"\} \d+$/m,
      /^platenpost_step_runs_total\{step="post",outcome="done"\} [1-9]/m,
      /^platenpost_step_run_seconds_bucket\{le="30",step="ticket"\} [1-9]/m,
      /^platenpost_process_resident_memory_bytes \d+$/m,
    ])
      expect(text).toMatch(line)
    expect(text).not.toMatch(/Herons|Whitlow|Lindqvist/)
    expect(await asked(watch.worker, '/metrics')).toEqual([401, 'show the token\n'])
    expect(await asked(watch.worker, '/metrics', 'Bearer another')).toEqual([401, 'show the token\n'])
    expect((await asked(watch.service, '/metrics'))[1]).toContain('platenpost_plan_age_seconds')
  })

  it('opens figures to a network only with a word, and to this machine only by its own names', async () => {
    const open = runProgram('workers/main.js', { ...settings, WATCH_PORT: '0', WATCH_HOST: '0.0.0.0' })
    expect(await open.ended).toBe(1)
    expect(open.said()).toContain('set WATCH_TOKEN')
    const rebound = await ask(`http://127.0.0.1:${watch.service}`, '/metrics', { headers: { host: 'evil.example' } })
    expect([rebound.status, rebound.text]).toEqual([421, 'wrong address\n'])
    expect((await ask(`http://127.0.0.1:${watch.service}`, '/ready', { method: 'POST' })).status).toBe(405)
  })

  it('writes a line for every step with its order, and nobody’s name, and shows no password', async () => {
    const lines = worker
      .said()
      .split('\n')
      .filter((line) => line.startsWith('{'))
    const steps = lines.map((line) => JSON.parse(line)).filter(({ outcome }) => outcome === 'done')
    const [one] = steps.filter(({ step }) => step === 'ticket')
    expect(one).toEqual({
      at: expect.any(String),
      who: 'worker',
      step: 'ticket',
      order: expect.stringMatching(/^o[0-9a-f]+$/),
      revision: 1,
      attempt: expect.any(Number),
      outcome: 'done',
      ms: expect.any(Number),
    })
    const said = worker.said() + service.said()
    expect(said).not.toMatch(/Herons|Whitlow|Lindqvist|a-password-of/)
    const commands = processes().filter(({ pid }) => [service.pid, worker.pid].includes(pid))
    expect(commands).toHaveLength(2)
    for (const { command } of commands) expect(command).not.toContain('a-password-of')
  })

  it('lives and is not ready while PostgreSQL is away, and makes the next ticket when it is back', {
    timeout: 120_000,
  }, async () => {
    await bothReady()
    expect((await ask(service.address, '/ready')).text).toBe('ready')
    await postgres.kill()
    await until('nobody is ready', async () => {
      const all = await Promise.all([asked(watch.service, '/ready'), asked(watch.worker, '/ready')])
      return all.every(([status]) => status === 503) || undefined
    })
    expect((await ask(service.address, '/ready')).status).toBe(503)
    expect((await ask(service.address, '/up')).text).toBe('up')
    await records.close()
    await postgres.start()
    records = await openRecordsAt(postgres.ownerUrl)
    await bothReady()
    const id = await order('Cedar Flats Kites')
    expect(await eventsOf(records, id)).toEqual(['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'posted'])
  })

  it('lives though PostgreSQL is killed again and again at any instant', { timeout: 600_000 }, async () => {
    for (const wait of instants) {
      await bothReady()
      await pause(wait)
      await records.close()
      await postgres.kill()
      await postgres.start()
      records = await openRecordsAt(postgres.ownerUrl)
      expect([service.process.exitCode, worker.process.exitCode], `killed ${wait} ms after both were ready`).toEqual([null, null])
    }
    await bothReady()
  })

  it('does not start as a role that may do everything', async () => {
    const mighty = { ...settings, DATABASE_URL: postgres.ownerUrl, DATABASE_OWNER_URL: postgres.ownerUrl, COUNTER_PORT: '0' }
    const refused = runProgram('src/main.js', mighty)
    expect(await refused.ended).toBe(1)
    expect(refused.said()).toContain('The role “owner” of DATABASE_URL may do everything')
  })

  it('stops in order and leaves no connection', async () => {
    await worker.signal('SIGTERM')
    await service.signal('SIGTERM')
    expect([await worker.ended, await service.ended]).toEqual([0, 0])
    expect(await records.rows(`select pid from pg_stat_activity where usename = 'counter'`)).toEqual([])
  })
})
