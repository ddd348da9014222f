/** Amounts in words: of a length's unit, of pieces of another size, of players and pieces taken off, steps of sizes. */
export type WordValues = Readonly<Record<'lengths' | 'apart' | 'dropped' | 'steps', Readonly<Record<string, number>>>>
