import { listed } from '../../words/languages.ts'
import { type Change, isAdd, joined, nothing, type Scene, sized, span } from '../list/change.ts'
import { isPlainSize, sizeAt } from '../sizes/sizes.ts'
import { fold, isNumber, isWord, type Token } from '../text/tokens.ts'
import { isListed, nameAt, type Ref, refAt } from '../whom/refs.ts'
import { whichRow } from './drop-rows.ts'
import { namedAt, toldOfNobody } from './naming.ts'
import { newNumber } from './new-number.ts'

const sizeVerbs: readonly string[] = listed.changes.size

const newSize = (tokens: readonly Token[], from: number) => {
  let at = from
  while (at < from + 8 && isWord(tokens[at], ...sizeVerbs) && sizeAt(tokens, at) === null) at += 1
  const size = sizeAt(tokens, at)
  return size?.size === undefined || !isPlainSize(tokens, at, size) ? null : size
}

/** What is said right after a reference of one row: a size, another number, another name. */
const changeOf = (tokens: readonly Token[], ref: Ref, { key, scene }: { key: string; scene: Scene }): Change | null => {
  const size = newSize(tokens, ref.to)
  const had = scene.draft.rows[key]
  const same = size?.size === had?.size && (size?.fit === undefined || size.fit === had?.fit)
  if (size !== null && !same) return { ...nothing, patches: sized(key, size), taken: span(ref.from, size.to) }
  const number = newNumber(tokens, ref.to)
  if (number !== null) return withAlso(tokens, numbered(key, number.number, span(ref.from, number.to)), key)
  const name = namedAt(tokens, { ref, key, scene })
  return name === null ? null : withSize(tokens, name, key)
}

const numbered = (key: string, number: string, taken: ReadonlySet<number>): Change => ({
  ...nothing,
  patches: [{ path: ['rows', key, 'number'], value: number }],
  taken,
})

/** "Bo is 77 and a medium": a size said of the same player in the same breath. */
const withAlso = (tokens: readonly Token[], found: Change, key: string): Change => {
  const to = Math.max(...found.taken) + 1
  const goesOn = isWord(tokens[to], ...listed.changes.also) || tokens[to]?.text === ','
  const size = goesOn ? newSize(tokens, to + 1) : null
  const patches = size === null ? [] : sized(key, size)
  return size === null
    ? found
    : { ...found, patches: [...found.patches, ...patches], taken: new Set([...found.taken, ...span(to, size.to)]) }
}

/** "el 8 es Ulíses con acento y talla G": the size said of the same player in the same breath. */
const withSize = (tokens: readonly Token[], found: Change, key: string): Change => {
  const to = Math.max(...found.taken) + 1
  const ahead = tokens.slice(to, to + 6).findIndex((token) => isWord(token, ...listed.changes.sizeNoun))
  const size = ahead < 0 ? null : sizeAt(tokens, to + ahead)
  if (size?.size === undefined) return found
  return { ...found, patches: [...found.patches, ...sized(key, size)], taken: new Set([...found.taken, ...span(to, size.to)]) }
}

/** What is said right after a reference; of several rows with that number or name it must be asked which is meant. */
const changeAt = (tokens: readonly Token[], ref: Ref, scene: Scene): Change | null => {
  if (isListed(tokens, ref)) return null
  const changes = ref.keys.flatMap((key) => {
    const change = changeOf(tokens, ref, { key, scene })
    return change === null ? [] : [{ key, change }]
  })
  const [first] = changes
  if (first === undefined || changes.length === 1) return first?.change ?? null
  return {
    ...nothing,
    open: [
      whichRow(
        changes.map(({ key, change }) => ({ key, patches: change.patches })),
        scene,
      ),
    ],
    taken: first.change.taken,
  }
}

const handing: readonly string[] = listed.changes.handing

/** "Give the 7 to Ada", "el 21 ahora lo usa Beto": a number that somebody of the list who is named behind it takes. */
const handedAt = (tokens: readonly Token[], from: number, { draft }: Scene): Change | null => {
  const number = tokens[from]
  if (number === undefined || !isNumber(number) || !/^\d{1,3}$/.test(number.text)) return null
  let at = from + 1
  while (at < from + 6 && isWord(tokens[at], ...handing)) at += 1
  const hands = isWord(tokens[at - 1], ...listed.changes.hands)
  const to = hands ? refAt(tokens, at, draft.rows) : null
  const [key, ...more] = to?.by === 'name' ? to.keys : []
  return to === null || key === undefined || more.length > 0 ? null : numbered(key, number.text, span(from, to.to))
}

/** What begins at a token: a change of a row, or words about a number that nobody wears, of which nothing is taken. */
const changeFrom = (
  tokens: readonly Token[],
  at: number,
  scene: Scene,
): { readonly change: Change | null; readonly to: number } => {
  const found = refAt(tokens, at, scene.draft.rows)
  const added = isAdd(tokens[at - 1]) && (found?.by !== 'name' || isNumber(tokens[found.to]))
  const ref = added ? null : found
  const handed = handedAt(tokens, at, scene)
  if (handed !== null) return { change: handed, to: Math.max(...handed.taken) + 1 }
  if (ref === null) {
    const to = Object.keys(scene.draft.rows).length === 0 ? null : toldOfNobody(tokens, at)
    return to === null ? { change: null, to: at + 1 } : { change: { ...nothing, taken: span(at, to) }, to }
  }
  const change = changeAt(tokens, ref, scene)
  return { change, to: change === null ? ref.to : Math.max(...change.taken) + 1 }
}

const theirs: readonly string[] = listed.changes.theirOwn

/** "Number 7 changed to 17, her name is Beau", "… se llama Beatriz": the name of whoever was spoken of just before. */
const theirName = (tokens: readonly Token[], at: number, { key, scene }: { key: string; scene: Scene }): Change | null => {
  if (!isWord(tokens[at], ...theirs) || !isWord(tokens[at + 1], ...listed.changes.nameNoun)) return null
  const from = isWord(tokens[at + 2], ...listed.changes.nameIs) ? at + 2 : at + 1
  const start = isWord(tokens[from + 1], ...listed.changes.be) ? from + 2 : from + 1
  const name = nameAt(tokens, start, () => false)
  const had = scene.draft.rows[key]?.name
  if (name === null || (had !== undefined && fold(had) === fold(name.name))) return null
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name.name }], taken: span(at, name.to) }
}

/** What is said right behind players of the list, one after another: another size, number or name. */
export const readChanges = (tokens: readonly Token[], scene: Scene): Change => {
  const found: Change[] = []
  let key: string | undefined
  let at = 0
  while (at < tokens.length) {
    const name = key === undefined ? null : theirName(tokens, at, { key, scene })
    const { change, to } = name === null ? changeFrom(tokens, at, scene) : { change: name, to: Math.max(...name.taken) + 1 }
    if (change !== null) found.push(change)
    key = change?.patches[0]?.path[1] ?? key
    at = to
  }
  return joined(found)
}
