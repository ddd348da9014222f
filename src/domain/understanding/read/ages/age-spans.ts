import { clockWords, spoken } from '../../words/languages.ts'

const said = spoken.ages

/** Years from one to another; `implied` where nobody said that the youngest are no babies ("12 and under"). */
export type Span = { readonly from: number; readonly to: number; readonly implied?: true }

/** A span of years and where it stands in the text. */
export type Years = Span & { readonly start: number; readonly end: number }

const oldest = 99
const monthsInYear = 12

/** "no one", "una": alone they are no figures. */
const figures: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(clockWords.hours).filter(([, value]) => value > 1),
)
const figure = `(\\d{1,2}|${Object.keys(figures).join('|')})`
const half = `(?: ${said.half})?`
const years = `${half}(?: ?(?:${said.years}))?${half}`
const months = ` ?-?(?:${said.months})`
const between = ` ?(?:-|–|${said.to}) ?`

/** A way to say years: its pattern, and what its figures mean. */
type Way = { readonly pattern: RegExp; readonly means: (figures: readonly number[]) => Span }

const way = (source: string, means: Way['means']): Way => ({
  pattern: new RegExp(`(?<![\\w#$/])(?:${source})(?![\\w/%]|:\\d)`, 'g'),
  means,
})

const upTo = (to: number): Span => ({ from: 0, to, implied: true })
const since = (from: number): Span => ({ from, to: oldest })
const at = (age: number): Span => ({ from: age, to: age })

/** Players of a division are at most as old as it says, and seldom three years younger. */
const ofDivision = 3
/** Children of the first grade are six or seven. */
const beforeSchool = 5

const ways: readonly Way[] = [
  way(`${figure}${months}${between}${figure}${months}`, ([low = 0, high = 0]) => ({
    from: low / monthsInYear,
    to: high / monthsInYear,
  })),
  way(`${figure}${months}${between}${figure}${years}`, ([low = 0, high = 0]) => ({ from: low / monthsInYear, to: high })),
  way(`${figure}${between}${figure}${months}`, ([low = 0, high = 0]) => ({ from: low / monthsInYear, to: high / monthsInYear })),
  way(`${said.under} ${figure}${months}`, ([high = 0]) => upTo((high - 1) / monthsInYear)),
  way(`${said.over} ${figure}${months}`, ([low = 0]) => since(low / monthsInYear)),
  way(`${figure}${years}${between}${figure}${years}`, ([low = 0, high = 0]) => ({ from: low, to: high })),
  way(`${figure}${years} ?(?:\\+|${said.up})`, ([low = 0]) => since(low)),
  way(`${figure}${years} ${said.down}`, ([high = 0]) => upTo(high)),
  way(`${said.over} ${figure}${years}`, ([low = 0]) => since(low + 1)),
  way(`${said.under} ${figure}${years}`, ([high = 0]) => upTo(high - 1)),
  way(`(?:${said.turning}) ${figure}${years}`, ([age = 0]) => ({ from: age - 1, to: age })),
  way(`(?:${said.almost}) ${figure}${years}`, ([age = 0]) => at(age - 1)),
  way(said.division, ([high = 0]) => ({ from: Math.max(0, high - ofDivision), to: high })),
  way(said.grade, ([grade = 0]) => ({ from: grade + beforeSchool, to: grade + beforeSchool + 1 })),
  way(said.mixed, () => ({ from: 12, to: 13 })),
  way(`${figure}${months}`, ([age = 0]) => at(age / monthsInYear)),
  way(`${figure}${half} ?-?(?:${said.years})${half}`, ([age = 0]) => at(age)),
  way(said.oneYear, () => at(1)),
  way(`${said.least} ${figure}${years}`, ([low = 0]) => since(low)),
  way(`${said.aged} (?:${said.all} )?${figure}${years}`, ([age = 0]) => at(age)),
]

const overlaps = (a: Years, b: Years): boolean => a.start < b.end && b.start < a.end

/** All years but these; null where they have an end on both sides. */
export const allBut = ({ from, to }: Span): Span | null => {
  if (to === oldest) return upTo(from - 1)
  return from === 0 ? since(Math.floor(to) + 1) : null
}

/**
 * Years of those of whom it is only said that they are not like the others. Who says "over 3" of some means of the rest that they are
 * under three: the safer of both.
 */
export const contrast = (span: Span): Span | null => {
  const others = allBut(span)
  return others !== null && span.to === oldest && others.to === 3 ? upTo(2) : others
}

export const widened = (a: Span, b: Span): Span => ({
  from: Math.min(a.from, b.from),
  to: Math.max(a.to, b.to),
  ...(a.implied || b.implied ? { implied: true } : {}),
})

/** The years that are told in a folded text, in their order; of two ways to read the same words the first. */
export const yearsIn = (folded: string): readonly Years[] => {
  const found: Years[] = []
  for (const { pattern, means } of ways) {
    for (const match of folded.matchAll(pattern)) {
      const values = match.slice(1).flatMap((text) => (text === undefined ? [] : [figures[text] ?? Number(text)]))
      const span = means(values)
      const one = { ...span, start: match.index, end: match.index + match[0].length }
      if (span.from <= span.to && !found.some((other) => overlaps(other, one))) found.push(one)
    }
  }
  return found.toSorted((a, b) => a.start - b.start)
}
