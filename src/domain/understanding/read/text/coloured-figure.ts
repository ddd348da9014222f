import type { Draft } from '../../draft.ts'
import { faceWords, listed, spoken } from '../../words/languages.ts'
import { type Lexicon, type Term, termsOf } from './lexicon.ts'
import { fold, isNumber, isWord, type Token, tokensOf } from './tokens.ts'

type Scene = { readonly draft: Draft; readonly lexicon: Lexicon }
type Sentence = { readonly tokens: readonly Token[]; readonly terms: readonly Term[] }
/** A figure to be worn and the colour it has. */
type Found = { readonly from: number; readonly to: number; readonly figure: string; readonly hue: string }

const said = spoken.things
const figure = /^\d{1,2}$/
const inHue = listed.things.figureIn[0] ?? ''
const numberWord = [...faceWords.numbers][0] ?? ''

const colourAt = ({ terms }: Sentence, at: number): Term | undefined =>
  terms.find(({ meaning, from }) => from === at && meaning.kind === 'colour')
const colourEnding = ({ terms }: Sentence, at: number): Term | undefined =>
  terms.find(({ meaning, to }) => to === at && meaning.kind === 'colour')

const isLabel = (token: Token | undefined): boolean =>
  token !== undefined && (token.text === '#' || faceWords.numbers.has(token.key))

/** Nothing behind the figure makes it an amount, a height or a range: a place, a pause, "and" or the end. */
const endsAt = ({ tokens, terms }: Sentence, at: number): boolean => {
  const token = tokens[at]
  const pause = token === undefined || (token.kind !== 'word' && token.kind !== 'number' && token.text !== '-')
  return pause || isWord(token, ...listed.again.and) || terms.some(({ meaning, from }) => from === at && meaning.kind === 'place')
}

const isLead = (token: Token | undefined): boolean => isWord(token, ...listed.things.figureLead)

const words = ({ tokens }: Sentence, { from, to }: { readonly from: number; readonly to: number }): string =>
  tokens
    .slice(from, to)
    .map(({ text }) => text)
    .join(' ')

/** "A white 7", "white number 7". */
const behindColour = (sentence: Sentence, at: number): Found | null => {
  const { tokens } = sentence
  const hue = colourAt(sentence, at)
  if (hue === undefined) return null
  const labelled = isLabel(tokens[hue.to])
  const own = labelled ? hue.to + 1 : hue.to
  if (!figure.test(tokens[own]?.text ?? '') || !endsAt(sentence, own + 1) || (!labelled && !isLead(tokens[at - 1]))) return null
  return { from: at, to: own + 1, figure: tokens[own]?.text ?? '', hue: words(sentence, hue) }
}

/** "Number 12 in white", "un 27 rojo", "el 7 en blanco". */
const beforeColour = (sentence: Sentence, at: number): Found | null => {
  const { tokens } = sentence
  const labelled = isLabel(tokens[at])
  const own = labelled ? at + 1 : at
  if (!isNumber(tokens[own]) || !figure.test(tokens[own]?.text ?? '') || (!labelled && !isLead(tokens[at - 1]))) return null
  const next = isWord(tokens[own + 1], ...listed.things.figureIn) ? own + 2 : own + 1
  const hue = colourAt(sentence, next)
  return hue === undefined || !endsAt(sentence, hue.to)
    ? null
    : { from: at, to: hue.to, figure: tokens[own]?.text ?? '', hue: words(sentence, hue) }
}

const foundIn = (sentence: Sentence): Found | null => {
  for (const at of sentence.tokens.keys()) {
    const found = behindColour(sentence, at) ?? beforeColour(sentence, at)
    if (found !== null && colourEnding(sentence, found.from) === undefined) return found
  }
  return null
}

/** One piece is ordered: no plural, and no amount but one. */
const isOne = ({ tokens, terms }: Sentence): boolean =>
  terms.every(({ meaning, from, to }) => {
    if (meaning.kind !== 'garment') return true
    const amount = tokens.slice(Math.max(0, from - 3), from).some((token) => isNumber(token) && token.text !== '1')
    return !amount && !/s$/.test(tokens[to - 1]?.key ?? '')
  })

const inSentence = (text: string, { lexicon }: Scene): string => {
  const tokens = tokensOf(text)
  const sentence = { tokens, terms: termsOf(lexicon, tokens) }
  const found = sentence.terms.some(({ meaning }) => meaning.kind === 'garment') ? foundIn(sentence) : null
  if (found === null) return text
  const place = sentence.terms.find(({ meaning, from }) => from >= found.to && from <= found.to + 1 && meaning.kind === 'place')
  const end = place?.to ?? found.to
  const where = place === undefined ? (listed.things.onTheBack[0] ?? '') : words(sentence, place)
  const own = isOne(sentence) ? `, ${numberWord} ${found.figure},` : ''
  const rest = text.slice(tokens[end - 1]?.end).replace(new RegExp(`^,? ?(?:${said.figureJoin} )?`), ' ')
  return `${text.slice(0, tokens[found.from]?.start)}${numberWord} ${inHue} ${found.hue} ${where}${own}${rest}`
}

/** "Navy jersey with white number 7", "10 playeras negras con un 27 rojo": a colour beside a figure to be worn is the number's and not the cloth's. */
export const withColouredFigure = (text: string, scene: Scene): string => {
  const { rows, garments } = scene.draft
  if (Object.keys(rows).length > 0 || Object.keys(garments).length > 1 || !/\d/.test(fold(text))) return text
  return text.replace(/[^.;!?\n]+/g, (sentence) => inSentence(sentence, scene))
}
