import { listed } from '../../words/languages.ts'
import { glue, headAhead } from './head-ahead.ts'
import type { Item } from './items.ts'
import { isRoleHue } from './look-around.ts'
import type { Walk } from './walk.ts'

/** "on the right sleeve the number", "en la manga derecha el número": the place is said before its thing. */
export const isPlaceOf = (walk: Walk, at: number): boolean => {
  const article = walk.items[at + 1]
  const next = walk.items[at + 2]
  const item = walk.items[at]
  if (item?.kind === 'place' && (item.id === 'above' || item.id === 'below')) return false
  return article?.kind === 'other' && listed.things.theThing.includes(article.key) && next?.kind === 'content'
}

const marks: ReadonlySet<Item['kind']> = new Set(['content', 'text', 'word'])

/** "Front: EAGLES", "on the front it should say …": a place that opens its clause, with its thing behind small words. */
const isPlaceAhead = (walk: Walk, at: number): boolean => {
  const back = walk.items.slice(Math.max(0, at - 3), at).reverse()
  const opening = back.findIndex((item) => item.kind !== 'other')
  const first = isOpening(back[opening < 0 ? back.length : opening]) && (opening >= 0 || back.length === at)
  const small = walk.items.slice(at + 1, at + 7)
  const head = small.findIndex((item) => marks.has(item.kind))
  return (
    first &&
    (head > 0 || small[0]?.kind === 'text' || small[0]?.kind === 'word') &&
    small.slice(0, head).every((item) => item.kind === 'other' || item.key === ':')
  )
}

const isOpening = (item: Item | undefined): boolean => item === undefined || ['stop', 'comma', 'and'].includes(item.kind)

/** "Black and gold jerseys", "grey/black hoodies": the first of two colours waits for the garment too. */
const isPairedHue = (walk: Walk, at: number): boolean => {
  const [link, second] = [walk.items[at + 1], walk.items[at + 2]]
  const linked = link?.kind === 'and' || link?.key === '/' || link?.key === '-'
  const head = linked && second?.kind === 'colour' ? headAhead(walk, at + 2) : null
  return head?.kind === 'garment'
}

/** "Jersey white number black", "jerseys navy white numbers": of two nouns each has the colour behind it, of two colours side by side the first is that of a garment that has none. */
const isBareGarments = (walk: Walk, at: number): boolean => {
  const { target } = walk
  if (target.kind !== 'garment') return false
  const [next, after] = walk.items.slice(at + 1, at + 3)
  if (walk.items[at - 1]?.kind === 'garment' && next?.kind === 'content' && after?.kind === 'colour') return true
  const head = next?.kind === 'colour' ? headAhead(walk, at + 1) : null
  return walk.draft.garments[target.id]?.colour === undefined && head !== null && marks.has(head.kind)
}

/** A garment that was put in where its noun is left out stands behind its colour in any language. */
const isPutIn = (item: Item | undefined): boolean => item?.kind === 'garment' && item.from === item.to

/** "Glitter for the names", "dorado para los números": a make whose thing is named behind a "for". */
const isForThing = (walk: Walk, at: number): boolean => {
  const [link, article, noun] = walk.items.slice(at + 1, at + 4)
  const before = walk.items[at - 1]
  if (!['class', 'colour'].includes(walk.items[at]?.kind ?? '') || link?.kind !== 'other') return false
  const thing = article?.kind === 'other' && listed.things.articles.includes(article.key) ? noun : article
  return listed.things.makeFor.includes(link.key) && thing?.kind === 'content' && before?.kind !== 'content'
}

/** An adjective waits for the noun it stands before; in Spanish it belongs to the noun before it, where there is one. */
export const waits = (walk: Walk, item: Item, at: number): boolean => {
  if (!glue.has(item.kind)) return false
  if (item.kind === 'figure' || item.kind === 'count') return true
  if (item.kind === 'place' && (isPlaceOf(walk, at) || isPlaceAhead(walk, at))) return true
  if (item.kind === 'colour' && (isPairedHue(walk, at) || isRoleHue(walk, at) || isPutIn(walk.items[at + 1]))) return true
  if (isForThing(walk, at)) return true
  if (walk.postfix && walk.target.kind !== 'none') return false
  if (item.kind === 'colour' && isBareGarments(walk, at)) return false
  return headAhead(walk, at) !== null
}
