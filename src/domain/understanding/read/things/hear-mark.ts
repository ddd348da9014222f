import { listed } from '../../words/languages.ts'
import { stonesOnly } from './colour-target.ts'
import { newGroup, stonesOf } from './groups.ts'
import { hearRefused } from './hear-off.ts'
import type { Item } from './items.ts'
import { applyWaiting, before, isNegated } from './look-around.ts'
import { currentGroups, flush, sentence, speakOf, startEdge, type Walk } from './walk.ts'

/** Words after which names and numbers are a list, not a thing to press. */
const listWords: readonly string[] = listed.things.list

const isListed = (walk: Walk, at: number): boolean => {
  const [next, after] = walk.items.slice(at + 1, at + 3)
  const linked = next?.kind === 'other' && listed.things.are.includes(next.key)
  const tall = after?.kind === 'and' && walk.items[at + 3]?.kind === 'length'
  if (
    (next?.kind === 'figure' && !tall) ||
    (linked && (after?.kind === 'figure' || after?.kind === 'other' || after?.kind === 'count'))
  )
    return true
  const ahead = walk.items.slice(at + 1, at + 6)
  const end = ahead.findIndex((item) => item.kind === 'comma' || item.kind === 'stop')
  const made = (end < 0 ? ahead : ahead.slice(0, end)).some((item) => ['place', 'colour', 'class'].includes(item.kind))
  return !made && walk.items.slice(Math.max(0, at - 3), at).some((item) => item.kind === 'other' && listWords.includes(item.key))
}

/** "…, the names above the number", "…, red numbers on both": after both garments what has no make of its own, or is said of both, is for both. */
const isForAll = (walk: Walk, at: number): boolean => {
  const before = walk.items[at - 1]
  const led = before?.kind === 'other' || before?.kind === 'colour'
  const paused = before?.kind === 'comma' || (led && walk.items[at - 2]?.kind === 'comma')
  const ahead = walk.items.slice(at + 1, at + 5)
  const end = ahead.findIndex((item) => item.kind === 'comma' || item.kind === 'stop')
  const clause = end < 0 ? ahead : ahead.slice(0, end)
  const made = clause.some((item) => ['colour', 'class', 'role', 'garment'].includes(item.kind))
  const both = clause.some((item) => item.kind === 'both')
  const alike = both || (!made && walk.waiting.length === 0)
  return paused && alike && walk.fresh.has('home') && walk.fresh.has('away')
}

const ending: ReadonlySet<Item['kind']> = new Set(['comma', 'stop'])

/** "names no", "nombres no". */
const isRefusedBehind = (walk: Walk, at: number): boolean => {
  const [no, after] = walk.items.slice(at + 1, at + 3)
  return no?.kind === 'no' && (after === undefined || ending.has(after.kind))
}

/** "numbers and names", "los números y los nombres": what is said next is said of both. */
const isJoined = (walk: Walk, at: number): boolean => {
  const article = walk.items[at - 1]
  const link = article?.kind === 'other' && listed.things.articles.includes(article.key) ? at - 2 : at - 1
  return walk.items[link]?.kind === 'and' && walk.items[link - 1]?.kind === 'content' && walk.groups.length === 1
}

export const hearContent = (walk: Walk, content: 'number' | 'name', at: number): void => {
  if (isNegated(walk, at) || isRefusedBehind(walk, at)) {
    hearRefused(walk, content, at)
    return
  }
  if (isListed(walk, at)) {
    walk.waiting = []
    return
  }
  const joined = isJoined(walk, at)
  if (!joined) flush(walk)
  if (isForAll(walk, at) && walk.groups.every((group) => group.content !== content)) walk.scope = null
  const group = newGroup(content, walk.scope)
  const first = walk.groups[0]
  if (joined && first !== undefined) Object.assign(group.style, first.style)
  walk.groups = joined ? [...walk.groups, group] : [group]
  walk.target = { kind: 'mark' }
  takeMake(walk)
  if (outlineBefore(walk, at)) startEdge(walk, false)
  applyWaiting(walk)
}

export const hearText = (walk: Walk, text: string | undefined): void => {
  const [only] = walk.groups
  if (text !== undefined && only?.content === 'text' && only.text === undefined) only.text = text
  else {
    flush(walk)
    const group = newGroup('text', walk.scope)
    group.text = text
    walk.groups = [group]
  }
  walk.target = { kind: 'mark' }
  takeMake(walk)
  applyWaiting(walk)
}

/** "Pryce says he's a medium", "our team name is Gutter Gulls": nothing is written where neither words nor a place are said. */
const isReported = (walk: Walk, at: number): boolean =>
  listed.written.reported.includes(walk.items[at]?.key ?? '') &&
  !sentence(walk).some((item) => item.kind === 'text' || item.kind === 'place')

/** "Everything else the same": nothing is written, and nothing changes. */
const staysSo = ({ items }: Walk, at: number): boolean =>
  items.slice(at + 1, at + 4).some(({ key }) => listed.things.unchanged.includes(key))

/** "COACH on the back in white letters": the letters are those of the text, unless another text follows. */
export const hearWord = (walk: Walk, at: number): void => {
  if (isReported(walk, at) || staysSo(walk, at)) return
  const another = walk.items.slice(at + 1, at + 4).some((item) => item.kind === 'text')
  const [only] = walk.groups
  if (another || walk.groups.length !== 1 || only?.content !== 'text') {
    hearText(walk, undefined)
    const item = walk.items[at]
    for (const group of walk.groups) group.makeOnly = item?.kind === 'word' && item.make === true
    return
  }
  if (walk.target.kind !== 'edge') walk.target = { kind: 'mark' }
  applyWaiting(walk)
}

