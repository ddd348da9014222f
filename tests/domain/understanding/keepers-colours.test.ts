import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const numbersOf = async (says: readonly string[]) => {
  const { played } = await heard('en', says)
  const { garments, decorations } = played.composed.order
  return decorations
    .filter(({ content, place }) => content?.kind === 'number' && place === 'back-number')
    .flatMap(({ on = [], layers = [] }) =>
      on.map((id) => {
        const garment = garments.find((one) => one.id === id)
        return `${garment?.colour} ${layers.map((layer) => layer.colour).join('+')}`
      }),
    )
    .toSorted()
}

test.each([
  'volleyball. white jerseys with purple numbers on the back, and the libero is in black with a white number',
  'volleyball, white jerseys with purple numbers on the back, libero in black with a white number',
  'volleyball. white jerseys, purple numbers on the back. the libero wears black with a white number',
  'volleyball. white jerseys, purple numbers on the back. libero gets black with white numbers',
  'volleyball. white jerseys, purple numbers on the back; our libero is in black with the number in white',
])('%s: the number of the one apart has a colour of its own, and the others keep theirs', async (words) => {
  expect(await numbersOf([words])).toEqual(['black white', 'white purple'])
})

test.each(['the libero is in black with a white number', 'libero wears black with white number please'])(
  '%s: told in a second message too',
  async (words) => {
    expect(await numbersOf(['volleyball. white jerseys with purple numbers on the back', words])).toEqual([
      'black white',
      'white purple',
    ])
  },
)

test.each(['volleyball. white jerseys with purple numbers on the back, the libero is in black'])(
  '%s: without a word of it the number is as the others',
  async (words) => {
    expect(await numbersOf([words])).toEqual(['black purple', 'white purple'])
  },
)
