import { type Lexicon, termsOf } from './text/lexicon.ts'
import { isWord, type Token } from './text/tokens.ts'
import { pieces } from './whom/refs.ts'

/** Terms that stand in sentences about players, too. */
const anybodys: readonly string[] = [
  ...['and', 'in', 'with', 'no', 'count', 'only', 'both', 'content', 'part', 'thin', 'sleeve-length', 'word', 'unit'],
]

/** Where a message speaks of cloth and print. */
export const tradeIn = (lexicon: Lexicon, tokens: readonly Token[]): ReadonlySet<number> =>
  new Set(
    termsOf(lexicon, tokens)
      .filter(({ meaning, from }) => !anybodys.includes(meaning.kind) && !isWord(tokens[from], ...pieces))
      .map(({ from }) => from),
  )
