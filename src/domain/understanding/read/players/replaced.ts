import type { Player } from '../../draft.ts'
import type { Json } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isEnd, isNumber, phraseEnd, phrasesOf, type Token } from '../text/tokens.ts'
import { nameAt, type Rows, refAt, rowsByNumber } from '../whom/refs.ts'

const before = phrasesOf(listed.likeOthers.before)
const behind = phrasesOf(listed.likeOthers.behind)
const entering: readonly string[] = listed.likeOthers.entering

type Newcomer = { readonly name?: string; readonly from: number; readonly to: number }

/** "en su lugar viene una nueva con el 15, talla S": nobody's name, but a number that nobody has and a size. */
const isNumbered = (tokens: readonly Token[], from: number, rows: Rows): boolean => {
  const end = tokens.findIndex((token, at) => at >= from && isEnd(token))
  const places = [...tokens.keys()].filter((at) => at >= from && at < from + 10 && (end < 0 || at < end))
  const figures = places.filter((at) => isNumber(tokens[at]) && sizeAt(tokens, at) === null)
  const fresh = figures.length === 1 && figures.every((at) => rowsByNumber(rows, tokens[at]?.text ?? '').length === 0)
  return fresh && places.some((at) => sizeAt(tokens, at)?.size !== undefined)
}

/** "en su lugar va Bianchi", "Bianchi takes his place": who comes for somebody that leaves. */
const newcomer = (tokens: readonly Token[], rows: Rows): Newcomer | null => {
  for (const at of tokens.keys()) {
    const start = phraseEnd(tokens, at, before)
    let next = start ?? at
    while (start !== null && next < at + 8 && entering.includes(tokens[next]?.key ?? '')) next += 1
    const named = nameAt(tokens, next, () => false)
    if (named === null && start !== null && isNumbered(tokens, next, rows)) return { from: at, to: next }
    if (named === null) continue
    if (start !== null || phraseEnd(tokens, named.to, behind) !== null) return { name: named.name, from: at, to: named.to }
  }
  return null
}

const same = phrasesOf(listed.likeOthers.sameSize)
const sameNumber = phrasesOf(listed.likeOthers.sameNumber)

const says = (tokens: readonly Token[], phrases: readonly (readonly string[])[]): boolean =>
  [...tokens.keys()].some((at) => phraseEnd(tokens, at, phrases) !== null)

/** Size and number of the one who comes: what is said behind the name, or the leaver's where it is said to be the same. */
const playerOf = (tokens: readonly Token[], leaver: Player, { name, to }: Newcomer): Player => {
  const ahead = tokens.slice(to, to + 10)
  const size = ahead.map((_, index) => sizeAt(tokens, to + index)).find((one) => one?.size !== undefined)
  const figure = ahead.find(
    (token, index) => isNumber(token) && /^\d{1,3}$/.test(token.text) && sizeAt(tokens, to + index) === null,
  )
  const number = figure?.text ?? (says(tokens, sameNumber) ? leaver.number : undefined)
  const kept = size ?? (says(tokens, same) ? leaver : undefined)
  const fit = kept?.fit ?? leaver.fit
  return {
    ...(name === undefined ? {} : { name }),
    ...(number === undefined ? {} : { number }),
    ...(kept?.size === undefined ? {} : { size: kept.size }),
    ...(fit === undefined ? {} : { fit }),
    ...(leaver.garment === undefined ? {} : { garment: leaver.garment }),
  }
}

/** "Rossi is out, Bianchi takes his place, same size": the line of the one who leaves becomes the newcomer's. */
export const readReplaced = (tokens: readonly Token[], scene: Scene, drops: Change): Change => {
  const [drop, ...more] = drops.patches
  const key = drop?.path[1]
  const leaver = scene.draft.rows[key ?? '']
  if (drop?.value !== null || key === undefined || more.length > 0 || leaver === undefined) return drops
  const found = newcomer(tokens, scene.draft.rows)
  if (found === null || refAt(tokens, found.from, scene.draft.rows) !== null) return drops
  const value: Json = playerOf(tokens, leaver, found)
  const end = tokens.findIndex((token, index) => index >= found.to && isEnd(token))
  const taken = new Set([...drops.taken, ...span(found.from, end < 0 ? tokens.length : end)])
  return { ...nothing, patches: [{ path: ['rows', key], value }], taken }
}
