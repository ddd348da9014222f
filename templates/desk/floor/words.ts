import { floorEnglish } from './en.ts'
import { floorSpanish } from './es.ts'
import type { FloorWords } from './floor-words.ts'

export const floorWords: { readonly en: FloorWords; readonly es: FloorWords } = { en: floorEnglish, es: floorSpanish }
