import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'

const ticksPerSecond = Number(execFileSync('getconf', ['CLK_TCK'], { encoding: 'utf8' }))

type Stat = { readonly parent: number; readonly seconds: number }

/** User and system time of one process and of its children that ended (proc(5), fields 4 and 14-17). */
const statOf = (pid: number): Stat | null => {
  try {
    const text = readFileSync(`/proc/${pid}/stat`, 'utf8')
    const fields = text
      .slice(text.lastIndexOf(')') + 2)
      .split(' ')
      .map(Number)
    const [user = 0, system = 0, childUser = 0, childSystem = 0] = fields.slice(11, 15)
    return { parent: fields[1] ?? 0, seconds: (user + system + childUser + childSystem) / ticksPerSecond }
  } catch {
    return null
  }
}

/** Seconds of processor that these processes and everything they started have used so far, but for one of them (Linux). */
export const cpuOf = (roots: readonly number[], but = 0): number => {
  const all = new Map<number, Stat>()
  for (const name of readdirSync('/proc')) {
    const stat = /^\d+$/.test(name) ? statOf(Number(name)) : null
    if (stat !== null) all.set(Number(name), stat)
  }
  const isOurs = (pid: number): boolean => roots.includes(pid) || (all.has(pid) && pid > 1 && isOurs(all.get(pid)?.parent ?? 0))
  return [...all].filter(([pid]) => pid !== but && isOurs(pid)).reduce((sum, [, { seconds }]) => sum + seconds, 0)
}
