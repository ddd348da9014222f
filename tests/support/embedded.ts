import { chmodSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { type Embedded, startEmbedded } from '../../src/adapters/store/embedded/start-embedded.ts'
import { migrate } from '../../src/adapters/store/sql/migrate.ts'
import { openStore } from '../../src/adapters/store/sql/open-store.ts'
import type { Problem, Result } from '../../src/domain/result/result.ts'
import type { Store } from '../../src/ports/store.ts'

export const root = projectRoot()

/** The value, or the problems thrown as an error of the test. */
export const unwrap = <T>(result: Result<T, Problem>): T => {
  if (result.ok) return result.value
  throw new Error(JSON.stringify(result.problems, null, 2))
}

/** A folder that goes with the test and that every user may pass. */
export const temporaryFolder = (): { readonly path: string; readonly remove: () => void } => {
  const path = mkdtempSync(join(tmpdir(), 'pp-'))
  chmodSync(path, 0o711)
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) }
}

export type TestStore = {
  readonly data: string
  readonly embedded: Embedded
  readonly store: Store
  readonly close: () => Promise<void>
}

/** A migrated store on a server of its own. `onStatement` sees every statement's text. */
export const openTestStore = async (onStatement: (text: string) => void = () => undefined): Promise<TestStore> => {
  const folder = temporaryFolder()
  const data = join(folder.path, 'data')
  const embedded = unwrap(await startEmbedded(data))
  unwrap(await migrate({ owner: embedded.owner, role: 'service', root }))
  const store = unwrap(await openStore({ address: embedded.service, time: Date.now, log: ({ query }) => onStatement(query.sql) }))
  return {
    data,
    embedded,
    store,
    close: async () => {
      await store.close()
      await embedded.stop()
      folder.remove()
    },
  }
}
