import { join } from 'node:path'
import * as z from 'zod'
import type { Result } from './domain/result/result.ts'
import { parseShape } from './domain/result/shape.ts'

const configSchema = z.object({
  /** Folder of the embedded store. */
  DATA: z.string().min(1).optional(),
  /** Folder of the shop's records. */
  SHOP: z.string().min(1).optional(),
  DATABASE_URL: z.string().min(1).optional(),
  REDIS_URL: z.string().min(1).optional(),
  COUNTER_PORT: z.coerce.number().int().min(0).max(65_535).optional(),
  COUNTER_HOST: z.string().min(1).optional(),
  COUNTER_URL: z.url().optional(),
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
  /** `none` when workers are started apart from the service, on this machine or others. */
  WORKERS: z.enum(['own', 'none']).optional(),
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
  readonly redisUrl: string | null
  readonly counter: { readonly port: number; readonly host: string; readonly url: string | null }
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

/** The only reader of the environment. Folders default to `.data` and `templates/shop` below the project's folder. */
export const readConfig = (root: string): Result<Config> => {
  const parsed = parseShape(configSchema, process.env)
  if (!parsed.ok) return parsed
  const env = parsed.value
  return {
    ok: true,
    value: {
      data: env.DATA ?? join(root, '.data'),
      shop: env.SHOP ?? join(root, 'templates', 'shop'),
      databaseUrl: env.DATABASE_URL ?? null,
      redisUrl: env.REDIS_URL ?? null,
      counter: { port: env.COUNTER_PORT ?? 4180, host: env.COUNTER_HOST ?? '127.0.0.1', url: env.COUNTER_URL ?? null },
      platform: {
        token: env.PLATFORM_TOKEN ?? null,
        guild: env.PLATFORM_GUILD ?? null,
        api: env.PLATFORM_API ?? null,
        readsContent: env.PLATFORM_CONTENT === 'on',
      },
      workers: {
        own: env.WORKERS !== 'none',
        pulse: env.WORKER_PULSE ?? null,
        lockSeconds: env.STEP_LOCK_SECONDS ?? 30,
        overdueSeconds: env.STEP_OVERDUE_SECONDS ?? 60,
      },
    },
  }
}
