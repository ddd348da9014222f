import pg from 'pg'

/** One transaction of nothing. */
export type Transaction = {
  /** Looks beside the one insert; a transaction that is a single look has none of the rest. */
  readonly looks: number
  /** Bytes that the insert leaves in the log; null: nothing is written, and nothing begun. */
  readonly logged: number | null
  /** Bytes that go up beside what is inserted. */
  readonly up: number
  /** Bytes that come down with each look. */
  readonly down: number
  /** Times that something is written to the server: what leaves at once is one. */
  readonly writes: number
}

export type NoOpStore = { readonly spend: (all: readonly Transaction[]) => Promise<void>; readonly close: () => Promise<void> }

type Statement = { readonly text: string; readonly name?: string; readonly values?: readonly unknown[] }

/** Looks at so many bytes of the one row there is; what is sent along is not used. */
const look = (down: number, up: number): Statement => ({
  name: 'look',
  text: 'select substr(body, 1, $1) as body from no_op_page where id = 1 and $2::bytea is not null',
  values: [down, Buffer.alloc(up, 7)],
})

const statementsOf = ({ looks, logged, up, down }: Transaction): readonly Statement[] => {
  const asked = Array.from({ length: looks }, (_, at) => look(down, at === 0 ? up : 0))
  if (logged === null) return asked
  const insert = { name: 'insert', text: 'insert into no_op (bytes) values ($1)', values: [Buffer.alloc(logged, 7)] }
  return [{ text: 'begin' }, ...asked, insert, { text: 'commit' }]
}

/** The same in so many parts, each as long as the others. */
const inParts = <T>(all: readonly T[], parts: number): readonly (readonly T[])[] =>
  Array.from({ length: parts }, (_, at) =>
    all.slice(Math.round((at * all.length) / parts), Math.round(((at + 1) * all.length) / parts)),
  )

/** Transactions one after the other, their statements in as many writes as are asked for, prepared as the program's are. */
export const openNoOpStore = (connectionString: string): NoOpStore => {
  const pool = new pg.Pool({ connectionString, max: 8, pipeline: true, idleTimeoutMillis: 3_600_000 })
  const spendOne = async (transaction: Transaction): Promise<void> => {
    const client = await pool.connect()
    const { stream } = client.connection
    for (const part of inParts(statementsOf(transaction), Math.max(1, transaction.writes))) {
      stream.cork()
      const answers = part.map(({ values, ...statement }) =>
        client.query({ ...statement, ...(values === undefined ? {} : { values: [...values] }) }),
      )
      stream.uncork()
      await Promise.all(answers)
    }
    client.release()
  }
  return {
    spend: async (all) => {
      for (const transaction of all) await spendOne(transaction)
    },
    close: () => pool.end(),
  }
}
