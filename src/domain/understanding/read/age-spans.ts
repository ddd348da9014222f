import { spoken } from '../words/languages.ts'

const said = spoken.ages

/** Years from one to another, and where they stand in the text. */
export type Years = { readonly from: number; readonly to: number; readonly start: number; readonly end: number }

const oldest = 99
/** Players are no babies, unless it is said: "12 and under" begins here, "2 and under" at birth. */
const youngest = 3

const figure = '(\\d{1,2})'
const years = `(?: ?(?:${said.years}))?`

/** A way to say years: its pattern, and what its figures mean. */
type Way = { readonly pattern: RegExp; readonly means: (figures: readonly number[]) => readonly [number, number] }

const way = (source: string, means: Way['means']): Way => ({
  pattern: new RegExp(`(?<![\\w#$/])(?:${source})(?![\\w:/%])`, 'g'),
  means,
})

const upTo = (high: number): readonly [number, number] => [high < youngest ? 0 : youngest, high]

/** Players of a division are at most as old as it says, and seldom three years younger. */
const ofDivision = 3
/** Children of the first grade are six or seven. */
const beforeSchool = 5

const ways: readonly Way[] = [
  way(`${figure}${years} ?(?:-|–|${said.to}) ?${figure}${years}`, ([low = 0, high = 0]) => [low, high]),
  way(`${figure}${years} ?(?:\\+|${said.up})`, ([low = 0]) => [low, oldest]),
  way(`${figure}${years} ${said.down}`, ([high = 0]) => upTo(high)),
  way(`${said.over} ${figure}${years}`, ([low = 0]) => [low + 1, oldest]),
  way(`${said.under} ${figure}${years}`, ([high = 0]) => upTo(high - 1)),
  way(said.division, ([high = 0]) => [Math.max(youngest, high - ofDivision), high]),
  way(said.grade, ([grade = 0]) => [grade + beforeSchool, grade + beforeSchool + 1]),
  way(said.mixed, () => [12, 13]),
  way(`${figure} ?(?:${said.years})`, ([age = 0]) => [age, age]),
  way(`${said.least} ${figure}${years}`, ([low = 0]) => [low, oldest]),
  way(`${said.aged} (?:${said.all} )?${figure}${years}`, ([age = 0]) => [age, age]),
]

const overlaps = (a: Years, b: Years): boolean => a.start < b.end && b.start < a.end

/** "Nobody is over 12", "ninguna es menor de 13": all but these years; null where they have an end on both sides. */
export const allBut = ({ from, to, ...place }: Years): Years | null => {
  if (to === oldest) {
    const [low, high] = upTo(from - 1)
    return { ...place, from: low, to: high }
  }
  return from === 0 || from === youngest ? { ...place, from: to + 1, to: oldest } : null
}

/** The years that are told in a folded text, in their order; of two ways to read the same words the first. */
export const yearsIn = (folded: string): readonly Years[] => {
  const found: Years[] = []
  for (const { pattern, means } of ways) {
    for (const match of folded.matchAll(pattern)) {
      const figures = match.slice(1).flatMap((text) => (text === undefined ? [] : [Number(text)]))
      const [from, to] = means(figures)
      const one = { from, to, start: match.index, end: match.index + match[0].length }
      if (from <= to && !found.some((other) => overlaps(other, one))) found.push(one)
    }
  }
  return found.toSorted((a, b) => a.start - b.start)
}
