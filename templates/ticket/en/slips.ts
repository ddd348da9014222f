import type { SlipWords, TemplateWords } from '../../../src/domain/ticket/slip-words.ts'
import { plural } from '../../plural.ts'

export const slip: SlipWords = {
  price: 'Price',
  heads: { what: 'For', quantity: 'Quantity', unit: 'Each', amount: 'Amount' },
  total: 'Total',
  money: {
    none: 'Nothing paid yet.',
    deposit: 'A deposit is paid.',
    paid: 'Paid.',
    'order-number': 'On an order number.',
    'on-account': 'On account.',
  },
  paid: (amount, open) => `Paid: ${amount}. Still open: ${open}.`,
  reference: (reference) => `Reference: ${reference}.`,
  questions: (shop, ask) => `${shop}. Questions: ${ask}.`,
  care: 'How to wash and keep it',
  colours: (colours) => `Colours: ${colours}. Screen colours are not the true ones.`,
  wash: [
    'Wash inside out, cold or warm.',
    'No softener, no bleach, no dry-cleaning.',
    'Hang it up or dry it low. A hot laundry dryer kills the glue.',
    'Never iron on what is pressed on.',
    'Do not fold on the numbers while warm.',
  ],
  stones: [
    'Stones: wash in a bag, do not rub, keep leftovers for repairs.',
    'Loose stones are small parts: keep them away from small children.',
  ],
  complaint: 'If something lifts or comes off: tell us when it was washed and how it was dried, and send a photo.',
}

export const template: TemplateWords = {
  all: (job) => `Stone templates of ${job}, one to one`,
  title: (text, height, stone) => `Stone template ${text} · ${height} · ${stone}`,
  fullSize: 'Print at 100 %, no fitting to the page: measure the ruler',
  readsRight: 'READS RIGHT',
  top: 'TOP',
  join: 'Lay the next sheet over this one so that the crosses meet; ticks show centre and baseline.',
  sheet: (sheet, of) => `sheet ${sheet} of ${of}`,
  ruler: (length) => `Ruler of ${length}`,
  holes: (count) => `${plural(count, 'hole, drawn', 'holes, drawn')} one to one`,
}
