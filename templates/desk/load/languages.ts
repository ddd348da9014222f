import type { Language } from '../../../src/domain/units/language.ts'
import { english } from './en.ts'
import { spanish } from './es.ts'
import type { LoadWords } from './words.ts'

export const loadWords: { readonly [L in Language]: LoadWords } = { en: english, es: spanish }
