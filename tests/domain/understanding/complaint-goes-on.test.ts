import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const complaints = {
  en: 'the numbers are peeling off the jerseys you made us',
  es: 'se están despegando los números de los jerseys que nos hicieron',
}

test.each([
  ['en', 'all the 8s'],
  ['en', 'what can you do'],
  ['en', 'on three of them'],
  ['en', 'after just one week!!'],
  ['es', 'a tres de ellas'],
  ['es', '¿qué se puede hacer?'],
  ['es', 'y apenas los usamos una vez'],
] as const)('(%s) %j right after a complaint is written down with it', async (language, said) => {
  const { played } = await heard(language, [complaints[language], said])
  expect(played.conversation.complaint?.text.split('\n')).toEqual([complaints[language], said])
  expect(played.replies.map(({ code }) => code)).toEqual(['complaint-noted', 'complaint-noted'])
})

test.each([
  ['en', 'thanks'],
  ['es', 'gracias'],
  ['en', 'we also need 5 black tees with GO on the front in white'],
  ['es', 'también necesitamos 5 playeras negras con VAMOS al frente en blanco'],
  ['en', 'can I talk to a person'],
  ['es', 'cómo va mi pedido'],
] as const)('(%s) %j is another matter', async (language, said) => {
  const { played } = await heard(language, [complaints[language], said])
  expect(played.conversation.complaint?.text).toBe(complaints[language])
})

test.each([
  ['en', 'all the 8s'],
  ['es', 'a tres de ellas'],
] as const)('(%s) %j is no complaint where none was told', async (language, said) => {
  const { played } = await heard(language, [said])
  expect(played.conversation.complaint ?? null).toBeNull()
})
