import { expect, test } from 'vitest'
import { completeOrders } from './complete-orders.ts'
import { heard } from './rows-of.ts'

const last = async (language: 'en' | 'es', says: readonly string[]) => {
  const { played, rows } = await heard(language, [...completeOrders[language], ...says])
  const codes = played.replies.map(({ code }) => code)
  return { code: codes.at(-1), codes, cancelled: played.conversation.cancelled, rows: rows.length }
}

const given = {
  en: [
    'ok cancel, too late for us',
    "forget it, we don't want it anymore",
    'please cancel the order',
    'we need to cancel, the league folded',
    "I'd like to cancel my order",
    'sorry guys, we are cancelling',
    'call it off please',
    'scrap the whole thing',
    "we don't need them anymore",
    'we no longer want them',
    'we went with someone else',
    'too late for us, cancel it please',
    'Sorry, we have to back out of the order',
    'can we still cancel?',
  ],
  es: [
    'cancelen todo por favor',
    'ya no lo queremos',
    'cancela el pedido',
    'quiero cancelar mi pedido',
    'ya no queremos nada, gracias',
    'siempre no los vamos a querer',
    'olvídense del pedido',
    'ya no los hagan',
    'tenemos que cancelar, no juntamos el dinero',
    'mejor cancelamos',
    'nos vamos con otro taller',
    'disculpe, ya no lo necesitamos porque se suspendió el torneo',
    'anulen el pedido',
    'se puede cancelar?',
  ],
} as const

const sure = { en: ['yes', "yes, I'm sure", 'yes please cancel it'], es: ['sí', 'sí, cancélalo', 'si, estoy seguro'] } as const
const kept = { en: ['no', 'no, keep it', "don't cancel"], es: ['no', 'mejor no, déjalo', 'no lo cancelen'] } as const

for (const language of ['en', 'es'] as const) {
  test.each(given[language])(`${language}: "%s" is asked to be sure, and takes nothing off by itself`, async (words) => {
    const asked = await last(language, [words])
    expect(asked).toMatchObject({ code: 'cancel-asked', cancelled: false, rows: 3 })
  })

  test.each(sure[language])(`${language}: "%s" to that cancels`, async (words) => {
    expect(await last(language, [given[language][0], words])).toMatchObject({ code: 'cancelled', cancelled: true, rows: 3 })
  })

  test.each(kept[language])(`${language}: "%s" to that keeps the order`, async (words) => {
    const { codes, ...after } = await last(language, [given[language][0], words])
    expect(codes).toContain('kept-as-is')
    expect(after).toMatchObject({ cancelled: false, rows: 3 })
  })
}

const others = {
  en: [
    "don't cancel the order",
    'cancel that',
    'cancel 2',
    'cancel the names',
    'Ana cancelled',
    'cancel Cleo',
    'forget it',
    "we don't want the numbers anymore",
    "we won't cancel the order, just move the date",
    'our game was cancelled, so no rush',
    'cancel everything for Ana',
  ],
  es: [
    'no cancelen el pedido',
    'cancela eso',
    'mejor no',
    'cancela el 2',
    'ya no queremos los nombres',
    'ya no queremos las piedras',
    'Ana ya no quiere',
    'se canceló el juego del sábado',
    'ya no quiero la M, quiero G',
    'cancela a Ana',
    'el blanco ya no lo queremos',
  ],
} as const

for (const language of ['en', 'es'] as const)
  test.each(others[language])(`${language}: "%s" gives no order up`, async (words) => {
    const { code, cancelled } = await last(language, [words])
    expect(cancelled).toBe(false)
    expect(code).not.toBe('cancel-asked')
    expect(code).toBeDefined()
  })
