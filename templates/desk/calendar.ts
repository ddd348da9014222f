import { plural } from '../plural.ts'

type CalendarWords = {
  readonly promised: (name: string) => string
  readonly bag: (name: string) => string
  readonly pieces: (count: number) => string
  readonly order: (item: string) => string
  readonly missing: (amount: string, when: string) => string
}

/** What stands in the shop's calendar. */
export const calendarWords = {
  en: {
    promised: (name) => `${name}: promised`,
    bag: (name) => `${name}: finish and bag`,
    pieces: (count) => plural(count, 'garment', 'garments'),
    order: (item) => `Order ${item}`,
    missing: (amount, when) => `${amount} missing; order by ${when}`,
  },
  es: {
    promised: (name) => `${name}: prometido`,
    bag: (name) => `${name}: terminar y embolsar`,
    pieces: (count) => plural(count, 'prenda', 'prendas'),
    order: (item) => `Pedir ${item}`,
    missing: (amount, when) => `Faltan ${amount}; pedir antes de ${when}`,
  },
} as const satisfies { readonly [language: string]: CalendarWords }
