import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const peopleAfter = (language: 'en' | 'es', words: string) => {
  const first = language === 'en' ? 'White jerseys, navy numbers on the back' : 'Jerseys blancos, números azul marino atrás'
  const { draft } = play({ id: 'who', now: '2026-11-20T10:00', language, says: [first, words], facts: [] }, shop).conversation
  return { pays: draft.pays, signsOff: draft.signsOff, collects: draft.collects }
}

test.each([
  ['A few admin things: the booster club is paying. Priscilla Raman signs off on the proof.', 'booster club'],
  ['our PTA will cover it', 'PTA'],
  ['the rec department pays', 'rec department'],
  ['paid for by the boosters', 'boosters'],
  ['the bill goes to the booster club', 'booster club'],
  ['send the invoice to the athletic department', 'athletic department'],
  ['invoice the PTO', 'PTO'],
  ['bill the school district', 'school district'],
  ["Our sponsor, Delmonico's Pizza, is paying", "Delmonico's Pizza"],
  ['the league picks up the tab', 'league'],
  ['money comes from the student council', 'student council'],
  ['Lincoln High boosters are paying', 'Lincoln High boosters'],
  ['Who pays? the boosters', 'boosters'],
  ['payment: booster club', 'booster club'],
])('a body pays: %s', (words, pays) => {
  expect(peopleAfter('en', words).pays).toBe(pays)
})

test.each([
  ['paga el club de padres', 'club de padres'],
  ['la sociedad de padres paga', 'sociedad de padres'],
  ['la escuela va a pagar', 'escuela'],
  ['el municipio es el que paga', 'municipio'],
  ['va a pagar la mesa directiva', 'mesa directiva'],
  ['la factura va a nombre de la escuela', 'escuela'],
  ['facturen a la asociación de padres', 'asociación de padres'],
  ['el pago lo hace la dirección de deportes', 'dirección de deportes'],
  ['los papás pagan', 'papás'],
  ['quién paga? la escuela', 'escuela'],
])('paga alguien sin nombre propio: %s', (words, pays) => {
  expect(peopleAfter('es', words).pays).toBe(pays)
})

test.each([
  ['en', 'the athletic director signs off', { signsOff: 'athletic director' }],
  ['en', 'our principal has to approve it', { signsOff: 'principal' }],
  ['en', 'the school office will pick them up', { collects: 'school office' }],
  ['en', 'my husband will pick them up', { collects: 'husband' }],
  ['es', 'la directora autoriza', { signsOff: 'directora' }],
  ['es', 'la oficina de la escuela los recoge', { collects: 'oficina de la escuela' }],
  ['es', 'paga la escuela y recoge mi esposo', { pays: 'escuela', collects: 'esposo' }],
] as const)('%s: who signs or collects may be a body: %s', (language, words, people) => {
  expect(peopleAfter(language, words)).toMatchObject(people)
})

test.each([
  ['en', 'the booster club is NOT paying this time'],
  ['en', 'is the school paying?'],
  ['en', 'school picks up the kids at 3'],
  ['es', '¿paga la escuela?'],
] as const)('%s: nobody pays or collects by: %s', (language, words) => {
  expect(peopleAfter(language, words)).toEqual({ pays: undefined, signsOff: undefined, collects: undefined })
})
