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

/** Answers of statements that nobody waited for, until their transaction ends. */
type Late = { inside: boolean; readonly answers: Promise<unknown>[] }

const firstFailure = async (late: Late): Promise<unknown> => {
  const failed = (await Promise.allSettled(late.answers)).find(({ status }) => status === 'rejected')
  return failed?.status === 'rejected' ? failed.reason : undefined
}

/** Runs a statement that is waited for; a failure is told with the cause that came first. */
const waitedFor = async (late: Late, text: string, answer: Promise<pg.QueryResult>): Promise<pg.QueryResult> => {
  try {
    const result = await answer
    const failure = text === 'commit' ? await firstFailure(late) : undefined
    if (failure !== undefined) throw failure
    return result
  } catch (cause) {
    throw (await firstFailure(late)) ?? cause
  } finally {
    if (ends.includes(text)) {
      late.inside = false
      late.answers.length = 0
    }
  }
}

/** The statements of one connection; those that are not waited for, and the beginning of a transaction, leave with the next. */
export const steered = (run: Run, stream: { readonly cork: () => void; readonly uncork: () => void }): Run => {
  const late: Late = { inside: false, answers: [] }
  let corked = false
  const answerOf = (text: string, values: unknown[]): Promise<pg.QueryResult> => {
    const answer = run(text, values)
    if (corked) stream.uncork()
    corked = false
    return answer
  }
  return (text, values) => {
    if (text === 'begin') late.inside = true
    else if (!late.inside || !text.endsWith(mark)) return waitedFor(late, text, answerOf(text, values))
    if (!corked) stream.cork()
    corked = true
    const answer = run(text, values)
    answer.catch(() => undefined)
    late.answers.push(answer)
    return Promise.resolve(nothing)
  }
}
