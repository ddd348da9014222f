import type { Complaint } from '../conversation.ts'
import { anyOf, fold } from './tokens.ts'

const trouble: readonly (readonly [Complaint['kind'], RegExp])[] = [
  [
    'wrong-name',
    anyOf(
      'wrong name',
      'wrong number',
      'misspelled',
      'spelled wrong',
      "(?:spelled|spelt|printed|put) (?:[\\w']+ ){1,5}?(?:name|number) wrong",
      "(?:name|number|nombre|numero) (?:[\\w']+ ){0,3}?(?:is|was|es|esta|salio|quedo|vino) (?:wrong|misspelled|mal|equivocado)",
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
    anyOf(
      '(?:stones?|rhinestones?|crystals|bling|gems)(?: \\w+){0,4} (?:fell|fall|falling|came|come|coming|missing|lost|dropped)',
      '(?:fell off|fall off|falling off|came off)(?: \\w+){0,4} (?:stones?|rhinestones?)',
      'se (?:le )?(?:cayeron|caen|cayo|estan cayendo)(?: \\w+){0,3} (?:piedras?|piedritas|pedreria|cristales)',
      '(?:piedras?|pedreria|cristales|piedritas)(?: \\w+){0,3} (?:se (?:le )?(?:cayeron|caen|cayo)|cayendo)',
    ),
  ],
  [
    'lift',
    anyOf(
      'peel(?:ing|ed|s)?(?: off)?',
      'lifting',
      'coming off',
      'came off',
      'falling off',
      'fell off',
      'despeg(?:a|o|ue|aron|an|ando|ad[oa]s?)',
      'se (?:esta |estan )?(?:despegando|levantando|cayendo)',
      'se despego',
      'se levanta',
    ),
  ],
  ['crack', anyOf('crack(?:ing|ed|s)?', 'se (?:agrieto|cuarteo|esta cuarteando|agrieta)', 'agrietad[oa]s?', 'cuartead[oa]s?')],
  [
    'bleed',
    anyOf(
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
  ['shine', anyOf('shiny (?:mark|box|spot)', 'press marks?', 'burn marks?', 'scorched', 'marca de plancha', 'quemad[oa]')],
  ['shrink', anyOf('shrank', 'shrunk', 'se encogio', 'encogid[oa]')],
]

const future = anyOf('will it', 'does it', 'do they', 'would it', "won't", 'worried', 'afraid', 'last time', 'la vez pasada')

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
  if (
    anyOf(
      'never(?: been)? washed',
      'not washed',
      "hasn't been washed",
      'sin lavar',
      'nunca (?:se |la |lo )?lav\\w+',
      'no (?:se |la |lo )?(?:ha|he|hemos) lavado',
    ).test(folded)
  )
    return 0
  const found =
    /\b(\d{1,2}|one|two|three|four|five|a|first|una|dos|tres|cuatro|cinco|primera)\s+(?:wash(?:es)?|times|lavadas?|veces|vez)\b/.exec(
      folded,
    )?.[1] ??
    /\bwash\w*(?: (?:it|them|these|those))? (once|twice)\b|\b(once|twice)\b.{0,14}\bwash/
      .exec(folded)
      ?.slice(1)
      .find((word) => word !== undefined)
  if (found === undefined) return undefined
  return washCount[found] ?? Number(found)
}

const dryingOf = (folded: string): string | undefined => {
  if (
    anyOf(
      'air[- ]?dr(?:y|ied)',
      'hung',
      'hang(?:ing)?',
      'line dr(?:y|ied)',
      'colgad[oa]s?',
      'colg(?:o|ue|amos|aron)',
      'tendi(?:mos)?',
      'tendid[oa]s?',
      'al aire',
    ).test(folded)
  )
    return 'air'
  return anyOf('dryer', 'tumble', 'secadora').test(folded) ? 'dryer' : undefined
}

const NAME = "\\p{Lu}[\\p{Ll}\\p{M}]+(?:[-' ]\\p{Lu}[\\p{Ll}\\p{M}]+)?"
const owners: readonly RegExp[] = [
  /(\p{Lu}[\p{Ll}\p{M}]+)'s\b/gu,
  new RegExp(
    `\\b(?:name is|named|called|se llama|la de|el de|(?:playera|camiseta|jersey|sudadera) de|de mi (?:hij[oa]|niñ[oa])|my (?:son|daughter|kid)) (${NAME})`,
    'gu',
  ),
]

const namesIn = (text: string): readonly string[] => [
  ...new Set(owners.flatMap((pattern) => [...text.matchAll(pattern)].map((match) => match[1] ?? ''))),
]

/** "#7", "number 7", "the numbers on 8 and 22", "la número 06". */
const numbersIn = (folded: string): readonly string[] => [
  ...new Set(
    [
      ...folded.matchAll(
        /(?:#|\bnumbers?(?: on| of)? |\bnumeros?(?: en| de| del)? |\bno\. ?|\ba (?:la|el|las|los) (?=\d{1,3}\b(?! ?(?:de |am|pm|a\.|p\.|:)))|\b(?:playera|camiseta|jersey|sudadera|shirt|tee|hoodie)s? (?:of |de )?(?:the |el |la |del |number |no\. ?)?|\bthe (?=\d{1,3} (?:on|of) )|\b(?:del|de la|on the|of the) (?:numero |number )?(?=\d{1,3}\b(?! ?(?:de |th|nd|rd|st|wash|lavad|dia|day|week|mes))))\s?#?(\d{1,3})\b(?! (?:wash|times|lavad|veces|days|dias|weeks|semanas))(?:(?:,| and| y| &) #?(\d{1,3})\b)?/g,
      ),
    ].flatMap((match) => [match[1] ?? '', ...(match[2] === undefined ? [] : [match[2]])]),
  ),
]

const teamSaid =
  /\b(?:[Tt]eam is|[Tt]eam'?s|[Ee]quipo(?: es| de)?|[Cc]lub) (?:the |los |las |de )?((?:\p{Lu}[\p{L}\p{M}'-]*)(?: (?:(?:de la|de los|de|del|of the|of) )?\p{Lu}[\p{L}\p{M}'-]*)*)/u

/** A team that is named beside the number: "on the Valley Vipers", "(#31, Fen Street Frogs)", "de las Estrellas del Sur". */
const teamBeside =
  /\b(?:(?:on|of|for|from|with) the|[Oo]ur|nuestr[oa]s|de l[ao]s) ((?:\p{Lu}[\p{L}\p{M}'-]+)(?: (?:(?:de la|de los|de|del|of the|of) )?\p{Lu}[\p{L}\p{M}'-]+)*)|#\d{1,3}, ((?:\p{Lu}[\p{L}\p{M}'-]+ ?)+)\)/u

/** What a message says of something that went wrong, without the trouble itself. */
export type ComplaintDetails = Omit<Complaint, 'kind' | 'text'>

/** Whose, which number, how often washed, how dried. */
const complaintDetails = (text: string, team: string | null): ComplaintDetails => {
  const folded = fold(text)
  const numbers = numbersIn(folded)
  const washes = washesOf(folded)
  const drying = dryingOf(folded)
  const beside = teamBeside.exec(text)
  const said = teamSaid.exec(text)?.[1] ?? beside?.[1] ?? beside?.[2]
  const whose = said ?? team
  const names = namesIn(text).filter((name) => !(said ?? '').includes(name))
  return {
    ...(whose === null ? {} : { team: whose }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    ...(washes === undefined ? {} : { washes }),
    ...(drying === undefined ? {} : { drying }),
  }
}

/** A complaint with what was said of it; null when nothing went wrong yet. */
export const complaintOf = (text: string, team: string | null): Complaint | null => {
  const folded = fold(text)
  const kind = trouble.find(([, pattern]) => pattern.test(folded))?.[0]
  if (kind === undefined || future.test(folded)) return null
  return { kind, text: text.slice(0, 1_000), ...complaintDetails(text, team) }
}

/** Words of somebody who orders. */
const wishes = anyOf(
  'we need',
  'i need',
  'want to order',
  "i'd like",
  'order (?:more|another|new)',
  'necesit\\w+',
  'ocup(?:o|amos)',
  'quier(?:o|emos)',
)

/** A complaint with what was said of it later; null when that was nothing. */
export const complaintWith = (complaint: Complaint, text: string, team: string | null): Complaint | null => {
  const more = complaintDetails(text, team)
  if (Object.keys(more).length === 0 || wishes.test(fold(text))) return null
  const numbers = [...new Set([...(complaint.numbers ?? []), ...(more.numbers ?? [])])]
  const names = [...new Set([...(complaint.names ?? []), ...(more.names ?? [])])]
  return {
    ...complaint,
    ...more,
    ...(complaint.team === undefined ? {} : { team: complaint.team }),
    ...(numbers.length === 0 ? {} : { numbers }),
    ...(names.length === 0 ? {} : { names }),
    text: `${complaint.text}\n${text}`.slice(0, 2_000),
  }
}
