import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { stonesOf } from './groups.ts'
import { headAhead } from './head-ahead.ts'
import type { Item } from './items.ts'
import { currentGroups, flush, garmentOf, placeOf, put, putGarment, speakOf, startEdge, type Walk } from './walk.ts'

const stoneColours: Readonly<Record<string, string>> = { black: 'jet', pink: 'rose', white: 'crystal' }

/** Colours that no vinyl has. */
export const stonesOnly: readonly string[] = ['crystal', 'clear-ab', 'jet', 'rose']

const hueQuestion = (walk: Walk, item: Extract<Item, { kind: 'colour' }>, patches: (id: string) => readonly Patch[]): void => {
  const path =
    walk.target.kind === 'garment'
      ? `/garments/${Object.keys(walk.draft.garments).indexOf(walk.target.id)}/colour`
      : '/decorations'
  const readings = (item.readings ?? []).map((id) => ({ value: id, kind: 'colour', patches: patches(id) }) as const)
  walk.open.push({ about: 'colour', path, quote: item.key, readings })
}

type Hue = Extract<Item, { kind: 'colour' }>

/** A garment of two colours: which of them is it, the other being a trim? */
export const whichHue = (walk: Walk, id: string, hues: readonly Hue[]): void => {
  const at = Object.keys(walk.draft.garments).indexOf(id)
  const readings = [...new Set(hues.map((hue) => hue.id))].map(
    (hue) => ({ value: hue, kind: 'colour', patches: [{ path: ['garments', id, 'colour'], value: hue }] }) as const,
  )
  walk.open.push({ about: 'colour', path: `/garments/${at}/colour`, quote: hues.map((hue) => hue.key).join(' / '), readings })
}

/** "Jerseys negros con dorado", "jerseys in white and navy": the colour said right before, joined to this one. */
const twinHue = (walk: Walk, id: string, item: Hue): Hue | null => {
  const at = placeOf(walk, item)
  const [link, twin, after] = [walk.items[at - 1], walk.items[at - 2], walk.items[at + 1]]
  const linked = link?.kind === 'and' || link?.kind === 'with' || link?.key === '/'
  const ends = after === undefined || after.kind === 'comma' || after.kind === 'stop'
  const same = twin?.kind === 'colour' && walk.draft.garments[id]?.colour === twin.id && twin.id !== item.id
  return linked && ends && same ? twin : null
}

const colourGarment = (walk: Walk, id: string, item: Extract<Item, { kind: 'colour' }>): void => {
  const patches = (colour: string): readonly Patch[] => [{ path: ['garments', id, 'colour'], value: colour }]
  const twin = twinHue(walk, id, item)
  const home = walk.draft.garments['home']
  if (twin !== null && id === 'away' && home !== undefined && home.colour === undefined) {
    putGarment(walk, 'home', { colour: twin.id })
    putGarment(walk, 'away', { colour: item.id })
    return
  }
  if (twin !== null) {
    whichHue(walk, id, [twin, item])
    return
  }
  if (isSecondHue(walk, id, item)) {
    walk.loose.push(item)
    return
  }
  if (item.readings === undefined) put(walk, patches(item.id))
  else hueQuestion(walk, item, patches)
}

/** A garment that this message gave a colour takes no other in passing: it is said anew, or it is something else's. */
const isSecondHue = (walk: Walk, id: string, item: Hue): boolean => {
  const coloured = walk.patches.some(({ path }) => path[0] === 'garments' && path[1] === id && path[2] === 'colour')
  if (!coloured || walk.draft.garments[id]?.colour === item.id) return false
  const at = placeOf(walk, item)
  const anew = (one: Item): boolean => one.kind === 'no' || listed.things.correcting.includes(one.key) || one.kind === 'garment'
  return !walk.items.slice(Math.max(0, at - 6), at).some(anew)
}

/** "Puro cristal, sin vinil": what no vinyl is of is stones. */
const isWithoutVinyl = (walk: Walk): boolean =>
  walk.items.some((item, at) => item.kind === 'vinyl' && walk.items[at - 1]?.kind === 'no')

