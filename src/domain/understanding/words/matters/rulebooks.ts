import type { Phrases } from './phrases.ts'

/**
 * How a rule book is named by its letters: `rules` behind them, or `before` them over small words (`of`), or `playing` by them. `loosely`: words before letters that are
 * a rule book's only where the shop has it ("our league goes by …").
 */
export type RulebookPhrases = Phrases<'rules' | 'before' | 'of' | 'playing' | 'loosely'>
