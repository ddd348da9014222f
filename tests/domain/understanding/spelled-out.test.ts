import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = '7 Nayeli S\n12 Sophia M\n9 Nunez L\n4 Jonathan M\n15 Mackensie S\n8 Vasques L'
const orders = {
  en: `Black jerseys with white numbers and names on the back\n${list}`,
  es: `jerseys negros con numero y nombre atrás en blanco\n${list}`,
}
const was = ['Nayeli', 'Sophia', 'Nunez', 'Jonathan', 'Mackensie', 'Vasques']

const namesAfter = async (language: 'en' | 'es', words: string) =>
  (await heard(language, [orders[language], words])).played.composed.order.roster.map(({ name }) => name)

const changed = (old: string, fresh: string) => was.map((name) => (name === old ? fresh : name))

test.each([
  ['es', 'ah y Nayeli no se escribe asi, es Nallely con doble l', 'Nayeli', 'Nallely'],
  ['es', 'nayeli no se escribe asi, es nallely con doble l', 'Nayeli', 'Nallely'],
  ['es', 'Nallely, con doble l', 'Nayeli', 'Nallely'],
  ['es', 'el nombre de la 7 se escribe con doble l: Nallely', 'Nayeli', 'Nallely'],
  ['es', 'es Nuñez con ñ', 'Nunez', 'Nuñez'],
  ['es', 'Sofía con f no con ph', 'Sophia', 'Sofía'],
  ['es', 'Sophia va con f, Sofía', 'Sophia', 'Sofía'],
  ['es', 'Sophia no es así, es Zofía con zeta', 'Sophia', 'Zofía'],
  ['es', 'está mal escrito Vasques, es Vázquez con z las dos', 'Vasques', 'Vázquez'],
  ['es', 'Jonatan sin h porfa', 'Jonathan', 'Jonatan'],
  ['es', 'perdón, es Yonatan con y, no Jonathan', 'Jonathan', 'Yonatan'],
  ['es', 'me equivoqué, Nayeli se escribe con y griega, así: Nayely', 'Nayeli', 'Nayely'],
  ['en', "it's Mackenzie with a z", 'Mackensie', 'Mackenzie'],
  ['en', "Mackensie is spelled wrong, it's Mackenzie with a z", 'Mackensie', 'Mackenzie'],
  ['en', 'Sofia with an f not ph', 'Sophia', 'Sofia'],
  ['en', "you wrote Sophia but it's Sofia with an f", 'Sophia', 'Sofia'],
  ['en', "oh and Nayeli isn't spelled like that, it's Nallely with a double l", 'Nayeli', 'Nallely'],
  ['en', 'Jonathon with an o, not an a', 'Jonathan', 'Jonathon'],
  ['en', 'jonathan is actually johnathan with two hs', 'Jonathan', 'Johnathan'],
  ['en', 'Sophia spells it with an f: Sofia', 'Sophia', 'Sofia'],
] as const)('%s: the name that is written goes before the remark on its letters: %s', async (language, words, old, fresh) => {
  expect(await namesAfter(language, words)).toEqual(changed(old, fresh))
})

test.each([
  ['es', 'Nunez se escribe con ñ', 'Nunez', 'Nuñez'],
  ['es', 'Sophia se escribe con f', 'Sophia', 'Sofia'],
  ['es', 'Jonathan va sin hache', 'Jonathan', 'Jonatan'],
  ['en', 'Sophia is spelled with an f', 'Sophia', 'Sofia'],
] as const)(
  '%s: where no name is written the letters alone say it, if only one can be meant: %s',
  async (language, words, old, fresh) => {
    expect(await namesAfter(language, words)).toEqual(changed(old, fresh))
  },
)

test.each([
  ['es', 'Nayeli con S'],
  ['es', 'cambia Vasques con s'],
  ['es', 'Jonathan lleva una C'],
  ['es', 'los nombres van con letra cursiva'],
  ['en', 'Jonathan with an L'],
  ['en', 'Mackensie is spelled with an e'],
] as const)('%s: a size, a letter on the chest and what is uncertain change no name: %s', async (language, words) => {
  expect(await namesAfter(language, words)).toEqual(was)
})
