import { CamelCasePlugin, Kysely, type LogConfig, PostgresDialect } from 'kysely'
import pg from 'pg'
import type { Address } from '../address.ts'
import type { Database, Tables } from './tables.ts'
import { steered } from './unawaited.ts'

const int8 = 20

type Parser = (value: string) => unknown

/** Sums and counts fit a number by far; everything else is read as usual. Asked for each column of each answer: it is looked up once. */
const parsers = new Map<number, Parser>([[int8, Number]])
const types: pg.CustomTypesConfig = {
  getTypeParser: (oid: number, format?: 'text' | 'binary') => {
    if (format === 'binary') return pg.types.getTypeParser(oid, format)
    const known = parsers.get(oid)
    if (known !== undefined) return known
    const parser: Parser = pg.types.getTypeParser(oid, 'text')
    parsers.set(oid, parser)
    return parser
  },
}

/**
 * A machine that loses power or its cable says nothing: the server finds out within half a minute and lets go of what it held,
 * the plan's lock above all. A transaction that does nothing for so long is one whose process hangs.
 */
const sessionSettings = [
  'search_path=platenpost',
  'idle_in_transaction_session_timeout=120000',
  'tcp_keepalives_idle=10',
  'tcp_keepalives_interval=5',
  'tcp_keepalives_count=3',
  'tcp_user_timeout=30000',
]
const options = sessionSettings.map((setting) => `-c ${setting}`).join(' ')
const alive = { keepAlive: true, keepAliveInitialDelayMillis: 10_000, connectionTimeoutMillis: 15_000 }

export const openPool = (address: Address, most: number, more: pg.PoolConfig = {}): pg.Pool => {
  const pool = new pg.Pool({ ...address, ...alive, types, max: most, options, ...more })
  // A connection that breaks while it is idle is replaced; whoever holds one gets the error of the next statement. The pool listens
  // to idle ones alone: one that breaks between two statements of a transaction would end the process.
  pool.on('error', () => undefined)
  pool.on('connect', (client) => client.on('error', () => undefined))
  return pool
}

/** Statements that are named differ by their text; those made of a list of any length could be without end. */
const mostNamed = 300
const names = new Map<string, string>()

const nameOf = (text: string): string | undefined => {
  const known = names.get(text)
  if (known !== undefined || names.size >= mostNamed) return known
  const name = `s${names.size + 1}`
  names.set(text, name)
  return name
}

/**
 * Each connection prepares a statement when it runs it first: reading and planning the text again and again costs the server more
 * than running it.
 */
const prepareStatements = (client: pg.PoolClient): void => {
  const plain = client.query.bind(client)
  const run = (text: string, values: unknown[]): Promise<pg.QueryResult> => {
    const name = values.length === 0 ? undefined : nameOf(text)
    return name === undefined ? plain(text, values) : plain({ name, text, values })
  }
  const query = steered(run, client.connection.stream)
  Object.defineProperty(client, 'query', { value: (text: string, values: unknown[] = []) => query(text, values) })
}

/** A connection is kept through a quiet hour: a new one costs its process, its password and every statement prepared once more. */
const idleTimeoutMillis = 3_600_000

/** The pool whose statements are the store's own, asked with a text and its values. */
export const openStatements = (address: Address, most: number): pg.Pool => {
  const pool = openPool(address, most, { pipeline: true, idleTimeoutMillis })
  pool.on('connect', prepareStatements)
  return pool
}

export const openDatabase = (pool: pg.Pool, log: LogConfig): Database =>
  new Kysely<Tables>({
    dialect: new PostgresDialect({ pool }),
    plugins: [new CamelCasePlugin({ maintainNestedObjectKeys: true })],
    log,
  })
