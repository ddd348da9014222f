import { expect, test } from 'vitest'
import { showFor } from '../../../src/domain/shop/show.ts'
import { say, sayProblem } from '../../../templates/replies/say.ts'
import { starterShop } from '../understanding/starter-shop.ts'

const shop = await starterShop()
const en = showFor(shop, 'en')
const es = showFor(shop, 'es')

test('days and hours are written as people of the language say them', () => {
  expect(en.moment('2026-12-10T17:00')).toBe('Thursday, December 10, 5 pm')
  expect(es.moment('2026-12-10T17:30')).toBe('jueves 10 de diciembre, 5:30 p. m.')
  expect([en.hour('00:15'), en.hour('12:00'), es.hour('09:00')]).toEqual(['12:15 am', '12 pm', '9 a. m.'])
})

test('lengths, temperatures and money are in the units of the shop', () => {
  expect(en.length(203_200)).toBe('8 in')
  expect(en.temperature(1_600)).toBe('320 °F')
  expect(en.swing(50)).toBe('9 °F')
  expect(en.money(123_450)).toBe('$1,234.50')
  const metric = showFor(
    { ...shop, profile: { ...shop.profile, units: { ...shop.profile.units, length: 'cm', temperature: 'C' } } },
    'es',
  )
  expect([metric.length(203_200), metric.temperature(1_600), metric.swing(50)]).toEqual(['20.32 cm', '160 °C', '5 °C'])
})

test('lists, colours and garments carry the names of the language', () => {
  expect(en.list(['a', 'b', 'c'])).toBe('a, b and c')
  expect([es.list(['a', 'Inés']), es.list(['a', 'hielo'])]).toEqual(['a e Inés', 'a y hielo'])
  expect([en.colour('navy'), es.colour('navy'), en.colour('no-such')]).toEqual(['navy', 'azul marino', 'no-such'])
})

test('a problem is said with what could be done about it', () => {
  const facts = { line: 3, decoration: 'back-number', source: 'shop', ways: [{ way: 'no-stones', subject: null, inStock: null }] }
  const problem = { code: 'stones-under-three', at: '/roster/2', severity: 'stop', facts } as const
  expect(sayProblem(problem, 'en', en)).toBe(
    'Line 3: no stones or loose glitter for a child under three. Could be done: leave the stones off.',
  )
  expect(sayProblem(problem, 'es', es)).toContain('Se podría: sin piedras.')
})

test('every sport that is offered has a name in each language', () => {
  const sports = ['football', 'soccer', 'basketball', 'volleyball', 'baseball', 'softball', 'ice-hockey', 'other']
  const choices = sports.map((value) => ({ value, label: { code: 'answer', value } as const }))
  const labels = (language: 'en' | 'es') =>
    say({ code: 'ask-sport', facts: {}, choices }, language, language === 'en' ? en : es).choices.map(({ label }) => label)
  expect(labels('en').slice(-2)).toEqual(['ice hockey', 'another sport'])
  expect(labels('es')).toEqual([
    'fútbol americano',
    'fútbol',
    'básquetbol',
    'voleibol',
    'béisbol',
    'softbol',
    'hockey sobre hielo',
    'otro deporte',
  ])
})
