import { stat } from 'node:fs/promises'
import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { unopened } from '../problems.ts'
import { type Account, type Ran, run } from './run.ts'

const accountName = 'platenpost'
const makers = [
  [
    'useradd',
    '--system',
    '--user-group',
    '--no-create-home',
    '--home-dir',
    '/nonexistent',
    '--shell',
    '/usr/sbin/nologin',
    accountName,
  ],
  ['adduser', '-S', '-D', '-H', '-s', '/sbin/nologin', accountName],
] as const

const isNumber = ({ code, said }: Ran): boolean => code === 0 && /^\d+$/.test(said)

const lookUp = async (name: string): Promise<Account | undefined> => {
  const uid = await run('id', ['-u', name], null)
  const gid = await run('id', ['-g', name], null)
  if (!isNumber(uid) || !isNumber(gid)) return undefined
  return { name, uid: Number(uid.said), gid: Number(gid.said) }
}

const make = async (): Opened<Account> => {
  const said: string[] = []
  for (const [program, ...args] of makers) {
    said.push((await run(program, args, null)).said)
    const made = await lookUp(accountName)
    if (made !== undefined) return ok(made)
  }
  return unopened('store-user-missing', { user: accountName, said: said.join('; ') })
}

const ownerOf = async (folder: string): Promise<Account | undefined> => {
  try {
    const { uid, gid } = await stat(folder)
    return uid === 0 ? undefined : { name: String(uid), uid, gid }
  } catch {
    return undefined
  }
}

/**
 * Who runs PostgreSQL, which refuses to run as root: null is whoever we are; for root it is the owner of the data that
 * are there, or a system user of our own.
 */
export const findAccount = async (cluster: string): Opened<Account | null> => {
  if (process.platform === 'win32' || process.getuid?.() !== 0) return ok(null)
  const known = (await ownerOf(cluster)) ?? (await lookUp(accountName))
  return known === undefined ? make() : ok(known)
}
