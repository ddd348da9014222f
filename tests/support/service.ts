import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { createServer } from 'node:net'
import { join } from 'node:path'

const root = process.cwd()

export type Settings = { readonly [name: string]: string }

export type Service = {
  readonly process: ChildProcess
  readonly pid: number
  /** What it printed so far, both ways. */
  readonly said: () => string
  /** Settles with the match as soon as it is printed; fails when the process ends before. */
  readonly says: (what: RegExp) => Promise<RegExpExecArray>
  /** Sends a signal to the process and everything in its group, as a terminal does; settles when it is gone. */
  readonly signal: (name: NodeJS.Signals) => Promise<void>
  /** Settles with the exit code, or the signal's name. */
  readonly ended: Promise<number | string>
}

/** Only what a program needs of the environment, so that nobody's own settings come in. */
const plainEnvironment = (settings: Settings): Settings => ({
  PATH: process.env['PATH'] ?? '',
  HOME: process.env['HOME'] ?? '',
  ...(process.env['TMPDIR'] === undefined ? {} : { TMPDIR: process.env['TMPDIR'] }),
  ...settings,
})

/** A program of `.build` in a process group of its own. */
export const runProgram = (program: string, settings: Settings, ...words: readonly string[]): Service => {
  const child = spawn(process.execPath, [join(root, '.build', program), ...words], {
    cwd: root,
    detached: true,
    stdio: ['ignore', 'pipe', 'pipe'],
    env: plainEnvironment(settings),
  })
  const parts: string[] = []
  for (const stream of [child.stdout, child.stderr]) stream.setEncoding('utf8').on('data', (part: string) => parts.push(part))
  const said = (): string => parts.join('')
  const gone = once(child, 'exit')
  const ended = once(child, 'close').then(() => child.exitCode ?? child.signalCode ?? 'unknown')
  const pid = child.pid ?? 0
  return {
    process: child,
    pid,
    said,
    ended,
    says: async (what) => {
      for (;;) {
        const found = what.exec(said())
        if (found !== null) return found
        if (child.exitCode !== null || child.signalCode !== null) throw new Error(`${program} ended without ${what}: ${said()}`)
        await Promise.race([once(child.stdout, 'data'), once(child.stderr, 'data'), ended])
      }
    },
    signal: async (name) => {
      if (child.exitCode !== null || child.signalCode !== null) return
      process.kill(-pid, name)
      await gone
    },
  }
}

export type OpenService = Service & { readonly address: string; readonly ownerLink: string }

/** The service itself, waited for until it is open. */
export const startService = async (data: string, settings: Settings = {}): Promise<OpenService> => {
  const service = runProgram('src/main.js', { DATA: data, COUNTER_PORT: '0', ...settings })
  const [, address = ''] = await service.says(/The counter is open: (\S+)\n/)
  const [, ownerLink = ''] = await service.says(/Owner, once: (\S+)\n/)
  await service.says(/Stop with Ctrl-C/)
  return { ...service, address, ownerLink }
}

/** A port of this machine that nobody listens on just now, for a service that comes back at the same address. */
export const freePort = async (): Promise<string> => {
  const server = createServer().listen(0, '127.0.0.1')
  await once(server, 'listening')
  const bound = server.address()
  server.close()
  if (bound === null || typeof bound === 'string') throw new Error('this machine has no free port')
  return String(bound.port)
}
