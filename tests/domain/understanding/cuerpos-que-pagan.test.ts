import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  [
    'Paga la sociedad de padres, la que da el visto bueno es Leticia Arrieta y pasa a recoger Hilario Bustos',
    ['sociedad de padres', 'Leticia Arrieta', 'Hilario Bustos'],
  ],
  ['paga el club, autoriza el profe Ramón Solís y recoge Marta Lugo', ['club', 'Ramón Solís', 'Marta Lugo']],
  [
    'los paga la asociación de vecinos; el visto bueno lo da Irma Peña; los recoge Beto Lara',
    ['asociación de vecinos', 'Irma Peña', 'Beto Lara'],
  ],
  ['el pago lo hace el patronato, aprueba Rosa Díaz, recoge Pepe Díaz', ['patronato', 'Rosa Díaz', 'Pepe Díaz']],
  ['corre por cuenta de la empresa, el ok lo da Julia Ríos y va por ellos Martín Coss', ['empresa', 'Julia Ríos', 'Martín Coss']],
  ['quien paga es la liga y quien recoge es Doña Chela Ruiz', ['liga', undefined, 'Chela Ruiz']],
  ['el municipio los paga y los recoge el entrenador Saúl Rico', ['municipio', undefined, 'Saúl Rico']],
  ['el que firma es el director Óscar Mena y paga la secundaria técnica 12', ['secundaria técnica 12', 'Óscar Mena', undefined]],
  ['factura a nombre de la primaria Benito Juárez, ellos pagan', ['primaria Benito Juárez', undefined, undefined]],
  ['la cooperativa de padres va a pagar', ['cooperativa de padres', undefined, undefined]],
  ['pagan los papás', ['papás', undefined, undefined]],
  ['paga la mesa directiva', ['mesa directiva', undefined, undefined]],
  ['va a recogerlos Hilario Bustos', [undefined, undefined, 'Hilario Bustos']],
  ['paga cada quien', [undefined, undefined, undefined]],
])('quién paga, quién da el visto bueno y quién recoge: %s', async (words, people) => {
  const { played } = await heard('es', ['jerseys azul rey, número blanco atrás', words])
  const { pays, signsOff, collects } = played.composed.order.people ?? {}
  expect([pays, signsOff, collects]).toEqual(people)
})
