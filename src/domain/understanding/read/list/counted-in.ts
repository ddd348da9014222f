import type { Draft } from '../../draft.ts'
import { listed, spoken } from '../../words/languages.ts'
import { hasSize, sizeAt } from '../sizes/sizes.ts'
import type { Lexicon } from '../text/lexicon.ts'
import { anyOf, blanked, fold, isNumber, isWord, type Token, tokensOf } from '../text/tokens.ts'
import { isAdd } from './change.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }

/** "2 in L", "2 L": so many of a size; where the figure ends and the size begins. */
const amountAt = (tokens: readonly Token[], at: number): { readonly from: number; readonly to: number } | null => {
  const [figure, link] = [tokens[at], tokens[at + 1]]
  if (!isNumber(figure) || !/^[1-9]\d?$/.test(figure?.text ?? '') || sizeAt(tokens, at) !== null || link?.start === figure?.end)
    return null
  const size = isWord(link, ...listed.players.sizeLink) ? at + 2 : at + 1
  return sizeAt(tokens, size)?.size === undefined ? null : { from: figure?.end ?? 0, to: tokens[size]?.start ?? 0 }
}

/** The garments a sentence is of; a piece that all of the list wear says nothing about what its figures are. */
const isOfOthers = (tokens: readonly Token[], { draft, lexicon }: Scene): boolean => {
  const worn = new Set(Object.values(draft.garments).flatMap(({ kind }) => kind ?? []))
  const kinds = tokens.flatMap(({ key }) => {
    const meaning = lexicon.entries.get(key)
    return meaning?.kind === 'garment' && /s$/.test(key) ? [meaning.id] : []
  })
  return Object.keys(draft.rows).length > 0 && kinds.length > 0 && (worn.size > 1 || kinds.some((kind) => !worn.has(kind)))
}

/** "Hoodies are mens, 2 in L, 1 in XL": two or more sizes of a garment that is named are counted; they are no players' numbers. */
const counted = (sentence: string, scene: Scene): string => {
  const tokens = tokensOf(sentence)
  const amounts = [...tokens.keys()].flatMap((at) => amountAt(tokens, at) ?? [])
  if (amounts.length < 2 || !isOfOthers(tokens, scene)) return sentence
  return amounts.reduceRight((left, { from, to }) => `${left.slice(0, from)}x ${left.slice(to)}`, sentence)
}

const noNumber = new RegExp(`[,;]?\\s*${spoken.rosters.noNumber}(?=\\W|$)`, 'u')
const more = anyOf(spoken.undecided.further)

/** "Add a 2T for the baby, no number": one piece more has none; all the others keep theirs. */
const numberless = (sentence: string): string => {
  const tokens = tokensOf(sentence)
  const found = noNumber.exec(fold(sentence))
  const adds = tokens.some(isAdd) || more.test(fold(sentence))
  if (found === null || !adds || !hasSize(tokens) || tokens.some((token) => isWord(token, ...listed.players.every)))
    return sentence
  return blanked(sentence, found.index, found.index + found[0].length)
}

/** Sizes that are counted with a word between, and pieces that alone have no number. */
export const withCountedIn = (text: string, scene: Scene): string =>
  text.replace(/[^.!?\n]+/g, (sentence) => {
    const plain = counted(sentence, scene)
    return Object.keys(scene.draft.marks).length === 0 ? plain : numberless(plain)
  })
