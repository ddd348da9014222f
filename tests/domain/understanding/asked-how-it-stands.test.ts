import { expect, test } from 'vitest'
import { openOf, play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const played = (language: 'en' | 'es', says: readonly string[]) =>
  play({ id: 'stands', now: '2026-11-20T10:00', language, says, facts: [] }, shop)

test.each([
  ['en', "where's our stuff at"],
  ['en', 'wheres our jerseys at'],
  ['en', 'hows our order coming along'],
  ['en', "what's the status"],
  ['en', 'just checking in on our order'],
  ['en', 'did you start on our shirts'],
  ['en', 'can we pick up yet'],
  ['es', 'dónde andan nuestras playeras'],
  ['es', 'qué onda con nuestro pedido'],
  ['es', 'cómo va lo nuestro'],
  ['es', 'en qué van nuestros uniformes'],
] as const)('(%s) "%s" asks how the order stands and orders nothing', (language, words) => {
  const { wants, conversation } = played(language, [words])
  expect(wants.map(({ kind }) => kind)).toEqual(['status'])
  expect(conversation.draft.garments).toEqual({})
})

test.each([
  ['en', 'where do you put the numbers on our jerseys'],
  ['en', 'can we pick up Friday at 3pm'],
  ['en', '12 navy jerseys, where the number is white'],
  ['es', 'dónde van los números de nuestras playeras negras'],
  ['es', 'podemos recoger el viernes a las 3'],
] as const)('(%s) "%s" does not', (language, words) => {
  expect(played(language, [words]).wants.map(({ kind }) => kind)).not.toContain('status')
})

test.each([
  ['en', 'one of the jerseys went missing, can we get just that one again'],
  ['en', "Jonah's shirt got lost in the wash, can you redo just his"],
  ['en', 'our #9 jersey got stolen, can you make it again'],
  ['en', 'somebody took our keeper jersey, can we have another'],
  ['es', 'una de las playeras se extravió, se puede hacer nomás esa'],
  ['es', 'nos robaron el jersey del 9, hacen otro?'],
] as const)('(%s) "%s": one piece of an earlier order', (language, words) => {
  const [want] = played(language, [words]).wants
  expect(want?.kind).toBe('earlier-order')
  expect(want?.kind === 'earlier-order' && want.asks.single).toBe(true)
})

test.each([
  ['en', 'one of the jerseys is missing a number on the list'],
  ['en', '12 navy jerseys, one got lost in my count so make it 13'],
  ['es', 'a una de las playeras le falta el número'],
] as const)('(%s) "%s" is no lost piece', (language, words) => {
  expect(played(language, [words]).wants.map(({ kind }) => kind)).not.toContain('earlier-order')
})

const numbersOf = (language: 'en' | 'es', says: readonly string[]) => {
  const want = played(language, says).wants.at(-1)
  return want?.kind === 'complaint' ? want.complaint.numbers : undefined
}

test.each([
  ['en', ['the stones fell off number 9, sorry, number 19'], ['19']],
  ['en', ['the vinyl is peeling on #9, wait no, #19'], ['19']],
  ['en', ['stones came off #9, I mean #19'], ['19']],
  ['en', ['the stones fell off number 9', "sorry it's 19 not 9"], ['19']],
  ['en', ['the stones fell off number 9', 'oops, I meant 19'], ['19']],
  ['en', ['the numbers on 3 and 24 are peeling', 'sorry my mistake its 3 and 42'], ['3', '42']],
  ['es', ['se despega el número del 9, digo, del 19'], ['19']],
  ['es', ['se le cayeron las piedras al 9', 'perdón, es el 19, no el 9'], ['19']],
] as const)('(%s) %j: a number put right is the one that is kept', (language, says, numbers) => {
  expect(numbersOf(language, says)).toEqual(numbers)
})

test.each([
  ['en', ['the stones fell off number 9', "it's 12 too"], ['9', '12']],
  ['en', ['the numbers on 3 and 24 are peeling'], ['3', '24']],
  ['en', ['the vinyl is peeling on #9, not after 2 washes but right away'], ['9']],
  ['es', ['se despegan los números del 4 y del 9'], ['4', '9']],
] as const)('(%s) %j: and nothing else is taken back', (language, says, numbers) => {
  expect(numbersOf(language, says)).toEqual(numbers)
})

test.each([
  ['en', '38 or 39 shirts, black, white numbers on the back', ['38', '39']],
  ['en', '15 maybe 16 black tees', ['15', '16']],
  ['en', 'ten or eleven navy hoodies', ['10', '11']],
  ['es', '38 o 39 playeras negras', ['38', '39']],
  ['es', '14, tal vez 15 sudaderas negras', ['14', '15']],
] as const)('(%s) "%s": of two amounts it is asked which', (language, words, values) => {
  const one = played(language, [words])
  const asked = one.conversation.open.find(({ about }) => about === 'amount')
  expect(asked?.readings.map(({ value }) => value)).toEqual(values)
  expect(Object.values(one.conversation.draft.garments).map(({ count }) => count)).toEqual([undefined])
  const answered = played(language, [words, values[1]])
  expect(Object.values(answered.conversation.draft.garments).map(({ count }) => count)).toEqual([Number(values[1])])
})

test.each([
  ['en', '12 navy jerseys with white numbers on the back, number 38 or 39 for me'],
  ['en', '12 navy jerseys, 2 or 3 inch numbers'],
  ['es', '12 jerseys negros con números de 20 o 25 cm'],
] as const)('(%s) "%s": one amount is one', (language, words) => {
  const one = played(language, [words])
  expect(openOf(one).map(({ about }) => about)).not.toContain('amount')
  expect(one.conversation.draft.garments['jersey']?.count).toBe(12)
})
