import { expect, test } from 'vitest'
import { completeOrders } from './complete-orders.ts'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** What is said to a proof and signs nothing: who wants to look first is not hurried, who agrees in other words is asked to be sure. */
const shop = await starterShop()

const answerTo = (language: 'en' | 'es', word: string) => {
  const says = [...completeOrders[language], word]
  const now = '2026-11-20T10:00'
  const { wants, replies, composed } = play({ id: 'sure', now, language, says, facts: [], signed: true }, shop)
  const before = play({ id: 'sure', now, language, says: completeOrders[language], facts: [] }, shop)
  const changed = composed.order.needBy !== before.composed.order.needBy || replies.some(({ code }) => code === 'changed')
  return { code: replies.at(-1)?.code, signed: wants.some(({ kind }) => kind === 'sign-off'), changed }
}

const waits = {
  en: [
    'not yet',
    'wait',
    'hold on',
    'let me check with the coach',
    "I'll confirm tomorrow",
    "don't print it yet",
    'ok let me think',
  ],
  es: ['todavía no', 'espérame tantito', 'déjame checar', 'mañana te confirmo', 'lo platico con el entrenador', 'un momento'],
} as const

const agrees = {
  en: [
    'yes',
    'looks great!',
    'print it',
    'we are good to go',
    'that works',
    'confirmed',
    'do it',
    'this is right',
    'all set',
    'fine',
    'k',
  ],
  es: ['sí', 'perfecto', 'imprímanlo', 'de acuerdo', 'listo', 'ándale', 'muy bien gracias', 'así está bien'],
} as const

const cases = (table: { readonly en: readonly string[]; readonly es: readonly string[] }) =>
  (['en', 'es'] as const).flatMap((language) => table[language].map((word) => [language, word] as const))

test.each(cases(waits))('%s: "%s" waits', (language, word) => {
  expect(answerTo(language, word)).toEqual({ code: 'no-hurry', signed: false, changed: false })
})

test.each(cases(agrees))('%s: "%s" is asked to be sure', (language, word) => {
  expect(answerTo(language, word)).toEqual({ code: 'not-signed-unclear', signed: false, changed: false })
})

test('a change that is not understood is said, and nothing is signed in the same breath', () => {
  const says = [...completeOrders.es, 'va, pero Bea ya no es la 2, ahora como que agarra mejor la 22 o algo así']
  const { wants, replies } = play({ id: 'change', now: '2026-11-20T10:00', language: 'es', says, facts: [], signed: true }, shop)
  expect(wants.some(({ kind }) => kind === 'sign-off')).toBe(false)
  expect(replies.map(({ code }) => code).slice(-3)).not.toContain('signed')
})

const ordered = {
  en: [
    "that's all correct, go ahead and print them",
    'yep, everything is right. Please print them',
    "Yes it's all right, so go ahead and make them. Thanks!",
    'go ahead and print them, everything looks correct',
    'Perfect, all correct, print them please',
  ],
  es: [
    'sí, está todo correcto, imprímanlas',
    'todo correcto, adelante, háganlas por favor',
    'así está todo bien, ya pueden hacerlas',
    'perfecto, todo está bien. Imprímanlos, gracias',
  ],
} as const

test.each(cases(ordered))('%s: “%s” calls all of it right and orders it made, which signs', (language, word) => {
  expect(answerTo(language, word)).toMatchObject({ signed: true, changed: false })
})

const short = {
  en: [
    "that's all correct",
    'looks great, go ahead and print them',
    'go ahead and print them',
    "that's all correct, go ahead and print them tomorrow",
    "that's all correct, go ahead and print them once coach says so",
    'all correct? go ahead and print them',
    "it's not all correct, print them",
  ],
  es: ['todo correcto', 'imprímanlas', 'todo correcto, imprímanlas cuando les avise', '¿todo correcto? imprímanlas'],
} as const

test.each(cases(short))('%s: “%s” says less, or more, and signs nothing', (language, word) => {
  expect(answerTo(language, word).signed).toBe(false)
})
