import type { Conversation, Reading } from '../conversation.ts'
import type { Draft } from '../draft.ts'
import type { Patch } from '../patch.ts'
import { listed, spoken } from '../words/languages.ts'
import { answerAgain } from './answer-again.ts'
import { sentenceWords } from './list/sentence-words.ts'
import { cutAt } from './sizes/sizes.ts'
import { isGivenName } from './text/given-names.ts'
import { anyOf, fold, isCapital, type Token, tokensOf } from './text/tokens.ts'
import { refsIn } from './whom/refs.ts'

type Scene = { readonly draft: Draft; readonly asked: NonNullable<Conversation['asked']>; readonly text: string }

const said = spoken.answers

/** Any of these in an answer, or one of those at its head. */
const within = (anywhere: string, ahead: string): RegExp => new RegExp(`\\b${anywhere}\\b|^${ahead}\\b`)

const later = anyOf(said.later)
const none = within(said.none, said.no)
const asIs = within(said.asIs, said.yes)
/** Words that take the other make whose price was told. */
const taken = new RegExp(`^${said.taken}\\b`)
const unknown = anyOf(said.unknown)
const first = anyOf(said.first)
const second = anyOf(said.second)
const refuses = new RegExp(`^${said.refuses}(?=$|[,.;!])`)
const everyone = anyOf(said.everyone)

const byOrder = (folded: string, readings: readonly Reading[]): Reading | undefined => {
  if (first.test(folded)) return readings[0]
  return second.test(folded) ? readings[1] : undefined
}

/** Words that choose one of the answers offered. */
const choiceWords: readonly (readonly [string, RegExp])[] = [
  ['pieces', new RegExp(`\\b${said.pieces}`)],
  ['numbers', anyOf(said.numbers)],
  ['garments', anyOf(said.garments)],
  ['letters', anyOf(said.letters)],
]

const patchesOf = (readings: readonly Reading[] | undefined, value: string): readonly Patch[] =>
  readings?.find((reading) => reading.value === value)?.patches ?? []

const leads = new RegExp(`^(?:${said.leads}\\s+)(?:${said.called}\\s+)?`, 'i')

const isShort = (text: string): boolean => text.length <= 60 && !text.includes('\n') && !text.includes('?')

const sentence = anyOf(said.sentence)
const named = new RegExp(`^(?:\\S+ ){0,3}${said.names}\\b`)

/** "looks good", "size M for all": words of a sentence, and no capital after the first letter that would make them a name. */
const isSentence = (name: string): boolean => {
  const [, ...words] = name.split(/\s+/)
  return sentence.test(fold(name)) && !words.some((word) => /^\p{Lu}\p{L}/u.test(word))
}

/** A short answer is the name that was asked for, as it is written; what speaks of something else is not, unless a name is announced. */
const nameAnswer = (text: string, path: string): readonly Patch[] => {
  const name = text
    .trim()
    .replace(leads, '')
    .replace(/[.!,]+$/, '')
    .trim()
  const refusal = refuses.test(fold(name)) || (isSentence(name) && !named.test(fold(text.trim())))
  return isShort(text) && !refusal && /\p{L}{2}/u.test(name) && !unknown.test(fold(text)) ? [{ path: [path], value: name }] : []
}

const answerRaise = ({ asked, text, draft }: Scene): readonly Patch[] => {
  const folded = fold(text).trim()
  const ordered = byOrder(folded, asked.readings ?? [])
  if (ordered !== undefined) return ordered.patches
  if (asked.code === 'drop') {
    const keys = refsIn(tokensOf(text), draft.rows).flatMap((ref) => (ref.keys.length === 1 ? ref.keys : []))
    const rows = asked.readings?.filter((reading) => reading.patches.some((patch) => keys.includes(patch.path[1] ?? ''))) ?? []
    return rows.flatMap((reading) => reading.patches)
  }
  if (asked.code === 'count')
    return asked.readings?.find((reading) => new RegExp(`\\b${reading.value}\\b`).test(folded))?.patches ?? []
  const worded = choiceWords.find(([, words]) => words.test(folded))?.[0]
  if (worded !== undefined && patchesOf(asked.readings, worded).length > 0) return patchesOf(asked.readings, worded)
  return asIs.test(folded) ? patchesOf(asked.readings, 'as-is') : []
}

const answerFit = (text: string): readonly Patch[] => {
  const tokens = tokensOf(text)
  const cut = tokens.map((_, at) => cutAt(tokens, at)).find((found) => found !== null)
  return cut === null || cut === undefined ? [] : [{ path: ['common', 'fit'], value: cut.fit }]
}

