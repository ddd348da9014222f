import type { Phrases } from './phrases.ts'

/**
 * How the last change is taken back. Patterns that open a message: `undo` says so plainly, `dismiss` may also make room for something else
 * that is said behind it ("scratch that, …"); `asWas` is of what is to stay as it was. `returning` words lead back to a colour that was;
 * `ofWhom` leads to those of whom alone something is taken back.
 */
export type TakenBackPhrases = Phrases<'returning' | 'undo' | 'dismiss' | 'asWas' | 'ofWhom'>
