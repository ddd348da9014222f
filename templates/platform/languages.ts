import { platformWordsEn } from './en.ts'
import { platformWordsEs } from './es.ts'
import type { PlatformWords } from './words.ts'

export const platformWords: { readonly en: PlatformWords; readonly es: PlatformWords } = {
  en: platformWordsEn,
  es: platformWordsEs,
}
