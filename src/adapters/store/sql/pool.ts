import { CamelCasePlugin, Kysely, type LogConfig, PostgresDialect } from 'kysely'
import pg from 'pg'
import type { Address } from '../address.ts'
import type { Database, Tables } from './tables.ts'

const int8 = 20

/** Sums and counts fit a number by far; everything else is read as usual. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') => (oid === int8 ? Number : pg.types.getTypeParser(oid, format)),
}

export const openPool = (address: Address, most: number): pg.Pool => {
  const pool = new pg.Pool({ ...address, types, max: most, options: '-c search_path=platenpost' })
  // A connection that breaks while it is idle is replaced; whoever uses one that breaks gets the error itself.
  pool.on('error', () => undefined)
  return pool
}

export const openDatabase = (pool: pg.Pool, log: LogConfig): Database =>
  new Kysely<Tables>({
    dialect: new PostgresDialect({ pool }),
    plugins: [new CamelCasePlugin({ maintainNestedObjectKeys: true })],
    log,
  })
