import type { Config } from '../config.ts'
import { platformDesk } from '../desk/platform/platform-desk.ts'
import { readyDelivery } from '../desk/platform/ready-delivery.ts'
import { tenantsOf } from '../desk/platform/tenants.ts'
import type { Desk, WorkerDesk } from '../desk/service/desk.ts'
import { ok, type Result, refuse } from '../domain/result/result.ts'
import type { WaitingDelivery } from '../ports/platform-records.ts'

type Report = (cause: unknown) => void
type Close = () => Promise<void>

const nothing: Close = async () => undefined

/**
 * Connects the bot (loaded only then: its library takes as long as all others together) when its token is set; it only listens
 * and answers, nothing is drawn or printed in its process. A platform that cannot be reached is tried again and again.
 */
export const openPlatform = async (desk: Desk, { platform }: Config, report: Report): Promise<Result<Close>> => {
  const { token, api, readsContent, guild } = platform
  if (token === null) return ok(nothing)
  const { comeIn } = await import('../adapters/chat/platform/come-in.ts')
  const { startPlatform } = await import('../adapters/chat/platform/platform.ts')
  const settings = { token, api, readsContent, report }
  try {
    const bot = await comeIn({ connect: (signal) => startPlatform(platformDesk(desk, guild), { ...settings, signal }), report })
    return ok(bot.stop)
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause)
    return refuse({ code: 'bot-not-opened', at: '', severity: 'stop', facts: { said } })
  }
}

/** A worker's part: brings the shops' messages to the platform when the bot's token is set. */
export const openDeliveries = async (desk: WorkerDesk, { platform }: Config, report: Report): Promise<Close> => {
  const { token, api, guild } = platform
  if (token === null) return nothing
  const { platformDeliver } = await import('../adapters/chat/platform/deliver.ts')
  const { startDeliveries } = await import('../adapters/chat/platform/deliver-waiting.ts')
  const deliver = platformDeliver(platformDesk(desk, guild), { token, api })
  const tenants = tenantsOf(desk)
  const ready = (waiting: WaitingDelivery) => readyDelivery(tenants, waiting)
  return (await startDeliveries({ store: desk.store, deliver, ready, report })).close
}
