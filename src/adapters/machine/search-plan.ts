import { Worker } from 'node:worker_threads'
import type { Slot } from '../../domain/schedule/book/operation.ts'
import type { SearchPlan } from '../../ports/search.ts'

/** Maker: the thread posts nothing but slots or null. */
const answerOf = (message: unknown): readonly Slot[] | null => message as readonly Slot[] | null

const megabytes = 512

/** Searches in a thread of its own, so that whoever asks goes on with other work; a thread that dies is an error. */
export const searchInThread =
  (thread: URL | string = new URL('./search-thread.js', import.meta.url)): SearchPlan =>
  (task) =>
    new Promise((settle, fail) => {
      const worker = new Worker(thread, {
        workerData: task,
        env: {},
        resourceLimits: { maxOldGenerationSizeMb: megabytes, stackSizeMb: 4 },
      })
      worker.unref()
      worker.once('message', (message) => {
        settle(answerOf(message))
        void worker.terminate()
      })
      worker.once('error', fail)
      worker.once('exit', (code) => fail(new Error(`the search for a plan ended with ${code}`)))
    })
