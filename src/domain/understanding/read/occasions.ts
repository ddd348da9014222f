import type { Patch } from '../patch.ts'
import { fold } from './tokens.ts'

const english =
  'games?|match|tournament|tourney|meet|regatta|bonspiel|finals?|playoffs?|championships?|opener|showcase|recital|parade|picnic|reunion|open house|party|wedding|race|fundraiser|festival|camp|competition|bout|scrimmage|banquet|graduation|homecoming|rally|fair|trip'
const spanish =
  'juego|partido|torneo|final|carrera|fiesta|boda|desfile|competencia|festival|clausura|kermes|convivio|graduacion|campeonato|copa|liguilla|inauguracion|posada|regata|feria|viaje'

/** "for the bonspiel", "it's for Open House", "es la final", "para el torneo de verano": what the garments are needed for. */
const said = new RegExp(
  `\\b(?:for|it'?s|before|para|es|antes de)\\s+(?:for\\s+)?(?:(?:the|our|my|his|her|a|an|el|la|los|las|un|una|nuestr[oa]|mi)\\s+)?((?:[\\p{L}'-]+ ){0,2}?(?:${english}|${spanish}))\\b`,
  'u',
)

/** What the garments are needed for, in the customer's words. */
export const readOccasion = (text: string): readonly Patch[] => {
  const found = said.exec(fold(text))
  const words = found?.[1]
  if (found === null || words === undefined) return []
  const from = found.index + found[0].length - words.length
  return [{ path: ['needFor'], value: text.slice(from, from + words.length) }]
}
