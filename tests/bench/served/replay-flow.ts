import type { ChildProcess } from 'node:child_process'
import { once } from 'node:events'
import { setTimeout as pause } from 'node:timers/promises'
import { QueueEvents } from 'bullmq'
import { Redis } from 'ioredis'
import { ask } from '../../support/page-request.ts'
import { cpuOf } from './cpu.ts'
import { perOrder, type Spent } from './measure.ts'
import { msBetween, program } from './no-op-flow.ts'
import type { Recorded } from './recorded-way.ts'
import type { Recording } from './recording.ts'
import type { Fronted } from './replay-front.ts'
import type { Answered } from './replay-store.ts'
import { type Requests, requestsDuring } from './requests.ts'

/**
 * The flow of orders with nothing in it but what they move: a front that is asked as often and answers as many bytes, a worker that has as
 * many jobs, and between them the very transactions of the recording, one after the other in the order in which they ended.
 */
export type ReplayFlow = {
  /** The next stretch of the recording, so many orders a minute (null: as fast as it goes). */
  readonly spend: (perMinute: number | null) => Promise<Spent>
  /** How the server answered in all stretches so far; bytes per order. */
  readonly answered: () => Answered
  readonly close: () => Promise<void>
}

/** A request, and the jobs that follow it before the next. */
type Turn = Fronted['shares'][number]

/** Deals transactions out to as many requests and jobs, in their order. */
const dealt = (
  all: readonly Recorded[],
  requests: number,
  jobs: number,
): readonly [readonly Turn[], readonly (readonly Recorded[])[]] => {
  const [turns, works]: [Turn[], (readonly Recorded[])[]] = [[], []]
  const units = requests + jobs
  for (let at = 0; at < units; at += 1) {
    const transactions = all.slice(Math.floor((at * all.length) / units), Math.floor(((at + 1) * all.length) / units))
    const last = turns.at(-1)
    if (last === undefined || Math.floor(((at + 1) * requests) / units) > Math.floor((at * requests) / units))
      turns.push({ transactions, jobs: [] })
    else {
      turns[turns.length - 1] = { ...last, jobs: [...last.jobs, works.length] }
      works.push(transactions)
    }
  }
  return [turns, works]
}

/** The bodies that make a request and its answer as long as a customer's, with their heads. */
const bodiesOf = async (address: string, { many, bytesUp, bytesDown }: Requests): Promise<Requests> => {
  const heads = await requestsDuring(() => ask(address, '/', { method: 'POST' }))
  const body = (whole: number, head: number): number => Math.max(0, Math.round(whole / many) - head)
  return { many, bytesUp: body(bytesUp, heads.bytesUp), bytesDown: body(bytesDown, heads.bytesDown) }
}

const isAnswered = (message: unknown): message is Answered => typeof message === 'object' && message !== null && 'same' in message

/** Says something to a program, and waits until it has done it. */
const told = async (
  child: ChildProcess,
  what: Fronted | readonly Recorded[] | readonly (readonly Recorded[])[],
): Promise<Answered> => {
  child.send(what)
  const [message] = await once(child, 'message')
  if (!isAnswered(message)) throw new Error('a program of the replay did not say how it went')
  return message
}

/** Counts the jobs that are done. */
const openDone = (url: string) => {
  const connection = new Redis(url, { maxRetriesPerRequest: null })
  const events = new QueueEvents('replay', { connection })
  const state = { done: 0 }
  events.on('completed', () => {
    state.done += 1
  })
  return {
    ready: () => events.waitUntilReady(),
    many: async (wanted: number): Promise<void> => {
      while (state.done < wanted) await once(events, 'completed')
      state.done = 0
    },
    close: async () => {
      await events.close()
      connection.disconnect()
    },
  }
}

export const openReplayFlow = async (recording: Recording): Promise<ReplayFlow> => {
  const servers = JSON.stringify({ redis: recording.redis, postgres: recording.postgres })
  const [worker, front] = [program('replay-worker', servers), program('replay-front', servers)]
  const [, [port]] = await Promise.all([once(worker, 'message'), once(front, 'message')])
  const done = openDone(recording.redis)
  await done.ready()
  const address = `http://127.0.0.1:${port}`
  const bodies = await bodiesOf(address, recording.moved.requests)
  const state = { next: 0, all: 0, same: 0, bytes: 0 }
  const spentSoFar = (): Spent => ({
    service: cpuOf([front.pid ?? 0]),
    workers: cpuOf([worker.pid ?? 0]),
    postgres: cpuOf([recording.postgresPid()]),
    redis: cpuOf([recording.redisPid()]),
  })
  const note = ({ all, same, bytes }: Answered): void => {
    state.all += all
    state.same += same
    state.bytes += bytes / recording.each
  }
  const turnByTurn = async (turns: readonly Turn[], everyMs: number): Promise<void> => {
    const from = performance.now()
    const body = Buffer.alloc(bodies.bytesUp, 32)
    for (const [at, { jobs }] of turns.entries()) {
      await pause(Math.max(0, from + at * everyMs - performance.now()))
      await ask(address, `/${at}`, { method: 'POST', body })
      await done.many(jobs.length)
    }
  }
  return {
    spend: async (perMinute) => {
      const stretch = recording.stretches[state.next]
      if (stretch === undefined) throw new Error('nothing more was recorded')
      state.next += 1
      const { each, moved } = recording
      const [turns, works] = dealt(stretch.orders, Math.round(each * bodies.many), Math.round(each * moved.jobs))
      await told(worker, works)
      await told(front, { shares: turns, bytes: bodies.bytesDown })
      const before = spentSoFar()
      await turnByTurn(turns, msBetween(bodies.many, perMinute))
      const spent = perOrder(before, spentSoFar(), each)
      note(await told(worker, []))
      note(await told(front, []))
      await told(front, stretch.rest)
      return spent
    },
    answered: () => ({ all: state.all, same: state.same, bytes: state.bytes / Math.max(1, state.next) }),
    close: async () => {
      worker.disconnect()
      front.disconnect()
      await Promise.all([once(worker, 'exit'), once(front, 'exit')])
      await done.close()
    },
  }
}
