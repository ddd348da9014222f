import { listed } from '../../words/languages.ts'
import { type SizeFound, sizeAt } from '../sizes/sizes.ts'
import type { Term } from '../text/lexicon.ts'
import { stated } from '../text/statements.ts'
import { isCapital, isEnd, isNumber, isWord, type Token } from '../text/tokens.ts'

export type Scene = { readonly tokens: readonly Token[]; readonly terms: readonly Term[] }

/** An amount said anew, with what it was before where that was said too; `by`: so many more, or fewer where it is below nothing. */
export type Said = { readonly size: SizeFound; readonly amount: number; readonly was?: number | undefined; readonly by?: true }

const being: readonly string[] = listed.anew.being
const fillers: readonly string[] = listed.anew.fillers
const not: readonly string[] = listed.anew.not
const notOf: readonly string[] = listed.anew.notOf

const skipped = (tokens: readonly Token[], from: number, words: readonly string[]): number => {
  let at = from
  while (isWord(tokens[at], ...words) && sizeAt(tokens, at) === null) at += 1
  return at
}

const overComma = (tokens: readonly Token[], at: number): number =>
  tokens[at]?.text === ',' || tokens[at]?.text === '(' ? at + 1 : at

/** An amount at a token that is no size and no day. */
const amountAt = ({ tokens, terms }: Scene, at: number): number | null => {
  const token = tokens[at]
  if (isNumber(token)) {
    const joined = tokens[at + 1]?.kind === 'word' && tokens[at + 1]?.start === token?.end
    return !joined && sizeAt(tokens, at) === null && /^[1-9]\d{0,2}$/.test(token?.text ?? '') ? Number(token?.text) : null
  }
  const term = terms.find((one) => one.from === at && one.to === at + 1)
  return term?.meaning.kind === 'count' ? term.meaning.id : null
}

/** ", not 6", "instead of 6", "en vez de 6": the amount that was. */
const wasAt = (scene: Scene, from: number): { readonly was: number; readonly to: number } | null => {
  const { tokens } = scene
  let at = overComma(tokens, from)
  if (isWord(tokens[at], ...listed.anew.insteadLead)) at += 1
  if (!isWord(tokens[at], ...not)) return null
  at = skipped(tokens, at + 1, notOf)
  const was = amountAt(scene, at)
  return was === null ? null : { was, to: at + 1 }
}

const sizeFrom = (tokens: readonly Token[], from: number): SizeFound | null => {
  const at = skipped(tokens, from, fillers)
  const size = isNumber(tokens[at]) && !isNumber(tokens[from]) ? null : sizeAt(tokens, at)
  return size?.size === undefined ? null : size
}

/** "5 large, not 6", "5 not 6 large": the size beside two amounts. */
const amountFirst = (scene: Scene, at: number): Said | null => {
  const amount = amountAt(scene, at)
  if (amount === null) return null
  const size = sizeFrom(scene.tokens, at + 1)
  const was = wasAt(scene, size?.to ?? at + 1)
  if (was === null) return isTold(scene.tokens, at) && size !== null ? { size, amount } : null
  const after = sizeFrom(scene.tokens, overComma(scene.tokens, was.to))
  const whole = size ?? after
  if (whole === null || (after !== null && size !== null && after.size !== size.size)) return null
  return { size: whole, amount, was: was.was }
}

/** "que sean 8 las medianas". */
const isTold = (tokens: readonly Token[], at: number): boolean =>
  isWord(tokens[at - 1], ...listed.anew.told) && isWord(tokens[at + 1], ...listed.anew.toldOf)

/** "not 6 large but 5", "no son 9 medianas, son 8". */
const notFirst = (scene: Scene, at: number): Said | null => {
  const { tokens } = scene
  if (!isWord(tokens[at], ...listed.anew.notFirst)) return null
  const from = skipped(tokens, at + 1, listed.anew.wasOf)
  const was = amountAt(scene, from)
  const size = was === null ? null : sizeFrom(tokens, from + 1)
  if (was === null || size === null) return null
  const next = skipped(tokens, overComma(tokens, size.to), listed.anew.butNow)
  const amount = next > size.to ? amountAt(scene, next) : null
  return amount === null ? null : { size, amount, was }
}

