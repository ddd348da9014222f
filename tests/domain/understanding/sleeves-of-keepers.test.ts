import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = {
  en: ['purple jerseys, white number on the back', '1 Okonjo L (keeper)\n5 Fairbanks M'],
  es: ['camisetas moradas, número blanco atrás', '1 Ocampo G (portera)\n5 Farfán M'],
}

const found = async (language: 'en' | 'es', words: string) => {
  const { roster, garments, decorations } = (await heard(language, [...order[language], words])).played.composed.order
  const numbers = decorations.flatMap(({ on = [], layers = [] }) =>
    on.map((id) => `${garments.find((one) => one.id === id)?.colour} ${layers.map(({ colour }) => colour).join('+')}`),
  )
  return [roster.map(({ note }) => note ?? ''), numbers.toSorted()]
}

const [own, alike] = [
  ['purple white', 'yellow black'],
  ['purple white', 'yellow white'],
]

test.each([
  ['en', "keeper's is yellow with a black number, and long sleeves", ['keeper, long sleeves', ''], own],
  ['en', 'the keeper wears yellow and long sleeves', ['keeper, long sleeves', ''], alike],
  ['en', 'long sleeves for the keeper please', ['keeper, long sleeves', ''], ['purple white']],
  ['es', 'la portera va de amarillo con número negro y manga larga', ['portera, manga larga', ''], own],
  ['es', 'la portera de amarillo y con manga larga', ['portera, manga larga', ''], alike],
  ['es', 'manga larga para la portera', ['portera, manga larga', ''], ['purple white']],
  ['en', 'nobody wants long sleeves, not even the keeper', ['keeper', ''], ['purple white']],
  ['es', 'la portera va de amarillo con número negro', ['portera', ''], own],
] as const)(
  '(%s) %s: the sleeves are the keeper’s, and nobody else’s number changes',
  async (language, words, notes, numbers) => {
    expect(await found(language, words)).toEqual([notes, numbers])
  },
)
