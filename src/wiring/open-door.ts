import { type CounterSettings, type RunningCounter, startCounter } from '../adapters/chat/counter/start-counter.ts'
import { ok, type Result } from '../domain/result/result.ts'

const saidBy = (cause: unknown): string => {
  if (!(cause instanceof Error)) return String(cause)
  return cause.cause === undefined ? cause.message : `${cause.message} (${saidBy(cause.cause)})`
}

/** Opens the counter, or says why it stays closed. */
export const openDoor = async (settings: CounterSettings): Promise<Result<RunningCounter>> => {
  try {
    return ok(await startCounter(settings))
  } catch (cause) {
    const facts = { host: settings.host, said: saidBy(cause) }
    return { ok: false, problems: [{ code: 'counter-closed', at: '', severity: 'stop', facts }] }
  }
}