/** "the mens L should be 16, not 15", "las medianas son 12", "mediums from 9 to 8". */
const sizeFirst = (scene: Scene, at: number): Said | null => {
  const { tokens } = scene
  const figure = isNumber(tokens[at]) && !isWord(tokens[at - 1], ...listed.changes.whole)
  if (isWord(tokens[at - 1], ...listed.players.extra)) return null
  const size = isNumber(tokens[at - 1]) || figure ? null : sizeAt(tokens, at, isWord(tokens[at - 1], ...listed.changes.ofSize))
  if (size?.size === undefined) return null
  if (isWord(tokens[size.to], ...listed.anew.from)) {
    const [was, amount] = [amountAt(scene, size.to + 1), amountAt(scene, size.to + 3)]
    const turned = isWord(tokens[size.to + 2], ...listed.anew.to)
    return was === null || amount === null || !turned ? null : { size, amount, was }
  }
  const stop = [':', '='].includes(tokens[size.to]?.text ?? '') ? size.to + 1 : size.to
  const plain = skipped(tokens, stop, being)
  const next = amountAt(scene, plain) === null ? pastPlain(scene, stop) : plain
  const amount = amountAt(scene, next)
  const was = wasAt(scene, next + 1)?.was
  const bare = next === size.to && was === undefined && !endsAt(tokens, next + 1)
  if (amount === null || bare || sizeFrom(tokens, next + 1) !== null) return null
  return { size, amount, was }
}

/** "de las extra grandes dame 3": an amount some words behind its size, with nothing behind it. */
const pastPlain = (scene: Scene, from: number): number => {
  const { tokens } = scene
  const words = [1, 2, 3].find((many) => amountAt(scene, from + many) !== null) ?? 0
  const between = tokens.slice(from, from + words)
  const plain = between.every((token, index) => token.kind === 'word' && !isJoin(token) && sizeAt(tokens, from + index) === null)
  return words > 0 && plain && endsAt(tokens, from + words + 1) ? from + words : from
}

const isJoin = (token: Token): boolean => isWord(token, ...listed.again.and, ...not, ...listed.told.into)

const endsAt = (tokens: readonly Token[], at: number): boolean =>
  tokens[at] === undefined || tokens[at]?.kind !== 'word' || isWord(tokens[at], ...listed.anew.ends)

const more: readonly string[] = listed.anew.more
const fewer: readonly string[] = listed.anew.fewer

/** "2 more larges", "one less large", "2 medianas menos", "súbele 2 a las medianas". */
const byAmount = (scene: Scene, at: number): Said | null => {
  const { tokens } = scene
  const amount = amountAt(scene, at)
  if (amount === null) return null
  const word = isWord(tokens[at + 1], ...more, ...fewer) ? at + 1 : -1
  const size = sizeFrom(tokens, skipped(tokens, word < 0 ? at + 1 : word + 1, listed.anew.moreOf))
  if (size === null) return null
  const behind = word < 0 && isWord(tokens[size.to], ...more, ...fewer) ? size.to : word
  if (behind < 0) return isWord(tokens[at - 1], ...raising) ? { size, amount, by: true } : null
  return { size, amount: isWord(tokens[behind], ...fewer) ? -amount : amount, by: true }
}

const raising: readonly string[] = listed.anew.raising

/** "otra", "another", "one for …", "una extra": one piece more, some words before its size. */
const isOneMore = (tokens: readonly Token[], at: number): boolean => {
  const next = tokens[at + 1]
  if (isWord(next, ...listed.changes.sizeNoun)) return false
  const single = isWord(tokens[at], ...listed.clauses.single, ...listed.players.one)
  const besides = isWord(next, ...listed.changes.hands, ...more) && sizeAt(tokens, at + 1) === null
  return isWord(tokens[at], ...listed.anew.another) || (single && besides)
}

/** "otra igual de hombre en 3XL", "one for my mother in law, womens XL": the size of one piece more; none where somebody is named. */
const oneMoreAt = ({ tokens }: Scene, at: number): Said | null => {
  if (!isOneMore(tokens, at)) return null
  for (let next = at + 1; next < at + 9; next += 1) {
    const size = sizeAt(tokens, next)
    if (size?.size !== undefined) return { size, amount: 1, by: true }
    const token = tokens[next]
    if (token === undefined || isEnd(token) || isNumber(token) || isCapital(token)) return null
  }
  return null
}

/** Pieces that are told one by one, besides those that are counted. */
export const oneMores = (scene: Scene): readonly Said[] => {
  const tokens = stated(scene.tokens)
  return [...tokens.keys()].flatMap((at) => oneMoreAt({ ...scene, tokens }, at) ?? [])
}

/** Every amount of a size that a message says anew. */
export const saidAnew = (scene: Scene): readonly Said[] =>
  [...scene.tokens.keys()].flatMap(
    (at) =>
      notFirst(scene, at) ??
      (isWord(scene.tokens[at - 1], ...not) ? null : (byAmount(scene, at) ?? amountFirst(scene, at))) ??
      sizeFirst(scene, at) ??
      [],
  )
