import { join } from 'node:path'
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { english } from '../../templates/page/en.ts'
import { spanish } from '../../templates/page/es.ts'
import { temporaryFolder } from '../support/embedded.ts'
import { needs } from '../support/needs.ts'
import { browserNames, type OpenBrowser, openBrowser } from '../support/page-browser.ts'
import { type OpenService, startService } from '../support/service.ts'

const patience = 60_000
const phone = { width: 390, height: 844 }

type Step = { readonly say: string } | { readonly press: RegExp } | { readonly seen: RegExp }
type Walk = {
  readonly language: 'en' | 'es'
  readonly words: typeof english
  readonly first: string
  readonly steps: readonly Step[]
}

const walks: readonly Walk[] = [
  {
    language: 'en',
    words: english,
    first: 'Hi! Coach Dana here from the Lantern Hill Lynx, we need 3 navy volleyball jerseys with white numbers front and back',
    steps: [
      { say: 'need them December 18 at 5pm, nobody is under 13\n7 Ruiz M\n11 Okafor L\n4 Lind S' },
      { seen: /Revision 1: 3 lines/ },
      { say: 'how much with names on the back?' },
      { press: /Keep it as it is/ },
      { say: 'looks great, but make the 4 a medium' },
      { press: /approve revision 2/i },
      { seen: /Revision 2 is signed/ },
    ],
  },
  {
    language: 'es',
    words: spanish,
    first: 'Buenas, soy Lupita Reyes de los Halcones de la Loma, futbol, ocupamos 3 playeras rojas con numero blanco atras',
    steps: [
      { say: 'para el 18 de diciembre a las 5 de la tarde, todos mayores de 13\n7 Ruiz M\n10 Peña G\n5 Soto XG' },
      { seen: /Revisión 1: 3 líneas/ },
      { say: 'el 10 que sea mediana y quita a Soto' },
      { seen: /quitado #5 Soto/ },
      { press: /Apruebo la revisión 2/ },
      { seen: /revisión 2 está (?:firmada|aprobada)/i },
      { say: '¿cómo se lavan?' },
      { seen: /sin suavizante/ },
    ],
  },
]

const take = async (page: Page, walk: Walk, step: Step): Promise<void> => {
  if ('press' in step) return page.getByRole('button', { name: step.press }).click({ timeout: patience })
  if ('seen' in step) return page.getByText(step.seen).last().waitFor({ timeout: patience })
  await page.locator('form.write textarea').fill(step.say)
  await page.locator('form.write').getByRole('button', { name: walk.words.write.send }).click()
}

/** Nothing on the page is wider than the phone. */
const fits = (page: Page): Promise<boolean> =>
  page.evaluate('document.documentElement.scrollWidth <= document.documentElement.clientWidth')

describe.runIf(needs(...browserNames))('a coach with a phone at the counter of a running service', () => {
  const folder = temporaryFolder()
  let service: OpenService
  let browser: OpenBrowser
  let context: BrowserContext
  beforeAll(async () => {
    const [started, opened] = await Promise.all([startService(join(folder.path, 'data')), openBrowser()])
    service = started
    browser = opened
    context = opened.context
  }, patience)
  afterAll(async () => {
    await browser.close()
    await service.signal('SIGINT')
    folder.remove()
  })

  it.each(walks)(
    'goes from first word to a signed order in a handful of messages ($language)',
    { timeout: 180_000 },
    async (walk) => {
      const page = await context.newPage()
      await page.setViewportSize(phone)
      await page.goto(`${service.address}/?language=${walk.language}`)
      await page.getByLabel(walk.words.start.label).fill(walk.first)
      await page.getByRole('button', { name: walk.words.start.open }).click()
      await page.waitForURL(/\/c\//)
      for (const step of walk.steps) await take(page, walk, step)
      expect(await fits(page)).toBe(true)
      const questions = walk.steps.filter((step) => 'say' in step).length
      expect(questions).toBeLessThanOrEqual(3)
      await page.close()
    },
  )
})
