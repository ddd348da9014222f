import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { root } from './embedded.ts'

export type Child = {
  readonly process: ChildProcess
  /** Settles when the child has printed this line. */
  readonly says: (line: string) => Promise<void>
  /** A signal to the child and all it started in its group, as a terminal sends it; answers when the child is gone. */
  readonly signal: (name: NodeJS.Signals) => Promise<void>
}

/** Runs a script on the compiled program, in a process group of its own. `built` is the address of `.build` in the script. */
export const runChild = (script: string): Child => {
  const built = `const built = ${JSON.stringify(`file://${join(root, '.build')}`)}\n`
  const child = spawn(process.execPath, ['--input-type=module', '--eval', built + script], {
    cwd: root,
    detached: true,
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const said: string[] = []
  child.stdout.setEncoding('utf8').on('data', (part: string) => said.push(part))
  const gone = once(child, 'exit')
  return {
    process: child,
    says: async (line) => {
      while (!said.join('').split('\n').includes(line)) {
        if (child.exitCode !== null || child.signalCode !== null)
          throw new Error(`the child ended without saying "${line}": ${said.join('')}`)
        await Promise.race([once(child.stdout, 'data'), gone])
      }
    },
    signal: async (name) => {
      if (child.pid !== undefined) process.kill(-child.pid, name)
      await gone
    },
  }
}
