import { Worker } from 'node:worker_threads'
import type { SheetRead } from '../../ports/sheet.ts'
import { type SheetTask, sheetLimits } from './sheet-limits.ts'

/** Maker: the thread posts nothing but such an answer. */
const answerOf = (message: unknown): SheetRead => message as SheetRead

const inThread = (task: SheetTask, thread: URL | string): Promise<SheetRead> =>
  new Promise((settle) => {
    const worker = new Worker(thread, {
      workerData: task,
      env: {},
      stdout: true,
      stderr: true,
      resourceLimits: { maxOldGenerationSizeMb: sheetLimits.megabytes, maxYoungGenerationSizeMb: 32, stackSizeMb: 4 },
    })
    const done = (answer: SheetRead): void => {
      clearTimeout(timer)
      settle(answer)
      void worker.terminate()
    }
    const timer = setTimeout(() => done({ unread: 'broken' }), sheetLimits.seconds * 1000)
    worker.once('message', (message) => done(answerOf(message)))
    worker.once('error', () => done({ unread: 'broken' }))
    worker.once('exit', () => done({ unread: 'broken' }))
  })

const kindOf = (name: string, bytes: Uint8Array): SheetTask['kind'] | null => {
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return 'xlsx'
  const binary = bytes.subarray(0, 4_000).some((byte) => byte === 0) && !(bytes[0] === 0xff && bytes[1] === 0xfe)
  return !binary && /\.(?:csv|tsv|txt)$/i.test(name) ? 'csv' : null
}

/**
 * The cells of a CSV or XLSX file from a customer, read in a thread with limits on memory and time: at most 1 MB, 20 MB
 * unpacked, 500 lines. Anything else says why it was not read; it never throws.
 */
export const readSheet = async (
  file: { readonly name: string; readonly bytes: Uint8Array },
  thread: URL | string = new URL('./sheet-thread.js', import.meta.url),
): Promise<SheetRead> => {
  if (file.bytes.length > sheetLimits.bytes) return { unread: 'too-large' }
  const kind = kindOf(file.name, file.bytes)
  return kind === null ? { unread: 'not-a-table' } : inThread({ kind, bytes: file.bytes }, thread)
}
