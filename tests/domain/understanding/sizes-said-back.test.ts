import { expect, test } from 'vitest'
import { showFor } from '../../../src/domain/shop/show.ts'
import { say } from '../../../templates/replies/say.ts'
import { heard } from './rows-of.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const list = '7 Ruiz CH\n10 Pena G\n12 Sosa XXG'
const spanish = ['jersey gris con número rojo y nombre atrás', list]

/** All that is said to the customer, runs of blanks as one. */
const told = async (language: 'en' | 'es', ...says: readonly string[]): Promise<string> => {
  const { replies } = (await heard(language, says)).played
  const sentences = replies.map((reply) => say(reply, language, showFor(shop, language)))
  return sentences
    .map(({ text }) => text)
    .join('\n')
    .replace(/ +/g, ' ')
}

test('sizes are said back to Spanish customers as they write them', async () => {
  const read = await told('es', ...spanish)
  for (const line of ['7 Ruiz adulto CH', '10 Pena adulto G', '12 Sosa adulto 2XG']) expect(read).toContain(line)
  expect(await told('es', ...spanish, 'el 10 mejor XG')).toContain('talla G → XG')
  expect(await told('es', ...spanish, 'quita al 7')).toContain('quitado #7 Ruiz CH')
})

test('what is said back is read as the same sizes', async () => {
  const again = [
    'jersey gris con número rojo y nombre atrás',
    '1 Ana XCH\n2 Bea CH\n3 Cal M\n4 Dan G\n5 Eva XG\n6 Fer 2XG\n7 Gil 3XG',
  ]
  const sizes = (await heard('es', again)).played.composed.order.roster.map(({ size }) => size)
  expect(sizes).toEqual(['XS', 'S', 'M', 'L', 'XL', '2XL', '3XL'])
})

test('English sizes stay as they are, and a line without its name says so', async () => {
  const english = ['grey jerseys, red number and name on the back', '7 Ruiz S\n10 Pena L']
  expect(await told('en', ...english)).toContain('10 Pena adult L')
  const off = 'el 10 sin nombre, el 7 sin nombre, somos los Halcones, futbol'
  expect(await told('es', ...spanish, off, '12 Sosa XXG\n14 Vela M')).toContain('sin nombre')
})
