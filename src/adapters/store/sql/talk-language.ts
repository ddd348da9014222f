import { type Language, languageCodes } from '../../../domain/units/language.ts'

/** The language that a conversation's document names. */
export const languageIn = (named: string | null): Language | null => languageCodes.find((code) => code === named) ?? null