const answerLater = ({ asked, text }: Scene): readonly Patch[] => {
  const folded = fold(text).trim()
  if (later.test(folded)) return patchesOf(asked.readings, 'later')
  return none.test(folded) ? patchesOf(asked.readings, 'none') : []
}

/** A face is chosen by the words of its id; the one with most of them, where no other has as many. */
const answerFace = ({ asked, text }: Scene): readonly Patch[] => {
  const said = new Set(tokensOf(text).map(({ key }) => key))
  const counted = (asked.readings ?? []).map((reading) => ({
    patches: reading.patches,
    heard: reading.value.split('-').filter((part) => said.has(part)).length,
  }))
  const most = Math.max(0, ...counted.map(({ heard }) => heard))
  const best = counted.filter(({ heard }) => heard === most)
  return most > 0 && best.length === 1 ? (best[0]?.patches ?? []) : []
}

/** "Adult", "the youth ones": of the cuts that were offered the one that is named. */
const answerCut = ({ asked, text }: Scene): readonly Patch[] => {
  const tokens = tokensOf(text)
  const cut = tokens.map((_, at) => cutAt(tokens, at)).find((found) => found !== null)
  return patchesOf(asked.readings, cut?.fit ?? '')
}

const inAll = anyOf(spoken.anew.inAll)
const besides = anyOf(spoken.anew.besides)

/** "11", "5 in all", "5 more": how many it shall be. */
const answerAmount = (scene: Scene): readonly Patch[] => {
  const [all, more] = scene.asked.readings ?? []
  const folded = fold(scene.text)
  if (inAll.test(folded)) return all?.patches ?? []
  if (besides.test(folded)) return more?.patches ?? []
  return answerRaise({ ...scene, asked: { ...scene.asked, code: 'count' } })
}

/** A name is chosen by writing it as it was offered. */
const answerWritten = ({ asked, text }: Scene): readonly Patch[] =>
  asked.readings?.find(({ value }) => fold(value) === fold(text).trim().replace(/[.!]$/, ''))?.patches ?? []

const particles: readonly string[] = listed.changes.particles

/** "Dana Whitlow", "Ana de la Rosa", "dana whitlow": a name and nothing else, no sentence of somebody on the list. */
const isPerson = (text: string): boolean => {
  const words = tokensOf(text.trim().replace(leads, '')).filter(({ text: sign }) => sign !== '.' && sign !== '-' && sign !== "'")
  const small = words.filter((token) => !isCapital(token) && !particles.includes(token.key))
  const isName = (token: Token): boolean => token.kind === 'word' && (isGivenName(token) || !sentenceWords.has(token.key))
  return words.length > 0 && words.length <= 5 && (small.length === 0 || (small.length === words.length && small.every(isName)))
}

/** What a message says in answer to the question that was put, where its words alone would not say it. */
export const readAnswer = (scene: Scene): readonly Patch[] => {
  const { asked, text } = scene
  switch (asked.code) {
    case 'ask-team':
      return nameAnswer(text, 'team')
    case 'ask-who':
      return isPerson(text) ? nameAnswer(text, 'orders') : []
    case 'ask-fit':
      return answerFit(text)
    case 'ask-sizes':
    case 'ask-numbers':
    case 'ask-names':
      return answerLater(scene)
    case 'ask-garment-sizes':
      return everyone.test(fold(text)) ? patchesOf(asked.readings, 'everyone') : []
    case 'ask-cloth':
      return unknown.test(fold(text)) ? patchesOf(asked.readings, 'not-known') : []
    default:
      return readChosen(scene)
  }
}

/** What a message chooses of the readings that were offered. */
const readChosen = (scene: Scene): readonly Patch[] => {
  const { asked, text } = scene
  switch (asked.code) {
    case 'leaving':
    case 'sizes-again':
    case 'whose':
      return answerAgain(scene)
    case 'name-order':
    case 'exchange':
      return answerWritten(scene)
    case 'face':
      return answerFace(scene)
    case 'fit':
      return answerCut(scene)
    case 'amount':
      return answerAmount(scene)
    case 'variant':
      return taken.test(fold(text).trim()) ? patchesOf(asked.readings, 'take-variant') : []
    case 'duplicate-number':
    case 'same-surname':
    case 'count':
    case 'drop':
    case 'needBy':
    case 'colour':
    case 'colour-of':
    case 'numbers-or-pieces':
      return answerRaise(scene)
    default:
      return []
  }
}
