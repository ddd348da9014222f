import type { Signing } from '../../understood.ts'
import { spoken } from '../../words/languages.ts'
import { anyOf, fold } from '../text/tokens.ts'

const said = spoken.signing

/** Words that approve, in full sentences; a thumb, a heart or praise never does. */
const approves = anyOf(said.approves)
const praises: readonly RegExp[] = [anyOf(said.praises), new RegExp(`^${said.agrees}[.! ]*$`), /\p{Extended_Pictographic}/u]
/** "Yep that's all correct, go ahead and print them": all of it is called right and the making asked for, and nothing else is said. */
const orders = new RegExp(
  `^[¡ ]*(?:${said.affirms}[,.! ]+){0,3}(?:${said.allRight}[,.;! ]+(?:${said.joins} )?${said.makeThem}|${said.makeThem}[,.;! ]+${said.allRight})(?:[,.! ]+${said.politely})?[.! ]*$`,
)
const withheld = anyOf(said.withheld)

/** Whether a message signs: clear words and no reservation; anything near it is unclear. */
export const readSigning = (text: string): Signing => {
  const folded = fold(text).trim()
  const clear = approves.test(folded) || orders.test(folded)
  if (clear && !withheld.test(folded) && !folded.includes('?')) return 'clear'
  return clear || praises.some((pattern) => pattern.test(folded)) ? 'unclear' : null
}

const going = new RegExp(`(?<=^|[,.;!] ?)${said.goesAhead}(?=[,.;!\\s]*$|[,.;!])`, 'giu')

/** The words of an approval without "adelante", which is a side of a jersey elsewhere. */
export const withoutGoing = (text: string): string => text.replace(going, ' ')

const revision = new RegExp(`\\b${said.revision}\\s*#?\\s*(\\d{1,4})\\b`)

/** The revision that the words name. */
export const namedRevision = (text: string): number | null => {
  const found = revision.exec(fold(text))?.[1]
  return found === undefined ? null : Number(found)
}
