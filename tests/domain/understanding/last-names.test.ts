import { expect, test } from 'vitest'
import { lastName } from '../../../src/domain/understanding/compose/last-name.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const english = 'White jerseys, navy numbers on the back, names over the numbers'
const spanish = 'Playeras blancas, número azul marino atrás, nombre arriba del número'
const list = "3 Amaya Cole M\n7 Cass Duarte-Lee S\n00 Dee O'Hara L\n21 Emmy St. James M\n9 Kim L\n15 Smith J. M"
const whole = ['Amaya Cole', 'Cass Duarte-Lee', "Dee O'Hara", 'Emmy St. James', 'Kim', 'Smith J.']
const last = ['Cole', 'Duarte-Lee', "O'Hara", 'St. James', 'Kim', 'Smith J.']

const names = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'last', now: '2026-11-09T10:00', language, says, facts: [] }, shop).composed.order.roster.map(({ name }) => name)

test.each([
  [[`${english}, last names only`, list]],
  [[english, list, 'last names only please']],
  [[english, list, 'just the last names']],
  [[english, `only surnames on the back\n${list}`]],
  [[english, list, 'no first names please']],
  [[english, list, 'can you put just their last names on']],
])('given names are left out: %j', (says) => {
  expect(names('en', ...says)).toEqual(last)
})

test.each([
  [[`${spanish}, solo apellidos`, list]],
  [[spanish, list, 'nada más el apellido por favor']],
  [[spanish, list, 'puros apellidos']],
  [[spanish, list, 'apellidos nada más, sin nombre de pila']],
])('los nombres de pila se dejan fuera: %j', (says) => {
  expect(names('es', ...says)).toEqual(last)
})

test.each([
  [[english, list, 'Cass is going by Lee now, last name only']],
  [[english, list, 'my last name is only for the receipt']],
  [[english, list, 'last names only', 'actually full names']],
  [[english, list, 'first and last names please']],
])('names stay whole: %j', (says) => {
  expect(names('en', ...says).slice(2)).toEqual(whole.slice(2))
})

test.each([
  ['Van Horn', 'Van Horn'],
  ['Pia van Horn', 'van Horn'],
  ['Ana Ruiz Peña', 'Ruiz Peña'],
  ['De la Cruz', 'De la Cruz'],
  ['Ana De la Cruz', 'De la Cruz'],
  ['Hale Jr.', 'Hale Jr.'],
  ['Marcus Hale Jr.', 'Hale Jr.'],
  ['K. Smith', 'Smith'],
  ['Smith K', 'Smith K'],
])('%s is %s on the back', (name, wanted) => {
  expect(lastName(name)).toBe(wanted)
})
