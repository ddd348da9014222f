import { sql } from 'kysely'
import type pg from 'pg'

const mark = '/* unawaited */'

/**
 * Ends a statement inside a transaction whose answer nobody waits for. It leaves together with the next statement, in order, and a
 * failure of it is the failure of the transaction: the next statement, or the commit at the latest, is refused with its cause. Outside of
 * a transaction it is a statement like any other.
 */
export const unawaited = sql`${sql.raw(mark)}`

type Run = (text: string, values: unknown[]) => Promise<pg.QueryResult>

const nothing: pg.QueryResult = { command: '', rowCount: 0, oid: 0, fields: [], rows: [] }

const ends: readonly string[] = ['commit', 'rollback']

/** What the transaction at hand failed of first: answers come in the order of their statements. */
type Failing = { inside: boolean; first: { readonly cause: unknown } | null }

/** Only what is asked inside of a transaction counts for it. */
const noted = (failing: Failing, answer: Promise<pg.QueryResult>): Promise<pg.QueryResult> => {
  const { inside } = failing
  answer.catch((cause: unknown) => {
    if (inside) failing.first ??= { cause }
  })
  return answer
}

/** Runs a statement that is waited for; a failure is told with the cause that came first. */
const waitedFor = async (failing: Failing, text: string, answer: Promise<pg.QueryResult>): Promise<pg.QueryResult> => {
  try {
    const result = await answer
    if (text === 'commit' && failing.first !== null) throw failing.first.cause
    return result
  } catch (cause) {
    throw failing.first === null ? cause : failing.first.cause
  } finally {
    if (ends.includes(text)) failing.inside = false
  }
}

type Stream = { readonly cork: () => void; readonly uncork: () => void }

/** Holds what is written back until it is wanted out: then all of it leaves at once, when everybody who is at hand has written. */
const gathering = (stream: Stream) => {
  const state = { holds: false, leaves: false }
  const send = (): void => {
    Object.assign(state, { holds: false, leaves: false })
    stream.uncork()
  }
  return {
    hold: () => {
      if (!state.holds) stream.cork()
      state.holds = true
    },
    leave: () => {
      if (!state.leaves) process.nextTick(send)
      state.leaves = true
    },
  }
}

/**
 * The statements of one connection. Those that are asked at once leave at once; those that are not waited for, and the beginning of a
 * transaction, leave with the next.
 */
export const steered = (run: Run, stream: Stream): Run => {
  const failing: Failing = { inside: false, first: null }
  const { hold, leave } = gathering(stream)
  return (text, values) => {
    if (text === 'begin') Object.assign(failing, { inside: true, first: null })
    const isLate = text === 'begin' || (failing.inside && text.endsWith(mark))
    hold()
    const answer = noted(failing, run(text, values))
    if (isLate) return Promise.resolve(nothing)
    leave()
    return waitedFor(failing, text, answer)
  }
}
