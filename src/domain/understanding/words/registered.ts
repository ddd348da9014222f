import type { Language } from '../../units/language.ts'
import { enWords } from './en/words.ts'
import { esWords } from './es/words.ts'
import type { Words } from './word-list.ts'

/** The one place where the words of customers are registered: a language is its file here and its line below. */
export const registered: Readonly<Record<Language, Words>> = { en: enWords, es: esWords }
