import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const orders = {
  en: '3 navy jerseys with white numbers and names on the back',
  es: '3 jerseys azul marino con números y nombres blancos atrás',
}

const notes = (rows: readonly { readonly note?: string | undefined }[]) => rows.map(({ note }) => note)

test.each([
  ['en', '4 Brandt L A\n9 Ruiz M C\n12 Diaz S', ['A', 'C', undefined]],
  ['en', '4 Brandt L "A"\n9 Ruiz M (C)\n12 Diaz S', ['A', 'C', undefined]],
  ['en', '4, Brandt, L, A\n9, Ruiz, M, C\n12, Diaz, S', ['A', 'C', undefined]],
  ['en', '#4 Brandt - L (A)\n#9 Ruiz - M (C)\n#12 Diaz - S', ['A', 'C', undefined]],
  ['es', '4 Brandt G A\n9 Ruiz M C\n12 Diaz CH', ['A', 'C', undefined]],
  ['es', '4 Brandt G\n9 Ruiz M (C)\n12 Diaz CH', [undefined, 'C', undefined]],
] as const)('(%s) %j: a letter behind the size is noted and is no part of the name', async (language, list, letters) => {
  const { rows, played } = await heard(language, [orders[language], list])
  expect(rows).toEqual(['4 Brandt men L', '9 Ruiz men M', '12 Diaz men S'])
  expect(notes(played.composed.order.roster)).toEqual(letters)
})

test.each([
  ['en', '4 Brandt A L\n9 Ruiz C M\n12 Diaz S', ['4 Brandt A men L', '9 Ruiz C men M', '12 Diaz men S']],
  ['en', '4 Ana B M\n9 Ruiz M\n12 Diaz S', ['4 Ana B men M', '9 Ruiz men M', '12 Diaz men S']],
  ['es', '4 Ana C G\n9 Ruiz M\n12 Diaz CH', ['4 Ana C men L', '9 Ruiz men M', '12 Diaz men S']],
] as const)('(%s) %j: an initial before the size stays with the name', async (language, list, rows) => {
  const found = await heard(language, [orders[language], list])
  expect(found.rows).toEqual(rows)
  expect(notes(found.played.composed.order.roster)).toEqual([undefined, undefined, undefined])
})

test.each([
  ['en', "hi, it's Kelly Shaw, 12 navy jerseys with white numbers"],
  ['en', '12 navy jerseys with white numbers. Kelly Shaw will pick them up'],
  ['en', '12 navy jerseys with white numbers. My name is Jade Silver'],
  ['en', '12 navy jerseys with white numbers, Gray Kelly pays'],
  ['es', 'soy Rosa Blanco, 12 jerseys azul marino con números blancos'],
  ['es', '12 jerseys azul marino con números blancos. los recoge Celeste Rojo'],
] as const)('(%s) "%s": who is named by a colour colours nothing', async (language, words) => {
  const { played, open } = await heard(language, [words])
  const { garments, styles } = played.conversation.draft
  expect(garments['jersey']?.colour).toBe('navy')
  expect(styles['number']?.colour).toBe('white')
  expect(open).toEqual([])
})

test.each([
  ['en', '12 jerseys in kelly, white numbers'],
  ['en', 'Kelly jerseys, 12, white numbers'],
] as const)('(%s) "%s": the colour is still one', async (language, words) => {
  const { played } = await heard(language, [words])
  const asked = played.conversation.open.flatMap(({ readings }) => readings.map(({ value }) => value))
  expect([played.conversation.draft.garments['jersey']?.colour, ...asked]).toContain('kelly')
})

test.each([
  ['en', '20 black hoodies with CLASS OF 27 on the back in gold', 'CLASS OF 27'],
  ['en', "20 black hoodies with CLASS OF '27 on the back in gold", "CLASS OF '27"],
  ['en', '20 black hoodies, SENIORS 27 across the front in gold', 'SENIORS 27'],
  ['en', '20 black hoodies with SENIORS 2027 across the front in gold', 'SENIORS 2027'],
  ['es', '20 sudaderas negras con GENERACION 27 en la espalda en dorado', 'GENERACION 27'],
  ['es', '20 sudaderas negras, PROMO 26 al frente en dorado', 'PROMO 26'],
  ['en', '20 black hoodies with LYNX on the back in gold', 'LYNX'],
  ['es', '20 sudaderas negras con LINCES 20 cm de alto en la espalda en dorado', 'LINCES'],
] as const)('(%s) "%s": what is written', async (language, words, text) => {
  const { played } = await heard(language, [words])
  expect(Object.values(played.conversation.draft.marks).map((mark) => mark.text)).toEqual([text])
})
