import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const counted = { en: 'mens: 2 L, 1 XL. womens: 2 M', es: 'hombre: 2 L, 1 XL. mujer: 2 M' } as const
const polos = { en: 'navy polos, PINS on the left chest in white', es: 'polos azul marino, PINOS al pecho en blanco' } as const
const three = ['men L x2', 'men XL', 'women M x2']

test.each([
  ['en', "if Walt makes the team we'd want one more in 3XL but thats not decided so dont put it down yet"],
  ['en', "we might need one more 3XL, I'll let you know"],
  ['en', "maybe add a 3XL for Walt, not sure yet, don't add it"],
  ['en', "One more 3XL for Walt, but he hasn't confirmed. Don't put him down yet"],
  ['es', 'si Walter entra al equipo querríamos una más en 3XL pero todavía no confirmó, no lo anoten'],
  ['es', 'a lo mejor una 3XL más, todavía no es seguro, no la pongas'],
  ['es', 'quizás otra en 2XL, te aviso'],
] as const)('what is not decided is not on the list, and it is told, %s: %j', async (language, words) => {
  const { rows, played } = await heard(language, [polos[language], counted[language], words])
  expect(rows).toEqual(three)
  expect(played.replies.map(({ code }) => code)).toContain('not-decided')
})

test.each([
  ['en', "possibly Walt number 12 in 3XL, he hasn't confirmed so leave him off for now"],
  ['es', 'puede que entre Walter con el 12 en 3XL, todavía no confirma, no lo anoten'],
] as const)('a player who may come is not on the list, %s: %j', async (language, words) => {
  const first = language === 'en' ? 'navy jerseys, white names and numbers' : 'jersey negro con número y nombre blancos'
  expect((await heard(language, [first, '4 Ann M\n7 Bo L', words])).rows).toEqual(['4 Ann men M', '7 Bo men L'])
})

test('what is ordered beside it is', async () => {
  const words = "add one more in 3XL and maybe another 2XL, I'll let you know"
  expect((await heard('en', [polos.en, counted.en, words])).rows).toEqual([...three, 'men 3XL'])
})

test.each([
  ['en', 'one more in 3XL please', [...three, 'men 3XL']],
  ['en', "if it's not too late, one more in 3XL", [...three, 'men 3XL']],
  ['es', 'una más en 3XL por favor', [...three, 'men 3XL']],
  ['es', 'si se puede, agreguen una 3XL', [...three, 'men 3XL']],
] as const)('a wish said politely is a wish, %s: %j', async (language, words, rows) => {
  expect((await heard(language, [polos[language], counted[language], words])).rows).toEqual(rows)
})
