import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const talk = async (now: string, says: readonly string[]) =>
  play({ id: 'own-words', now, language: 'en', says, facts: [] }, await starterShop())

test('a weekday that fits the date just passed keeps it from waiting a year', async () => {
  const { composed } = await talk('2026-11-25T09:00', ['Basketball, white jerseys, we need them Friday November 20 at 5 pm'])
  expect(composed.order.needBy).toBe('2026-11-20T17:00')
})

test('a year that was said counts before the weekday beside it', async () => {
  const { composed } = await talk('2026-11-25T09:00', ['Basketball, white jerseys, we need them Friday November 20 2027 at 5 pm'])
  expect(composed.order.needBy).toBe('2027-11-20T17:00')
})

test('names that are words of orders too stay names', async () => {
  const { composed } = await talk('2027-02-08T09:00', ['12 Will M\n7 Una L', 'add Kit 18 YM'])
  expect(composed.order.roster.map(({ name, number }) => [number, name])).toEqual([
    ['12', 'Will'],
    ['7', 'Una'],
    ['18', 'Kit'],
  ])
})

test('a name spelled wrong on a list nobody signed is mended, not a complaint', async () => {
  const { composed, wants } = await talk('2027-02-08T09:00', [
    '9 Lena L\n12 Ida S',
    'you spelled the name wrong, 12 is spelled Ayda',
  ])
  expect(wants.filter((want) => want.kind === 'complaint')).toEqual([])
  expect(composed.order.roster[1]?.name).toBe('Ayda')
})
