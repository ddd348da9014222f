import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const order = '6 cheer tops in purple, STARLINGS on the front in crystal rhinestones ss16'
const stonesOf = async (...says: readonly string[]) => {
  const { played } = await heard('en', says)
  const layer = played.composed.order.decorations.find(({ place }) => place === 'full-front')?.layers?.[0]
  return layer?.kind === 'stones'
    ? [layer.size, layer.colour, layer.layout.style, 'rows' in layer.layout ? layer.layout.rows : ''].join(' ').trim()
    : undefined
}

test.each([
  'clear AB please',
  'clear AB not plain crystal',
  'and clear AB not plain crystal so they flash rainbow',
  'make the stones clear AB not plain crystal',
  'clear AB stones, not the crystal',
  'not crystal, clear AB',
  'actually clear ab stones instead of crystal',
  'can the stones be clear AB',
  'clear AB rather than just crystal',
])('%s: the stones have another colour', async (words) => {
  expect((await stonesOf(order, words))?.split(' ')[1]).toBe('clear-ab')
})

test.each([
  'my daughter says those stones look chunky can we do the ss10 ones instead? and clear AB not plain crystal so they flash rainbow',
  'ss10 instead please, and clear AB not crystal',
])('%s: size and colour', async (words) => {
  expect((await stonesOf(order, words))?.split(' ').slice(0, 2)).toEqual(['SS10', 'clear-ab'])
})

test.each([
  '6 cheer tops in purple, STARLINGS on the front all in rhinestones, just an outline not filled in, two rows, crystal ss16',
  '6 cheer tops in purple, STARLINGS on the front in rhinestones, just the outline, not filled, 2 rows, crystal ss16',
  '6 cheer tops in purple, STARLINGS on the front in rhinestones, outline only, 2 rows, crystal ss16',
  '6 cheer tops in purple, STARLINGS on the front in crystal ss16 rhinestones, not solid, an outline of two rows',
])('%s: an outline of two rows', async (words) => {
  expect(await stonesOf(words)).toBe('SS16 crystal outline 2')
})
