/**
 * Amounts in words: of a length's unit, of pieces of another size, of players and pieces taken off, steps of sizes, figures of jersey numbers, days of a month; and how letters are
 * called where their name is not the letter itself.
 */
export type WordValues = Readonly<
  Record<'lengths' | 'apart' | 'dropped' | 'steps' | 'figures' | 'ordinals', Readonly<Record<string, number>>>
> & {
  readonly letters: Readonly<Record<string, string>>
}
