import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const orders = {
  en: '12 navy jerseys, white numbers on the back, names above the number',
  es: '12 jerseys azul marino, números blancos atrás, nombres arriba del número',
}

const after = (language: 'en' | 'es', ...says: readonly string[]) => {
  const { composed, conversation, replies } = play({ id: 'later', now: '2026-11-20T10:00', language, says, facts: [] }, shop)
  const marks = composed.order.decorations.map(({ place, layers }) => `${place} ${layers?.[0]?.colour}`)
  return {
    marks,
    day: conversation.draft.day,
    later: Object.keys(conversation.draft.later).toSorted(),
    last: replies.map(({ code }) => code),
  }
}
const both = ['back-number white', 'name white']

test.each([
  ['en', 'dont have the numbers yet ill text you tomorrow', ['numbers']],
  ['en', "we don't have the names yet, i'll send them monday", ['names']],
  ['en', 'no numbers yet, will send later', ['numbers']],
  ['en', "haven't got the sizes yet", ['sizes']],
  ['en', "i'll text you the sizes tonight", ['sizes']],
  ['en', "the names aren't final yet", ['names']],
  ['es', 'no tengo los números todavía, te los mando mañana', ['numbers']],
  ['es', 'aún no tenemos los nombres, se los paso el lunes', ['names']],
  ['es', 'las tallas te las paso el viernes', ['sizes']],
  ['es', 'todavía no sé los nombres', ['names']],
  ['es', 'los números no los tenemos aún', ['numbers']],
] as const)('(%s) %j: they follow, nothing is dropped and no day is set', (language, said, later) => {
  const { marks, day, later: told } = after(language, orders[language], said)
  expect({ marks, day, told }).toEqual({ marks: both, day: undefined, told: later })
})

test.each([
  ['en', "i'll send the rest of the list on friday"],
  ['en', 'will get you the other 12 by monday'],
  ['en', "haven't got the roster yet"],
  ['es', 'los otros 12 te los paso el lunes'],
  ['es', 'el resto de la lista se la mando el viernes'],
  ['es', 'la lista todavía no la tengo'],
] as const)('(%s) %j: the list follows, which is no day and nothing strange', (language, said) => {
  const { marks, day, last } = after(language, orders[language], said)
  expect({ marks, day }).toEqual({ marks: both, day: undefined })
  expect(last).toContain('no-hurry')
})

test.each([
  ['en', 'no numbers, just names', ['name undefined']],
  ['en', "we don't want the names", ['back-number white']],
  ['es', 'sin números, solo nombres', ['name undefined']],
  ['es', 'no queremos nombres', ['back-number white']],
] as const)('(%s) %j takes them off as before', (language, said, marks) => {
  expect(after(language, orders[language], said).marks).toEqual(marks)
})

test.each([
  ['en', 'we need the jerseys on friday, sizes to follow', '2026-11-27'],
  ['es', 'los otros los necesito el lunes', '2026-11-23'],
] as const)('(%s) %j: a day that they are needed stays one', (language, said, day) => {
  expect(['2026-11-20', day]).toContain(after(language, orders[language], said).day)
})
