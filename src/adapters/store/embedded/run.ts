import { spawn } from 'node:child_process'

/** A user of the system that runs a program in our stead. */
export type Account = { readonly name: string; readonly uid: number; readonly gid: number }

export type Ran = { readonly code: number | null; readonly said: string }

/** How long after a program's end its last words may still be on their way, where something it started holds the pipes. */
const graceMilliseconds = 500

/** Runs a program to its end, as the account when there is one, in a session of its own so that Ctrl-C does not reach it. */
export const run = (program: string, args: readonly string[], account: Account | null): Promise<Ran> =>
  new Promise((resolve) => {
    const child = spawn(program, args, {
      cwd: '/',
      detached: process.platform !== 'win32',
      windowsHide: true,
      stdio: ['ignore', 'pipe', 'pipe'],
      ...(account === null ? {} : { uid: account.uid, gid: account.gid }),
    })
    const parts: string[] = []
    child.stdout.setEncoding('utf8').on('data', (part: string) => parts.push(part))
    child.stderr.setEncoding('utf8').on('data', (part: string) => parts.push(part))
    child.on('error', (cause) => resolve({ code: null, said: cause.message }))
    const tell = (code: number | null): void => resolve({ code, said: parts.join('').trim() })
    child.on('close', tell)
    // A server that was started can keep the pipes open: then the program's own end counts, a moment later.
    child.on('exit', (code) => setTimeout(tell, graceMilliseconds, code).unref())
  })
