import type { Draft } from '../../draft.ts'
import type { Understood } from '../../understood.ts'
import { spoken } from '../../words/languages.ts'
import { isBare, tellingOf } from '../left/telling.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { anyOf, fold, tokensOf } from '../text/tokens.ts'
import { refsIn } from '../whom/refs.ts'

const said = spoken.signing
const exception = new RegExp(`\\b${said.except}\\b`)
const praised = anyOf(said.praises, said.allRight, said.approves)

/** "Looks good except Abel": what is not right, in the customer's words; null where all is, or nothing was praised. */
export const exceptionIn = (text: string, { rows }: Draft): string | null => {
  const folded = fold(text)
  const found = exception.exec(folded)
  if (found === null || text.includes('?') || !praised.test(folded.slice(0, found.index))) return null
  // "Ana Ruiz va nomás como Ana": of somebody, and no praise of the whole.
  if (refsIn(tokensOf(text.slice(0, found.index)), rows).length > 0) return null
  const rest = text.slice(found.index + found[0].length).trim()
  return rest === '' || rest.length > 200 ? null : rest
}

/** Somebody is only named as not right, and nothing is told of them: "va todo bien menos el 4". */
export const isBareException = (rest: string, { rows }: Draft, lexicon: Lexicon): boolean =>
  isBare(tellingOf(rest, rows, lexicon))

/** What is called right but for something that was not understood signs nothing, and what it is must be said again. */
export const excepted = (rest: string): Pick<Understood, 'signing' | 'unheard'> => ({ signing: null, unheard: [rest] })