const isStony = (walk: Walk): boolean =>
  walk.target.kind === 'stones' || walk.waiting.some((item) => item.kind === 'stone-size' || item.kind === 'stones')

const articles: readonly string[] = listed.things.articles

/** The outline right before what is to have it, articles left out: "outline the numbers in black". */
const outlineBefore = (walk: Walk, at: number): boolean => {
  const article = walk.items[at - 1]
  const item = article?.kind === 'other' && articles.includes(article.key) ? walk.items[at - 2] : undefined
  return item?.kind === 'outline'
}

const isOfNext = (walk: Walk, at: number): boolean => walk.items[at + 2]?.kind === 'content' && outlineBefore(walk, at + 2)

const ofWords: readonly string[] = [...listed.things.stonesOn, ...listed.things.made]

/** "Stones on the names", "a shadow in gold on the numbers": what is named right behind is what they are of. */
const namedAhead = (walk: Walk, at: number): readonly ('number' | 'name')[] => {
  const contents: ('number' | 'name')[] = []
  for (const [index, item] of walk.items.slice(at + 1, at + 9).entries()) {
    const hue = item.kind === 'colour' && contents.length === 0 && walk.items[at + 2 + index]?.kind !== 'content'
    if (item.kind === 'content') contents.push(item.id)
    else if (
      !hue &&
      !(item.kind === 'and' && contents.length > 0) &&
      !ofWords.includes(item.key) &&
      !['of', 'in', 'around', 'only'].includes(item.kind)
    )
      break
  }
  return walk.items[at + 1]?.kind === 'content' ? [] : contents
}

/** From here on what is named right behind is spoken of, if anything is. */
const turnToNamed = (walk: Walk, at: number): void => {
  const named = namedAhead(walk, at)
  if (named.length === 0) return
  flush(walk)
  walk.groups = named.map((content) => newGroup(content, walk.scope))
}

/** "only white, no shadow there": said of what is spoken of. */
export const hearShadow = (walk: Walk, at: number): void => {
  turnToNamed(walk, at)
  if (isNegated(walk, at)) {
    for (const group of currentGroups(walk)) group.style.shadow = false
    return
  }
  startEdge(walk, true)
  applyWaiting(walk)
}

export const hearOutline = (walk: Walk, at: number): void => {
  if (!isStony(walk) && walk.groups.length + Object.keys(walk.draft.marks).length > 0) turnToNamed(walk, at)
  if (isNegated(walk, at)) {
    for (const group of currentGroups(walk)) group.style.outlines = []
    return
  }
  if (walk.target.kind === 'garment' && walk.groups.length === 0 && !isStony(walk)) {
    walk.waiting = []
    walk.target = { kind: 'part' }
    return
  }
  if (isOfNext(walk, at)) return
  if (isStony(walk)) {
    for (const group of currentGroups(walk)) stonesOf(group).style = 'outline'
    walk.target = { kind: 'stones' }
  } else startEdge(walk, false)
  applyWaiting(walk)
}

/** "No las piedras SS10, mejor SS16": of these stones only the size is not wanted. */
const isOtherSize = (walk: Walk, at: number): boolean =>
  walk.items[at + 1]?.kind === 'stone-size' && sentence(walk).filter((item) => item.kind === 'stone-size').length > 1

export const hearStones = (walk: Walk, at: number): void => {
  const negated = isNegated(walk, at) && !isOtherSize(walk, at)
  turnToNamed(walk, at)
  if (!negated) speakOf(walk, 'stones')
  for (const group of currentGroups(walk)) stonesOf(group).wanted = !negated
  if (negated) return
  if (isInStones(walk, at)) for (const group of currentGroups(walk)) group.style.vinyl = false
  if (isMadeOf(walk, at)) {
    for (const group of currentGroups(walk)) {
      group.style.outlines = (group.style.outlines ?? []).slice(0, -1)
      stonesOf(group).style = 'outline'
    }
  }
  walk.target = { kind: 'stones' }
  applyWaiting(walk)
}

/** "VIPERS in crystal rhinestones": stones alone, where no vinyl is spoken of. */
const isInStones = (walk: Walk, at: number): boolean => {
  const link = before(walk, at)
  const made = link !== undefined && (link.kind === 'in' || listed.things.made.includes(link.key))
  const plain = currentGroups(walk).every(
    ({ style }) => !['colour', 'class', 'outlines'].some((key) => Object.hasOwn(style, key)),
  )
  return made && plain && !sentence(walk).some((item) => ['vinyl', 'class', 'outline'].includes(item.kind))
}

const joining: ReadonlySet<Item['kind']> = new Set(['of', 'in', 'with', 'rows', 'count', 'figure', 'word', 'stone-size'])
const joiners: readonly string[] = listed.things.stoneJoins

/** "contorno de piedra", "el borde de las letras con una hilera de piedra": the outline is made of stones. */
const isMadeOf = (walk: Walk, at: number): boolean => {
  const back = walk.items.slice(Math.max(0, at - 9), at).reverse()
  const before = back.findIndex(
    (item) =>
      !joining.has(item.kind) &&
      !(item.kind === 'colour' && stonesOnly.includes(item.id)) &&
      !(item.kind === 'other' && joiners.includes(item.key)),
  )
  const linked = back
    .slice(0, before)
    .some((item) => item.kind === 'of' || item.kind === 'with' || listed.things.made.includes(item.key) || item.kind === 'in')
  return back[before]?.kind === 'outline' && linked
}

/** A make that was said before its thing was named is the thing's. */
export const takeMake = (walk: Walk): void => {
  if (walk.make === null) return
  for (const group of walk.groups) Object.assign(group.style, walk.make)
  walk.make = null
}
