import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type BrowserContext, chromium } from 'playwright-core'
import { findProgram } from './needs.ts'

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
      await context.close()
      rmSync(folder, { recursive: true, force: true })
    },
  }
}
