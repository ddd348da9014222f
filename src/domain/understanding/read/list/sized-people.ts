import { listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isCapital, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'

const said = listed.dictation

/** "una mujer", "two guys": so many people of whom the cut is told by who they are. */
const personAt = (tokens: readonly Token[], at: number): number | null => {
  const amount = isNumber(tokens[at]) ? /^[1-9]\d?$/.test(tokens[at]?.text ?? '') : isWord(tokens[at], ...said.some)
  if (!amount) return null
  const person = isWord(tokens[at + 1], ...said.further) ? at + 2 : at + 1
  const key = tokens[person]?.key ?? ''
  return (said.people.includes(key) || said.fellow.includes(key)) && !isCapital(tokens[person]) ? person : null
}

type Told = { readonly from: number; readonly to: number; readonly words: string }

/** "una mujer con la L", "one lady signed up, size L": the size stands behind small words, of whom it is said. */
const toldAt = (text: string, tokens: readonly Token[], at: number): Told | null => {
  const person = personAt(tokens, at)
  if (person === null) return null
  let next = person + 1
  while (
    next < person + 7 &&
    (isWord(tokens[next], ...said.wearing, ...said.further) || tokens[next]?.text === ',') &&
    sizeAt(tokens, next) === null
  )
    next += 1
  const size = sizeAt(tokens, next)
  const [who, link, first, last] = [tokens[person], tokens[person + 1], tokens[next], tokens[(size?.to ?? 1) - 1]]
  if (size?.size === undefined || size.fit !== undefined || next === person + 1 || who === undefined) return null
  const more = tokens.slice(person + 1, next).find((token) => isWord(token, ...said.further))
  const whose = isWord(who, ...said.fellow) ? (said.fellow[0] ?? '') : who.text
  const written = `${text.slice(first?.start, last?.end)} ${text.slice(link?.start, first?.start).trimEnd()}`
  return { from: who.start, to: last?.end ?? who.end, words: `${more === undefined ? '' : `${more.text} `}${whose} ${written}` }
}

/** People told with their size, each as so many of it: "una mujer más con la L" is "una más mujer L". */
export const withSizedPeople = (text: string): string => {
  const tokens = tokensOf(text)
  const told = [...tokens.keys()].flatMap((at) => toldAt(text, tokens, at) ?? [])
  return told.reduceRight((left, { from, to, words }) => `${left.slice(0, from)}${words}${left.slice(to)}`, text)
}
