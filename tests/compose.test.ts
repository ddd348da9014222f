import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import * as z from 'zod'
import { root } from './support/embedded.ts'
import { engineOptions } from './support/served-crew.ts'

/** A folder of the machine that a container may read. */
const folderSchema = z.strictObject({
  type: z.literal('bind'),
  source: z.string(),
  target: z.string(),
  read_only: z.boolean(),
  bind: z.strictObject({ create_host_path: z.boolean() }),
})

/** What the checks below look at; anything else of a service is free. */
const serviceSchema = z.object({
  image: z.string(),
  build: z.object({ context: z.literal('.'), dockerfile_inline: z.string() }).optional(),
  command: z.array(z.string()).optional(),
  user: z.string().optional(),
  restart: z.string(),
  init: z.boolean(),
  read_only: z.boolean(),
  cap_drop: z.array(z.string()),
  security_opt: z.array(z.string()),
  environment: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
  volumes: z.array(z.union([z.string(), folderSchema])).default([]),
  tmpfs: z.array(z.string()),
  networks: z.array(z.string()),
  ports: z.array(z.string()).default([]),
  depends_on: z.record(z.string(), z.object({ condition: z.string() })).default({}),
  deploy: z.object({ replicas: z.int() }).optional(),
  healthcheck: z.object({ test: z.array(z.string()), interval: z.string(), timeout: z.string(), retries: z.int() }),
})
const composeSchema = z.object({
  services: z.record(z.enum(['postgres', 'redis', 'chat', 'worker']), serviceSchema),
  networks: z.record(z.string(), z.object({ internal: z.boolean() }).nullable()),
  volumes: z.record(z.string(), z.null()),
})

const text = readFileSync(join(root, 'docker-compose.yml'), 'utf8')
const compose = composeSchema.parse(parse(text, { merge: true }))
const { postgres, redis, chat, worker } = compose.services
const services = Object.entries(compose.services)
const commandOf = (service: z.infer<typeof serviceSchema>): string => (service.command ?? []).join(' ')

describe('the served way', () => {
  it('gives the engine the room that it is tried and measured with', () => {
    for (const { environment } of [chat, worker]) expect(environment['NODE_OPTIONS']).toBe(engineOptions)
  })

  it('has PostgreSQL, Redis, one service and two workers, each watched over', () => {
    expect(services.map(([name]) => name)).toEqual(['postgres', 'redis', 'chat', 'worker'])
    expect(worker.deploy?.replicas).toBe(2)
    expect(chat.deploy).toBeUndefined()
    for (const [, { healthcheck }] of services) expect(healthcheck.test[0]).toMatch(/^CMD/)
    expect(chat.healthcheck.test.join(' ')).toContain('/up')
    expect(worker.healthcheck.test.join(' ')).toContain(String(worker.environment['WORKER_PULSE']))
    expect(chat.depends_on).toEqual({
      postgres: { condition: 'service_healthy' },
      redis: { condition: 'service_healthy' },
    })
    expect(worker.depends_on).toEqual({ chat: { condition: 'service_healthy' } })
  })

  it('lets Redis keep every step and ask for a password', () => {
    expect(commandOf(redis)).toContain('--appendonly yes')
    expect(commandOf(redis)).toContain('--maxmemory-policy noeviction')
    expect(commandOf(redis)).toContain('requirepass $$REDIS_PASSWORD')
    expect(redis.volumes).toEqual(['steps:/data'])
    expect(chat.environment['REDIS_URL']).toMatch(/^redis:\/\/:\$\{REDIS_PASSWORD:\?[^}]+\}@redis:6379$/)
  })

  it('pins every image to an exact version', () => {
    const bases = [...(chat.build?.dockerfile_inline ?? '').matchAll(/^FROM (\S+)/gm)].map(([, image]) => image)
    expect(bases).toHaveLength(2)
    for (const image of [...bases, postgres.image, redis.image])
      expect(image).toMatch(/^[a-z]+:\d+(\.\d+){1,2}-[a-z]+[\d.]*(-slim)?$/)
    expect(worker.build).toEqual(chat.build)
    expect(worker.image).toBe(chat.image)
  })

  it('runs nobody as root, nothing writable but volumes and memory, and no right that can be gained', () => {
    for (const [, service] of services) {
      expect(service.read_only).toBe(true)
      expect(service.tmpfs).toContain('/tmp')
      expect(service.cap_drop).toEqual(['ALL'])
      expect(service.security_opt).toEqual(['no-new-privileges:true'])
      expect([service.restart, service.init]).toEqual(['unless-stopped', true])
    }
    expect(postgres.user).toBe('postgres')
    expect(redis.user).toBe('redis')
    const [, ours = ''] = (chat.build?.dockerfile_inline ?? '').split(/^FROM .+ AS build$/m)
    expect(ours.slice(ours.lastIndexOf('\nFROM '))).toMatch(/^USER node$/m)
  })

  it('keeps records, steps and keys in volumes that are declared', () => {
    const used = services.flatMap(([, { volumes }]) =>
      volumes.flatMap((volume) => (typeof volume === 'string' ? [volume.split(':')[0]] : [])),
    )
    expect(used.toSorted()).toEqual(Object.keys(compose.volumes).toSorted())
    expect(postgres.volumes).toEqual(['records:/var/lib/postgresql'])
  })

  it('reads the shop’s own folder, which is never written and never made', () => {
    const folders = (volumes: typeof chat.volumes) => volumes.filter((volume) => typeof volume !== 'string')
    const shop = {
      type: 'bind',
      source: '$' + '{SHOP:-./templates/shop}',
      target: '/shop',
      read_only: true,
      bind: { create_host_path: false },
    }
    for (const { volumes } of [chat, worker]) expect(folders(volumes)).toEqual([shop])
    for (const { volumes } of [postgres, redis]) expect(folders(volumes)).toEqual([])
    for (const { environment } of [chat, worker]) expect(environment['SHOP']).toBe('/shop')
  })

  it('has no secret of its own: each must be set, and its absence is explained', () => {
    const wanted = /\$\{(\w+):\?([^}]{20,})\}/g
    const asked = [...text.matchAll(wanted)].map(([, name]) => name)
    expect([...new Set(asked)].toSorted()).toEqual(['COUNTER_URL', 'POSTGRES_PASSWORD', 'REDIS_PASSWORD', 'SERVICE_PASSWORD'])
    const secrets = services.flatMap(([, { environment }]) =>
      Object.entries(environment).filter(([name]) => /PASSWORD|TOKEN|SECRET|_URL$/.test(name)),
    )
    const written = secrets.map(([, value]) => value).filter((value) => value !== null)
    expect(written.length).toBeGreaterThan(5)
    for (const value of written) expect(value).toMatch(/\$\{\w+:\?/)
  })

  it('opens the counter to this machine alone, and store and queue to nobody outside', () => {
    expect(compose.networks['inside']).toEqual({ internal: true })
    expect([postgres.networks, redis.networks]).toEqual([['inside'], ['inside']])
    expect([postgres.ports, redis.ports, worker.ports]).toEqual([[], [], []])
    expect(chat.ports).toEqual([expect.stringMatching(/^\$\{COUNTER_BIND:-127\.0\.0\.1\}:.+:4180$/)])
    expect(chat.environment['WORKERS']).toBe('none')
  })
})
