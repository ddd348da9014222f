import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Channel } from '../../../../src/ports/chat.ts'
import { needs } from '../../../support/needs.ts'
import { axeFindings } from '../../../support/page-axe.ts'
import { browserNames, type OpenBrowser, openBrowser } from '../../../support/page-browser.ts'
import { openCounter, type TestCounter } from '../../../support/page-counter.ts'
import { bench, message, plainText } from '../../../support/page-desk.ts'
import { pressAt17, shelfOfPages } from '../../../support/page-floor.ts'
import { pageAddresses } from '../../../support/page-routes.ts'
import { everything, layOutBench, layOutConversation, layOutMorning, navyPicture } from '../../../support/page-scene.ts'

const bot = { kind: 'bot', name: 'bot' } as const

describe.runIf(needs(...browserNames))('in a browser', () => {
  let counter: TestCounter
  let browser: OpenBrowser
  let page: Page
  let token: string
  let channel: Channel
  let troubles: string[]

  beforeAll(async () => {
    counter = await openCounter()
    layOutBench(counter.desk)
    layOutMorning(counter.desk)
    browser = await openBrowser()
  })
  beforeEach(async () => {
    counter.moveClock(600_000)
    ;({ token, channel } = await layOutConversation(counter.desk))
    await page?.close()
    page = await browser.context.newPage()
    troubles = []
    page.on('console', (line) => line.type() === 'error' && troubles.push(line.text()))
    page.on('pageerror', (error) => troubles.push(error.message))
    await page.setViewportSize({ width: 390, height: 844 })
  })
  afterAll(async () => {
    await browser?.close()
    await counter?.close()
  })

  const openTalk = async (): Promise<void> => {
    const live = page.waitForResponse((answer) => answer.url().includes('/live'))
    await page.goto(`${counter.address}/c/${token}`)
    await live
  }
  const signInAsOwner = async (): Promise<void> => {
    await page.goto(`${counter.address}/owner/${await counter.desk.newOwnerLink()}`)
    await page.getByRole('button', { name: 'Sign in as the owner' }).click()
    await page.waitForURL('**/morning')
  }

  it('every page is free of accessibility violations at phone, tablet and desktop width, and of policy violations', {
    timeout: 180_000,
  }, async () => {
    await signInAsOwner()
    const { code } = await counter.desk.newPairingCode('Ana')
    expect(code).not.toBe('')
    const paths = [...Object.values(pageAddresses(token)).flat(), '/no-such-page']
    for (const width of [390, 820, 1440]) {
      await page.setViewportSize({ width, height: 900 })
      for (const path of paths) {
        await page.goto(counter.address + path)
        await page.evaluate('Promise.all(document.getAnimations().map((animation) => animation.finished)).then(() => 0)')
        expect({ path, width, found: await axeFindings(page) }).toEqual({ path, width, found: [] })
        const sideways: unknown = await page.evaluate('document.documentElement.scrollWidth - window.innerWidth')
        expect({ path, width, sideways }).toEqual({ path, width, sideways: 0 })
      }
    }
    expect(troubles.filter((one) => !one.includes('404'))).toEqual([])
  })

  it('a customer’s words become a slip without a reload, and the box is empty for the next', async () => {
    await openTalk()
    await page.evaluate('window.stayed = true')
    await page.getByLabel('Your message').fill('Make it 15, please')
    await page.getByRole('button', { name: 'Send', exact: true }).click()
    await page.getByText('Make it 15, please').waitFor()
    expect(await page.evaluate('window.stayed')).toBe(true)
    await expect.poll(() => page.getByLabel('Your message').inputValue()).toBe('')
    await page.getByLabel('Your message').fill('And one more')
    await page.keyboard.press('Control+Enter')
    await page.locator('.slip', { hasText: 'And one more' }).waitFor()
    expect(troubles).toEqual([])
  })

  it('progress moves in its own slip, and half-typed words and focus stay', async () => {
    const slip = counter.desk.post(channel, bot, message({ ...everything, picture: null }))
    await openTalk()
    const last = page.locator('.slip').last()
    await last.getByLabel('Hour the bus leaves').fill('quarter past')
    const slips = await page.locator('.slip').count()
    counter.desk.edit(
      channel,
      slip.id,
      message({ ...everything, picture: null, blocks: [{ kind: 'progress', text: 'Laying out stones', done: 12, of: 14 }] }),
    )
    await last.getByText('12 of 14').waitFor()
    expect(await page.locator('.slip').count()).toBe(slips)
    expect(await last.locator('progress').getAttribute('value')).toBe('12')
    expect(await last.getByLabel('Hour the bus leaves').inputValue()).toBe('quarter past')
    expect(await page.evaluate('document.activeElement.name')).toBe('field.hour')
  })

  it('words that look like markup stay words, when laid down live too', async () => {
    await openTalk()
    const nasty = '<img src=x onerror="document.title=1"><script>document.title=2</script>'
    counter.desk.post(channel, { kind: 'staff', name: nasty }, plainText(nasty))
    const slip = page.locator('.slip').last()
    await slip.locator('.text', { hasText: 'onerror' }).waitFor()
    expect(await slip.locator('.text').textContent()).toBe(nasty)
    expect(await slip.locator('img, script').count()).toBe(0)
    expect(await page.title()).toContain('Your order')
    expect(troubles).toEqual([])
  })

  it('buttons, choices and forms reach the desk; a grave action is asked twice', async () => {
    await openTalk()
    await page.getByRole('button', { name: 'Sign off' }).click()
    await expect.poll(() => counter.desk.heard.at(-1)?.incoming).toMatchObject({ kind: 'pressed', action: 'o:17:sign-off:2' })
    await page.getByRole('button', { name: 'No, all 13 or older' }).click()
    await expect.poll(() => counter.desk.heard.at(-1)?.incoming).toMatchObject({ kind: 'chose', choice: 'age', value: 'no' })
    await expect.poll(() => page.getByRole('button', { name: 'No, all 13 or older' }).isDisabled()).toBe(true)
    expect(await page.getByRole('button', { name: 'Sign off' }).isEnabled()).toBe(true)
    expect(await page.getByRole('button', { name: 'Yes: Cancel the order' }).isVisible()).toBe(false)
    await page.getByText('Cancel the order', { exact: true }).click()
    await page.getByRole('button', { name: 'Yes: Cancel the order' }).click()
    await expect.poll(() => counter.desk.heard.at(-1)?.incoming).toMatchObject({ kind: 'pressed', action: 'o:17:cancel:2' })
    await page.getByLabel('Hour the bus leaves').fill('3:15 pm')
    await page
      .getByLabel('Your artwork')
      .setInputFiles({ name: 'logo.png', mimeType: 'image/png', buffer: Buffer.from(navyPicture(8, 8)) })
    await page.getByRole('button', { name: 'That is it' }).click()
    await expect
      .poll(() => counter.desk.heard.at(-1)?.incoming)
      .toMatchObject({ kind: 'filled', form: 'bus', values: { hour: '3:15 pm', logo: expect.stringMatching(/^kept-/) } })
    expect(troubles).toEqual([])
  })

  it('a roster is pasted with a file; one we do not take is refused in words and nothing is lost', async () => {
    await openTalk()
    await page.getByText('Add a roster or a file').click()
    await page.getByLabel('Paste the roster').fill('7, Núñez, M\n12, Okafor, L')
    const files = page.getByLabel('Files', { exact: true })
    await files.setInputFiles({ name: 'tool.exe', mimeType: 'text/csv', buffer: Buffer.from([77, 90, 0, 1]) })
    await page.getByRole('button', { name: 'Send the roster' }).click()
    await page.getByRole('status').getByText('not a kind of file we take').waitFor()
    expect(await page.getByLabel('Paste the roster').inputValue()).toBe('7, Núñez, M\n12, Okafor, L')
    await files.setInputFiles({ name: 'roster.csv', mimeType: 'text/csv', buffer: Buffer.from('20,Lee,S\n') })
    await page.getByRole('button', { name: 'Send the roster' }).click()
    await expect
      .poll(() => counter.desk.heard.at(-1)?.incoming)
      .toMatchObject({ kind: 'said', text: '7, Núñez, M\n12, Okafor, L', files: [{ name: 'roster.csv', mime: 'text/csv' }] })
  })

  it('a page that lost the line says so and catches up by itself', async () => {
    await openTalk()
    await page.route('**/live*', (route) => route.abort())
    await page.reload()
    await page.getByText('The line to the shop is down').waitFor()
    counter.desk.post(channel, bot, plainText('Said while the line was down'))
    await page.unroute('**/live*')
    await page.getByText('Said while the line was down').waitFor()
    await page.getByText('Connected again').waitFor()
  })

  it('a second customer’s page sees nothing of the first one’s, live or loaded', async () => {
    const second = await counter.desk.startConversation('en')
    const live = page.waitForResponse((answer) => answer.url().includes('/live'))
    await page.goto(`${counter.address}/c/${second.token}`)
    await live
    counter.desk.post(channel, bot, plainText('For the first customer only'))
    await counter.desk.hear(second.id, { kind: 'said', id: 'second-1', text: 'My own words', files: [] })
    await page.getByText('My own words').waitFor()
    expect(await page.locator('.slip').count()).toBe(1)
  })

  it('the bench shows a new ticket as it comes, downloads its paper, and tells what the desk answers', async () => {
    await signInAsOwner()
    const live = page.waitForResponse((answer) => answer.url().includes('/bench/live'))
    await page.goto(`${counter.address}/bench`)
    await live
    counter.desk.post(bench, bot, message({ blocks: [{ kind: 'text', text: 'Ticket 18, revision 1', tone: 'plain' }] }))
    await page.getByText('Ticket 18, revision 1').waitFor()
    const downloading = page.waitForEvent('download')
    await page.getByRole('link', { name: 'ticket-17-2.pdf' }).click()
    const paper = await downloading
    expect(paper.suggestedFilename()).toBe('ticket-17-2.pdf')
    expect(
      readFileSync(await paper.path())
        .subarray(0, 5)
        .toString(),
    ).toBe('%PDF-')
    counter.desk.answerWith('Taken by you.')
    await page.getByRole('button', { name: 'Take', exact: true }).click()
    await page.getByRole('status').getByText('Taken by you.').waitFor()
  })

  it('a ticket that somebody folded stays folded when it changes, and opens for an address that points into it', async () => {
    await signInAsOwner()
    const ticket = (state: string) =>
      message({
        blocks: ['Ticket 31 r1 · Herons', state].map((text) => ({ kind: 'text', text, tone: 'plain' }) as const),
        actions: [{ id: 't:thirty-one:take:1', label: 'Take 31', weight: 'main' }],
      })
    const { id } = counter.desk.post(bench, bot, ticket('lies here'))
    const live = page.waitForResponse((answer) => answer.url().includes('/bench/live'))
    await page.goto(`${counter.address}/bench`)
    await live
    const body = page.getByRole('button', { name: 'Take 31' })
    await body.waitFor()
    await page.getByText('Ticket 31 r1').click()
    await body.waitFor({ state: 'hidden' })
    counter.desk.edit(bench, id, ticket('is taken'))
    await page.getByText('is taken').waitFor({ state: 'attached' })
    expect(await body.isVisible()).toBe(false)
    await page.goto(`${counter.address}/morning`)
    await page.goto(`${counter.address}/bench#ticket-thirty-one`)
    await body.waitFor()
  })

  it('the morning sheet changes while it lies open', async () => {
    await signInAsOwner()
    counter.desk.setMorning({
      date: '2026-03-16',
      sections: [
        {
          code: 'off',
          title: 'Who is off',
          lines: [{ text: 'Ana, until noon', todo: 'Move her press hours', order: null, ticket: null }],
        },
      ],
    })
    await page.getByText('Move her press hours').waitFor()
    expect(await page.locator('#sheet section').count()).toBe(1)
    layOutMorning(counter.desk)
  })

  it('the shelf and the load change while they lie open, and what is being filled in stays', async () => {
    await signInAsOwner()
    const live = page.waitForResponse((answer) => answer.url().includes('/shelf/live'))
    await page.goto(`${counter.address}/shelf`)
    await live
    await page.evaluate('window.stayed = true')
    await page.locator('#form-counted summary').click()
    await page.getByLabel('What', { exact: true }).selectOption('stone')
    const line = 'SS16 crystal: 288 pieces; order by Tuesday, March 17, noon'
    counter.desk.setShelf({ ...shelfOfPages, shopping: { ...shelfOfPages.shopping, lines: [line] } })
    await page.getByText(line).waitFor()
    expect(await page.getByLabel('What', { exact: true }).inputValue()).toBe('stone')
    counter.desk.setShelf(shelfOfPages)
    const loadLive = page.waitForResponse((answer) => answer.url().includes('/load/live'))
    await page.goto(`${counter.address}/load`)
    await loadLive
    await page.evaluate('window.stayed = true')
    counter.desk.setLoad({ lead: 'Press 1 is at 96 % on Tuesday.' })
    await page.getByText('Press 1 is at 96 % on Tuesday.').waitFor()
    expect(await page.evaluate('window.stayed')).toBe(true)
    counter.desk.setLoad({})
    expect(troubles).toEqual([])
  })

  it('two buttons of a sheet stand apart, and a row of the shelf has one line under it', async () => {
    await signInAsOwner()
    await page.setViewportSize({ width: 1024, height: 800 })
    await page.goto(`${counter.address}/people`)
    const button = (which: string) => page.locator(`form[action="/people/calendar"] button${which}`).boundingBox()
    const [make, end] = await Promise.all([button(':not([formaction])'), button('[formaction]')])
    expect((end?.x ?? 0) - (make?.x ?? 0) - (make?.width ?? 0)).toBeGreaterThanOrEqual(8)
    await page.goto(`${counter.address}/shelf`)
    const widths = await page.evaluate<string[]>(
      "[...document.querySelectorAll('.shelf-table tbody tr:first-child > *')].map((cell) => getComputedStyle(cell).borderBottomWidth)",
    )
    expect(widths.length).toBeGreaterThan(0)
    expect(new Set(widths)).toEqual(new Set(['1px']))
  })

  it('the chart of the load is as wide as the window it is looked at in, on a phone in bands of a few days', async () => {
    await signInAsOwner()
    const drawing = (width: number) => `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="400"/>`
    counter.desk.setLoad({ picture: drawing(956), narrowPicture: drawing(376) })
    for (const [width, drawn] of [
      [390, 'narrow'],
      [1280, 'picture'],
    ] as const) {
      await page.setViewportSize({ width, height: 844 })
      await page.goto(`${counter.address}/load`)
      const box = await page.locator('.load img').boundingBox()
      expect((box?.x ?? 999) + (box?.width ?? 999)).toBeLessThanOrEqual(width)
      expect(await page.evaluate("document.querySelector('.load img').currentSrc")).toContain(`/load/${drawn}`)
    }
    counter.desk.setLoad({})
    expect(troubles).toEqual([])
  })

  it('at the press lies the step to do now; the others open by keyboard, and a colleague’s tick comes without a reload', async () => {
    await signInAsOwner()
    await page.setViewportSize({ width: 390, height: 844 })
    const live = page.waitForResponse((answer) => answer.url().includes('/press/17/live'))
    await page.goto(`${counter.address}/press/17`)
    await live
    await page.evaluate('window.stayed = true')
    const now = page.getByRole('heading', { name: 'Now 4 PRESS, back' })
    for (const what of [now, page.getByText('295 °F'), page.getByText('hands out before closing')]) {
      const box = await what.boundingBox()
      expect((box?.y ?? 999) + (box?.height ?? 0)).toBeLessThan(844)
    }
    expect(await page.getByText('#12 Okafor L').count()).toBe(2)
    expect(await page.locator('#fold-1001 .tile').first().isVisible()).toBe(false)
    await page.locator('#fold-1001 summary').focus()
    await page.keyboard.press('Enter')
    expect(await page.locator('#fold-1001 .tile').first().isVisible()).toBe(true)
    await page.locator('#form-second-look summary').click()
    await page.getByLabel('Garment', { exact: true }).selectOption('home')
    await page.locator('#tile-4-3').uncheck({ force: true })
    counter.desk.setPress({
      ...pressAt17,
      steps: pressAt17.steps.map((step) => ({
        ...step,
        tiles: step.tiles.map((tile) => (tile.line === 2 ? { ...tile, state: 'taken' as const, by: 'Ana' } : tile)),
      })),
    })
    await page.locator('.now').getByText('taken, Ana').waitFor()
    expect(await page.evaluate('window.stayed')).toBe(true)
    expect(await page.getByLabel('Garment', { exact: true }).inputValue()).toBe('home')
    expect(await page.locator('#tile-4-3').isChecked()).toBe(false)
    expect(await page.locator('#tile-4-2').isChecked()).toBe(true)
    expect(await page.locator('#fold-1001 .tile').first().isVisible()).toBe(true)
    counter.desk.setPress(pressAt17)
    expect(troubles).toEqual([])
  })

  it('a button at the press that changes the page leaves no word of trouble, and the hand lies on the step that comes', async () => {
    await signInAsOwner()
    const live = page.waitForResponse((answer) => answer.url().includes('/press/17/live'))
    await page.goto(`${counter.address}/press/17`)
    await live
    await page.getByRole('button', { name: 'Pause' }).click()
    counter.desk.setPress({ ...pressAt17, holder: 'Ana' })
    await page.getByText('taken by Ana').waitFor()
    expect(await page.locator('#notice').getAttribute('class')).not.toContain('trouble')
    expect(await page.evaluate('document.activeElement.id')).toBe('now')
    counter.desk.setPress(pressAt17)
    expect(troubles).toEqual([])
  })

  it('a form that was refused says so in the tone of trouble, and the reason stays beside what was pressed with what was filled in', async () => {
    await signInAsOwner()
    const live = page.waitForResponse((answer) => answer.url().includes('/press/17/live'))
    await page.goto(`${counter.address}/press/17`)
    await live
    const reason = 'First piece comes first: it is not signed yet.'
    counter.desk.answerWith(reason, false)
    await page.locator('#form-second-look summary').click()
    await page.getByLabel('Garment', { exact: true }).selectOption('home')
    await page.getByRole('button', { name: 'Write it down' }).click()
    const beside = page.locator('#form-second-look .refused')
    await beside.waitFor()
    expect(await beside.textContent()).toBe(reason)
    expect(await page.locator('#notice').getAttribute('class')).toBe('notice trouble')
    expect(await page.getByLabel('Garment', { exact: true }).inputValue()).toBe('home')
    await page.locator('#done-4').click()
    await page.locator('.now .refused').waitFor()
    const covered = async () => (await page.locator('#notice').boundingBox())?.y ?? 0
    expect(await covered()).toBeGreaterThan(700)
    await page.locator('#notice').click()
    expect(await page.locator('#notice').isVisible()).toBe(false)
    expect(await page.locator('.now .refused').textContent()).toBe(reason)
    counter.desk.answerWith('The promise stays.')
    await page.locator('#done-4').click()
    await expect.poll(() => page.locator('#notice').getAttribute('class')).toBe('notice good')
    expect(await page.locator('.now .refused').count()).toBe(0)
    counter.desk.answerWith(null)
    expect(troubles).toEqual([])
  })

  it('the count-down of a press step goes on while a colleague ticks, and ends with a word and a tone', async () => {
    await signInAsOwner()
    await page.clock.install()
    const live = page.waitForResponse((answer) => answer.url().includes('/press/17/live'))
    await page.goto(`${counter.address}/press/17`)
    await live
    await page.evaluate(`window.tones = 0; window.AudioContext = class {
      currentTime = 0
      createOscillator() { return { frequency: {}, connect() {}, start() { window.tones += 1 }, stop() {} } }
    }`)
    const left = page.locator('#timer-4 output')
    await page.getByRole('button', { name: 'Start 12 s' }).click()
    await page.clock.runFor(4_500)
    expect(await left.textContent()).toMatch(/^[78]$/)
    counter.desk.setPress({ ...pressAt17, holder: 'Ana' })
    await page.getByText('taken by Ana').waitFor()
    await page.clock.runFor(4_000)
    expect(await left.textContent()).toMatch(/^[34]$/)
    expect(await page.evaluate('window.tones')).toBe(0)
    await page.clock.runFor(4_000)
    expect(await left.textContent()).toBe('Time is over: open the press.')
    expect(await page.evaluate('window.tones')).toBe(1)
    counter.desk.setPress(pressAt17)
    expect(troubles).toEqual([])
  })

  it('everything can be reached with the keyboard, and shows where it is', async () => {
    await openTalk()
    await page.evaluate('window.scrollTo(0, 0); document.activeElement.blur()')
    const reached = new Set<string>()
    for (let n = 0; n < 30; n += 1) {
      await page.keyboard.press('Tab')
      const at: unknown = await page.evaluate(
        '(({ tagName, name, textContent }, style) => [tagName, textContent.trim() || name, style.outlineStyle].join("|"))(document.activeElement, getComputedStyle(document.activeElement))',
      )
      const [tag = '', name = '', outline = ''] = String(at).split('|')
      if (tag === 'BODY') break
      expect({ name, outline }).toEqual({ name, outline: expect.stringMatching(/^(solid|auto)$/) })
      reached.add(name)
    }
    for (const name of [
      'Skip to the page',
      'Sign off',
      'Cancel the order',
      'Yes',
      'field.hour',
      'That is it',
      'Send',
      'Add a roster or a file',
    ]) {
      expect([...reached]).toContain(name)
    }
  })

  it('without script a customer starts, sends a roster with a file, and signs off', async () => {
    const plain = await browser.context.browser()?.newContext({ javaScriptEnabled: false, locale: 'en-US' })
    if (plain === undefined) throw new Error('the browser makes no second context')
    try {
      const still = await plain.newPage()
      await still.goto(counter.address)
      await still.getByLabel('Tell us what your team needs').fill('Ten hoodies')
      await still.getByRole('button', { name: 'Lay it on the counter' }).click()
      await still.getByText('Ten hoodies').waitFor()
      await still.goto(`${counter.address}/c/${token}`)
      await still.getByText('Add a roster or a file').click()
      await still
        .getByLabel('Files', { exact: true })
        .setInputFiles({ name: 'r.csv', mimeType: 'text/csv', buffer: Buffer.from('1,A,M\n') })
      await still.getByRole('button', { name: 'Send the roster' }).click()
      await still.waitForURL('**#newest')
      expect(counter.desk.heard.at(-1)?.incoming).toMatchObject({ kind: 'said', files: [{ name: 'r.csv' }] })
      await still.getByRole('button', { name: 'Sign off' }).click()
      await expect.poll(() => counter.desk.heard.at(-1)?.incoming).toMatchObject({ kind: 'pressed', action: 'o:17:sign-off:2' })
    } finally {
      await plain.close()
    }
  })
})
