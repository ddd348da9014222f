import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const jerseys = {
  en: 'black jerseys, gold numbers and names on the back',
  es: 'jersey negro, números y nombres dorados en la espalda',
}
const list = '3 Bojorquez M\n17 Donald L\n44 Lugo S\n28 Duval M'

const lettersOf = async (language: 'en' | 'es', words: string): Promise<readonly string[]> => {
  const { played } = await heard(language, [jerseys[language], list, words])
  return played.composed.order.roster.flatMap(({ number, extras = [] }) =>
    extras.map(({ content }) => `${number} ${content?.kind === 'text' ? content.text : ''}`),
  )
}

test.each([
  ['es', 'La capitana es la 17, lleva una C, y la subcapitana la 28, lleva una A, las dos letras en el pecho izquierdo'],
  ['es', 'la 17 una C y la 28 una A en el pecho izquierdo'],
  ['en', '17 is captain, she wears a C, and 28 is alternate, she wears an A, both on the left chest'],
  ['en', 'put the C on Donald and the A on Duval'],
  ['en', 'Donald wears the C and Duval gets an A'],
] as const)('%s: %s', async (language, words) => {
  expect(await lettersOf(language, words)).toEqual(['17 C', '28 A'])
})

test('two captains named in one sentence wear the letter of the next', async () => {
  const words = 'weve got two captains, 17 and 28. put a C on the left chest for both of them'
  expect(await lettersOf('en', words)).toEqual(['17 C', '28 C'])
})

test('a letter without an article', async () => {
  expect(await lettersOf('es', 'capitán el 28, letra C blanca en el pecho izquierdo')).toEqual(['28 C'])
})

test.each([
  'no, Saldaña siempre no, quitale la A, nomas Núñez',
  'Saldaña siempre no, quítale la A',
  'a Saldaña siempre no le pongan la A',
  'la A nada más para Núñez, Saldaña no',
  'quítale la A a Saldaña, nomás Núñez la lleva',
])('"%s" leaves the letter with the other', async (words) => {
  const said = [
    'jerseys negros con número blanco atrás',
    '13 Luna XL\n30 Núñez M\n2 Saldaña S',
    'Luna es el capitán, lleva la C en el pecho izquierdo. Núñez y Saldaña llevan la A en el mismo lugar',
    words,
  ]
  const { roster } = (await heard('es', said)).played.composed.order
  const letters = roster.map(({ name, extras = [] }) => [name, ...extras.map(({ id }) => id)].join(' '))
  expect(letters).toEqual(['Luna letter-c', 'Núñez letter-a', 'Saldaña'])
})
