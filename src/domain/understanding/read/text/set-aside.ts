import { paused, type Token } from './tokens.ts'

/** Tokens that were understood already stand aside as pauses. */
export const without = (tokens: readonly Token[], taken: ReadonlySet<number>): readonly Token[] =>
  taken.size === 0 ? tokens : tokens.map((token, index) => (taken.has(index) && token.kind !== 'break' ? paused(token) : token))

/** All places of several sets. */
export const union = (...sets: readonly ReadonlySet<number>[]): ReadonlySet<number> => new Set(sets.flatMap((set) => [...set]))
