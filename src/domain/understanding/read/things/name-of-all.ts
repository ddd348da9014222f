import { listed, spoken } from '../../words/languages.ts'
import { type Lexicon, termsOf } from '../text/lexicon.ts'
import { fold, isWord, tokensOf } from '../text/tokens.ts'
import { itemsOf } from './items.ts'

const said = spoken.things
const edge = '(?<![\\p{L}\\d])'
const end = '(?![\\p{L}\\d])'

/** "Our name", "nuestro nombre": of a team or a firm, where no number of each stands beside it. */
const ours = new RegExp(`${edge}${said.ourName}${end}(?! (?:${said.nameBeside}))`, 'gu')
const ofTeam = new RegExp(`${edge}${said.nameOfTeam}${end}`, 'gu')

const teamWord = listed.things.teamName[0] ?? ''

/** A place, a pause or a small word follows: what is to be written is not told right there. */
const standsAlone = (behind: string, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(behind)
  const [first] = tokens
  const term = termsOf(lexicon, tokens)[0]
  return (
    first === undefined ||
    (first.kind === 'sign' && !['"', ':', '“'].includes(first.text)) ||
    isWord(first, ...listed.things.nameStands) ||
    (term?.from === 0 && ['place', 'in', 'colour'].includes(term.meaning.kind))
  )
}

/** Words that stand to be written in the sentence: quoted or in capitals. */
const isWritten = (sentence: string, lexicon: Lexicon): boolean => {
  const tokens = tokensOf(sentence)
  return itemsOf({ text: sentence, tokens, terms: termsOf(lexicon, tokens), shouted: false }).some(({ kind }) => kind === 'text')
}

type Scene = { readonly team: string | null; readonly lexicon: Lexicon }

const inSentence = (sentence: string, { team, lexicon }: Scene): string => {
  const plain = [...fold(sentence).matchAll(ours)].reduceRight(
    (left, { 0: words, index }) => left.slice(0, index) + teamWord + left.slice(index + words.length),
    sentence,
  )
  const named = [...fold(plain).matchAll(ofTeam)]
  if (team === null || named.length === 0 || isWritten(plain, lexicon)) return plain
  return named.reduceRight((left, { 0: words, index }) => {
    const behind = left.slice(index + words.length)
    return standsAlone(behind, lexicon) ? `${left.slice(0, index)}"${team}"${behind}` : left
  }, plain)
}

/** "Team name on the back", "nuestro nombre al frente": the name of the team is what is written there, as soon as it is known. */
export const withNameOfAll = (text: string, scene: Scene): string =>
  text.replace(/[^.;!?\n]+/g, (sentence) => inSentence(sentence, scene))
