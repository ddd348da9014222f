import { join, resolve } from 'node:path'
import * as z from 'zod'
import { ok, type Problem, type Result, refuse } from './domain/result/result.ts'
import { parseShape } from './domain/result/shape.ts'

const configSchema = z.object({
  /** Folder of the embedded store. */
  DATA: z.string().min(1).optional(),
  /** Folder of the shop's records. */
  SHOP: z.string().min(1).optional(),
  DATABASE_URL: z.string().min(1).optional(),
  /** The owner of the database behind DATABASE_URL: migrations run as this role, everything else as the unprivileged one. */
  DATABASE_OWNER_URL: z.string().min(1).optional(),
  REDIS_URL: z.string().min(1).optional(),
  /** `host:port,host:port`: who knows which Redis leads. The host of REDIS_URL is then the name they know it by. */
  REDIS_SENTINELS: z
    .string()
    .regex(/^[\w.-]+:\d{1,5}(,[\w.-]+:\d{1,5})*$/)
    .optional(),
  REDIS_SENTINEL_PASSWORD: z.string().min(1).optional(),
  COUNTER_PORT: z.coerce.number().int().min(0).max(65_535).optional(),
  COUNTER_HOST: z.string().min(1).optional(),
  COUNTER_URL: z.url().optional(),
  /** Signs sessions in place of the key in the data folder: the same for every service that stands behind one address. */
  SESSION_KEY: z.string().min(43).optional(),
  /** Where figures and readiness are asked for; nowhere when it is not set. */
  WATCH_PORT: z.coerce.number().int().min(0).max(65_535).optional(),
  WATCH_HOST: z.string().min(1).optional(),
  /** Who asks for figures must show it (Authorization: Bearer); needed when WATCH_HOST opens them to a network. */
  WATCH_TOKEN: z.string().min(16).optional(),
  /** `steps` writes a line for every step that ran, `trouble` for what went wrong alone. */
  LOG: z.enum(['trouble', 'steps']).optional(),
  PLATFORM_TOKEN: z.string().min(1).optional(),
  /** The one server in which commands are registered while trying. */
  PLATFORM_GUILD: z
    .string()
    .regex(/^\d{17,20}$/)
    .optional(),
  /** Another address of the chat platform's REST side. */
  PLATFORM_API: z.url().optional(),
  /** `on` when the platform lets the bot read plain messages of a server. */
  PLATFORM_CONTENT: z.enum(['on', 'off']).optional(),
  /** A folder that a dated backup is written to every BACKUP_HOURS (24), each put back for a trial; BACKUP_KEEP (14) are kept. */
  BACKUP_INTO: z.string().min(1).optional(),
  BACKUP_HOURS: z.coerce.number().positive().max(8_760).optional(),
  BACKUP_KEEP: z.coerce.number().int().min(1).max(10_000).optional(),
  /** `none` when workers are started apart from the service, on this machine or others. */
  WORKERS: z.enum(['own', 'none']).optional(),
  /**
   * `<start>x<speed>`: a simulated clock for all processes, which begins at a minute of the shop's wall clock and runs so many
   * times faster; only for records that are made with it.
   */
  CLOCK: z.string().min(1).optional(),
  /** A file that a worker touches while it lives, for who watches over it. */
  WORKER_PULSE: z.string().min(1).optional(),
  /** A step that its worker has not confirmed for so many seconds is taken for lost and run again. */
  STEP_LOCK_SECONDS: z.coerce.number().int().min(1).max(3_600).optional(),
  /** A step that is due for so many seconds and that the queue does not hold is sent again. */
  STEP_OVERDUE_SECONDS: z.coerce.number().int().min(1).max(86_400).optional(),
})
export type Config = {
  readonly data: string
  readonly shop: string
  readonly databaseUrl: string | null
  readonly databaseOwnerUrl: string | null
  readonly redis: {
    readonly url: string
    readonly sentinels: readonly { readonly host: string; readonly port: number }[]
    readonly sentinelPassword: string | null
  } | null
  readonly counter: { readonly port: number | null; readonly host: string; readonly url: string | null }
  readonly sessionKey: string | null
  readonly clock: { readonly start: string; readonly speed: number } | null
  readonly watch: { readonly port: number; readonly host: string; readonly token: string | null } | null
  readonly logsSteps: boolean
  readonly backups: { readonly folder: string; readonly everyHours: number; readonly keep: number } | null
  readonly platform: {
    readonly token: string | null
    readonly guild: string | null
    readonly api: string | null
    readonly readsContent: boolean
  }
  readonly workers: {
    readonly own: boolean
    readonly pulse: string | null
    readonly lockSeconds: number
    readonly overdueSeconds: number
  }
}

