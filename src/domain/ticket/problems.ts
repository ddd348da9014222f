import type { ProblemOf } from '../result/result.ts'

export type TicketProblems = {
  /** The face of the paper has no sign for these characters; they are printed as code points. */
  'paper-lacks': { readonly characters: readonly string[] }
}

export type TicketProblem = ProblemOf<TicketProblems>

/** The problem to raise for characters that a printed document shows as code points; none when every sign was found. */
export const paperLacks = (characters: readonly string[]): readonly TicketProblem[] =>
  characters.length === 0 ? [] : [{ code: 'paper-lacks', at: '', severity: 'caution', facts: { characters } }]
