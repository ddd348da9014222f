import { readdirSync, readFileSync } from 'node:fs'
import { processes } from './service-watch.ts'

/** What a process and everything it started hold: proportional memory in MiB, and open files (Linux). */
export type Held = { readonly memory: number; readonly files: number }

const proportional = (pid: number): number => {
  const kilobytes = /^Pss:\s+(\d+) kB/m.exec(readFileSync(`/proc/${pid}/smaps_rollup`, 'utf8'))?.[1]
  return Number(kilobytes) / 1_024
}

/** A process that ended while it was looked at holds nothing. */
const heldBy = (pid: number): Held => {
  try {
    return { memory: proportional(pid), files: readdirSync(`/proc/${pid}/fd`).length }
  } catch {
    return { memory: 0, files: 0 }
  }
}

const family = (root: number): readonly number[] => {
  const all = processes()
  const below = (pid: number): readonly number[] => [
    pid,
    ...all.filter(({ parent }) => parent === pid).flatMap((one) => below(one.pid)),
  ]
  return below(root)
}

export const heldOf = (root: number): Held =>
  family(root)
    .map(heldBy)
    .reduce((sum, one) => ({ memory: sum.memory + one.memory, files: sum.files + one.files }))
