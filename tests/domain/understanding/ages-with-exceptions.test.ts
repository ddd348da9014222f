import { expect, test } from 'vitest'
import { heard } from './rows-of.ts'

/**
 * Who is under three, a child, grown up, or must be asked, player by player: stones are a choking hazard for children under three
 * (16 CFR 1501), so that nobody who was not spoken for may be taken as older.
 */
const bases = {
  toddlers: {
    en: '4 white tees, GO on the front in red, Dec 12 at 5pm, Dana Whitlow ordering, for the Marsh Ducks\nAva 2T\nLeo 3T\nZoe 4T\nEli 5T',
    es: '4 playeras blancas, GO al frente en rojo, 12 de diciembre a las 5 de la tarde, soy Dana Ortiz, para los Patos de Anáhuac\nAva 2T\nLeo 3T\nZoe 4T\nEli 5T',
  },
  youth: {
    en: '3 navy mesh soccer jerseys for the Marsh Harriers, white numbers on the back, need them Dec 12 at 5pm, Dana Whitlow ordering\n1 Ana YM\n2 Bea YM\n22 Cleo YL',
    es: '3 jerseys de futbol de malla azul marino para los Gavilanes de Anáhuac, numeros blancos atras, los necesito el 12 de diciembre a las 5 de la tarde, soy Dana Ortiz\n1 Ana YM\n2 Bea YM\n22 Cleo YL',
  },
} as const

const letters = { 'under-3': 'u', '3-12': 'c', '13-up': 'a', unknown: '?' } as const

/** A letter a player: u under three, c child, a grown up, ? asked. */
const agesAfter = async (team: keyof typeof bases, language: 'en' | 'es', answers: readonly string[]): Promise<string> => {
  const { played } = await heard(language, [bases[team][language], ...answers])
  const ages = played.composed.order.roster.map(({ age = 'unknown' }) => letters[age]).join('')
  const asked = played.conversation.asked?.code === 'ask-ages'
  expect(asked, 'whoever is not spoken for is asked').toBe(ages.includes('?'))
  return ages
}

const toddlers = [
  ['en', 'all are under 3 except Zoe and Eli', 'uucc'],
  ['en', 'all under 3 but Zoe is 4', 'uucu'],
  ['en', 'everyone but Eli is under three', 'uuuc'],
  ['en', 'Zoe and Eli are over 3, the rest younger', 'uucc'],
  ['en', 'only Ava is under 3', 'uccc'],
  ['en', 'they are between 18 months and 5 years', '????'],
  ['en', 'nobody is over 3', '????'],
  ['en', 'none of them is older than 2', 'uuuu'],
  ['en', 'Ava is 2', 'u???'],
  ['en', 'Ava is 2 and Leo is 2 and a half, Zoe 4, Eli 5', 'uucc'],
  ['en', 'Zoe and Eli are not under 3', '??cc'],
  ['en', 'everybody is 2 apart from Eli who is 5', 'uuuc'],
  ['en', 'the rest are 4 or 5 but Ava is only 2', 'uccc'],
  ['en', 'all adults', '????'],
  ['en', "Ava's 20 months, Leo is 30 months, the others are 4 and 5", 'uucc'],
  ['en', 'they are all 5 and under', '????'],
  ['en', 'Leo turns 3 next month, Ava is 1, the others are 4', 'u?cc'],
  ['en', 'under 3: Ava and Leo; the rest are 4', 'uucc'],
  ['en', 'neither Zoe nor Eli is under 3', '??cc'],
  ['en', 'Ava and Leo are not 3 yet, Zoe and Eli are 4', 'uucc'],
  ['en', 'just Ava and Leo', '????'],
  ['en', 'they are all kids', '????'],
  ['en', '18 months to 2 years', 'uuuu'],
  ['en', 'Eli is the only one over 3', 'uuuc'],
  ['en', 'Ava is under 3, nobody else is', 'uccc'],
  ['en', 'toddlers, all of them', '????'],
  ['es', 'todos son menores de 3 menos Zoe y Eli', 'uucc'],
  ['es', 'todos menores de 3, excepto Eli', 'uuuc'],
  ['es', 'menos Eli, todos tienen 2 años', 'uuu?'],
  ['es', 'solo Ava es menor de 3', 'uccc'],
  ['es', 'Zoe y Eli tienen más de 3, los demás son más chicos', 'uucc'],
  ['es', 'tienen entre 18 meses y 5 años', '????'],
  ['es', 'nadie pasa de 3 años', '????'],
  ['es', 'nadie pasa de 2', 'uuuu'],
  ['es', 'Ava tiene 2 años', 'u???'],
  ['es', 'Ava y Leo son menores de tres, los otros no', 'uucc'],
  ['es', 'Zoe y Eli no son menores de 3', '??cc'],
  ['es', 'todos tienen 2 salvo Zoe que tiene 4 y Eli que tiene 5', 'uucc'],
  ['es', 'Ava tiene 20 meses, Leo dos años y medio, los demás 4', 'uucc'],
  ['es', 'todos son adultos', '????'],
  ['es', 'de 5 para abajo', '????'],
  ['es', 'son bebés', 'uuuu'],
  ['es', 'Leo cumple 3 el mes que viene, Ava tiene 1, los demás 4', 'u?cc'],
  ['es', 'ni Zoe ni Eli son menores de 3', '??cc'],
  ['es', 'los demás tienen 4 o 5 pero Ava tiene 2', 'uccc'],
  ['es', 'Eli es el único mayor de 3', 'uuuc'],
] as const

