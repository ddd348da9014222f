import type { DatabaseConnection } from 'kysely'
import type { Database } from './tables.ts'

/**
 * Lets the statements of one connection be asked at once: they leave together and are run in their order. Without it each would wait for
 * the answer of the one before.
 */
export const letAskAtOnce = async (db: Database): Promise<void> => {
  const executor = db.getExecutor()
  const connection = await executor.provideConnection((one) => Promise.resolve(one))
  const provideConnection = <T>(consumer: (one: DatabaseConnection) => Promise<T>): Promise<T> => consumer(connection)
  Object.defineProperty(executor, 'provideConnection', { value: provideConnection })
}
