import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['en', 'hi, any news on the order for the Quarry Lane Otters? are they done yet', 'Quarry Lane Otters'],
  ['en', 'Are the Dunmore Dippers jerseys ready?', 'Dunmore Dippers'],
  ['en', "where is our order? it's for the Saltmarsh Snipes", 'Saltmarsh Snipes'],
  ['en', 'checking on the shirts for the Fenwick Foxes, are they done?', 'Fenwick Foxes'],
  ['en', "what's the status of the order for the Harbor Hoppers?", 'Harbor Hoppers'],
  ['en', "How's the order for the Elm Street Herons coming along?", 'Elm Street Herons'],
  ['en', 'any update on the jerseys for team Kestrel?', 'Kestrel'],
  ['en', 'is our order ready?', undefined],
  ['en', 'any news on the order for my daughter Ida?', undefined],
  ['en', 'any news on the order for Ida Torres?', undefined],
  ['en', 'any news on the order for Friday?', undefined],
  ['en', 'are they ready? Glenn Abbott will pick them up', undefined],
  ['es', 'hola, ¿cómo va el pedido de los Tejones de Lerma? ¿ya está listo?', 'Tejones de Lerma'],
  ['es', 'buenas, ¿ya están las playeras de las Garzas del Molino?', 'Garzas del Molino'],
  ['es', '¿ya está listo mi pedido? es el del equipo Halcones de Tula', 'Halcones de Tula'],
  ['es', '¿hay noticias del pedido para los Coyotes de Parral?', 'Coyotes de Parral'],
  ['es', '¿cómo va el pedido de mi hija?', undefined],
  ['es', '¿cómo va el pedido de Ida Torres?', undefined],
] as const)('%s: “%s” asks about the order of %s', async (language, text, team) => {
  const { played } = await heard(language, [text])
  expect(played.wants.map(({ kind }) => kind)).toEqual(['status'])
  expect(played.conversation.draft.team).toBe(team)
})

test('a question of status gives an order that has a team no other', async () => {
  const { played } = await heard('en', [
    '12 navy jerseys for the Quarry Lane Otters',
    'are the jerseys for the Fenwick Foxes ready?',
  ])
  expect(played.conversation.draft.team).toBe('Quarry Lane Otters')
})
