import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  [
    'es',
    'Los jerseys que nos hicieron para las Nutrias ya se les están despegando los números',
    'son el 5 y el 17. Nomás los he lavado dos veces y los tendí, ni secadora uso',
    ['5', '17'],
  ],
  ['es', 'se despegaron los números de unos jerseys de las Nutrias', 'el 5 y el 17', ['5', '17']],
  ['es', 'se despegó el vinil de 3 jerseys de los Lobos', 'fueron el 2, el 8 y el 10', ['2', '8', '10']],
  ['es', 'los números se están pelando', 'los del 4, 6 y 11', ['4', '6', '11']],
  ['es', 'salió mal un nombre en los jerseys de los Lobos', 'es el de Ramírez, el 8', ['8']],
  ['es', 'se despegaron los números de los Lobos', 'hace 2 semanas que los lavé 3 veces', undefined],
  ['en', 'The numbers are peeling off the jerseys you made', "it's 5 and 17. only washed them twice", ['5', '17']],
  ['en', 'numbers are coming off some of our jerseys', '5 and 17', ['5', '17']],
  ['en', 'three jerseys are peeling', 'they are 2, 8 and 10', ['2', '8', '10']],
  ['en', 'stones fell off two of the cheer tops', '#4 and #9', ['4', '9']],
  ['en', 'a name came out wrong on the Wolves jerseys', 'the Ramirez one, #8', ['8']],
  ['en', 'numbers are cracking', 'washed 3 times over 2 weeks', undefined],
] as const)('%s: “%s”, and then the numbers: %s', async (language, first, then, numbers) => {
  const { played } = await heard(language, [first, then])
  expect(played.conversation.complaint?.numbers).toEqual(numbers)
})
