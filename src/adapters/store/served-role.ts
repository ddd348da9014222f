import pg from 'pg'
import { ok } from '../../domain/result/result.ts'
import type { Opened } from '../../ports/opening.ts'
import { type Address, shown } from './address.ts'
import { failedAt, unopened } from './problems.ts'

type Role = { readonly name: string; readonly password: string }

/** Who a connection string lets in; null when it cannot be read or names nobody. */
const roleOf = (url: string): Role | null => {
  if (!URL.canParse(url)) return null
  const { username, password, searchParams } = new URL(url)
  const name = searchParams.get('user') ?? decodeURIComponent(username)
  return name === '' ? null : { name, password: searchParams.get('password') ?? decodeURIComponent(password) }
}

/** Several services that start at once wait for one another. */
const lockNumber = 7_078_105_118

const makeRole = async (client: pg.Client, role: Role): Promise<boolean> => {
  await client.query('select pg_advisory_lock($1)', [lockNumber])
  const name = pg.escapeIdentifier(role.name)
  const { rows } = await client.query('select rolsuper or rolcreaterole as mighty from pg_roles where rolname = $1', [role.name])
  if (rows[0]?.mighty === true) return false
  if (rows.length === 0) await client.query(`create role ${name} login password ${pg.escapeLiteral(role.password)}`)
  const { rows: base } = await client.query('select current_database() as name, current_user as owner')
  if (base[0]?.owner === role.name) return false
  await client.query(`grant connect, create on database ${pg.escapeIdentifier(String(base[0]?.name))} to ${name}`)
  return true
}

/**
 * The unprivileged role behind the service's connection string, made by the database's owner when it is new; answers its name.
 * A role that may do everything, or that is the owner itself, is refused.
 */
export const makeServedRole = async (owner: Address, serviceUrl: string): Opened<string> => {
  const role = roleOf(serviceUrl)
  if (role === null)
    return unopened('store-unreachable', { at: shown({ connectionString: serviceUrl }), said: 'it names no role' })
  const client = new pg.Client(owner)
  client.on('error', () => undefined)
  try {
    await client.connect()
    return (await makeRole(client, role)) ? ok(role.name) : unopened('store-role-mighty', { role: role.name })
  } catch (cause) {
    return failedAt(shown(owner), cause)
  } finally {
    await client.end().catch(() => undefined)
  }
}
