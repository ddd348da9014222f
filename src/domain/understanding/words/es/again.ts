import type { AgainPhrases } from '../matters/again.ts'

export const esAgain: AgainPhrases = {
  turning: [
    ...['quiere', 'quieren', 'ocupa', 'ocupan', 'necesita', 'necesitan', 'mejor', 'sea', 'sean', 'es', 'son', 'sino', 'talla'],
    ...['va', 'van'],
  ],
  small: [...['a', 'la', 'el', 'una', 'un', 'en', 'es', 'talla', 'son', 'de']],
  refusing: ['no', 'vez', 'lugar', 'era'],
  pronouns: ['mejor', 'es', 'ponle', 'quiere'],
  clitic: ['(?:cambi|camb|pon|pong|haz|hag|pas|sub|baj|dej|qued)\\p{L}{0,4}l[aeo]s?'],
  of: [],
  to: ['a'],
  joins: ['y', 'e', 'la', 'el', 'a', 'al', 'como', 'ni'],
  twice: ['doble', 'dos'],
  end: ['final'],
  addedNumber: ['el', 'la', 'numero', 'al', 'a', 'un', 'una'],
  and: ['y', 'e'],
}
