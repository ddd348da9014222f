import { stat } from 'node:fs/promises'
import { dirname } from 'node:path'
import type { Account } from './run.ts'

const parents = (folder: string): readonly string[] => {
  const above = dirname(folder)
  return above === folder ? [folder] : [...parents(above), folder]
}

const mayPass = (at: { readonly uid: number; readonly gid: number; readonly mode: number }, account: Account): boolean => {
  if (at.uid === account.uid) return (at.mode & 0o100) !== 0
  if (at.gid === account.gid) return (at.mode & 0o010) !== 0
  return (at.mode & 0o001) !== 0
}

/** The first folder on the way down to this one that the account cannot pass. */
export const closedFolder = async (folder: string, account: Account): Promise<string | undefined> => {
  for (const at of parents(folder)) {
    if (!mayPass(await stat(at), account)) return at
  }
  return undefined
}
