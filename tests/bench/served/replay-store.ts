import { Socket } from 'node:net'
import type pg from 'pg'
import { openPool } from '../../../src/adapters/store/sql/pool.ts'
import type { Sent } from './postgres-messages.ts'
import type { Recorded } from './recorded-way.ts'

/** How many statements were done again, how many of them were answered as they were the first time, and in how many bytes. */
export type Answered = { readonly all: number; readonly same: number; readonly bytes: number }

export type ReplayStore = {
  readonly spend: (all: readonly Recorded[]) => Promise<void>
  /** Since this was asked last. */
  readonly answered: () => Answered
  readonly close: () => Promise<void>
}

/** A command and how many rows it touched, without the zero that stands between them in the answer to an insert. */
const inShort = (answer: string): string => answer.replace(/^INSERT 0/, 'INSERT')

const shortOf = ({ command, rowCount }: pg.QueryResult): string =>
  /^(?:BEGIN|COMMIT|ROLLBACK)$/.test(command) ? command : `${command} ${rowCount}`

const bytesRead = (stream: object): number => (stream instanceof Socket ? stream.bytesRead : 0)

/** Does recorded transactions again, over the program's own driver and the same settings: each statement prepared once, as many at once. */
export const openReplayStore = (connectionString: string): ReplayStore => {
  const pool = openPool({ connectionString }, 8, { pipeline: true, idleTimeoutMillis: 3_600_000 })
  const names = new Map<string, string>()
  const state = { all: 0, same: 0, bytes: 0 }
  const nameOf = (text: string): string => {
    const name = names.get(text) ?? `s${names.size + 1}`
    names.set(text, name)
    return name
  }
  const ask = (client: pg.PoolClient, { text, name, values }: Sent): Promise<pg.QueryResult> =>
    name === '' ? client.query(text) : client.query({ name: nameOf(text), text, values: [...values] })
  const note = (recorded: string | undefined, answer: PromiseSettledResult<pg.QueryResult>): void => {
    const now = answer.status === 'fulfilled' ? shortOf(answer.value) : 'refused'
    state.all += 1
    if (recorded !== undefined && inShort(recorded) === now) state.same += 1
  }
  const spendOne = async ({ writes, answers }: Recorded): Promise<void> => {
    const client = await pool.connect()
    const { stream } = client.connection
    const before = bytesRead(stream)
    let at = 0
    for (const write of writes) {
      stream.cork()
      const asked = write.map((sent) => ask(client, sent))
      stream.uncork()
      for (const answer of await Promise.allSettled(asked)) {
        note(answers[at], answer)
        at += 1
      }
    }
    state.bytes += bytesRead(stream) - before
    client.release()
  }
  return {
    spend: async (all) => {
      for (const one of all) await spendOne(one)
    },
    answered: () => {
      const answered = { ...state }
      Object.assign(state, { all: 0, same: 0, bytes: 0 })
      return answered
    },
    close: () => pool.end(),
  }
}
