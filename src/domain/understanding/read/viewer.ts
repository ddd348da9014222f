import { fold } from './tokens.ts'

const looking =
  /\b(?:as you look|when you look|looking at|if you look|as you face|facing (?:him|her|it|them|the)|viewer'?s|(?:como|cuando|al) (?:lo|la|se) (?:ves?|ven|mira|miras)|viendolo|viendola|de quien lo ve|del que lo ve)\b/

const swapped: Readonly<Record<string, string>> = {
  left: 'right',
  right: 'left',
  izquierdo: 'derecho',
  derecho: 'izquierdo',
  izquierda: 'derecha',
  derecha: 'izquierda',
}

const side = /\b(?:left|right|izquierd[oa]|derech[oa])\b/i

/**
 * "The left side as you look at him" is his right: the side seen by an onlooker is written as the wearer's, and what is said of it
 * after that is left out.
 */
/** "Take the outline off": without it. */
const takenOff = (text: string): string =>
  text.replace(/\b[Tt]ake (the [a-z]{3,12}(?: [a-z]{3,12})?|those [a-z]{3,12}) off\b/g, 'without $1')

export const wearersSide = (text: string): string =>
  takenOff(text)
    .split(/(?<=[.!?\n])/)
    .map((sentence) => {
      const folded = fold(sentence)
      const seen = looking.exec(folded)
      const found = side.exec(folded)
      if (seen === null || found === null) return sentence
      const chest = /\b(?:chest|pecho)\b/i.test(folded)
      const word = swapped[found[0].toLowerCase()] ?? found[0]
      const start = Math.min(found.index, seen.index)
      const end = folded.indexOf(',', Math.max(found.index, seen.index))
      const tail = end < 0 ? '' : sentence.slice(end)
      const head = sentence
        .slice(0, start)
        .replace(/\bon the chest,? the\b|\bchest,? the\b|\ben el pecho,? (?:d?el )?lado\b/i, 'on the')
      return `${head} ${chest ? `${word === 'left' || word.startsWith('izq') ? 'left' : 'right'} chest` : word}${tail}`
    })
    .join('')
