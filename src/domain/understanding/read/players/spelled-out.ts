import type { Draft } from '../../draft.ts'
import { preview } from '../../patch.ts'
import { listed } from '../../words/languages.ts'
import { type Change, joined, nothing, type Scene, span } from '../list/change.ts'
import { sentenceWords } from '../list/sentence-words.ts'
import { isGivenName } from '../text/given-names.ts'
import { isAlike } from '../text/near-names.ts'
import { type Stretch, sentencesOf } from '../text/statements.ts'
import { fold, isCapital, isWord, type Token } from '../text/tokens.ts'
import { nameAt, type Ref, refsIn, rowsByName } from '../whom/refs.ts'
import { isWrittenSo, type Remark, remarksIn, respelledBy, speaksOfSpelling } from './spelling-remarks.ts'

type Sentence = {
  readonly tokens: readonly Token[]
  readonly remarks: readonly Remark[]
  readonly refs: readonly Ref[]
  readonly draft: Draft
}

type Written = Stretch & { readonly key: string; readonly name: string }

const within = (stretches: readonly Stretch[], at: number): boolean => stretches.some(({ from, to }) => at >= from && at < to)

const isNoName = (token: Token): boolean =>
  isWord(token, ...listed.told.beforeLetter, ...listed.changes.spells) || (sentenceWords.has(token.key) && !isGivenName(token))

/** A name as it is written at a token, in small letters where the whole sentence is. */
const freshAt = ({ tokens, refs, remarks, draft }: Sentence, at: number): (Stretch & { readonly text: string }) | null => {
  const token = tokens[at]
  const hasCapitals = tokens.some((one) => isCapital(one) && one.text.length > 2)
  if (token?.kind !== 'word' || token.text.length < 3 || within(remarks, at) || isWord(tokens[at - 1], ...listed.changes.not))
    return null
  const own = within(refs, at) ? rowsByName(draft.rows, token.text) : []
  if (
    own.some((key) => draft.rows[key]?.name?.split(' ').includes(token.text)) ||
    (within(refs, at) && !/[^\x20-\x7e]/.test(token.text))
  )
    return null
  const named = isCapital(token) ? nameAt(tokens, at, isNoName) : null
  if (named !== null) return { from: at, to: named.to, text: named.name }
  return hasCapitals || isNoName(token) ? null : { from: at, to: at + 1, text: token.text }
}

const capitalLike = (had: string, fresh: string): string =>
  /^\p{Lu}/u.test(had) && /^\p{Ll}/u.test(fresh) ? `${fresh.slice(0, 1).toUpperCase()}${fresh.slice(1)}` : fresh

/** A name in which the word that is like a fresh one gives way to it; null where none is. */
const replacedIn = (had: string, fresh: string): string | null => {
  const [words, own] = [had.split(' '), fresh.split(' ')]
  const at = words.findIndex((word) => own.some((one) => isAlike(word, one)))
  if (at < 0) return null
  return own.length >= words.length ? capitalLike(had, fresh) : words.with(at, capitalLike(words[at] ?? '', fresh)).join(' ')
}

const keysOf = (refs: readonly Ref[]): readonly string[] => [
  ...new Set(refs.flatMap(({ keys }) => (keys.length === 1 ? keys : []))),
]

/** The names in a sentence that are like one of the list, of those it names where it names somebody. */
const likeOnes = (sentence: Sentence): readonly Written[] => {
  const { rows } = sentence.draft
  const named = keysOf(sentence.refs)
  const pool = named.length > 0 ? named : Object.keys(rows)
  return [...sentence.tokens.keys()].flatMap((at) => {
    const fresh = freshAt(sentence, at)
    if (fresh === null || !isWrittenSo(fresh.text, sentence.remarks)) return []
    return pool.flatMap((key) => {
      const name = replacedIn(rows[key]?.name ?? '', fresh.text)
      return name === null ? [] : [{ ...fresh, key, name }]
    })
  })
}

