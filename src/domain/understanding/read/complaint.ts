import type { Complaint } from '../conversation.ts'
import { fold } from './tokens.ts'

/** One pattern of several, on word borders. */
export const any = (...sources: readonly string[]): RegExp => new RegExp(`\\b(?:${sources.join('|')})\\b`)

const trouble: readonly (readonly [Complaint['kind'], RegExp])[] = [
  [
    'wrong-name',
    any(
      'wrong name',
      'wrong number',
      'misspelled',
      'spelled wrong',
      'pusieron mal',
      'nombre mal',
      'mal el nombre',
      'mal escrito',
      'numero equivocado',
      'nombre equivocado',
      'spelled it wrong',
    ),
  ],
  [
    'stones-lost',
    any(
      '(?:stones?|rhinestones?|crystals|bling|gems)(?: \\w+){0,4} (?:fell|fall|falling|came|come|coming|missing|lost|dropped)',
      '(?:fell off|fall off|falling off|came off)(?: \\w+){0,4} (?:stones?|rhinestones?)',
      'se (?:le )?(?:cayeron|caen|cayo|estan cayendo)(?: \\w+){0,3} (?:piedras?|piedritas|pedreria|cristales)',
      '(?:piedras?|pedreria|cristales|piedritas)(?: \\w+){0,3} (?:se (?:le )?(?:cayeron|caen|cayo)|cayendo)',
    ),
  ],
  [
    'lift',
    any(
      'peel(?:ing|ed|s)?(?: off)?',
      'lifting',
      'coming off',
      'came off',
      'falling off',
      'fell off',
      'despega(?:ndo|n|ron|do)?',
      'se (?:esta |estan )?(?:despegando|levantando|cayendo)',
      'se despego',
      'se levanta',
    ),
  ],
  ['crack', any('crack(?:ing|ed|s)?', 'se (?:agrieto|cuarteo|esta cuarteando|agrieta)', 'agrietad[oa]s?', 'cuartead[oa]s?')],
  [
    'bleed',
    any(
      'bled',
      'bleeding',
      'turned pink',
      'color came through',
      'colour came through',
      'se destino',
      'se desti[nñ]o',
      'se mancho',
      'se puso rosa',
    ),
  ],
  ['shine', any('shiny (?:mark|box|spot)', 'press marks?', 'burn marks?', 'scorched', 'marca de plancha', 'quemad[oa]')],
  ['shrink', any('shrank', 'shrunk', 'se encogio', 'encogid[oa]')],
]

const future = any('will it', 'does it', 'do they', 'would it', "won't", 'worried', 'afraid', 'last time', 'la vez pasada')

const washCount: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  once: 1,
  twice: 2,
  una: 1,
  dos: 2,
  tres: 3,
  cuatro: 4,
  cinco: 5,
  a: 1,
  first: 1,
  primera: 1,
}

const washesOf = (folded: string): number | undefined => {
  const found =
    /\b(\d{1,2}|one|two|three|four|five|a|first|una|dos|tres|cuatro|cinco|primera)\s+(?:wash(?:es)?|lavadas?|veces)\b/.exec(
      folded,
    )?.[1] ?? /\b(once|twice)\b/.exec(folded)?.[1]
  if (found === undefined) return undefined
  return washCount[found] ?? Number(found)
}

const dryingOf = (folded: string): string | undefined => {
  if (any('air[- ]?dr(?:y|ied)', 'hung', 'hang', 'line dr(?:y|ied)', 'colgad[oa]s?', 'tendid[oa]s?', 'al aire').test(folded))
    return 'air'
  return any('dryer', 'tumble', 'secadora').test(folded) ? 'dryer' : undefined
}

const namesIn = (text: string): readonly string[] =>
  [...text.matchAll(/(\p{Lu}[\p{Ll}\p{M}]+)'s\b/gu)].map((match) => match[1] ?? '')

/** A complaint with what was said of it; null when nothing went wrong yet. */
export const complaintOf = (text: string, team: string | null): Complaint | null => {
  const folded = fold(text)
  const kind = trouble.find(([, pattern]) => pattern.test(folded))?.[0]
  if (kind === undefined || future.test(folded)) return null
  const numbers = [...folded.matchAll(/(?:#|number |numero |no\. ?)\s?(\d{1,3})\b/g)].map((match) => match[1] ?? '')
  const washes = washesOf(folded)
  const drying = dryingOf(folded)
  const names = namesIn(text)
  return {
    kind,
    text: text.slice(0, 1_000),
    ...(team === null ? {} : { team }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    ...(washes === undefined ? {} : { washes }),
    ...(drying === undefined ? {} : { drying }),
  }
}
