import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  'los números de 20 cm en la espalda y de 10 cm al frente',
  'los números de 20 cm en la espalda y 10 cm al frente',
  'los números de 10 cm al frente y de 20 cm en la espalda',
])('each place has the height before it: %s', async (words) => {
  const { played } = await heard('es', ['jerseys blancos', words])
  const heights = played.composed.order.decorations.map(({ place, height }) => `${place} ${JSON.stringify(height)}`)
  expect(heights.sort()).toEqual(['back-number {"micrometres":200000}', 'front-number {"micrometres":100000}'])
})

test.each(['BANDA DE GUERRA', 'CASA DE LOS GATOS', 'LOBOS DEL NORTE'])('"%s" is one text', async (text) => {
  const { played } = await heard('es', [`sudaderas guinda con ${text} al frente en dorado`])
  expect(played.composed.order.decorations.map(({ content }) => content)).toEqual([{ kind: 'text', text }])
})
