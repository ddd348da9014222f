import type { Signing } from '../understood.ts'
import { fold } from './tokens.ts'

/** Words that approve, in full sentences; a thumb, a heart or praise never does. */
const approves: readonly RegExp[] = [
  /\bi (?:hereby )?(?:approve|sign off|sign|confirm|accept)\b/,
  /\bapproved\b(?! by)/,
  /\b(?:sign|signed) (?:it )?off\b/,
  /\b(?:lo|la|las|los) (?:apruebo|autorizo|firmo|confirmo|acepto)\b/,
  /\b(?:apruebo|autorizo|firmo|aprobado|aprobada|confirmo)\b/,
]

const praises: readonly RegExp[] = [
  /\b(?:looks? (?:great|good|perfect|awesome|nice|right|fine)|perfect|love it|awesome|great|go ahead|go for it|sounds good|all good|everything is (?:right|correct|good)|lgtm|yes|yep|ok|okay)\b/,
  /\b(?:perfecto|adelante|se ve (?:bien|padre|genial|chido)|esta (?:bien|perfecto|padre)|todo (?:bien|perfecto|correcto)|me gusta|excelente|dale|sale|va|si)\b/,
  /\p{Extended_Pictographic}/u,
]

const withheld =
  /\b(?:but|except|however|though|if|when|once|until|unless|not yet|don't|do not|cannot|can't|later|almost|pero|excepto|menos|salvo|aunque|nomas que|solo que|si me|cuando|todavia no|aun no|no (?:lo |la )?(?:apruebo|firmo|autorizo)|casi)\b/

/** Whether a message signs: clear words and no reservation; anything near it is unclear. */
export const readSigning = (text: string): Signing => {
  const folded = fold(text)
  const clear = approves.some((pattern) => pattern.test(folded))
  if (clear && !withheld.test(folded) && !folded.includes('?')) return 'clear'
  return clear || praises.some((pattern) => pattern.test(folded)) ? 'unclear' : null
}

const going =
  /(?<=^|[,.;!] ?)(?:adelante(?: con (?:la |el |los |las )?\p{L}+)?|go ahead(?: and \p{L}+(?: it| them)?)?)(?=[,.;!\s]*$|[,.;!])/giu

/** The words of an approval without "adelante", which is a side of a jersey elsewhere. */
export const withoutGoing = (text: string): string => text.replace(going, ' ')

/** The revision that the words name. */
export const namedRevision = (text: string): number | null => {
  const found = /\b(?:revision|rev\.?|version)\s*#?\s*(\d{1,4})\b/.exec(fold(text))?.[1]
  return found === undefined ? null : Number(found)
}
