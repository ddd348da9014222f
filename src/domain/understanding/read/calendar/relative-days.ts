import type { Language } from '../../../units/language.ts'
import { languages, spoken } from '../../words/languages.ts'
import { fold } from '../text/tokens.ts'

const { within, about, span, counted } = spoken.days

const relative = new RegExp(`\\b${within}\\s+(?:${about}\\s+)?(?:\\w+)\\s+${span}\\b|\\b${counted}\\b`)

const two = (value: number | null): string => String(value ?? 0).padStart(2, '0')

/**
 * Days counted from today ("in two weeks", "dentro de diez días"), which the own readers leave alone. Only the calendar day is
 * taken from what was found; the zone is the calendar's business. Null when nothing of the kind is said.
 */
export const relativeDay = (text: string, now: string, language: Language): string | null => {
  const said = relative.exec(fold(text))
  if (said === null) return null
  const reference = { instant: new Date(`${now}:00Z`), timezone: 0 }
  const words = text.slice(said.index, said.index + said[0].length)
  const [found] = languages[language].clock.counted?.parse(words, reference, { forwardDate: true }) ?? []
  if (found === undefined) return null
  const { start } = found
  return `${start.get('year')}-${two(start.get('month'))}-${two(start.get('day'))}`
}
