/** The languages that people are spoken to in, by their codes: the one list of them. */
export const languageCodes = ['en', 'es'] as const
export type Language = (typeof languageCodes)[number]
