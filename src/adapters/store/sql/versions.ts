import { type Result, refuse } from '../../../domain/result/result.ts'
import type { Seen, StoreProblem } from '../../../ports/keeping.ts'

const missing = (what: string, id: string): Result<never, StoreProblem> =>
  refuse({ code: 'store-missing', at: '', severity: 'stop', facts: { what, id } })

export const alreadyThere = (what: string, id: string): Result<never, StoreProblem> =>
  refuse({ code: 'store-already-there', at: '', severity: 'stop', facts: { what, id } })

/** Why an update that named a version met no row. */
export const outdated = (what: string, seen: Seen, found: number | undefined): Result<never, StoreProblem> => {
  if (found === undefined) return missing(what, seen.id)
  return refuse({
    code: 'store-version-changed',
    at: '',
    severity: 'stop',
    facts: { what, id: seen.id, expected: seen.version, found },
  })
}
