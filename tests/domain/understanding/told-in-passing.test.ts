import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

const english = ['white jerseys, navy names and numbers on the back', '9 Josiah S\n7 Ana Ruiz M\n12 Beto L\n21 Whitlock XL']
const englishRows = ['9 Josiah men S', '7 Ana Ruiz men M', '12 Beto men L', '21 Whitlock men XL']
const spanish = ['jerseys blancos con nombres y números en negro', "9 Josué S\n7 Anel O'Farrill M\n4 Diego L\n16 Renata M"]
const spanishRows = ['9 Josué men S', "7 Anel O'Farrill men M", '4 Diego men L', '16 Renata men M']

/** The lines of a list of which these, counted from 0, are others. */
const withLines = (rows: readonly string[], others: Readonly<Record<number, string>>): readonly string[] =>
  rows.map((row, index) => others[index] ?? row)

type Told = readonly [words: string, others: Readonly<Record<number, string>>]

const saidInEnglish: readonly Told[] = [
  ["Josiah says he's really more of a medium", { 0: '9 Josiah men M' }],
  ['turns out Whitlock fits a 2XL better', { 3: '21 Whitlock men 2XL' }],
  ['12 has slimmed down, a medium is plenty', { 2: '12 Beto men M' }],
  ['Ana Ruiz outgrew the M over winter so L for her', { 1: '7 Ana Ruiz men L' }],
  ['Whitlock prefers 24, nobody has it', { 3: '24 Whitlock men XL' }],
  ['Beto picked 31 in the end', { 2: '31 Beto men L' }],
  ['9 and 7 are growing like weeds, both of those in L', { 0: '9 Josiah men L', 1: '7 Ana Ruiz men L' }],
  ['7 thru 12 all need XL', { 0: '9 Josiah men XL', 1: '7 Ana Ruiz men XL', 2: '12 Beto men XL' }],
  ["Whitlock's name has one t only, Whitlok", { 3: '21 Whitlok men XL' }],
  ['instead of Beto put his real name, Alberto', { 2: '12 Alberto men L' }],
  ['for 7 use XL, she likes it baggy', { 1: '7 Ana Ruiz men XL' }],
  ['the S I gave for Josiah is wrong, M', { 0: '9 Josiah men M' }],
  ["Josiah's mom just texted: medium", { 0: '9 Josiah men M' }],
  ["make Josiah's an M", { 0: '9 Josiah men M' }],
  ['12: medium instead', { 2: '12 Beto men M' }],
  ['sorry Beto wears a M, wrote it wrong', { 2: '12 Beto men M' }],
  ['Ana Ruiz will be wearing 3 this season', { 1: '3 Ana Ruiz men M' }],
  ['Josiah went up to a youth large', { 0: '9 Josiah youth L' }],
  ['put M down for Josiah', { 0: '9 Josiah men M' }],
  ['XL for both 7 and 9 please', { 0: '9 Josiah men XL', 1: '7 Ana Ruiz men XL' }],
  ['Whitlock is fine as he is, Beto needs M', { 2: '12 Beto men M' }],
  ['Beto changed his mind about the size. XL', { 2: '12 Beto men XL' }],
  ['I had the wrong number for Ana Ruiz, hers is 17', { 1: '17 Ana Ruiz men M' }],
  ['our number 12 lost weight over the summer. M for him, the rest is right', { 2: '12 Beto men M' }],
]

const saidInSpanish: readonly Told[] = [
  ['Josué ya pegó el estirón, le toca M', { 0: '9 Josué men M' }],
  ['la talla buena de Renata es G', { 3: '16 Renata men L' }],
  ['a Diego le queda enorme la G, mándalo en M', { 2: '4 Diego men M' }],
  ['Renata pidió el 22', { 3: '22 Renata men M' }],
  ['el 4 y el 9 andan bien altos, esos dos en XG', { 0: '9 Josué men XL', 2: '4 Diego men XL' }],
  ['del 4 al 9 todos en XG', { 0: '9 Josué men XL', 1: "7 Anel O'Farrill men XL", 2: '4 Diego men XL' }],
  ['en vez de Diego ponle Santiago, así se llama', { 2: '4 Santiago men L' }],
  ['Renata lleva el 18, me equivoqué', { 3: '18 Renata men M' }],
  ['Anel dice que M no, que mejor S', { 1: "7 Anel O'Farrill men S" }],
  ['la mamá de Josué me confirmó M', { 0: '9 Josué men M' }],
  ['para el 16 mejor una G', { 3: '16 Renata men L' }],
  ['el 7 y el 16 quedan en CH', { 1: "7 Anel O'Farrill men S", 3: '16 Renata men S' }],
  ['Josué ahora usa M', { 0: '9 Josué men M' }],
  ['a la Renata ponla de XL', { 3: '16 Renata men XL' }],
  ['Diego ocupa una más chica, M', { 2: '4 Diego men M' }],
  ['Diego no, ese va en XL', { 2: '4 Diego men XL' }],
  ['Josué ya no cabe en la S, pásamelo a M', { 0: '9 Josué men M' }],
  ['M para el 9 porfa', { 0: '9 Josué men M' }],
  ['XG para el 9 y el 4', { 0: '9 Josué men XL', 2: '4 Diego men XL' }],
  ['Diego está bien así, Renata sí va en G', { 3: '16 Renata men L' }],
  ['la 16 no va como Renata, va como Rebeca', { 3: '16 Rebeca men M' }],
  ['al 4 le ponen Dieguito completo', { 2: '4 Dieguito men L' }],
  ['me equivoqué de número con Renata, trae el 61', { 3: '61 Renata men M' }],
  ['A Josué la S se me hace chica, súbelo a M', { 0: '9 Josué men M' }],
]

test.each(saidInEnglish)('"%s" is told of whom it names', async (words, others) => {
  expect((await heard('en', [...english, words])).rows).toEqual(withLines(englishRows, others))
})

test.each(saidInSpanish)('"%s" is told of whom it names', async (words, others) => {
  expect((await heard('es', [...spanish, words])).rows).toEqual(withLines(spanishRows, others))
})

test.each([
  "Beto's cousin is a S",
  'does Beto need an XL?',
  "if Beto grows he'll be an XL",
  'Beto might be an XL',
  'Whitlock picks them up at 5',
  'Whitlock gets back on Dec 12',
  'Josiah has a small question about the colors',
  "Ana Ruiz pays, she's in a large office downtown",
  'Whitlock runs large but keep him at XL',
  'Beto or Whitlock is an M',
  'Josiah scored 32 points last night',
  'Ana Ruiz is 14 years old',
  'Beto says hi',
  'did you see the game last night, 42 to 7!! unreal',
  'Beto scored 22 on Friday',
])('"%s" tells nothing of a size or a number', async (words) => {
  expect((await heard('en', [...english, words])).rows).toEqual(englishRows)
})

test.each([
  'el hermano de Diego es M',
  '¿Diego es M?',
  'si Diego crece le pedimos XL',
  'capaz que Diego es M',
  'Renata recoge a las 5',
  'Diego viene el 12',
  'Josué tiene una duda chica',
  'a Josué le queda chica',
  'Renata metió 22 puntos',
  'Renata tiene 14 años',
])('"%s" tells nothing of a size or a number', async (words) => {
  expect((await heard('es', [...spanish, words])).rows).toEqual(spanishRows)
})
