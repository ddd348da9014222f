import { randomUUID } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { english } from '../../templates/page/en.ts'
import { readPdf } from '../adapters/printer/read-pdf.ts'
import { temporaryFolder } from '../support/embedded.ts'
import { needs } from '../support/needs.ts'
import { browserNames, type OpenBrowser, openBrowser } from '../support/page-browser.ts'
import { ask, post } from '../support/page-request.ts'
import { type OpenService, startService } from '../support/service.ts'
import { arrive, pageOf, wordsFor } from '../support/service-customer.ts'
import { leftOf, openRecords, workerOf } from '../support/service-watch.ts'

const patience = 40_000
const folder = temporaryFolder()
const data = join(folder.path, 'data')
let service: OpenService

const startTalk = async (page: Page, words: string): Promise<string> => {
  await page.goto(service.address)
  await page.getByLabel(english.start.label).fill(words)
  await page.getByRole('button', { name: english.start.open }).click()
  await page.waitForURL(/\/c\//)
  return new URL(page.url()).pathname
}

const pictureIsSeen = (page: Page): Promise<boolean> =>
  page
    .locator('figure img')
    .evaluateAll((images) => images.some((image) => image instanceof HTMLImageElement && image.naturalWidth > 400))

const downloaded = async (page: Page, name: RegExp): Promise<{ readonly name: string; readonly bytes: Uint8Array }> => {
  const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('link', { name }).click()])
  return { name: download.suggestedFilename(), bytes: new Uint8Array(readFileSync(await download.path())) }
}

const signInOwner = async (page: Page): Promise<void> => {
  await page.goto(service.ownerLink)
  await page.getByRole('button', { name: english.owner.enter }).click()
  await page.waitForURL(/\/morning/)
  await page.goto(`${service.address}/bench`)
}

describe.runIf(needs(...browserNames))('an order at the counter of a running service', () => {
  let browser: OpenBrowser
  beforeAll(async () => {
    const [started, opened] = await Promise.all([startService(data), openBrowser()])
    service = started
    browser = opened
  })
  afterAll(async () => {
    await browser.close()
    if (service.process.exitCode === null) await service.signal('SIGINT')
    folder.remove()
  })

  it('goes from words to a proof, a sign-off and a ticket on the bench, while nobody reloads a page', {
    timeout: 90_000,
  }, async () => {
    const bench = await browser.context.newPage()
    await signInOwner(bench)

    const customer = await browser.context.newPage()
    const first = await startTalk(customer, wordsFor('Riverbend Otters', 6))
    await customer.getByRole('button', { name: /13 or older/ }).click({ timeout: patience })
    const signOff = customer.getByRole('button', { name: /approve revision 1/i })
    await signOff.waitFor({ timeout: patience })
    await expect.poll(() => pictureIsSeen(customer), { timeout: patience }).toBe(true)
    expect(await customer.locator('main').textContent()).toMatch(/\$\d/)
    await signOff.click()
    await customer.getByText(/ticket T0001 is on the bench/i).waitFor({ timeout: patience })

    const slip = bench.locator('li.slip').filter({ hasText: 'Riverbend Otters' })
    await slip.waitFor({ timeout: patience })
    expect(await slip.textContent()).toContain('6 garments')
    const paper = await downloaded(bench, /T0001-1\.pdf/)
    expect(paper.name).toBe('T0001-1.pdf')
    const { text, pages } = await readPdf(paper.bytes)
    expect(pages.length).toBeGreaterThan(1)
    for (const words of ['T0001', 'Riverbend Otters']) expect(text).toContain(words)

    const other = await browser.context.newPage()
    const second = await startTalk(other, 'Hello, we need jerseys for the Cedar Flats Herons.')
    await other.getByText(english.write.label).waitFor()
    expect(await other.locator('main').textContent()).not.toMatch(/Otters|T0001|Whitlow/)
    const pdf = new URL((await slip.getByRole('link', { name: /T0001-1\.pdf/ }).getAttribute('href')) ?? '', service.address)
    const picture = (await customer.locator('figure img').first().getAttribute('src')) ?? ''
    const files = [pdf.pathname, picture].map((path) => path.split('/').at(-1))
    expect(files.every((file) => file !== undefined && file.length > 20)).toBe(true)
    for (const file of files) expect((await ask(service.address, `${second}/file/${file}`)).status).toBe(404)
    expect((await ask(service.address, `${first}/file/${files[1]}`)).status).toBe(200)
    expect((await ask(service.address, pdf.pathname)).status).not.toBe(200)
    expect((await ask(service.address, '/bench')).text).not.toContain('Otters')
    expect((await ask(service.address, service.ownerLink.slice(service.address.length), { method: 'POST' })).status).not.toBe(303)
  })

  it('keeps two customers apart who send the same delivery id', async () => {
    const both = await Promise.all(['Kites', 'Larks'].map((team) => arrive(service.address, `Hello, we are the ${team}.`)))
    const id = randomUUID()
    for (const [index, { base }] of both.entries()) {
      const sent = await post(service.address, `${base}/say`, { fields: { id, text: `words number ${index}` } })
      expect(sent.status).toBe(303)
    }
    const pages = await Promise.all(both.map(pageOf))
    expect(pages.map((page) => [0, 1].map((index) => page.includes(`words number ${index}`)))).toEqual([
      [true, false],
      [false, true],
    ])
  })

  it('refuses a second service on the same data and goes on itself', async () => {
    const second = startService(data)
    await expect(second).rejects.toThrow(`Another service runs on these data (${data}). Stop it first`)
    expect((await ask(service.address, '/up')).text).toBe('up')
    expect(leftOf(data, []).length).toBeGreaterThan(0)
  })

  it('stops pages, worker and store in order on Ctrl-C, and leaves nothing running', async () => {
    const worker = await workerOf(service.pid)
    const records = await openRecords(data)
    expect(leftOf(data, [service.pid, worker]).length).toBeGreaterThan(2)
    await records.close()
    await service.signal('SIGINT')
    expect(await service.ended).toBe(0)
    expect(service.said().trimEnd().split('\n').at(-1)).toBe('Stopping: pages, workers, store.')
    expect(leftOf(data, [service.pid, worker])).toEqual([])
  })
})
