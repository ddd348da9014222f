import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { wordsOf } from '../../src/adapters/chat/counter/answer.ts'
import { pressSheet } from '../../src/adapters/chat/counter/press-pages.ts'
import type { WorkerDesk } from '../../src/desk/service/desk.ts'
import { pressView } from '../../src/desk/service/floor/press-view.ts'
import { minutes } from '../../src/domain/units/units.ts'
import type { Member } from '../../src/ports/counter-desk.ts'
import { floorWords } from '../../templates/desk/floor/words.ts'
import { markupOf } from '../../templates/page/html.ts'
import { localMinute, openTestDesk, type TestClock } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, lifeNow, noor, openGates, pim, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const tees = (team: string, roster: string): string =>
  `Practice tees, navy, 100% cotton, white vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n${roster}`
const homeAndAway = (team: string): string =>
  `Home and away mesh jerseys, home navy with white vinyl numbers on the back, away white with navy vinyl numbers on the back. Team is the ${team}, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n3 Abel, adult M\n7 Bea, adult L`
const three = '4 Abel, adult M\n7 Bea, adult L\n9 Cid, adult S'

type Taken = { readonly desk: WorkerDesk; readonly ticket: string; readonly clock: TestClock }

const taken = async (id: string, words: string): Promise<Taken> => {
  const clock = { at: localMinute('2026-11-25T09:00') }
  const desk = await openTestDesk(opened.store, clock)
  await toProof(desk, id, words)
  await sign(desk, id)
  const ticket = await ticketOf(desk, id)
  expect(await acts(desk, ticket, { act: 'take' })).toBeNull()
  await openGates(desk, ticket, ['first-piece'])
  return { desk, ticket, clock }
}

type Card = {
  readonly step: string
  readonly title: string
  readonly chosen: readonly number[]
  readonly forms: readonly string[]
}

/** What lies open on the page of a ticket: the step to do now, the garments that are ticked as it stands, the forms below it. */
const cardOf = async (desk: WorkerDesk, ticket: string, who: Member = noor): Promise<Card> => {
  const view = await pressView(desk, ticket)
  if (view === null) throw new Error(`there is no ticket ${ticket}`)
  const place = { base: `/press/${ticket}`, words: wordsOf('en'), locale: 'en-US', zone: 'America/Chicago', nameOf: () => '' }
  const sheet = markupOf(pressSheet({ view, name: who.name, place, said: null }))
  const now = /<section class="sheet step now"[\s\S]*?<\/section>/.exec(sheet)?.[0] ?? ''
  return {
    step: /name="field\.step" value="(\d+)"/.exec(now)?.[1] ?? '',
    title: now.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' '),
    chosen: [...now.matchAll(/name="field\.line-(\d+)" value="yes" checked/g)].map(([, line]) => Number(line)),
    forms: [...sheet.matchAll(/id="form-([a-z-]+)"/g)].map(([, act]) => act ?? ''),
  }
}

/** Presses Done as the page stands. */
const done = async (desk: WorkerDesk, ticket: string): Promise<string | null> => {
  const { step, chosen } = await cardOf(desk, ticket)
  const values = { step, deed: 'done', ...Object.fromEntries(chosen.map((line) => [`line-${line}`, 'yes'])) }
  return acts(desk, ticket, { act: 'tick', values })
}

/** Presses Done until something can be written down as a first piece; the garments that were ticked at each step of the press. */
const followed = async (desk: WorkerDesk, ticket: string): Promise<readonly (readonly number[])[]> => {
  const pressed: (readonly number[])[] = []
  for (let press = 0; press < 40; press += 1) {
    const { step, chosen, forms } = await cardOf(desk, ticket)
    if (forms.includes('first-piece')) return pressed
    if (Number(step) < 1000) pressed.push(chosen)
    expect(await done(desk, ticket)).toBeNull()
  }
  throw new Error('the page leads round in a ring')
}

const written = async (desk: WorkerDesk, ticket: string, garment: string): Promise<void> => {
  expect(await acts(desk, ticket, { act: 'first-piece', values: { garment } })).toBeNull()
}
const signedBy = (desk: WorkerDesk, ticket: string, garment: string, result = 'right') =>
  acts(desk, ticket, { act: 'second-look', by: pim, values: { garment, result } })

