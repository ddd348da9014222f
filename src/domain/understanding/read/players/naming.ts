import { listed } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { sentenceWords } from '../list/sentence-words.ts'
import { sizeAt } from '../sizes/sizes.ts'
import { isGivenName } from '../text/given-names.ts'
import { fold, isCapital, isNumber, isWord, type Token } from '../text/tokens.ts'
import { nameAt, pieces, type Ref } from '../whom/refs.ts'

const helping: readonly string[] = listed.changes.helping
const saying: readonly string[] = listed.changes.saying
const being: readonly string[] = listed.changes.being
/** Where a name that is written as it was said comes to its end. */
const ending: readonly string[] = listed.changes.ending

/** `helped`: told by "should say" and the like; "Beto says hi" tells no name of Beto. */
type Told = { readonly at: number; readonly literal: boolean; readonly helped: boolean }

/** Where the name begins that is told of a player, and whether it is told letter by letter ("should say", "debe decir"). */
const toldAt = (tokens: readonly Token[], from: number): Told | null => {
  let at = from
  while (at < from + 4 && isWord(tokens[at], ...helping)) at += 1
  if (isWord(tokens[at], ...saying))
    return { at: tokens[at + 1]?.text === ':' ? at + 2 : at + 1, literal: true, helped: at > from }
  const should = isWord(tokens[at - 1], ...listed.changes.should) && isCapital(tokens[at])
  if (isWord(tokens[at], ...being)) return { at: at + 1, literal: false, helped: at > from }
  return should && at > from ? { at, literal: false, helped: true } : null
}

/** Words in quotation marks, else capitals, else one word that ends its clause. */
const literalAt = (tokens: readonly Token[], at: number): { readonly name: string; readonly to: number } | null => {
  const words = (from: number, to: number) => tokens.slice(from, to).map(({ text }) => text)
  if (tokens[at]?.text === '"') {
    const close = tokens.findIndex((token, index) => index > at && index < at + 8 && token.text === '"')
    return close > at + 1 ? { name: words(at + 1, close).join(' '), to: close + 1 } : null
  }
  const capitals = isCapital(tokens[at])
    ? (nameAt(tokens, at, () => false) ?? { name: tokens[at]?.text ?? '', to: at + 1 })
    : null
  if (capitals !== null) return capitals
  const [word, next] = [tokens[at], tokens[at + 1]]
  const last = next === undefined || next.kind !== 'word' || ending.includes(next.key)
  return word?.kind === 'word' && last ? { name: word.text, to: at + 1 } : null
}

const isNoName = (token: Token): boolean => sentenceWords.has(token.key) && !isGivenName(token)

/** Of a name of several words only the word that was named gives way to another. */
const inPlace = (had: string | undefined, said: readonly Token[], fresh: string): string => {
  const named = new Set(said.map(({ text }) => fold(text.replace(/'s$/, ''))))
  const words = (had ?? '').split(' ')
  const others = words.filter((word) => !named.has(fold(word)))
  if (others.length === 0 || others.length === words.length) return fresh
  return words.map((word) => (named.has(fold(word)) ? fresh : word)).join(' ')
}

export type Whose = { readonly ref: Ref; readonly key: string; readonly scene: Scene }

/** The name that is told right behind a player: "9 jersey should say Rojas", "9's name is Ayda", "el 9 debe decir Cruz". */
export const namedAt = (tokens: readonly Token[], { ref, key, scene }: Whose): Change | null => {
  const told = toldAt(tokens, ref.to)
  if (told === null || (ref.by === 'name' && !(told.literal && told.helped))) return null
  const had = scene.draft.rows[key]?.name
  const plain = had === undefined || sizeAt(tokens, told.at) !== null ? null : nameAt(tokens, told.at, isNoName)
  const found = told.literal ? literalAt(tokens, told.at) : plain
  if (found === null) return null
  const name = ref.by === 'name' ? inPlace(had, tokens.slice(ref.from, ref.to), found.name) : found.name
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name }], taken: span(ref.from, found.to) }
}

/** "9 jersey should say Cruz" where nobody wears 9: no count and no text for all; where such words end. */
export const toldOfNobody = (tokens: readonly Token[], at: number): number | null => {
  const single = isNumber(tokens[at]) && isWord(tokens[at + 1], ...pieces)
  const told = single ? toldAt(tokens, at + 2) : null
  return told?.literal ? (literalAt(tokens, told.at)?.to ?? null) : null
}
