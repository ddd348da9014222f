import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'

const isRunnable = (file: string): boolean => {
  try {
    accessSync(file, constants.X_OK)
    return true
  } catch {
    return false
  }
}

/** The full path of the first of these programs that is on the machine. */
export const findProgram = (...names: readonly string[]): string | undefined => {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '')
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(isRunnable)
}

/**
 * Whether a suite can run here: `describe.runIf(needs('redis-server'))`. On a user's machine a missing program is said and
 * the suite is left out; in CI it is a failure. Several names are alternatives.
 */
export const needs = (...names: readonly string[]): boolean => {
  if (findProgram(...names) !== undefined) return true
  const missing = names.join(' or ')
  if (process.env['CI'] !== undefined) throw new Error(`${missing} must be installed where CI is set`)
  process.stderr.write(`\n  LEFT OUT: these tests need ${missing}, which is not installed here.\n`)
  return false
}
