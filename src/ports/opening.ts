import type { ProblemOf, Result } from '../domain/result/result.ts'

/** Why the store or the queue could not be opened when the service starts. */
export type OpenProblems = {
  /** npm brings no PostgreSQL for this kind of machine. */
  'store-program-missing': { readonly machine: string }
  /** The libraries' links were not made, as happens when install scripts are off. */
  'store-links-missing': { readonly command: string }
  'store-user-missing': { readonly user: string; readonly said: string }
  'store-folder-closed': { readonly folder: string; readonly user: string }
  'store-folder-refused': { readonly folder: string; readonly said: string }
  'store-disk-full': { readonly folder: string }
  /** The data are there and the file with their passwords is not, or does not fit them. */
  'store-keys-missing': { readonly file: string; readonly folder: string }
  'store-not-started': { readonly log: string; readonly said: string }
  'store-in-use': { readonly at: string }
  'store-unreachable': { readonly at: string; readonly said: string }
  /** It answers, and lets this role not in or not do what is needed. */
  'store-refused': { readonly at: string; readonly said: string }
  /** It answers and has no records, or not in the shape of this program: no service of this version was started on it. */
  'store-not-made': { readonly at: string }
  /** The service would work as a role that may do everything. */
  'store-role-mighty': { readonly role: string }
  /** Records keep the clock they were made with; null is the machine's time. */
  'clock-not-theirs': { readonly set: string | null; readonly theirs: string | null }
  /** The records were written by a newer program. */
  'store-newer': { readonly said: string }
  /** Records are only put back where there are none. */
  'store-not-empty': { readonly at: string }
  /** No service ever made a place in this folder. */
  'store-nothing-there': { readonly folder: string }
  'backup-missing': { readonly file: string }
  /** A backup that is cut short, changed, or no backup at all. */
  'backup-damaged': { readonly file: string; readonly said: string }
  /** What was put back is not what was written. */
  'backup-differs': { readonly file: string; readonly table: string }
  'queue-unreachable': { readonly at: string; readonly said: string }
  /** It answers, and takes the password not or the user not. */
  'queue-refused': { readonly at: string; readonly said: string }
  /** Redis without an append-only file loses steps that were promised. */
  'queue-forgets': { readonly at: string; readonly setting: string }
  /** Redis that throws keys away when memory is short. */
  'queue-evicts': { readonly at: string; readonly policy: string }
}
export type OpenProblem = ProblemOf<OpenProblems>
export type Opened<T> = Promise<Result<T, OpenProblem>>
