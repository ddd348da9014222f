import { casual as english } from 'chrono-node/en'
import { casual as spanish } from 'chrono-node/es'
import type { Language } from '../../shop/show.ts'
import { fold } from './tokens.ts'

const parsers = { en: english, es: spanish }

const relative =
  /\b(?:in|within|en|dentro de)\s+(?:about\s+|unas?\s+|unos\s+)?(?:\w+)\s+(?:days?|weeks?|months?|dias?|semanas?|mes(?:es)?)\b|\b(?:weeks?|days?|months?) from (?:now|today)\b|\bnext (?:week|month)\b|\bproxim[oa] (?:semana|mes)\b/

const two = (value: number | null): string => String(value ?? 0).padStart(2, '0')

/**
 * Days counted from today ("in two weeks", "dentro de diez días"), which the own readers leave alone. Only the calendar day is
 * taken from what was found; the zone is the calendar's business. Null when nothing of the kind is said.
 */
export const relativeDay = (text: string, now: string, language: Language): string | null => {
  const said = relative.exec(fold(text))
  if (said === null) return null
  const reference = { instant: new Date(`${now}:00Z`), timezone: 0 }
  const [found] = parsers[language].parse(text.slice(said.index, said.index + said[0].length), reference, { forwardDate: true })
  if (found === undefined) return null
  const { start } = found
  return `${start.get('year')}-${two(start.get('month'))}-${two(start.get('day'))}`
}
