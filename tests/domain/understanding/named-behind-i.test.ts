import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  es: 'quiero 24 playeras grises con CORO NORTE al frente en negro',
  en: '24 grey tees with ELLERY WINDS on the front in navy',
}

const roles = async (language: 'en' | 'es', words: string) => {
  const { draft } = (await heard(language, [orders[language], words])).played.conversation
  return [draft.pays ?? null, draft.collects ?? null, draft.team ?? null]
}

test.each([
  ['es', 'yo paso por ellas el jueves, Ramiro Tello', null, 'Ramiro Tello'],
  ['es', 'paso yo a recogerlas, Nadia Ibarra para servirle', null, 'Nadia Ibarra'],
  ['es', 'pago yo, Elvira Sosa', 'Elvira Sosa', null],
  ['es', 'yo las pago, Hugo Del Valle. gracias', 'Hugo Del Valle', null],
  ['es', 'Yo pago, Marisol Quiroz, y también yo paso por ellas', 'Marisol Quiroz', 'Marisol Quiroz'],
  ['es', 'voy yo por ellas el viernes a las 5 de la tarde, Inés Robledo', null, 'Inés Robledo'],
  ['es', 'recojo yo, Saúl Armenta a sus órdenes', null, 'Saúl Armenta'],
  ['es', 'yo voy a pagar, Lorena Pech', 'Lorena Pech', null],
  ['en', "I'll pick them up, Nora Finch", null, 'Nora Finch'],
  ['en', "I'm paying, Del Hargrove", 'Del Hargrove', null],
  ['en', "I'll pay, Wendy Sloan, and I'll pick them up too", 'Wendy Sloan', 'Wendy Sloan'],
  ['en', "I'll come get them on Friday at 5pm, Otis Brandt. thanks", null, 'Otis Brandt'],
  ['en', "I'm picking it up myself on Thursday, Carla Meyer", null, 'Carla Meyer'],
] as const)('%s: %s', async (language, words, pays, collects) => {
  expect(await roles(language, words)).toEqual([pays, collects, null])
})

test.each([
  ['es', 'yo pago, Lupita Cano recoge', null, 'Lupita Cano'],
  ['es', 'yo pago, gracias', null, null],
  ['es', 'paso yo el jueves, Dios mediante', null, null],
  ['es', 'yo paso por ellas, Marta es la 4', null, null],
  ['en', "I'll pay, Tom Reyes picks them up", null, 'Tom Reyes'],
  ['en', "I'll pick them up, Saturday is best", null, null],
  ['en', "I'll pay, Thanks", null, null],
] as const)('%s: nobody is named behind "%s"', async (language, words, pays, collects) => {
  expect((await roles(language, words)).slice(0, 2)).toEqual([pays, collects])
})
