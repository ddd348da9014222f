import type { Moved } from './count-moved.ts'
import type { Transaction } from './no-op-store.ts'
import type { Nothing } from './no-op-worker.ts'

/** The whole part of the next share: of shares of 7.4 the first five are 7, 7, 8, 7 and 8. */
const wholeOf = (each: number, at: number): number => Math.floor((at + 1) * each) - Math.floor(at * each)

const many = <T>(count: number, one: (at: number) => T): readonly T[] => Array.from({ length: count }, (_, at) => one(at))

/** A job's share of as many transactions of one insert each, and of as many bytes of the log. */
export const bareShare = ({ jobs, transactions, bytes }: Moved, job: number): Nothing => {
  const one: Transaction = { looks: 0, logged: Math.round(bytes / transactions), up: 0, down: 0, writes: 3 }
  return { transactions: many(wholeOf(transactions / jobs, job), () => one) }
}

/**
 * What a request's or a job's share is of an order's transactions with all their statements. Transactions that were begun have their looks,
 * one insert with the log's bytes, and as many writes as they had; the others are one look each.
 */
export const fullShare = ({ jobs, transactions, bytes, traffic, requests }: Moved, at: number): Nothing => {
  const units = jobs + requests.many
  const { statements, begins, writes, bytesUp, bytesDown } = traffic
  const single = Math.max(0, transactions - begins)
  const looks = Math.max(0, statements - 3 * begins)
  const down = Math.round(bytesDown / looks)
  const [from, till] = [Math.floor(at * (begins / units)), Math.floor((at + 1) * (begins / units))]
  const begun = many(till - from, (nth): Transaction => {
    const its = wholeOf((looks - single) / begins, from + nth)
    const up = Math.round(Math.max(0, bytesUp - bytes) / begins)
    return { looks: its, logged: Math.round(bytes / begins), up, down, writes: wholeOf((writes - single) / begins, from + nth) }
  })
  const alone = many(wholeOf(single / units, at), (): Transaction => ({ looks: 1, logged: null, up: 0, down, writes: 1 }))
  return { transactions: [...begun, ...alone] }
}