const colourMark = (walk: Walk, item: Hue): void => {
  if (isGarmentsHue(walk, item)) return
  const groups = currentGroups(walk)
  const stony = groups.filter((group) => group.style.stones !== undefined && group.style.stones.wanted !== false)
  const bare = groups.filter((group) => group.style.vinyl === false || isWithoutVinyl(walk))
  if (stonesOnly.includes(item.id) && stony.length === 0 && bare.length > 0) {
    for (const group of bare) Object.assign(stonesOf(group), { wanted: true, colour: item.id })
    return
  }
  if (stonesOnly.includes(item.id) && stony.length > 0) {
    for (const group of stony) stonesOf(group).colour = item.id
    return
  }
  if (item.readings === undefined) {
    for (const group of groups) group.style.colour = item.id
    return
  }
  const content = groups[0]?.content ?? 'number'
  hueQuestion(walk, item, (colour) => [{ path: ['styles', content, 'colour'], value: colour }])
}

/** "Outlined in black, then gold": the next outline round the first. */
const isNextEdge = (walk: Walk, item: Hue): boolean => {
  const at = placeOf(walk, item)
  const before = walk.items[at - 1]
  return before?.kind === 'and' || listed.things.nextEdge.includes(before?.key ?? '')
}

/** "3 coaches need hoodies. Black, M and L. COACH on the back": said before anything is to be put on, it is the garment's. */
const isOfBareGarment = (walk: Walk, item: Hue): boolean => {
  const [id, ...more] = [...walk.fresh]
  const bare = id !== undefined && more.length === 0 && walk.draft.garments[id]?.colour === undefined
  const marked = walk.groups.length > 0 || Object.values(walk.draft.marks).some((mark) => mark.wanted !== false)
  const clear = id !== undefined && bare && !marked && item.readings === undefined && walk.negated.length === 0
  if (clear) putGarment(walk, id, { colour: item.id })
  return clear
}

/** "Silver glitter is better": a colour beside a class is vinyl's, where all that is put on is of one kind. */
const isVinylHue = (walk: Walk, item: Hue): boolean => {
  const at = placeOf(walk, item)
  const beside = [walk.items[at - 1], walk.items[at + 1]].some((one) => one?.kind === 'class' || one?.kind === 'vinyl')
  const kinds = new Set(Object.values(walk.draft.marks).flatMap((mark) => (mark.wanted === false ? [] : [mark.content])))
  return beside && kinds.size === 1 && headAhead(walk, at) === null
}

const printed: ReadonlySet<Item['kind']> = new Set(['content', 'text', 'word'])

/** "…, kelly green with white numbers": the colour of a garment that has none yet, with what is put on behind it. */
const isGarmentsHue = (walk: Walk, item: Hue): boolean => {
  const at = placeOf(walk, item)
  const id = garmentOf(walk)
  if (walk.items[at + 1]?.kind !== 'with' || id === null || walk.draft.garments[id]?.colour !== undefined) return false
  const ahead = walk.items.slice(at + 2, at + 7)
  const head = ahead.findIndex((one) => printed.has(one.kind))
  const made = ahead.slice(0, head).every((one) => ['colour', 'class', 'other', 'length', 'figure'].includes(one.kind))
  if (head < 1 || !made) return false
  flush(walk)
  walk.target = { kind: 'garment', id }
  colourGarment(walk, id, item)
  return true
}

/** "Clear AB please": a colour that only stones have is that of those that are there. */
const isStonesHue = (walk: Walk, item: Hue): boolean => {
  if (!stonesOnly.includes(item.id)) return false
  speakOf(walk, 'stones')
  for (const group of walk.groups) stonesOf(group).colour = item.id
  return walk.groups.length > 0
}

/** A colour where nothing is spoken of: what has it can only be one thing, or it waits for the end of the message. */
const colourNothing = (walk: Walk, item: Hue): void => {
  if (isStonesHue(walk, item)) return
  if (isVinylHue(walk, item)) {
    walk.target = { kind: 'mark' }
    colourMark(walk, item)
    return
  }
  if (!isOfBareGarment(walk, item)) walk.loose.push(item)
}

/** Gives a colour to what is being spoken of. */
export const colourTarget = (walk: Walk, item: Extract<Item, { kind: 'colour' }>): void => {
  const { target } = walk
  switch (target.kind) {
    case 'garment':
      colourGarment(walk, target.id, item)
      return
    case 'mark':
      colourMark(walk, item)
      return
    case 'edge':
      if (target.edge.colour !== undefined && !target.shadow && isNextEdge(walk, item)) startEdge(walk, false)
      if (walk.target.kind === 'edge') walk.target.edge.colour = item.id
      return
    case 'stones':
      for (const group of currentGroups(walk)) stonesOf(group).colour = stoneColours[item.id] ?? item.id
      return
    case 'make':
      if (walk.make !== null) walk.make.colour = item.id
      return
    case 'part':
      return
    case 'none':
      colourNothing(walk, item)
  }
}
