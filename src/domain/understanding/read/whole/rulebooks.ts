import type { Rulebook } from '../../../rules/rulebook.ts'
import type { Patch } from '../../patch.ts'
import { spoken } from '../../words/languages.ts'
import { blanked, fold } from '../text/tokens.ts'

/** `unknown`: the letters of a rule book that the shop has not, or not for that sport; `rest`: the text without its name. */
export type BookRead = { readonly patches: readonly Patch[]; readonly unknown: string | null; readonly rest: string }

const lettersOf = ({ id }: Rulebook): string => id.split('-')[0] ?? id

const of = spoken.rulebooks

/** "use the NFHS rule book", "NFHS rules", "reglas de la FIFA", "we play NFHS soccer": its letters in capitals beside words of rules or of playing. */
const named = new RegExp(
  `(?:${of.before}\\s+(?:${of.of}\\s+)*([A-Z]{3,6})\\b|\\b([A-Z]{3,6})(?:'s)?\\s+(?:\\p{L}+\\s+)?${of.rules}|${of.playing}\\s+([A-Z]{3,6})\\b)`,
  'u',
)

/** Lower case without accents, but for words in capitals. */
const plain = (text: string): string => text.replace(/[\p{L}\p{M}]+/gu, (word) => (/^[A-Z]{3,6}$/.test(word) ? word : fold(word)))

/** "Our league goes by NFHS": letters of a book that the shop has. */
const loosely = new RegExp(`(?:^|(?<![\\p{L}]))${of.loosely}\\s+([A-Z]{3,6})\\b`, 'u')

const ownLoosely = (text: string, books: readonly Rulebook[]): RegExpExecArray | null => {
  const found = loosely.exec(plain(text))
  return found !== null && books.some((book) => lettersOf(book) === fold(found[1] ?? '')) ? found : null
}

/** A rule book that is named by its letters: the newest of the shop's for that sport. */
export const readRulebook = (text: string, sport: string | undefined, books: readonly Rulebook[]): BookRead => {
  const found = named.exec(plain(text)) ?? ownLoosely(text, books)
  const letters = found?.[1] ?? found?.[2] ?? found?.[3]
  if (found === null || letters === undefined) return { patches: [], unknown: null, rest: text }
  const rest = blanked(text, found.index, found.index + found[0].length)
  const [book] = books
    .filter((one) => lettersOf(one) === fold(letters) && sport !== undefined && one.sports.includes(sport))
    .toSorted((a, b) => (b.editionYear ?? 0) - (a.editionYear ?? 0))
  return book === undefined
    ? { patches: [], unknown: letters, rest }
    : { patches: [{ path: ['rulebook'], value: book.id }], unknown: null, rest }
}
