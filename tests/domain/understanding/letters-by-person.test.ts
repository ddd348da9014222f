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
