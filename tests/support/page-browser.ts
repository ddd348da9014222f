import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium } from 'playwright-core'
import { findProgram } from './needs.ts'
import { within } from './within.ts'

export const browserNames = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'] as const

const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

const closeMs = 20_000

/** Whether a process was told to keep its data in this folder (Linux, proc(5)). */
const keepsDataIn = (pid: string, folder: string): boolean => {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8').includes(folder)
  } catch {
    return false
  }
}

/** A browser now and then does not end when it is told to: it is ended, because a test is about the page and not about the browser. */
const endProcesses = (folder: string): void => {
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name) && keepsDataIn(name, folder))) {
    try {
      process.kill(Number(pid), 'SIGKILL')
    } catch (cause) {
      process.stderr.write(`process ${pid} of the browser could not be ended: ${String(cause)}\n`)
    }
  }
}

export type OpenBrowser = { readonly context: BrowserContext; readonly close: () => Promise<void> }

/** A headless browser of its own, with an empty folder for its data that goes away with it. */
export const openBrowser = async (): Promise<OpenBrowser> => {
  const executablePath = findProgram(...browserNames)
  if (executablePath === undefined) throw new Error('no browser on this machine')
  const folder = mkdtempSync(join(tmpdir(), 'counter-browser-'))
  const context = await chromium.launchPersistentContext(folder, {
    executablePath,
    args: flags,
    locale: 'en-US',
    timezoneId: 'America/Chicago',
    acceptDownloads: true,
  })
  return {
    context,
    close: async () => {
      try {
        await within('closing the browser', closeMs, () => context.close())
      } catch (cause) {
        process.stderr.write(`${String(cause)}; its processes are ended\n`)
        endProcesses(folder)
      }
      rmSync(folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 })
    },
  }
}
