import type { Patch } from '../patch.ts'
import { anyOf, fold } from './tokens.ts'

const things = {
  sizes: 'sizes|tallas',
  names: 'names|nombres|apellidos',
  numbers: 'numbers|numeros|dorsales',
} as const
const soon =
  "later|to follow|follows?|soon|next week|this week|tomorrow|tonight|tbd|pending|not (?:final|ready)|still (?:need|waiting|getting)|don'?t have|despues|luego|al rato|todavia no|aun no|pendientes?|faltan|manana|la proxima semana"
const sends =
  "i'?ll (?:send|have|get|give|text|email)|we'?ll (?:send|have|get|give)|will (?:send|follow|have|get|come)|(?:are )?coming|can (?:send|get)|(?:se )?(?:l[eo]s?|las) (?:mando|paso|envio|doy|mandamos|pasamos|tengo)|mando|te paso|les paso"

const atAnotherTime = anyOf(sends, soon)
const ofTheList = anyOf(...Object.values(things), 'roster|list|lista|logo|deposit')
const named = { sizes: anyOf(things.sizes), names: anyOf(things.names), numbers: anyOf(things.numbers) } as const

const clausesOf = (folded: string): readonly string[] => folded.match(/[^.,;\n!?]+/g) ?? []

/** A clause about sending something of the list at another time: its day is no day of the order. */
export const sendsLater = (folded: string): boolean =>
  ofTheList.test(folded) &&
  atAnotherTime.test(folded) &&
  !/\b(?:need|necesit\w+|ocup\w+|ready|listos?|listas?)\b/.test(folded.replace(/\b(?:la|una|mi) lista\b/g, ''))

/** "Sizes later", "names TBD", "los nombres se los paso el lunes": what of the list comes later. */
export const readLater = (text: string): readonly Patch[] =>
  clausesOf(fold(text)).flatMap((clause) => {
    if (!atAnotherTime.test(clause)) return []
    return (['sizes', 'names', 'numbers'] as const).flatMap((what): readonly Patch[] =>
      named[what].test(clause) ? [{ path: ['later', what], value: true }] : [],
    )
  })
