import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()

const draftAfter = (language: 'en' | 'es', ...says: readonly string[]) =>
  play({ id: 'verbs', now: '2027-03-02T10:00', language, says, facts: [] }, shop).conversation.draft

const roster = '2 Farrow M\n6 Quigley L'

test.each([
  ['en', 'Farrow wears a large', ['2 Farrow L', '6 Quigley L']],
  ['en', 'only Quigley has to be an XL', ['2 Farrow M', '6 Quigley XL']],
  ['es', 'a Farrow ponle L', ['2 Farrow L', '6 Quigley L']],
  ['en', 'take Farrow off the list and put on Ida Holm, 22, adult small', ['6 Quigley L', '22 Ida Holm S']],
  ['es', 'saca a Quigley de la lista y mete a Renata Solís, 15, chica', ['2 Farrow M', '15 Renata Solís S']],
] as const)('%s: %s', (language, words, rows) => {
  const after = Object.values(draftAfter(language, roster, words).rows)
  expect(after.map(({ number, name, size }) => `${number} ${name} ${size}`)).toEqual(rows)
})

test('a word that orders is nobody’s name', () => {
  const { rows, tally } = draftAfter('es', 'Necesito 4 chicas y 6 medianas, playeras azules')
  expect(rows).toEqual({})
  expect(Object.values(tally).map(({ size, quantity }) => `${quantity} ${size}`)).toEqual(['4 S', '6 M'])
})

test('each place has the height that stands before it', () => {
  const { marks } = draftAfter('es', 'Números dorados de 20 cm atrás y 10 cm adelante')
  expect(marks['back-number']?.style?.micrometres).toBe(200_000)
  expect(marks['front-number']?.style?.micrometres).toBe(100_000)
})

test('a letter without a name goes to whoever the list calls captain', () => {
  const { rows, marks } = draftAfter('en', '5 Thackeray L\n9 Ndiaye M captain', 'The C goes on the left chest.')
  expect(rows['r2']?.extras).toMatchObject({ 'letter-c': { text: 'C', place: 'left-chest' } })
  expect(marks).toEqual({})
})
