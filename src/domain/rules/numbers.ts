import type { Row } from '../order/order.ts'
import { way } from '../press/way.ts'
import { bookFacts } from './book-facts.ts'
import { bindingBook, type Rule, type RuleFacts } from './facts.ts'
import { groupsBy } from './group.ts'
import type { LegalNumbers, Rulebook } from './rulebook.ts'

type Numbered = { readonly row: Row; readonly at: string; readonly number: string }

const numbered = (facts: RuleFacts): readonly Numbered[] =>
  facts.order.roster.flatMap((row, index) =>
    row.number === undefined ? [] : [{ row, at: `/roster/${index}/number`, number: row.number }],
  )

/** The numbers that hold on the day of the game: a later edition's from the day it comes. */
const legalOn = (book: Rulebook, day: string): LegalNumbers | null =>
  book.coming !== null && day >= book.coming.from ? book.coming.legal : book.legal

const dayOf = (facts: RuleFacts): string => facts.order.gameDay ?? facts.today

/** Up to three legal numbers nearest to one that is not, and not yet on the roster. */
const nearestLegal = (legal: LegalNumbers, number: string, taken: ReadonlySet<string>): readonly string[] =>
  legal.numbers
    .filter((one) => !taken.has(one))
    .toSorted(
      (a, b) =>
        Math.abs(Number(a) - Number(number)) - Math.abs(Number(b) - Number(number)) || a.length - b.length || (a < b ? -1 : 1),
    )
    .slice(0, 3)

/** Numbers the rule book does not allow; "07" is not "7". */
export const legalNumbers: Rule = (facts) => {
  const book = bindingBook(facts)
  const legal = book === null ? null : legalOn(book, dayOf(facts))
  if (book === null || legal === null) return []
  const all = numbered(facts)
  const taken = new Set(all.map((one) => one.number))
  return all
    .filter(({ number }) => !legal.numbers.includes(number))
    .map(({ row, at, number }) => {
      const nearest = nearestLegal(legal, number, taken)
      const ways = nearest.map((one) => way('other-number', one))
      return {
        code: 'illegal-number',
        at,
        severity: legal.mark === 'memory' || book.mark === 'memory' ? 'caution' : 'stop',
        facts: { ...bookFacts(book), mark: legal.mark, line: row.line, number, nearest, ways: [...ways, way('ask-league')] },
      }
    })
}

/** One name for numbers that a book counts as the same. */
const canonical = (book: Rulebook | null, number: string): string =>
  book?.same.find((pair) => pair.includes(number))?.join('/') ?? number

const noBook = { body: '', clause: '', edition: '', mark: 'common practice', source: 'common practice' } as const

/** The same number twice on one garment of the team: refused where the book says so, otherwise asked. */
export const numbersTwice: Rule = (facts) => {
  const book = bindingBook(facts)
  if (facts.order.use !== 'game') return []
  const forbidden = book !== null && (book.duplicates === 'forbidden' || book.same.length > 0)
  const groups = groupsBy(numbered(facts), ({ row, number }) => `${row.garment} ${canonical(book, number)}`)
  return groups
    .filter((group) => group.length > 1)
    .flatMap((group): ReturnType<Rule> => {
      const [first] = group
      if (first === undefined) return []
      const stops = forbidden && book?.mark !== 'memory' && (book?.duplicates === 'forbidden' || isSamePair(book, group))
      const found = { number: canonical(book, first.number), lines: group.map(({ row }) => row.line), forbidden: stops }
      const about = book === null ? noBook : bookFacts(book)
      const ways = [way('other-number'), way(stops ? 'ask-league' : 'customer-signs')]
      const at = group[1]?.at ?? first.at
      return [{ code: 'number-twice', at, severity: stops ? 'stop' : 'caution', facts: { ...about, ...found, ways } }]
    })
}

const isSamePair = (book: Rulebook | null, group: readonly Numbered[]): boolean =>
  book !== null &&
  group.some(({ number }) => book.same.some((pair) => pair.includes(number))) &&
  new Set(group.map((one) => one.number)).size > 1

/** Pairs that may not stand on one roster, such as 0 and 00. */
export const clashingNumbers: Rule = (facts) => {
  const book = bindingBook(facts)
  const legal = book === null ? null : legalOn(book, dayOf(facts))
  if (book === null || legal === null) return []
  const all = numbered(facts)
  const garments = [...new Set(all.map(({ row }) => row.garment))]
  return garments.flatMap((garment) =>
    legal.clash.flatMap((pair): ReturnType<Rule> => {
      const found = all.filter(({ row, number }) => row.garment === garment && pair.includes(number))
      if (!pair.every((number) => found.some((one) => one.number === number))) return []
      const lines = found.map(({ row }) => row.line)
      const severity = legal.mark === 'memory' || book.mark === 'memory' ? 'caution' : 'stop'
      const facts_ = { ...bookFacts(book), numbers: pair, lines, ways: [way('other-number'), way('ask-league')] }
      return [{ code: 'numbers-clash', at: found[1]?.at ?? '/roster', severity, facts: facts_ }]
    }),
  )
}

/** Numbers that one position alone may wear. */
export const goalkeepers: Rule = (facts) => {
  const book = bindingBook(facts)
  if (book === null) return []
  return numbered(facts)
    .filter(({ number }) => book.onlyGoalkeeper.includes(number))
    .map(({ row, at, number }) => ({
      code: 'goalkeeper-number',
      at,
      severity: 'note',
      facts: { ...bookFacts(book), line: row.line, number, ways: [way('other-number')] },
    }))
}
