import type { Show } from '../../src/domain/shop/show.ts'
import type { Quote } from '../../src/domain/understanding/conversation.ts'
import type { Sentence } from './catalogue.ts'

type PriceCode = NonNullable<Quote['price']>['parts'][number]['code']

export type PriceWords = {
  readonly parts: { readonly [Code in PriceCode]: (what: string) => string }
  readonly classes: { readonly [vinylClass: string]: string }
  readonly total: string
}

/** The price with its parts, the total last: "Number, glitter (12): $96.00". */
export const priceParts = (words: PriceWords, show: Show, price: Quote['price']): Pick<Sentence, 'sums'> => {
  if (price === null) return {}
  const what = (code: PriceCode, text: string | null): string => {
    if (text === null) return ''
    if (code === 'garment') return show.garment(text)
    return text
      .split('+')
      .map((part) => words.classes[part] ?? part)
      .join(' + ')
  }
  const line = (part: NonNullable<Quote['price']>['parts'][number]) => ({
    name: `${words.parts[part.code](what(part.code, part.what))}${part.quantity > 1 ? ` (${part.quantity})` : ''}`,
    value: show.money(part.amount),
    assumed: false,
  })
  return { sums: [...price.parts.map(line), { name: words.total, value: show.money(price.total), assumed: false }] }
}
