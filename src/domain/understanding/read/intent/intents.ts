import type { Intent } from '../../understood.ts'
import { spoken } from '../../words/languages.ts'
import { languageWished } from '../text/language.ts'
import { anyOf, fold } from '../text/tokens.ts'
import { complaintOf } from './complaint.ts'

const said = spoken.intents

const ends = '[.! ]*$'

/** "Oops, undo that please": a whole message that takes the last change back. */
const undo = new RegExp(`^(?:${said.hesitates}[,.! ]+)*${said.undo}(?: ${said.undoWhat})*${ends}`)

const whatIf = new RegExp(`^[¿\\s]*(?:${said.opensWhatIf}[, ]+)*${said.whatIf}\\b`)
const price = anyOf(said.price)

/** "Undo both", "deshaz los dos últimos cambios": a whole message. */
const undoBoth = new RegExp(`^(?:${said.hesitates}[,.! ]+)*${said.undo} ${said.undoBoth}${ends}`)

export const takesBothBack = (text: string): boolean => undoBoth.test(fold(text).trim())

/** A page of an earlier order, by its address. */
const earlier = anyOf(said.earlier, 'c/[\\w-]{16,200}')
const single = anyOf(said.single)
const withoutSeniors = anyOf(said.withoutSeniors)

const simple: readonly (readonly [Exclude<Intent['kind'], 'order' | 'complaint' | 'earlier-order' | 'language'>, RegExp])[] = [
  ['undo', undo],
  ['start-over', anyOf(said.startOver)],
  ['person', anyOf(said.person)],
  ['waits', new RegExp(`^(?:${said.hesitates}[,.! ]+)*${said.waits}${ends}`)],
  ['thanks', new RegExp(`^${said.thanks}${ends}`)],
  ['greeting', new RegExp(`^${said.greets}(?: ${said.greetsMore})*[.!, ]*$`)],
  ['yes', new RegExp(`^${said.yes}(?:[, ]+${said.yesMore})*${ends}`)],
  ['no', new RegExp(`^${said.no}(?:[, ]+${said.noMore})*${ends}`)],
  ['status', anyOf(said.status)],
  ['care', anyOf(said.care)],
  ['what-if', whatIf],
  ['photo', anyOf(said.photo)],
  ['price', price],
  ['rude', anyOf(said.rude)],
]

/** A single piece is to be made again. */
export const asksForOne = (text: string): boolean => single.test(fold(text))

/** Who is to be left out of an earlier order: "without the seniors", "sin los de último año". */
const without = (folded: string): readonly string[] => (withoutSeniors.test(folded) ? ['seniors'] : [])

/** What a message is about besides the order itself. */
export const readIntent = (text: string, team: string | null): Intent => {
  const folded = fold(text).trim()
  const language = languageWished(folded)
  if (language !== null) return { kind: 'language', language }
  const complaint = complaintOf(text, team)
  if (complaint !== null) return { kind: 'complaint', complaint }
  if (earlier.test(folded))
    return {
      kind: 'earlier-order',
      asks: { team, without: without(folded), text: text.slice(0, 300), single: single.test(folded) },
    }
  const kind = simple.find(([, pattern]) => pattern.test(folded))?.[0]
  return kind === undefined ? { kind: 'order' } : { kind }
}

const asking = new RegExp(`\\b${said.asksPrice}\\b`)
const ofPrice = new RegExp(`^[\\s,]*${said.ofPrice}\\b`, 'i')

/** The words of a price question without the asking: "how much without the bling?" leaves "without the bling?". */
export const withoutAsking = (text: string): string => {
  const folded = fold(text)
  const found = asking.exec(folded) ?? whatIf.exec(folded)
  if (found === null) return text
  return `${text.slice(0, found.index)} ${text.slice(found.index + found[0].length)}`.replace(ofPrice, ' ')
}

/** A question to the shop, as against a wish put as a question ("can you have them by Friday?"). */
export const asksSomething = (text: string): boolean => text.includes('?') || price.test(fold(text))
