import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const list = [
  'Hola, camisetas rojas con dorsal y apellido detrás en blanco, equipo de fútbol Halcones, tallas de hombre',
  '4 Zamora M\n8 Peña L\n11 Soto S\n13 Ortega M',
]
const [zamora, pena, soto, ortega] = ['4 Zamora men M', '8 Peña men L', '11 Soto men S', '13 Ortega men M'] as const

test.each([
  ['quitad a Soto', [zamora, pena, ortega]],
  ['quitad al 11, que no juega', [zamora, pena, ortega]],
  ['a Soto quitadlo', [zamora, pena, ortega]],
  ['borrad al 8', [zamora, soto, ortega]],
  ['eliminad a Peña de la lista', [zamora, soto, ortega]],
  ['sacad a Ortega', [zamora, pena, soto]],
  ['Quitadlos a los dos, a Soto y al 8', [zamora, ortega]],
  ['podríais quitar a Ortega?', [zamora, pena, soto]],
  ['tachad al 13', [zamora, pena, soto]],
  ['meted a Nebot con el 20, XL', [zamora, pena, soto, ortega, '20 Nebot men XL']],
  ['añadid a Ruiz, el 22, talla L', [zamora, pena, soto, ortega, '22 Ruiz men L']],
  ['apuntad también a Ruiz, 22, L', [zamora, pena, soto, ortega, '22 Ruiz men L']],
  ['añadid a David, 21, L, y a Trinidad, 22, S', [zamora, pena, soto, ortega, '21 David men L', '22 Trinidad men S']],
  ['podéis ponerle al 4 la XL?', ['4 Zamora men XL', pena, soto, ortega]],
  ['subid a Zamora una talla', ['4 Zamora men L', pena, soto, ortega]],
  ['bajad a Soto y a Peña una talla', [zamora, '8 Peña men M', '11 Soto men XS', ortega]],
  ['bajadle una talla al 13', [zamora, pena, soto, '13 Ortega men S']],
  ['intercambiad los números de Soto y Peña', [zamora, '11 Peña men L', '8 Soto men S', ortega]],
  ['dadle el 99 a Ortega', [zamora, pena, soto, '99 Ortega men M']],
  ['al 13 dadle el 99', [zamora, pena, soto, '99 Ortega men M']],
  ['el dorsal de Soto es el 15', [zamora, pena, '15 Soto men S', ortega]],
  ['cambiad el dorsal 8 por el 18', [zamora, '18 Peña men L', soto, ortega]],
  ['el dorsal 13 no juega', [zamora, pena, soto]],
  ['a Soto no le pongáis nada más, así está bien', [zamora, pena, soto, ortega]],
])('who is spoken to as in Spain is asked the same: %s', async (words, rows) => {
  expect((await heard('es', [...list, words])).rows).toEqual(rows)
})

test.each([
  ['mandadlo por mensajería', 'post', undefined],
  ['me las enviáis a domicilio', 'post', undefined],
  ['enviádnoslas por correo', 'post', undefined],
  ['va con pedido nº 58-3391 del ayuntamiento, y lo mandáis por mensajería', 'post', '58-3391'],
  ['es con el pedido número 4471-B del colegio', 'collect', '4471-B'],
  ['orden de compra nº 2026-118', 'collect', '2026-118'],
  ['la factura con expediente 77/2026', 'collect', '77/2026'],
  ['mi pedido es de 4 camisetas', 'collect', undefined],
])('how it is handed over and under which order number: %s', async (words, handOver, reference) => {
  const { order } = (await heard('es', [...list, words])).played.composed
  expect(order.handOver).toBe(handOver)
  expect(order.money?.reference).toBe(reference)
})

test('deshaced eso', async () => {
  expect((await heard('es', [...list, 'quitad a Soto', 'no, deshaced eso'])).rows).toEqual([zamora, pena, soto, ortega])
})
