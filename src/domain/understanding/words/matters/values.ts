/** Amounts in words: of a length's unit, of pieces of another size, of players and pieces taken off. */
export type WordValues = Readonly<Record<'lengths' | 'apart' | 'dropped', Readonly<Record<string, number>>>>
