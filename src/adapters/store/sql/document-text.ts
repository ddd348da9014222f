/** A part of a document, one entry of a list, with its JSON text. */
type Part = { readonly text: string; readonly value: unknown }

/** The lists of a document in parts, by name: what the next version of it is written and read with. */
export type Parts = ReadonlyMap<string, readonly Part[]>

export const noParts: Parts = new Map()

/** A document as JSON text, and its parts. */
export type Written = { readonly text: string; readonly parts: Parts }
export type Read = { readonly document: unknown; readonly parts: Parts }

type How<K> = { readonly keyOf: (part: Part) => unknown; readonly make: (key: K) => Part }

/** The wanted ones in their order: those that are known already as they are, all others made. Most stand where they stood. */
const partsOf = <K>(wanted: readonly K[], known: readonly Part[], { keyOf, make }: How<K>): readonly Part[] => {
  const state: { next: number; places: ReadonlyMap<unknown, number> | null } = { next: 0, places: null }
  const find = (key: K): number => {
    const next = known[state.next]
    if (next !== undefined && keyOf(next) === key) return state.next
    state.places ??= new Map(known.map((part, at) => [keyOf(part), at]))
    return state.places.get(key) ?? -1
  }
  return wanted.map((key) => {
    const at = find(key)
    const part = known[at]
    if (part === undefined) return make(key)
    state.next = at + 1
    return part
  })
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null

/** Lists of objects are kept in parts; others are short here. */
const isList = (value: unknown): value is readonly object[] => Array.isArray(value) && value.length > 0 && value.every(isObject)

const written = (value: unknown): Part => ({ text: JSON.stringify(value) ?? 'null', value })
const entryOf = ({ value }: Part): unknown => value
const lineOf = ({ text }: Part): string => text

const opening = ':['

/**
 * JSON text of a document in which each entry of its lists has a line of its own. What was known before and is the very same object is
 * not written anew, so no part may be changed once it was in a document.
 */
export const writeDocument = (document: unknown, known: Parts): Written => {
  if (!isObject(document) || Array.isArray(document)) return { text: JSON.stringify(document ?? null), parts: noParts }
  const parts = new Map<string, readonly Part[]>()
  const members: [string, unknown][] = Object.entries(document)
  const lines = members.flatMap(([name, value]) => {
    if (!isList(value)) return value === undefined ? [] : [`${JSON.stringify(name)}:${JSON.stringify(value)}`]
    const list = partsOf(value, known.get(name) ?? [], { keyOf: entryOf, make: written })
    parts.set(name, list)
    return [`${JSON.stringify(name)}${opening}\n${list.map(lineOf).join('\n,')}\n]`]
  })
  return { text: `{\n${lines.join('\n,')}\n}`, parts }
}

/** A line is a window on the whole text; what is kept must not keep that. */
const apart = (line: string): string => Buffer.from(line).toString()

const parsed = (line: string): Part => {
  const text = apart(line)
  return { text, value: JSON.parse(text) }
}

const bare = (line: string): string => (line.startsWith(',') ? line.slice(1) : line)

/** What `writeDocument` wrote, or JSON text of one line. Parts that were known before and have the same text are the same objects. */
export const readDocument = (text: string, known: Parts): Read => {
  if (!text.startsWith('{\n')) return { document: JSON.parse(text), parts: noParts }
  if (!text.endsWith('\n}')) throw new SyntaxError('a kept document is cut off')
  const lines = text.split('\n').slice(1, -1).map(bare)
  const parts = new Map<string, readonly Part[]>()
  const members: [string, unknown][] = []
  for (let at = 0; at < lines.length; at += 1) {
    const line = lines[at] ?? ''
    if (!line.endsWith(opening)) {
      members.push(...Object.entries<unknown>(JSON.parse(`{${line}}`)))
      continue
    }
    const end = lines.indexOf(']', at)
    if (end < 0) throw new SyntaxError(`a list of a kept document has no end: ${line}`)
    const name: string = JSON.parse(line.slice(0, -opening.length))
    const list = partsOf(lines.slice(at + 1, end), known.get(name) ?? [], { keyOf: lineOf, make: parsed })
    parts.set(name, list)
    members.push([name, list.map(entryOf)])
    at = end
  }
  return { document: Object.fromEntries(members), parts }
}
