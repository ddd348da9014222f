import type { PricePart } from '../../src/domain/price/price.ts'

type Part = PricePart['code']
type PriceWords = { readonly [Code in Part]: (what: string) => string }

/** What stands on a price slip for each part; `what` is the garment, class, size or percent. */
export const priceWords = {
  en: {
    'set-up': () => 'Set-up',
    garment: (what) => `Garment: ${what}`,
    'own-garment': () => 'Pressing a garment you bring',
    number: (what) => `Number${what === '' ? '' : `, ${what}`}`,
    name: (what) => `Name${what === '' ? '' : `, ${what}`}`,
    text: (what) => `Text or mark${what === '' ? '' : `, ${what}`}`,
    'extra-layer': () => 'Second vinyl layer',
    stones: (what) => `Stones ${what}, per 100 begun`,
    template: () => 'Stone template',
    'name-template': () => 'Stone template of several signs',
    'quantity-break': (what) => `Less ${what} for the quantity`,
    remake: () => 'Made again after a late change',
    rush: (what) => `Rush, ${what}`,
    tax: (what) => `Tax, ${what}`,
  },
  es: {
    'set-up': () => 'Preparación',
    garment: (what) => `Prenda: ${what}`,
    'own-garment': () => 'Prensar una prenda que usted trae',
    number: (what) => `Número${what === '' ? '' : `, ${what}`}`,
    name: (what) => `Nombre${what === '' ? '' : `, ${what}`}`,
    text: (what) => `Texto o marca${what === '' ? '' : `, ${what}`}`,
    'extra-layer': () => 'Segunda capa de vinilo',
    stones: (what) => `Piedras ${what}, por cada 100 empezadas`,
    template: () => 'Plantilla de piedras',
    'name-template': () => 'Plantilla de piedras de varios signos',
    'quantity-break': (what) => `Menos ${what} por la cantidad`,
    remake: () => 'Rehecho por un cambio tardío',
    rush: (what) => `Urgencia, ${what}`,
    tax: (what) => `Impuesto, ${what}`,
  },
} as const satisfies { readonly [language: string]: PriceWords }
