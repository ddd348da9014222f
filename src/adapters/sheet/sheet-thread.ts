import { parentPort, workerData } from 'node:worker_threads'
import type { SheetRead } from '../../ports/sheet.ts'
import { readCsv } from './read-csv.ts'
import { readXlsx, unpacksWithin } from './read-xlsx.ts'
import { type SheetTask, sheetLimits } from './sheet-limits.ts'

/** Maker: the thread is only ever started by `readSheet` with such a task. */
const taskOf = (data: unknown): SheetTask => data as SheetTask

const tableOf = ({ kind, bytes }: SheetTask): Promise<readonly (readonly string[])[]> =>
  kind === 'csv' ? Promise.resolve(readCsv(bytes)) : readXlsx(bytes)

const read = async (task: SheetTask): Promise<SheetRead> => {
  if (task.kind === 'xlsx' && !unpacksWithin(task.bytes, sheetLimits.unpackedBytes)) return { unread: 'too-large' }
  const table = await tableOf(task)
  if (table.length > sheetLimits.lines) return { unread: 'too-large' }
  return table.length === 0 ? { unread: 'not-a-table' } : { table }
}

parentPort?.postMessage(await read(taskOf(workerData)).catch((): SheetRead => ({ unread: 'broken' })))
