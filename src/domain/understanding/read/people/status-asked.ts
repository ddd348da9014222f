import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { isWord, tokensOf } from '../text/tokens.ts'
import { readPart } from './people.ts'

/** "The order for the Otters", "el del equipo Halcones": a name alone may be a player's, whose order is asked about. */
const isLed = (text: string, team: string): boolean => {
  const name = tokensOf(team)
  const own = isWord(name[0], ...listed.team.the)
  const tokens = tokensOf(text)
  const at = tokens.findIndex((_, from) => name.every((token, step) => tokens[from + step]?.text === token.text))
  return own || isWord(tokens[at - 1], ...listed.team.the, ...listed.team.cues)
}

/** What a question of how an order stands tells besides: whose order it is, where nobody said so yet, and who does what. */
export const readStatusAsked = (
  text: string,
  { team, draft }: { readonly team: string | null; readonly draft: Draft },
): readonly Patch[] => {
  const asked = team !== null && draft.team === undefined && isLed(text, team) ? [{ path: ['team'], value: team }] : []
  return [...asked, ...readPart(text)]
}
