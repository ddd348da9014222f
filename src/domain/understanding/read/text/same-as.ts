import { languages } from '../../words/languages.ts'
import { fold } from './tokens.ts'

const forms: ReadonlyMap<string, string> = new Map(Object.values(languages).flatMap(({ sameAs }) => Object.entries(sameAs)))

/** "Quitad a Soto", "los dorsales": words for which the phrases have others are read as those. */
export const withKnownForms = (text: string): string =>
  text.replace(/(?<![\p{L}\p{M}\d'-])\p{L}{2,}(?![\p{L}\p{M}\d'-])/gu, (word) => {
    const form = /^\p{Lu}{2}/u.test(word) ? undefined : forms.get(fold(word))
    if (form === undefined) return word
    return /^\p{Lu}/u.test(word) ? `${form.charAt(0).toUpperCase()}${form.slice(1)}` : form
  })
