import ical from 'ical.js'
import nodeIcal from 'node-ical'
import { convertIcsCalendar } from 'ts-ics'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { counterDesk, openNews } from '../../src/desk/service/counter-desk.ts'
import { morningSheet } from '../../src/desk/service/morning/morning-sheet.ts'
import { calendarOf } from '../../src/desk/service/shop/calendar-feed.ts'
import { tableOf, writeTable } from '../../src/desk/service/shop/tables.ts'
import { localMinute, openTestDesk } from '../support/desk.ts'
import { openTestStore, type TestStore } from '../support/embedded.ts'
import { acts, openGates, rosa, sign, ticketOf, toProof } from '../support/floor.ts'

let opened: TestStore
beforeAll(async () => {
  opened = await openTestStore()
}, 60_000)
afterAll(() => opened.close())

const words =
  '3 practice tees, navy, 100% cotton, white vinyl numbers and names on the back. Team is the Feed Finches, sport is soccer. We need them December 10 at 5 pm. My name is Imke Dahl. Everybody is 13 or older.\n4 Abelone, adult M\n7 Beatrix, adult L\n9 Cidalia, adult 3XL'

describe('the calendar and the tables', () => {
  test('are read by two independent programs, name no wearer, and end with their address', { timeout: 120_000 }, async () => {
    const desk = await openTestDesk(opened.store, { at: localMinute('2026-11-25T09:00') })
    await toProof(desk, 'c-feed', words)
    await sign(desk, 'c-feed')
    const feed = await calendarOf(desk)
    const first = Object.values(nodeIcal.sync.parseICS(feed)).filter((one) => one?.type === 'VEVENT' || one?.type === 'VTODO')
    const second = convertIcsCalendar(undefined, feed)
    const own = new ical.Component(ical.parse(feed))
    expect(first.filter((one) => one?.type === 'VEVENT').length).toBe(1)
    expect(second.events?.length).toBe(1)
    expect(second.todos?.length).toBe(first.filter((one) => one?.type === 'VTODO').length)
    expect(own.getAllSubcomponents('vtodo').length).toBe(second.todos?.length)
    expect(second.todos?.length).toBeGreaterThanOrEqual(2)
    const [event] = second.events ?? []
    expect(event?.summary).toContain('Feed Finches')
    expect(first.find((one) => one?.type === 'VEVENT')).toMatchObject({ start: event?.start.date })
    expect(feed).not.toMatch(/Abelone|Beatrix|Cidalia|Imke/)
    for (const line of feed.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
    const news = await openNews(desk)
    const counter = counterDesk(desk, news)
    const secret = await counter.newCalendar(rosa)
    expect(secret.length).toBeGreaterThanOrEqual(22)
    expect(await counter.calendar(secret)).toContain('BEGIN:VEVENT')
    const next = await counter.newCalendar(rosa)
    expect(await counter.calendar(secret)).toBeNull()
    await counter.revokeCalendar(rosa)
    expect(await counter.calendar(next)).toBeNull()
    await news.close()
    expect(await tableOf(desk, 'orders')).toContain('\r\no-feed,T0001,1,on-bench,')
    for (const name of ['orders', 'stock', 'remakes']) expect(await tableOf(desk, name)).not.toMatch(/Abelone|Imke/)
    expect(await tableOf(desk, 'people')).toBeNull()
  })

  test('write a cell that a spreadsheet would run as text', () => {
    const head = ['a', 'b']
    const rows = [
      ['=1+1', '+2'],
      ['-3', '@x'],
      ['\tx', ' =y'],
      ['plain, with "marks"', -4],
    ]
    expect(writeTable({ head, rows })).toBe('a,b\r\n\'=1+1,\'+2\r\n\'-3,\'@x\r\n\'\tx,\' =y\r\n"plain, with ""marks""",-4\r\n')
  })
})

describe('the morning sheet', () => {
  test('has its sections in the order in which they hurt, each line with a thing to do', { timeout: 120_000 }, async () => {
    const clock = { at: localMinute('2026-12-08T07:00') }
    const desk = await openTestDesk(opened.store, clock)
    await toProof(desk, 'c-dawn', words.replace('December 10', 'December 14'))
    await sign(desk, 'c-dawn')
    const ticket = await ticketOf(desk, 'c-dawn')
    await acts(desk, ticket, { act: 'take' })
    await openGates(desk, ticket)
    await acts(desk, ticket, { act: 'start' })
    const values = { line: '1', quantity: '1', reason: 'scorched', whose: 'shop' }
    await acts(desk, ticket, { act: 'spoiled', values })
    const offAt = async (at: string, language: 'en' | 'es') => {
      clock.at = localMinute(at)
      const { sections } = await morningSheet(desk, language)
      return sections.find(({ code }) => code === 'off')?.lines.map(({ text }) => text)
    }
    expect(await offAt('2026-12-09T07:00', 'en')).toEqual([])
    expect(await offAt('2026-12-11T07:00', 'en')).toEqual(['person 3 is off today'])
    expect(await offAt('2026-12-13T07:00', 'en')).toEqual(['nobody works today'])
    expect(await offAt('2026-12-13T07:00', 'es')).toEqual(['hoy no trabaja nadie'])
    const { sections } = await morningSheet(desk, 'en')
    expect(sections.map(({ code }) => code).slice(0, 8)).toEqual([
      'leaving',
      'game-soon',
      'waiting',
      'press-list',
      'shorts',
      'remakes',
      'off',
      'collectable',
    ])
    const linesOf = (code: string) => sections.find((section) => section.code === code)?.lines ?? []
    expect(linesOf('leaving').length).toBe(1)
    expect(linesOf('remakes')[0]?.text).toContain('scorched')
    expect(linesOf('shorts')[0]?.text).toContain('order now, work waits for it')
    expect(linesOf('off').length).toBeGreaterThan(0)
    for (const { lines } of sections) for (const { todo } of lines) expect(todo).not.toBe('')
  })
})