type Environment = z.infer<typeof configSchema>

const redisOf = (env: Environment): Config['redis'] =>
  env.REDIS_URL === undefined
    ? null
    : {
        url: env.REDIS_URL,
        sentinels: (env.REDIS_SENTINELS?.split(',') ?? []).map((one) => {
          const [host = '', port = ''] = one.split(':')
          return { host, port: Number(port) }
        }),
        sentinelPassword: env.REDIS_SENTINEL_PASSWORD ?? null,
      }

const watchOf = (env: Environment): Config['watch'] =>
  env.WATCH_PORT === undefined
    ? null
    : { port: env.WATCH_PORT, host: env.WATCH_HOST ?? '127.0.0.1', token: env.WATCH_TOKEN ?? null }

const platformOf = (env: Environment): Config['platform'] => ({
  token: env.PLATFORM_TOKEN ?? null,
  guild: env.PLATFORM_GUILD ?? null,
  api: env.PLATFORM_API ?? null,
  readsContent: env.PLATFORM_CONTENT === 'on',
})

const backupsOf = (env: Environment): Config['backups'] =>
  env.BACKUP_INTO === undefined
    ? null
    : { folder: env.BACKUP_INTO, everyHours: env.BACKUP_HOURS ?? 24, keep: env.BACKUP_KEEP ?? 14 }

const clockForm = /^(?<start>\d{4}-\d{2}-\d{2}T\d{2}:\d{2})x(?<speed>\d{1,4}(\.\d{1,3})?)$/

const clockOf = ({ CLOCK }: Environment): Result<Config['clock']> => {
  if (CLOCK === undefined) return ok(null)
  const { start = '', speed = '' } = clockForm.exec(CLOCK)?.groups ?? {}
  return Number(speed) > 0
    ? ok({ start, speed: Number(speed) })
    : refuse({ code: 'clock-unreadable', at: '', severity: 'stop', facts: { set: CLOCK } })
}

const secret = new Set(['/SESSION_KEY', '/WATCH_TOKEN'])

/** A secret that does not fit is not repeated, nor what stands in the server's place: it may be the token. */
const inWords = (problem: Problem): Problem => {
  if (secret.has(problem.at)) return { ...problem, code: 'secret-too-short', facts: { least: problem.facts['least'] ?? null } }
  return problem.at === '/PLATFORM_GUILD' ? { ...problem, code: 'guild-unreadable', facts: {} } : problem
}

/** The only reader of the environment. The data folder is whole, because PostgreSQL runs elsewhere. Folders default to `.data` and `templates/shop` below the project's folder. */
export const readConfig = (root: string): Result<Config> => {
  const parsed = parseShape(configSchema, process.env)
  if (!parsed.ok) return { ok: false, problems: parsed.problems.map(inWords) }
  const env = parsed.value
  const clock = clockOf(env)
  if (!clock.ok) return clock
  return {
    ok: true,
    value: {
      data: resolve(env.DATA ?? join(root, '.data')),
      shop: env.SHOP ?? join(root, 'templates', 'shop'),
      databaseUrl: env.DATABASE_URL ?? null,
      databaseOwnerUrl: env.DATABASE_OWNER_URL ?? null,
      redis: redisOf(env),
      counter: { port: env.COUNTER_PORT ?? null, host: env.COUNTER_HOST ?? '127.0.0.1', url: env.COUNTER_URL ?? null },
      sessionKey: env.SESSION_KEY ?? null,
      clock: clock.value,
      watch: watchOf(env),
      logsSteps: env.LOG === 'steps',
      backups: backupsOf(env),
      platform: platformOf(env),
      workers: {
        own: env.WORKERS !== 'none',
        pulse: env.WORKER_PULSE ?? null,
        lockSeconds: env.STEP_LOCK_SECONDS ?? 30,
        overdueSeconds: env.STEP_OVERDUE_SECONDS ?? 60,
      },
    },
  }
}
