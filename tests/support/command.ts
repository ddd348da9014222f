import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { projectRoot } from '../../src/adapters/folder/root.ts'

export type Ran = { readonly status: number | null; readonly out: string; readonly err: string }

/** Runs a compiled command as a person would, in a process of its own. */
export const runCompiled = (name: string, words: readonly string[], input = ''): Ran => {
  const program = join(projectRoot(), '.build', 'src', 'cli', `${name}.js`)
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
    input,
    encoding: 'utf8',
    maxBuffer: 64 * 1_048_576,
  })
  return { status, out: stdout, err: stderr }
}

/** A fresh folder and how to remove it. */
export const freshFolder = (name: string): { readonly path: string; readonly remove: () => void } => {
  const path = mkdtempSync(join(tmpdir(), `${name}-`))
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) }
}
