import type { Draft } from '../../draft.ts'
import { listed } from '../../words/languages.ts'
import { isWord, tokensOf } from '../text/tokens.ts'
import { refsIn } from './refs.ts'

type Stretch = { readonly from: number; readonly to: number }

/** Nothing but names: "Zoe, …", "…, Ana and Eli". */
const isOnlyNames = (text: string, { rows }: Draft): boolean => {
  const tokens = tokensOf(text)
  const refs = refsIn(tokens, rows)
  const isNamed = (at: number): boolean => refs.some(({ from, to }) => at >= from && at < to)
  return refs.length > 0 && tokens.every((token, at) => isNamed(at) || isWord(token, ...listed.again.joins))
}

/** The clauses of a text, in which a comma between names goes on: "skip the stones for Zoe, Ana and Eli", "on 9, 12 and 4". */
export const nameClauses = (text: string, draft: Draft): readonly Stretch[] => {
  const found: Stretch[] = []
  let names = false
  for (const { 0: words, index } of text.matchAll(/(?:[^,.;!?\n]|,(?= ?#?\d))+/g)) {
    const last = found.at(-1)
    const before: boolean = names
    const more = isOnlyNames(words, draft)
    const goesOn: boolean = text.slice(last?.to ?? index, index) === ',' && (before || more)
    names = more && (before || !goesOn)
    if (goesOn && last !== undefined) found.splice(-1, 1, { from: last.from, to: index + words.length })
    else found.push({ from: index, to: index + words.length })
  }
  return found
}
