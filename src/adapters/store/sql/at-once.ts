import type { DatabaseConnection } from 'kysely'
import type { Database } from './tables.ts'

/**
 * Lets the statements of one connection be asked at once while the work lasts: they leave together and are run in their order. Without it
 * each would wait for the answer of the one before. Who comes too late, because another of them failed meanwhile, is refused: the
 * connection may be somebody else's by then.
 */
export const askingAtOnce = async <T>(db: Database, work: () => Promise<T>): Promise<T> => {
  const executor = db.getExecutor()
  const connection = await executor.provideConnection((one) => Promise.resolve(one))
  const state = { lasts: true }
  const provideConnection = async <R>(consumer: (one: DatabaseConnection) => Promise<R>): Promise<R> => {
    if (!state.lasts) throw new Error('a statement came after the end of its work')
    return consumer(connection)
  }
  Object.defineProperty(executor, 'provideConnection', { value: provideConnection })
  try {
    return await work()
  } finally {
    state.lasts = false
  }
}
