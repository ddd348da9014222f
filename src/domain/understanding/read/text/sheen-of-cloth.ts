import { spoken } from '../../words/languages.ts'
import { anyOf, blanked, fold } from './tokens.ts'

const said = spoken.things

/** "Kinda shiny slick material": the cloth is named behind it. */
const ofCloth = new RegExp(`(?<!\\w)${said.sheen}(?= (?:\\w+ ){0,2}${said.clothNamed}(?!\\w))`, 'g')
/** "The jerseys are shiny", "la tela es medio brillosa", "de tela brillosa": the cloth or the garment is named before it. */
const clothIs = new RegExp(`(?<!\\w)${said.clothNamed}(?:,? (?:${said.clothIs}|${said.howMuch}))* (${said.sheen})(?!\\w)`, 'g')
const garmentIs = new RegExp(`(?<!\\w)${said.garmentNamed} ?${said.clothIs}(?: ${said.howMuch})* (${said.sheen})(?!\\w)`, 'g')
const printed = anyOf(said.printNamed)

const sentence = /[^.;!?\n]+/g

/** Cloth that shines is no foil or glitter to be pressed on: the word is left out where it is of cloth or garments. */
export const withoutSheen = (text: string): string =>
  [...fold(text).matchAll(sentence)].reduce((left, { 0: words, index }) => {
    const own = [...words.matchAll(ofCloth)].map((match) => ({ from: match.index, to: match.index + match[0].length }))
    const named = printed.test(words) ? [clothIs] : [clothIs, garmentIs]
    const behind = named.flatMap((pattern) =>
      [...words.matchAll(pattern)].map((match) => {
        const to = match.index + match[0].length
        return { from: to - (match[1]?.length ?? 0), to }
      }),
    )
    return [...own, ...behind].reduce((rest, { from, to }) => blanked(rest, index + from, index + to), left)
  }, text)
