import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = { en: '10 black hoodies with GO in white on the back', es: '10 sudaderas negras con VAMOS en blanco atrás' }

const hourOf = async (language: 'en' | 'es', said: string) =>
  (await heard(language, [orders[language], said])).played.conversation.draft.hour

test.each([
  ['es', 'tallas: 4 de la 8, 4 de la 10, 2 de la 2T'],
  ['es', '2 de la 2T y 8 de la 4T'],
  ['es', '10 de la 4'],
  ['es', 'a la 3XL agréguenle una'],
  ['en', '2 in the 2T and 8 in the 4T'],
  ['en', 'from the 2T pick two'],
] as const)('(%s) %j: a size is no hour', async (language, said) => {
  expect(await hourOf(language, said)).toBeUndefined()
})

test.each([
  ['es', 'las necesito el viernes a la 1', '13:00'],
  ['es', 'el viernes a las 2', '14:00'],
  ['es', 'el viernes antes de las 3', '15:00'],
  ['es', 'el viernes a la 1pm', '13:00'],
  ['es', 'el viernes a las 18h', '18:00'],
  ['en', 'friday at 2pm', '14:00'],
  ['en', 'friday at 3', '15:00'],
] as const)('(%s) %j is one', async (language, said, hour) => {
  expect(await hourOf(language, said)).toBe(hour)
})