test.each(toddlers)('toddlers, %s: %s: %s', async (language, answer, ages) => {
  expect(await agesAfter('toddlers', language, [answer])).toBe(ages)
})

const youth = [
  ['en', 'everyone is 13 or older except Ana', 'caa'],
  ['en', "all 10 except Cleo, she's 14", 'cca'],
  ['en', 'Bea is 11', '?c?'],
  ['en', 'Ana and Bea are 12, Cleo 13', 'cca'],
  ['en', 'nobody but Cleo is under 13', 'aac'],
  ['en', 'kids of 13', 'aaa'],
  ['en', 'they are kids of 9', 'ccc'],
  ['en', "Ana isn't 13 yet, the rest are", 'caa'],
  ['en', 'Ana and Bea', 'cc?'],
  ['en', 'they are all kids', 'ccc'],
  ['en', 'Bea is the only one under 13', 'aca'],
  ['en', 'Ana and Bea are kids, the rest are adults', 'cca'],
  ['es', 'todas tienen 13 o más menos Ana', 'caa'],
  ['es', 'todas menos Cleo son niñas de 10 años', 'cc?'],
  ['es', 'Bea tiene 11 años', '?c?'],
  ['es', 'nadie excepto Cleo es menor de 13', 'aac'],
  ['es', 'son niñas de 13', 'aaa'],
  ['es', 'Ana y Bea tienen 12, Cleo 14', 'cca'],
  ['es', 'Ana no tiene 13 todavía, las demás sí', 'caa'],
  ['es', 'Bea es la única menor de 13', 'aca'],
  ['es', 'Ana y Bea', 'cc?'],
] as const

test.each(youth)('a youth team, %s: %s: %s', async (language, answer, ages) => {
  expect(await agesAfter('youth', language, [answer])).toBe(ages)
})

test.each([
  ['en', 'Ana and Bea are different people'],
  ['en', 'Bea is the captain'],
  ['en', 'Ana and Cleo are sisters'],
  ['en', 'the 1 and the 2 are not the same player'],
  ['en', 'Cleo is spelled with a C'],
  ['es', 'la 1 Ana y la 2 Bea son distintas'],
  ['es', 'Ana y Cleo son hermanas'],
  ['es', 'Bea es la capitana'],
  ['es', 'Ana no es Bea'],
  ['es', 'Cleo se escribe con C'],
] as const)('%s: %s tells of no ages', async (language, answer) => {
  expect(await agesAfter('youth', language, [answer])).toBe('???')
})

const corrected = [
  ['toddlers', 'en', ['all under 3', 'Zoe is 4 and Eli is 5 years old'], 'uucc'],
  ['toddlers', 'en', ['all under 3', 'Zoe and Eli are not under 3'], 'uucc'],
  ['toddlers', 'en', ['all under 3', 'actually nobody is under 3'], 'cccc'],
  ['toddlers', 'en', ['they are all 4', 'sorry, Ava is 2 years old, not 4'], 'uccc'],
  ['toddlers', 'en', ['they are all 4', 'wait, Ava and Leo are under 3'], 'uucc'],
  ['toddlers', 'en', ['they are all 4', 'everyone is under 3 except Eli'], 'uuuc'],
  ['toddlers', 'es', ['todos menores de 3', 'Zoe tiene 4 años y Eli 5 años'], 'uucc'],
  ['toddlers', 'es', ['todos menores de 3', 'perdón, Zoe y Eli no son menores de 3'], 'uucc'],
  ['toddlers', 'es', ['todos tienen 4', 'Ava tiene 2 años'], 'uccc'],
  ['toddlers', 'es', ['todos tienen 4', 'no, todos son menores de 3'], 'uuuu'],
  ['youth', 'en', ['they are all 10', 'nobody is under 13, Ana and Bea are adults'], 'aaa'],
  ['youth', 'en', ['they are all 10', 'all of them are 13 or older'], 'aaa'],
  ['youth', 'en', ['they are all 10', 'Ana is 17 years old. Bea is 18 years old'], 'aac'],
  ['youth', 'en', ['they are all 14', 'Bea is actually 11 years old'], 'aca'],
  ['youth', 'en', ['Ana and Bea are 10, Cleo is 14', 'everyone is 13 or older'], 'aaa'],
  ['youth', 'es', ['todas tienen 10', 'nadie es menor de 13, Ana y Bea son adultas'], 'aaa'],
  ['youth', 'es', ['todas tienen 10', 'todas tienen 13 o más'], 'aaa'],
  ['youth', 'es', ['todas tienen 10', 'Ana tiene 17 años. Bea tiene 18 años'], 'aac'],
  ['youth', 'es', ['todas tienen 14', 'Bea tiene 11 años'], 'aca'],
  ['youth', 'es', ['Ana y Bea tienen 10, Cleo tiene 14', 'todas son mayores de 13'], 'aaa'],
] as const

test.each(corrected)('ages said anew, %s %s: %s: %s', async (team, language, answers, ages) => {
  expect(await agesAfter(team, language, answers)).toBe(ages)
})
