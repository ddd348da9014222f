import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const made = async (language: 'en' | 'es', says: readonly string[]) => {
  const { played } = await heard(language, says)
  const { garments, decorations } = played.composed.order
  const layers = decorations.find(({ content }) => content?.kind === 'number')?.layers ?? []
  return [garments[0]?.colour, ...layers.map((layer) => (layer.kind === 'vinyl' ? `${layer.colour} ${layer.class}` : layer.kind))]
}

test.each([
  ['en', ['12 navy jerseys, gold glitter numbers and stones around']],
  ['en', ['12 navy jerseys', 'gold glitter numbers and stones around']],
  ['en', ['12 navy jerseys with white numbers on the back', 'gold glitter numbers and stones around']],
  ['en', ['12 navy jerseys with gold glitter vinyl and crystals on the numbers']],
  ['en', ['12 navy jerseys with gold glitter and crystals on the numbers']],
  ['en', ['12 navy jerseys, gold glitter with stones for the numbers']],
  ['en', ['12 navy jerseys, numbers on the back in glitter gold and rhinestones']],
  ['es', ['12 jerseys azul marino, números dorados con brillo y piedras alrededor']],
  ['es', ['12 jerseys azul marino con vinil de brillo dorado y cristales en los números']],
  ['es', ['12 jerseys azul marino con diamantina dorada y piedras en los números']],
] as const)('(%s) %j: the figure is glitter, the stones are on it, and the cloth keeps its colour', async (language, says) => {
  expect(await made(language, says)).toEqual(['navy', 'gold glitter', 'stones'])
})

test.each([
  ['en', ['12 gold jerseys with navy numbers']],
  ['en', ['12 jerseys, navy numbers, the jerseys in gold']],
  ['es', ['12 jerseys dorados con números azul marino']],
] as const)('(%s) %j: without glitter nothing is', async (language, says) => {
  expect(await made(language, says)).toEqual(['gold', 'navy standard'])
})