/** "Nayeli no se escribe así, es Xóchitl": the only strange name behind who is named, where spelling is spoken of. */
const strangeOne = (sentence: Sentence): readonly Written[] => {
  const [key, ...others] = keysOf(sentence.refs)
  if (key === undefined || others.length > 0 || !speaksOfSpelling(sentence.tokens)) return []
  const last = Math.max(...sentence.refs.map(({ to }) => to))
  const found = [...sentence.tokens.keys()].flatMap((at) => {
    const fresh = at >= last && isCapital(sentence.tokens[at]) ? freshAt(sentence, at) : null
    return fresh === null ? [] : [{ ...fresh, key, name: fresh.text }]
  })
  const whole = (sentence.draft.rows[key]?.name ?? '').split(' ').length === 1
  return whole && found.length === 1 && isWrittenSo(found[0]?.name ?? '', sentence.remarks) ? found : []
}

/** "Anel se escribe con doble ele al final": no name is written, and the remark alone says what is meant. */
const byRemark = ({ tokens, remarks, refs, draft }: Sentence): readonly Written[] => {
  const [ref, ...more] = refs
  const [key] = ref?.keys ?? []
  if (ref === undefined || key === undefined || more.length > 0 || ref.keys.length > 1) return []
  const had = (draft.rows[key]?.name ?? '').split(' ')
  const said = ref.by === 'name' && ref.to === ref.from + 1 ? fold(tokens[ref.from]?.text ?? '') : ''
  const at = ref.by === 'number' && had.length === 1 ? 0 : had.findIndex((word) => fold(word) === said)
  const ends = tokens.some((token) => isWord(token, ...listed.again.end))
  const fresh = at < 0 ? null : respelledBy(had[at] ?? '', remarks, ends)
  return fresh === null ? [] : [{ key, name: had.with(at, fresh).join(' '), from: ref.from, to: ref.from }]
}

const isSame = (one: Written, other: Written): boolean => one.key === other.key && one.name === other.name

/** What is written goes before what is remarked of its letters. */
const readSentence = (sentence: Sentence): Change => {
  const { tokens, remarks, refs } = sentence
  const like = likeOnes(sentence)
  const strange = like.length > 0 ? [] : strangeOne(sentence)
  const written = like.length + strange.length > 0 ? [...like, ...strange] : byRemark(sentence)
  const [only] = written
  if (only === undefined || written.some((one) => !isSame(one, only))) return nothing
  const verbs = [...tokens.keys()]
    .filter((at) => isWord(tokens[at], ...listed.changes.spells))
    .map((at) => ({ from: at, to: at + 1 }))
  const places = [...remarks, ...refs, ...verbs, only]
  const from = Math.min(...places.map((one) => one.from))
  const to = Math.max(...places.map((one) => one.to))
  const taken = [...span(from, Math.min(to, tokens.length))].filter((at) => at < only.from || at >= only.to)
  return { ...nothing, patches: [{ path: ['rows', only.key, 'name'], value: only.name }], taken: new Set(taken) }
}

/**
 * A name that is spelled out: "Nayeli no se escribe así, es Nallely con doble l", "it's Mackenzie with a k", "Sofía con f, no con ph". The
 * name that is written counts, and its letters alone only where none is.
 */
export const readSpelledOut = (tokens: readonly Token[], scene: Scene): Change => {
  let draft = scene.draft
  const found = sentencesOf(tokens).map(({ from, to }) => {
    const own = tokens.slice(from, to)
    const remarks = remarksIn(own)
    if (remarks.length === 0 && !speaksOfSpelling(own)) return nothing
    const change = readSentence({ tokens: own, remarks, refs: refsIn(own, draft.rows), draft })
    draft = preview(draft, change.patches)
    return { ...change, taken: new Set([...change.taken].map((at) => at + from)) }
  })
  return joined(found)
}
