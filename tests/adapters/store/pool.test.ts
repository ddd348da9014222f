import pg from 'pg'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openPool } from '../../../src/adapters/store/sql/pool.ts'
import { openTestStore, type TestStore } from '../../support/embedded.ts'
import { until } from '../../support/until.ts'

let test: TestStore
beforeAll(async () => {
  test = await openTestStore()
})
afterAll(async () => {
  await test.close()
})

/** Ends one connection from the server's side, as it happens to all of them when PostgreSQL is killed. */
const breakOff = async (pid: unknown): Promise<void> => {
  const owner = new pg.Client(test.embedded.owner)
  await owner.connect()
  await owner.query('select pg_terminate_backend($1)', [pid])
  await owner.end()
}

describe('a connection that breaks while somebody holds it', () => {
  it('between two statements is an error of the next statement, not of the process', async () => {
    const pool = openPool(test.embedded.service, 1)
    const uncaught: unknown[] = []
    const note = (cause: unknown): void => void uncaught.push(cause)
    const before = process.listeners('uncaughtException')
    process.removeAllListeners('uncaughtException').on('uncaughtException', note)
    try {
      const held = await pool.connect()
      const { rows } = await held.query('select pg_backend_pid() as pid')
      let gone = false
      held.once('end', () => {
        gone = true
      })
      await breakOff(rows[0]?.pid)
      await until('somebody knows', () => gone || uncaught.length > 0)
      expect(uncaught).toEqual([])
      await expect(held.query('select 1')).rejects.toThrow()
      held.release(true)
      expect((await pool.query('select 1 as one')).rows).toEqual([{ one: 1 }])
    } finally {
      process.removeListener('uncaughtException', note)
      for (const listener of before) process.on('uncaughtException', listener)
      await pool.end()
    }
  })
})
