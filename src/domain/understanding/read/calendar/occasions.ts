import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { fold } from '../text/tokens.ts'

const { leads, leadsMore, article, events } = spoken.occasions

/** "for the bonspiel", "it's for Open House", "es la final", "para el torneo de verano": what the garments are needed for. */
const said = new RegExp(`\\b${leads}\\s+(?:${leadsMore}\\s+)?(?:${article}\\s+)?((?:[\\p{L}'-]+ ){0,2}?${events})\\b`, 'u')

/** What the garments are needed for, in the customer's words. */
export const readOccasion = (text: string): readonly Patch[] => {
  const found = said.exec(fold(text))
  const words = found?.[1]
  if (found === null || words === undefined) return []
  const from = found.index + found[0].length - words.length
  return [{ path: ['needFor'], value: text.slice(from, from + words.length) }]
}
