import type { Draft } from '../../draft.ts'
import type { Patch } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, nothing, type Scene, span } from '../list/change.ts'
import { isLetterApart } from '../text/near-names.ts'
import { fold, isCapital, isWord, type Token } from '../text/tokens.ts'
import { nameAt, type Ref, refsIn, rowsByName } from '../whom/refs.ts'

/** "Sorry, it's Liddell with two Ls": a name one letter away from one on the list takes its place. */
export const readNearName = (tokens: readonly Token[], { draft }: Scene): Change => {
  for (const [index, token] of tokens.entries()) {
    if (!isWord(token, ...listed.changes.spelledSo)) continue
    const at = isWord(tokens[index + 1], ...listed.changes.the) ? index + 2 : index + 1
    const only = nearTo(tokens, at, draft)
    if (only !== null) return { ...nothing, patches: [only], taken: span(index, at + 1) }
  }
  return nothing
}

/** The one name of the list that a word is near to, or that it writes with its accents; of somebody named right before it must be theirs. */
const nearTo = (tokens: readonly Token[], at: number, draft: Draft): Patch | null => {
  const fresh = tokens[at]
  if (fresh === undefined || !isCapital(fresh)) return null
  const accented = /[^\x20-\x7e]/.test(fresh.text)
  const isMeant = (word: string): boolean =>
    fold(word) === fold(fresh.text) ? accented && /^[\x20-\x7e]+$/.test(word) : isLetterApart(fold(word), fold(fresh.text))
  if (!accented && rowsByName(draft.rows, fresh.text).length > 0) return null
  const near = Object.entries(draft.rows).flatMap(([key, { name = '' }]) =>
    name.split(' ').flatMap((word) => (isMeant(word) ? [{ key, name: name.replace(word, fresh.text) }] : [])),
  )
  const [only, ...more] = near
  const before = refsIn(tokens.slice(Math.max(0, at - 6), at), draft.rows).at(-1)
  const other = before !== undefined && only !== undefined && !before.keys.includes(only.key)
  return only === undefined || more.length > 0 || other ? null : { path: ['rows', only.key, 'name'], value: only.name }
}

/** "it's Katelyn, not Kaitlyn", "se escribe Itzel, no Itsel": a name spelled otherwise. */
export const readSpelling = (tokens: readonly Token[], { draft }: Scene): Change => {
  const no = tokens.findIndex((token, index) => isWord(token, ...listed.changes.not) && isCapital(tokens[index + 1]))
  const old = no < 0 ? [] : rowsByName(draft.rows, tokens[no + 1]?.text ?? '')
  const [key] = old
  const before = tokens[no - 1]?.text === ',' ? no - 2 : no - 1
  const fresh = tokens[before]
  if (key === undefined || old.length !== 1 || fresh === undefined || !isCapital(fresh)) return nothing
  const wrong = tokens[no + 1]?.text ?? ''
  const name = (draft.rows[key]?.name ?? '')
    .split(' ')
    .map((word) => (fold(word) === fold(wrong) ? fresh.text : word))
    .join(' ')
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name }], taken: span(before, no + 2) }
}

const renameWords: readonly string[] = listed.changes.rename

/** "change Beto to Roberto", "12 is spelled Ayda", "Pat is spelled Patt", "Ana se escribe Anna": a name that is there takes another spelling. */
export const readRename = (tokens: readonly Token[], { draft }: Scene): Change => {
  const verb = tokens.some((token) => isWord(token, ...listed.changes.renames))
  const spelling = tokens.some((token) => isWord(token, ...listed.changes.spells))
  const refs =
    verb || spelling ? refsIn(tokens, draft.rows).filter((one) => (one.by === 'name' || spelling) && one.keys.length === 1) : []
  const found = refs.flatMap((ref) => renamedAt(tokens, ref, draft) ?? [])
  return {
    ...nothing,
    patches: found.flatMap(({ patches }) => patches),
    taken: new Set(found.flatMap(({ taken }) => [...taken])),
  }
}

/** The name said right behind the old one, or where spelling is spoken of the one that is near to it. */
const freshName = (tokens: readonly Token[], ref: Ref): { readonly name: string; readonly to: number } | null => {
  let at = ref.to
  while (isWord(tokens[at], ...renameWords)) at += 1
  const named = at > ref.to ? nameAt(tokens, at, () => false) : null
  return named ?? nearBehind(tokens, ref)
}

/** "Anel se escribe con doble ele: Anell O'Farrill": of what is said behind the name that is a letter away. */
const nearBehind = (tokens: readonly Token[], ref: Ref): { readonly name: string; readonly to: number } | null => {
  const old = tokens.slice(ref.from, ref.to).map((token) => fold(token.text))
  for (const at of tokens.keys()) {
    const fresh = at < ref.to ? null : nameAt(tokens, at, () => false)
    if (fresh?.name.split(' ').some((word) => old.some((one) => isLetterApart(one, fold(word)))) === true) return fresh
  }
  return null
}

/** "McIntyre" for Mcintyre: the same letters, of which more are capitals inside a word. */
const isWrittenAnew = (had: string, fresh: string): boolean =>
  had.toLowerCase() === fresh.toLowerCase() && had !== fresh && /\p{Ll}\p{Lu}/u.test(fresh)

/** The spelling that follows a reference: "… to Roberto", "… is spelled Ayda". */
const renamedAt = (tokens: readonly Token[], ref: Ref, draft: Draft): Change | null => {
  const key = ref.keys[0] ?? ''
  const fresh = freshName(tokens, ref)
  if (ref.by === 'name' && isWord(tokens[ref.from - 1], ...listed.changes.spells)) return null
  if (fresh === null) return null
  if (isWrittenAnew(draft.rows[key]?.name ?? '', fresh.name))
    return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: fresh.name }], taken: span(ref.from, fresh.to) }
  if (rowsByName(draft.rows, fresh.name).includes(key)) return null
  const old = tokens.slice(ref.from, ref.to).map((token) => fold(token.text))
  const words = (draft.rows[key]?.name ?? '').split(' ')
  if (ref.by === 'number' && words.length > 1 && !fresh.name.includes(' ')) return null
  const name =
    ref.by === 'name' && words.length > old.length && fresh.name.split(' ').length < words.length
      ? words.map((word) => (old.includes(fold(word)) ? fresh.name : word)).join(' ')
      : fresh.name
  return { ...nothing, patches: [{ path: ['rows', key, 'name'], value: name }], taken: span(ref.from, fresh.to) }
}
