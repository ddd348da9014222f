import { describe, expect, test } from 'vitest'
import { calendarWords } from '../../templates/desk/calendar.ts'
import { floorWords } from '../../templates/desk/floor/words.ts'
import { loadWords } from '../../templates/desk/load/languages.ts'
import { morningWords } from '../../templates/desk/morning.ts'
import { deskWords } from '../../templates/desk/words.ts'

/** What is said of so many, wherever a number stands before a thing. */
const sayings = (language: 'en' | 'es', count: number): readonly string[] => {
  const floor = floorWords[language]
  return [
    deskWords[language].pieces(count),
    calendarWords[language].pieces(count),
    morningWords[language].leaves('T1', count, 'x'),
    morningWords[language].sizesLater('T1', count),
    morningWords[language].remakeCost(count, 'x'),
    floor.units.pieces(count),
    floor.units.garments(count),
    floor.ownerNote.worn(count, count, 'x'),
    floor.shelf.templateLine('T1', 'x', count),
    loadWords[language].rate(100, count, 10),
  ]
}

describe('a number and its thing', () => {
  test.each([
    ['en', /\b1 (?:separate )?[a-z]+(?<!s)s\b/],
    ['es', /\b1 [a-záéíóúñ]+s\b/],
  ] as const)('one is one, in %s', (language, many) => {
    for (const saying of sayings(language, 1)) expect(saying).not.toMatch(many)
  })

  test('a find of which nothing more is to be said has no colon', () => {
    expect(floorWords.en.found['first-piece']('', 'Pim', '9 am')).toBe('First piece made (Pim, 9 am)')
    expect(floorWords.es.found['count-in']('', 'Pim', '9:00')).toBe('Contado (Pim, 9:00)')
    expect(floorWords.en.found['water-drops']('2, 3 s', 'Pim', '9 am')).toBe('Water drops: 2, 3 s (Pim, 9 am)')
  })

  test('two are many', () => {
    expect(sayings('en', 2).slice(0, 7)).toEqual([
      '2 garments',
      '2 garments',
      'T1: 2 garments, promised x',
      'T1: 2 lines without a size',
      '2 remakes in seven days, together x',
      '2 pieces',
      '2 garments',
    ])
    expect(sayings('es', 2).slice(5)).toEqual([
      '2 piezas',
      '2 prendas',
      '2 días después de la entrega, lavada 2 veces, secada: x',
      'caja T1, cortada x, cepillada 2 veces',
      '100 minutos planeados tardan 100 (visto 2 veces, normalmente a 10 o menos)',
    ])
  })
})
