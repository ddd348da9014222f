import { randomBytes } from 'node:crypto'
import type { BrowserContext, Page } from 'playwright-core'
import { type RunningCounter, startCounter } from '../../src/adapters/chat/counter/start-counter.ts'
import { counterDesk, openNews } from '../../src/desk/service/counter-desk.ts'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import { localMinute, openTestDesk, type TestClock, work } from './desk.ts'
import { root, type TestStore } from './embedded.ts'
import type { OpenBrowser } from './page-browser.ts'
import { within } from './within.ts'

type Opening = {
  readonly opened: TestStore
  readonly browser: OpenBrowser
  readonly at: string
  readonly change?: (shop: Shop) => Shop
  /** What went before in the shop, while nobody else works in it. */
  readonly before?: (desk: WorkerDesk, clock: TestClock) => Promise<unknown>
}

/** A shop's counter over the real store, its work done as workers would, and people with browsers of their own. */
export type FloorCounter = {
  readonly desk: WorkerDesk
  readonly clock: TestClock
  readonly address: string
  /** Somebody with an empty browser: a customer, until they sign in. */
  readonly person: (size?: { readonly width: number; readonly height: number }) => Promise<Page>
  readonly staff: (name: string) => Promise<Page>
  readonly owner: () => Promise<Page>
  readonly bugs: readonly unknown[]
  readonly close: () => Promise<void>
}

const closeMs = 10_000

const tablet = { width: 820, height: 1180 }

const startWork = (desk: WorkerDesk, report: (error: unknown) => void): (() => Promise<void>) => {
  const state = { stopped: false }
  const loop = async (): Promise<void> => {
    while (!state.stopped) {
      await work(desk).catch(report)
      await new Promise((resolve) => setTimeout(resolve, 20))
    }
  }
  const ended = loop()
  return async () => {
    state.stopped = true
    await ended
  }
}

const freshContext = async (browser: OpenBrowser): Promise<BrowserContext> => {
  const context = await browser.context.browser()?.newContext({ locale: 'en-US', timezoneId: 'America/Chicago' })
  if (context === undefined) throw new Error('the browser makes no second context')
  return context
}

const listenAt = (desk: WorkerDesk, news: Awaited<ReturnType<typeof openNews>>, bugs: unknown[]): Promise<RunningCounter> =>
  startCounter({
    desk: counterDesk(desk, news),
    root,
    port: 0,
    host: '127.0.0.1',
    url: null,
    sessionKey: new Uint8Array(randomBytes(32)),
    now: desk.clock.milliseconds,
    ready: async () => undefined,
    report: (error) => bugs.push(error),
  })

export const openFloorCounter = async ({ opened, browser, at, change, before }: Opening): Promise<FloorCounter> => {
  const clock: TestClock = { at: localMinute(at) }
  const desk = await openTestDesk(opened.store, clock, change)
  await before?.(desk, clock)
  const bugs: unknown[] = []
  const news = await openNews(desk)
  const counter = await listenAt(desk, news, bugs)
  const pages = counterDesk(desk, news)
  const stopWork = startWork(desk, (error) => bugs.push(error))
  const contexts: BrowserContext[] = []
  const person: FloorCounter['person'] = async (size = tablet) => {
    const context = await freshContext(browser)
    contexts.push(context)
    const page = await context.newPage()
    page.on('pageerror', (error) => bugs.push(error))
    await page.setViewportSize(size)
    return page
  }
  return {
    desk,
    clock,
    address: counter.address,
    person,
    bugs,
    staff: async (name) => {
      const page = await person()
      const { code } = await pages.newPairingCode(name)
      await page.goto(`${counter.address}/sign-in`)
      await page.getByLabel('Your name').fill(name)
      await page.getByLabel('Pairing code').fill(code)
      await page.getByRole('button', { name: 'Sign in' }).click()
      await page.waitForURL('**/bench')
      return page
    },
    owner: async () => {
      const page = await person()
      await page.goto(`${counter.address}/owner/${await pages.newOwnerLink()}`)
      await page.getByRole('button', { name: 'Sign in as the owner' }).click()
      await page.waitForURL('**/morning')
      return page
    },
    close: async () => {
      const close = Promise.all(contexts.map((context) => within('closing a page', closeMs, () => context.close())))
      // Pages of a browser that hangs are gone with it.
      await close.catch((cause: unknown) => process.stderr.write(`${String(cause)}\n`))
      await within('the work at hand', closeMs, stopWork)
      await within('closing the counter', closeMs, counter.close)
      await within('closing the news', closeMs, news.close)
    },
  }
}
