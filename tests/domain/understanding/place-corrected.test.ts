import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: [
    'Jerseys de béisbol en gris con todo en rojo',
    'Atrás el número de 20 centímetros y abajito del número el apellido, de 5 cm. También número en la manga derecha, de 2 pulgadas y media',
    '17 Beltrán XL\n6 Lerma M',
  ],
  en: [
    'Baseball jerseys, gray with everything in red',
    'Number on the back 20 cm tall and the last name right below it, 5 cm. Also the number on the right sleeve, two and a half inches',
    '17 Beltrán XL\n6 Lerma M',
  ],
}

/** What stands where, as "left-sleeve number 63500". */
const places = async (language: 'en' | 'es', words?: string): Promise<readonly string[]> => {
  const says = words === undefined ? orders[language] : [...orders[language], words]
  const { played } = await heard(language, says)
  return played.composed.order.decorations
    .map(
      ({ place, content, height }) =>
        `${place} ${content?.kind} ${height !== undefined && 'micrometres' in height ? height.micrometres : 'by size'}`,
    )
    .sort()
}

const was = ['back-number number 200000', 'below-number name 50000', 'right-sleeve number 63500']
const left = ['back-number number 200000', 'below-number name 50000', 'left-sleeve number 63500']
const above = ['back-number number 200000', 'name name 50000', 'right-sleeve number 63500']
const chest = ['back-number number 200000', 'below-number name 50000', 'left-chest number 63500']

test.each(['en', 'es'] as const)('%s: heights with a half are heard in both ways', async (language) => {
  expect(await places(language)).toEqual(was)
})

test.each([
  ['es', 'Perdón, la manga es la izquierda, no la derecha. Lo demás igual', left],
  ['es', 'la manga izquierda, no la derecha', left],
  ['es', 'me equivoqué, el de la manga va en la izquierda', left],
  ['es', 'es en la manga izquierda perdón', left],
  ['es', 'el número de la manga es del lado izquierdo', left],
  ['es', 'mejor la manga izquierda en vez de la derecha', left],
  ['es', 'no era la manga derecha, era la izquierda', left],
  ['es', 'cambia la manga derecha por la izquierda', left],
  ['es', 'quise decir manga izquierda', left],
  ['es', 'perdón, el apellido va arriba del número, no abajo', above],
  ['es', 'el apellido mejor arriba', above],
  ['es', 'pasa el número de la manga al pecho izquierdo', chest],
  ['en', 'sorry, its the left sleeve, not the right', left],
  ['en', 'left sleeve not right. everything else the same', left],
  ['en', 'I meant left sleeve', left],
  ['en', 'oops the sleeve number goes on the left one', left],
  ['en', 'the sleeve should be the left, not the right', left],
  ['en', 'make that the left sleeve instead of the right', left],
  ['en', 'it wasnt the right sleeve, it was the left', left],
  ['en', 'switch the right sleeve to the left', left],
  ['en', 'the sleeve number is on the left side', left],
  ['en', 'sorry the name goes above the number, not below', above],
  ['en', 'move the sleeve number to the left chest', chest],
] as const)(
  '%s: what stood at the wrong place goes to the right one with all that was said of it: %s',
  async (language, words, to) => {
    expect(await places(language, words)).toEqual(to)
  },
)

test.each([
  ['es', 'también número en la manga izquierda', [...was, 'left-sleeve number by size']],
  ['es', 'la izquierda está bien', was],
  ['es', 'el de la manga mejor de 3 pulgadas', was.with(2, 'right-sleeve number 76200')],
  ['en', 'also a number on the left sleeve', [...was, 'left-sleeve number by size']],
  ['en', 'no thats right', was],
  ['en', 'sleeve number should be 3 inches', was.with(2, 'right-sleeve number 76200')],
] as const)('%s: what is added, agreed to or made otherwise moves nothing: %s', async (language, words, to) => {
  expect(await places(language, words)).toEqual([...to].sort())
})
