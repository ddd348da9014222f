import { existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import type { Held, PostingKey, PostingRecord, Postings } from '../../../src/ports/platform-desk.ts'

type Row = PostingRecord & { readonly until: number }
type Rows = { readonly read: () => Map<string, Row>; readonly write: (rows: Map<string, Row>) => void }

const nameOf = ({ shop, nonce, part }: PostingKey): string => `${shop}|${nonce}|${part}`

const postingsOver = ({
  read,
  write,
}: Rows): Postings & { readonly all: () => ReadonlyMap<string, Row>; readonly again: (key: PostingKey) => void } => {
  const change = (held: Held, next: (row: Row) => Row | null): boolean => {
    const rows = read()
    const row = rows.get(nameOf(held))
    if (row === undefined || row.fence !== held.fence) return false
    const changed = next(row)
    if (changed === null) rows.delete(nameOf(held))
    else rows.set(nameOf(held), changed)
    write(rows)
    return true
  }
  return {
    all: read,
    /** Staff want it posted once more. */
    again: (key) => {
      const rows = read()
      const row = rows.get(nameOf(key))
      if (row !== undefined)
        rows.set(nameOf(key), { ...row, round: row.round + 1, firstAttemptAt: null, message: null, body: null })
      write(rows)
    },
    lease: async (key, { channel, now, until }) => {
      const rows = read()
      const row = rows.get(nameOf(key)) ?? {
        channel,
        round: 1,
        firstAttemptAt: null,
        message: null,
        body: null,
        fence: 0,
        until: 0,
      }
      if (row.until > now) return null
      const leased = { ...row, fence: row.fence + 1, until }
      rows.set(nameOf(key), leased)
      write(rows)
      return leased
    },
    attempt: async (held, at, until) => change(held, (row) => ({ ...row, firstAttemptAt: row.firstAttemptAt ?? at, until })),
    record: async (held, { message, body }) => change(held, (row) => ({ ...row, message, body })),
    release: async (held) => {
      change(held, (row) => ({ ...row, until: 0 }))
    },
    parts: async (shop, nonce) => [...read().keys()].filter((name) => name.startsWith(`${shop}|${nonce}|`)).length,
    drop: async (held) => {
      change(held, () => null)
    },
  }
}

export const memoryPostings = () => {
  const rows = new Map<string, Row>()
  return postingsOver({ read: () => rows, write: () => undefined })
}

/** Survives a process that is killed: each change is a whole new file. */
export const filePostings = (file: string) =>
  postingsOver({
    read: () => new Map<string, Row>(existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as [string, Row][]) : []),
    write: (rows) => {
      writeFileSync(`${file}.new`, JSON.stringify([...rows]))
      renameSync(`${file}.new`, file)
    },
  })
