import pg from 'pg'

/** One transaction of nothing: the bytes that its one insert leaves in the log. */
export type Transaction = { readonly logged: number }

export type NoOpStore = { readonly spend: (all: readonly Transaction[]) => Promise<void>; readonly close: () => Promise<void> }

/** Transactions one after the other, begun, written and kept in a write each, prepared as the program's are. */
export const openNoOpStore = (connectionString: string): NoOpStore => {
  const pool = new pg.Pool({ connectionString, max: 8, idleTimeoutMillis: 3_600_000 })
  const spendOne = async ({ logged }: Transaction): Promise<void> => {
    const client = await pool.connect()
    await client.query('begin')
    await client.query({ name: 'insert', text: 'insert into no_op (bytes) values ($1)', values: [Buffer.alloc(logged, 7)] })
    await client.query('commit')
    client.release()
  }
  return {
    spend: async (all) => {
      for (const transaction of all) await spendOne(transaction)
    },
    close: () => pool.end(),
  }
}
