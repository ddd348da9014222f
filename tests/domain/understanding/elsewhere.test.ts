import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

test.each([
  ['en', 'we need 12 polyester caps with our logo FOXES in white on the front, navy', 'caps'],
  ['en', 'Can you do 20 tote bags, black, with OAK RUN in white?', 'tote bags'],
  ['en', '15 red beanies with our name in white vinyl', 'beanies'],
  ['en', 'do you press towels?', 'towels'],
  ['en', '4 leather jackets, gold names on the back', 'leather jackets'],
  ['es', 'Necesito 10 gorras negras con el nombre del equipo Halcones en blanco', 'gorras'],
  ['es', '¿Hacen mochilas con nombre?', 'mochilas'],
  ['es', '4 chamarras de cuero con nombres dorados', 'chamarras de cuero'],
] as const)(
  '%s: "%s" asks for what is no garment here: nothing is taken for the usual jersey',
  async (language, words, thing) => {
    const { played } = await heard(language, [words])
    expect(played.composed.order.garments).toEqual([])
    expect(played.composed.order.decorations).toEqual([])
    expect(played.composed.order.roster).toEqual([])
    const told = played.replies.filter(({ code }) => code === 'not-pressed-here')
    expect(told.map(({ facts }) => facts)).toEqual([{ words: [thing] }])
  },
)

test.each([
  ['en', 'team is Foxes, 12 caps and need them december 12'],
  ['es', 'Somos los Halcones, queremos gorras para el 12 de diciembre'],
] as const)('%s: "%s" still tells the day', async (language, words) => {
  const { played } = await heard(language, [words])
  expect(played.composed.order.garments).toEqual([])
  expect(JSON.stringify(played.conversation.draft)).toContain('12-12')
})

test.each([
  ['en', '12 black tees and 5 caps', 'caps', 'black'],
  ['es', 'Quiero 12 playeras negras y 5 gorras', 'gorras', 'black'],
] as const)('%s: "%s" is an order of the garments, and the rest is answered', async (language, words, thing, colour) => {
  const { played } = await heard(language, [words])
  expect(played.composed.order.garments.map((garment) => garment.colour)).toEqual([colour])
  expect(played.replies.map(({ code, facts }) => [code, facts])).toContainEqual(['not-pressed-here', { words: [thing] }])
})

test.each([
  ['en', 'navy jerseys that match our caps, 5 M and 6 L'],
  ['en', '6 black hoodies, and pack them in bags by player'],
  ['en', '8 white tees with the names in all caps'],
  ['en', '3 nylon jackets with a hat on the back of each one'],
  ['es', '8 jerseys azules que combinen con nuestras gorras'],
  ['es', '6 sudaderas negras, y las quiero en bolsas por jugador'],
  ['es', '10 playeras blancas para la venta de tazas'],
] as const)('%s: "%s" only speaks of such a thing', async (language, words) => {
  const { played } = await heard(language, [words])
  expect(played.composed.order.garments).toHaveLength(1)
  expect(played.replies.map(({ code }) => code)).not.toContain('not-pressed-here')
})
