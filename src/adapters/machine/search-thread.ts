import { parentPort, workerData } from 'node:worker_threads'
import { replanFor } from '../../domain/schedule/replan/replan.ts'
import { budgetFor } from '../../domain/schedule/search/plan.ts'
import { slotsOf } from '../../domain/schedule/timeline/slots.ts'
import type { SearchTask } from '../../ports/search.ts'

/** Maker: the thread is started with nothing but such a task. */
const taskFrom = (data: unknown): SearchTask => data as SearchTask

const { book, slots, seed, seconds } = taskFrom(workerData)
const found = replanFor(book, slots, { seed, budget: budgetFor(seconds), stop: () => false })
parentPort?.postMessage(found.ok ? slotsOf(found.value.lines) : null)
