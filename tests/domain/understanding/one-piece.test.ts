import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  [
    "Our goalie lost her jersey at regionals. Team is the Pine Ridge Otters. She's number 31, last name Delacroix-Boone, women's M. Can you remake it?",
    '31 Delacroix-Boone women M',
  ],
  [
    "Hi, we need to replace one jersey from last year's order. Alder Creek Cougars, #5, the back says Okonkwo, youth medium",
    '5 Okonkwo youth M',
  ],
  [
    "my daughter left her jersey on the bus and it's gone. can we get just that one again? number 22, name on back was Van Houten, adult small",
    '22 Van Houten men S',
  ],
  [
    "The dog chewed up our number 8's jersey lol. can you make one more like it? Bristol Bay Belugas, name on the back: O'Shea, mens XL",
    "8 O'Shea men XL",
  ],
  [
    "lost jersey again, sorry! it was number 40, his last name is St. Clair and he's an adult large. Marble Falls Mudcats",
    '40 St. Clair men L',
  ],
  ['Need one replacement jersey please. Number 17. It said PETROV on the back. Youth XL', '17 PETROV youth XL'],
  ['Can we reorder a single jersey? Team: Ferris Flats Falcons. Number: 27. Name: Lindgren. Size: adult L', '27 Lindgren men L'],
  [
    "our libero's jersey got stolen. #6, the name on it is Marisol, womens small. Same as last time please, Coral Bay Crabs",
    '6 Marisol women S',
  ],
  [
    'My name is Kurt Hale. my son lost his jersey, number 14, youth large. can you make just that one again? His last name is Hale-Moreno',
    '14 Hale-Moreno youth L',
  ],
  [
    'My last name is Ruiz, I ordered last fall. We lost #9, the back says Tanaka, adult XL. can we order that one again?',
    '9 Tanaka men XL',
  ],
  [
    "jersey #44 was lost. Kestrel Kickers. It has Bauer on the back, women's L, can we get just that one made again?",
    '44 Bauer women L',
  ],
])('a lost piece, its wearer told by what is printed: %s', async (words, row) => {
  const { rows, played } = await heard('en', [words])
  expect(rows).toEqual([row])
  expect(Object.values(played.conversation.draft.marks).filter(({ content }) => content === 'text')).toEqual([])
  expect(played.conversation.draft.orders).not.toBe('Youth XL')
})

test.each([
  ['su jersey se perdió, es el número 12, apellido Villaseñor, M de dama. Pueden hacer uno igual?', '12 Villaseñor women M'],
  ['se me perdió el jersey, número 8, atrás dice ROBLES, talla G de hombre. ocupo otro igual', '8 ROBLES men L'],
  ['mi hijo perdió su jersey. número 30, el nombre de atrás es De la Cruz, infantil M', '30 De la Cruz youth M'],
  ['se me perdió el jersey, quiero otro igualito. es el 18, apellido Escárcega, talla YL, azul rey', '18 Escárcega youth L'],
])('un jersey perdido: %s', async (words, row) => {
  expect((await heard('es', [words])).rows).toEqual([row])
})

const lost = "one of our girls lost hers, can you make just that one again? We're the Larkspur Lancers"

test.each([
  [['number 3', 'her last name is Fitzgerald', 'youth small'], '3 Fitzgerald youth S'],
  [["last name on the back is Abernathy-Cole, she's number 12", 'size is adult medium'], '12 Abernathy-Cole men M'],
  [["it's number 18, the name on the back is Nakamura-Ellis, youth large"], '18 Nakamura-Ellis youth L'],
  [["she's #7", 'name on it is Oyelaran', 'womens L please'], '7 Oyelaran women L'],
  [
    ['number 3, last name Fitzgerald, youth small', 'hold on, she grew a lot, better make it an adult small'],
    '3 Fitzgerald men S',
  ],
  [
    ['number 3, last name Fitzgerald, youth large', "actually she might as well go up to a women's small"],
    '3 Fitzgerald women S',
  ],
])('told over several messages: %j', async (words, row) => {
  expect((await heard('en', [lost, ...words])).rows).toEqual([row])
})

test.each([
  ['My last name is Ruiz and we want 9 white jerseys, numbers on back 10 inches'],
  ['Team name is Cedar Gap Comets. the number 16 bus stops here'],
  ['last name on the back, number 8 inches tall, white jerseys'],
])('no player where none is told: %s', async (words) => {
  expect((await heard('en', [words])).rows).toEqual([])
})