describe('whoever presses Done as the page stands', () => {
  test('makes one garment first, writes it down, and runs the others once a second person signed', {
    timeout: 120_000,
  }, async () => {
    const { desk, ticket, clock } = await taken('c-follow', tees('Follow Finches', three))
    const garment = (await lifeNow(desk, ticket)).roster[0]?.garment ?? ''
    const pressed = await followed(desk, ticket)
    expect(pressed.length).toBeGreaterThan(3)
    expect(new Set(pressed.flat()).size).toBe(1)
    const made = await cardOf(desk, ticket)
    expect([made.chosen, made.title]).toEqual([[], expect.stringContaining(floorWords.en.firstPiece.write)])
    expect(await done(desk, ticket)).toBe(`First: first piece signed. ${floorWords.en.firstPiece.write}`)
    await written(desk, ticket, garment)
    expect((await cardOf(desk, ticket)).title).toContain(floorWords.en.firstPiece.sign)
    expect(await done(desk, ticket)).toBe(`First: first piece signed. ${floorWords.en.firstPiece.sign}`)
    expect(await signedBy(desk, ticket, garment, 'wrong')).toBeNull()
    expect((await cardOf(desk, ticket)).title).toContain(floorWords.en.firstPiece.again)
    clock.at = minutes(clock.at + 5)
    await written(desk, ticket, garment)
    expect(await signedBy(desk, ticket, garment)).toBeNull()
    const run = await cardOf(desk, ticket)
    expect(run.chosen).toHaveLength(2)
    expect(run.title).not.toContain('others wait')
    for (const _ of pressed) expect(await done(desk, ticket)).toBeNull()
    expect((await cardOf(desk, ticket)).chosen).toHaveLength(3)
    expect((await pressView(desk, ticket))?.acts.map(({ id }) => id)).toContain(`t:${ticket}:checked:1`)
  })

  test('makes one of each kind of garment first', { timeout: 120_000 }, async () => {
    const { desk, ticket } = await taken('c-follow-two', homeAndAway('Pair Petrels'))
    const { roster } = await lifeNow(desk, ticket)
    const garments = [...new Set(roster.map(({ garment }) => garment))]
    const firsts: number[] = []
    for (const garment of garments) {
      const lines = new Set((await followed(desk, ticket)).flat())
      expect(lines.size).toBe(1)
      firsts.push(...lines)
      const { forms } = await cardOf(desk, ticket)
      expect(forms).toContain('first-piece')
      const kind = roster.find(({ line }) => lines.has(line))?.garment ?? garment
      await written(desk, ticket, kind)
    }
    expect(firsts.map((line) => roster.find((row) => row.line === line)?.garment).toSorted()).toEqual(garments.toSorted())
    for (const garment of garments) expect(await signedBy(desk, ticket, garment)).toBeNull()
    expect(await done(desk, ticket)).toBeNull()
  })

  test('is told to make one by hand where every line is of several garments', { timeout: 120_000 }, async () => {
    const words = `20 practice tees, navy, 100% cotton, with the word LARKS in white vinyl on the front, no names, no numbers: 12 adult M and 8 adult L. Team is the Lot Larks, sport is soccer. We need them December 20 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.`
    const { desk, ticket } = await taken('c-follow-lot', words)
    await followed(desk, ticket)
    const { chosen, title } = await cardOf(desk, ticket)
    expect([chosen, title]).toEqual([[], expect.stringContaining(floorWords.en.firstPiece.alone)])
    expect(await done(desk, ticket)).toContain(floorWords.en.firstPiece.alone)
  })

  test('may still choose another garment by hand, and the page follows that one', { timeout: 120_000 }, async () => {
    const { desk, ticket } = await taken('c-by-hand', tees('Hand Hawks', three))
    for (const _ of ['cut', 'weed']) expect(await done(desk, ticket)).toBeNull()
    const { step, chosen } = await cardOf(desk, ticket)
    const other = (await lifeNow(desk, ticket)).roster.map(({ line }) => line).find((line) => !chosen.includes(line)) ?? 0
    const all = await acts(desk, ticket, { act: 'tick', values: { step, deed: 'done' } })
    expect(all).toBe(`First: first piece signed. ${floorWords.en.firstPiece.make}`)
    expect(await acts(desk, ticket, { act: 'tick', values: { step, deed: 'done', lines: String(other) } })).toBeNull()
    expect(new Set((await followed(desk, ticket)).flat())).toEqual(new Set([other]))
  })
})

describe('what leads to a first piece', () => {
  test.each([
    ['en', 'make', 'first-piece'],
    ['en', 'alone', 'first-piece'],
    ['en', 'write', 'first-piece'],
    ['en', 'sign', 'second-look'],
    ['en', 'again', 'first-piece'],
    ['es', 'make', 'first-piece'],
    ['es', 'alone', 'first-piece'],
    ['es', 'write', 'first-piece'],
    ['es', 'sign', 'second-look'],
    ['es', 'again', 'first-piece'],
  ] as const)('names the form by its title (%s, %s)', (language, wait, form) => {
    const { firstPiece, acts: titles } = floorWords[language]
    expect(firstPiece[wait]).toContain(`“${titles[form]}”`)
  })
})
