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
  wearing: ['(?<!\\bno )(?:va a |van a )?(?:necesita|ocupa|quiere|lleva|pide|pidio|querer|necesitar|ocupar|llevar|pedir)n?'],
  giving: ['ponle', 'pongale', 'ponganle', 'dale', 'hazle', 'hagale', 'haganle', 'agrega', 'agregale'],
  givenTo: ['al?', 'a la', 'a el'],
  pieces: ['otr[oa]', 'dos', 'tres', 'un(?:a|o)? (?:segund[oa]|extra|adicional)'],
  figuredPieces: ['[2-4]'],
  furtherPiece: ['un[oa] mas'],
  garment: ['(?:playera|camiseta|jersey|camisola|sudadera|pieza|polo)(?:e?s)?'],
  noPiece: ['tallas?', 'numeros?', 'nombres?', 'medidas?', 'letras?'],
  forWhom: ['para', 'pa'],
  sizesBeside: ['una', 'un', 'uno', 'otra', 'otro', 'la', 'el', 'y', 'e', 'en', 'de', 'talla', 'tallas', 'porfa', 'por', 'favor'],
}
