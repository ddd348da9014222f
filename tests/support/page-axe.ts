import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import type { Page } from 'playwright-core'

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js')
const axeText = readFileSync(axeFile, 'utf8')

/** What axe-core finds, as `rule: element` lines; it is put in by the test's own channel, so the page's policy stays as it is. */
export const axeFindings = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(axeText)
  const found: unknown = await page.evaluate(
    'axe.run(document, { resultTypes: ["violations"] }).then((r) => r.violations.flatMap((v) => v.nodes.map((n) => v.id + ": " + n.html)))',
  )
  return Array.isArray(found) ? found.map(String) : ['axe did not answer']
}
