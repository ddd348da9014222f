import { cutWords, groupWords, listed } from '../../words/languages.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'

const between: readonly string[] = [':', '-', '–', '=']

const isPause = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'break' || [',', ';', '.', '/', '(', '!'].includes(token.text)

/** A size with an amount before or behind it. */
const isCounted = (tokens: readonly Token[], at: number): boolean => {
  const ahead = isNumber(tokens[at]) && sizeAt(tokens, at) === null ? sizeAt(tokens, at + 1, true) : null
  const size = ahead ?? (isNumber(tokens[at]) ? null : sizeAt(tokens, at, true))
  return size?.size !== undefined && (ahead !== null || isNumber(tokens[size.to]) || isWord(tokens[size.to], 'x'))
}

type Head = { readonly from: number; readonly to: number; readonly cut: string }

/** "…: ", "… are ", "… also 7: ": where the amounts begin behind whom they are for; `summed` where their sum is told first. */
const amountsAt = (tokens: readonly Token[], at: number): { readonly at: number; readonly summed: boolean } => {
  let to = at
  while (isWord(tokens[to], ...listed.players.cutTells, ...listed.players.groupAlso)) to += 1
  if (between.includes(tokens[to]?.text ?? '')) return { at: to + 1, summed: false }
  const summed = isNumber(tokens[to]) && tokens[to + 1]?.text === ':'
  return { at: summed ? to + 2 : to, summed }
}

/** "guys: S2 M3", "para ellas 4 S", "las damas son 7: 4 CH": whom the amounts behind it are for, where it begins a stretch of the sentence. */
const headAt = (text: string, tokens: readonly Token[], at: number): Head | null => {
  const [key, amounts] = [tokens[at]?.key ?? '', amountsAt(tokens, at + 1)]
  const own = Object.hasOwn(cutWords, key) && amounts.summed ? tokens[at]?.text : undefined
  const cut = Object.hasOwn(groupWords, key) ? groupWords[key] : own
  if (cut === undefined || !isCounted(tokens, amounts.at)) return null
  let start = at
  while (isWord(tokens[start - 1], ...listed.players.groupLead)) start -= 1
  if (!isPause(tokens[start - 1]) && !isWord(tokens[start - 1], ...listed.again.and)) return null
  return { from: tokens[start]?.start ?? 0, to: tokens[amounts.at]?.start ?? text.length, cut }
}

/** "one of the gals mediums": right before a size, behind an article, whose size it is. */
const beforeSize = (tokens: readonly Token[], at: number): Head | null => {
  const [token, next] = [tokens[at], tokens[at + 1]]
  const cut = token !== undefined && Object.hasOwn(groupWords, token.key) ? groupWords[token.key] : undefined
  const led = isWord(tokens[at - 1], ...listed.players.groupLead) && sizeAt(tokens, at + 1)?.size !== undefined
  return cut === undefined || token === undefined || next === undefined || !led
    ? null
    : { from: token.start, to: next.start, cut }
}

/** Amounts told by whom they are for, with the cut that those wear: "guys: 2 M. gals: 3 S" are men's and women's. */
export const withAmountsForWhom = (text: string): string => {
  const tokens = tokensOf(text)
  return [...tokens.keys()].reduceRight((left, at) => {
    const head = headAt(text, tokens, at)
    const found = head ?? beforeSize(tokens, at)
    return found === null ? left : `${left.slice(0, found.from)}${found.cut}${head === null ? ' ' : ': '}${left.slice(found.to)}`
  }, text)
}
