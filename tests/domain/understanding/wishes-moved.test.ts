import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = '5 Ibarra M\n6 Casarrubias M\n10 Ugalde M\n1 Montaño L\n13 De la Rosa L'
const told = {
  en: [
    `navy jerseys, gold numbers front and back\n${list}`,
    '10 is the captain, put a C on the left chest. And long sleeves for 1',
  ],
  es: [
    `jerseys azul marino, numeros amarillos adelante y atras\n${list}`,
    'La 10 es la capitana, póngale la C en el pecho. Y la 1 es la portera, a ella con manga larga',
  ],
}

/** Who is on the list, with what they alone wear: "10 C", "1 manga larga". */
const worn = async (language: 'en' | 'es', words: string): Promise<string> => {
  const { played } = await heard(language, [...told[language], words])
  return played.composed.order.roster
    .map(({ number, extras = [], note }) => {
      const letters = extras.flatMap(({ content }) => (content?.kind === 'text' ? [content.text] : []))
      return [number, ...letters, ...(note === undefined ? [] : ['sleeves'])].join(' ')
    })
    .join(', ')
}

test.each([
  ['es', 'Ya votaron y cambió la capitana jaja, ahora es la 6. La C va con la 6, a la 10 quítensela'],
  ['es', 'quítenle la C a la 10 y pónganla a la 6'],
  ['es', 'la C mejor a la 6, no a la 10'],
  ['es', 'siempre la capitana es la 6, no la 10'],
  ['es', 'pasen la C de la 10 a la 6'],
  ['es', 'la C ya no es de Ugalde, es de Casarrubias'],
  ['es', 'cambió la capitana: ahora es la 6'],
  ['es', 'a la 6 pónganle la C y a la 10 se la quitan'],
  ['es', 'quítasela a la 10 y pónsela a la 6'],
  ['es', 'la capitana ahora es Casarrubias, Ugalde ya no lleva C'],
  ['es', 'la 10 ya no es capitana, es la 6'],
  ['en', 'new captain is 6. The C goes to 6, take it off 10'],
  ['en', 'take the C off 10 and put it on 6'],
  ['en', 'the C should be on 6, not 10'],
  ['en', 'move the C from 10 to 6'],
  ['en', 'captain changed, its 6 now. Remove the C from 10'],
  ['en', '6 is captain instead of 10'],
  ['en', '10 is no longer captain, 6 is'],
  ['en', 'Ugalde gave the C to Casarrubias'],
  ['en', 'give the C to 6 instead'],
] as const)('%s: a letter passes to another, and nobody leaves: %s', async (language, words) => {
  expect(await worn(language, words)).toBe('5, 6 C, 10, 1 sleeves, 13')
})

test.each([
  ['es', 'la manga larga es para la 13, no para la 1'],
  ['es', 'quítale la manga larga a la 1 y pónsela a la 13'],
  ['es', 'manga larga para la 13, a la 1 quítensela'],
  ['en', 'long sleeves for 13 instead of 1'],
  ['en', 'take the long sleeves off 1 and give them to 13'],
] as const)('%s: sleeves pass to another: %s', async (language, words) => {
  expect(await worn(language, words)).toBe('5, 6, 10 C, 1, 13 sleeves')
})

test.each([
  ['es', 'la 6 no lleva C', '5, 6, 10 C, 1 sleeves, 13'],
  ['es', 'la C no va con la 6, déjensela a la 10', '5, 6, 10 C, 1 sleeves, 13'],
  ['es', 'ponle también una C a la 6', '5, 6 C, 10 C, 1 sleeves, 13'],
  ['es', 'Perdón, la 10 es la subcapitana, con una A, y la capitana es la 6', '5, 6 C, 10 A, 1 sleeves, 13'],
  ['es', 'la 10 ya no juega, la C es para la 6', '5, 6 C, 1 sleeves, 13'],
  ['es', 'a la 10 quítenla', '5, 6, 1 sleeves, 13'],
  ['en', '6 does not get a C', '5, 6, 10 C, 1 sleeves, 13'],
  ['en', '10 keeps the C, 6 gets an A', '5, 6 A, 10 C, 1 sleeves, 13'],
  ['en', '10 dropped out, so 6 gets the C', '5, 6 C, 1 sleeves, 13'],
  ['en', 'drop the C from 10', '5, 6, 10, 1 sleeves, 13'],
  ['en', 'drop 10 and give her C to 6', '5, 6 C, 1 sleeves, 13'],
] as const)('%s: %s', async (language, words, expected) => {
  expect(await worn(language, words)).toBe(expected)
})
