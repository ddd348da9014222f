import type { Metrics, Sources } from '../adapters/watch/metrics.ts'
import type { Config } from '../config.ts'
import type { Desk } from '../desk/service/desk.ts'
import { shopFigures } from '../desk/service/shop/shop-figures.ts'
import { ok, type Result } from '../domain/result/result.ts'

export type Watching = {
  readonly desk: Desk
  readonly queue: Sources['queue']
  readonly ready: () => Promise<unknown>
  readonly report: (cause: unknown) => void
}
export type Watch = { readonly ran: Metrics['ran']; readonly close: () => Promise<void> }

/** Figures and readiness at the port that is set; nothing listens when none is. */
export const openWatch = async (config: Config, { desk, queue, ready, report }: Watching): Promise<Result<Watch>> => {
  if (config.watch === null) return ok({ ran: () => undefined, close: async () => undefined })
  const { makeMetrics } = await import('../adapters/watch/metrics.ts')
  const { startWatch } = await import('../adapters/watch/start-watch.ts')
  const metrics = makeMetrics({ figures: () => shopFigures(desk), queue })
  try {
    const running = await startWatch({ ...config.watch, metrics, ready, report })
    process.stdout.write(`Figures: http://${config.watch.host}:${running.port}/metrics\n`)
    return ok({ ran: metrics.ran, close: running.close })
  } catch (cause) {
    const facts = { host: config.watch.host, said: cause instanceof Error ? cause.message : String(cause) }
    return { ok: false, problems: [{ code: 'watch-closed', at: '', severity: 'stop', facts }] }
  }
}
