import type { Phrases } from './phrases.ts'

/** How a rule book is named by its letters: `rules` behind them, or `before` them over small words (`of`), or `playing` by them. */
export type RulebookPhrases = Phrases<'rules' | 'before' | 'of' | 'playing'>
