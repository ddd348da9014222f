import type { RosterFacts } from './facts.ts'

/** Letters that Unicode does not take apart, by what they are sorted under. */
const BASE: Readonly<Record<string, string>> = { đ: 'd', ł: 'l', ø: 'o', ß: 'ss', æ: 'ae', œ: 'oe', ð: 'd', þ: 'th', ı: 'i' }

const collate = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .replaceAll(/[đłøßæœðþı]/g, (letter) => BASE[letter] ?? letter)

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

/** By name, those without one last by number; letters compare without their accents. */
export const byName = (a: RosterFacts, b: RosterFacts): number =>
  Number(a.name === null) - Number(b.name === null) ||
  compare(collate(a.name ?? ''), collate(b.name ?? '')) ||
  Number(a.number ?? -1) - Number(b.number ?? -1) ||
  a.line - b.line

/** What goes into one bag: the lines of one player, or one line that is nobody's. */
export type Bag = { readonly name: string | null; readonly number: string | null; readonly rows: readonly RosterFacts[] }

const isSamePlayer = (bag: Bag, row: RosterFacts): boolean =>
  (row.name !== null || row.number !== null) && bag.name === row.name && bag.number === row.number

/**
 * The bags of a roster, by name. Lines of the same name and number go to one player; whoever has neither is a bag of their own, for
 * nobody can tell whose it is. Two players may share a name, so that a name alone joins nothing with a number.
 */
export const bagsOf = (roster: readonly RosterFacts[]): readonly Bag[] => {
  const bags: Bag[] = []
  for (const row of [...roster].sort(byName)) {
    const at = bags.findIndex((bag) => isSamePlayer(bag, row))
    const bag = bags[at]
    if (bag === undefined) bags.push({ name: row.name, number: row.number, rows: [row] })
    else bags[at] = { ...bag, rows: [...bag.rows, row] }
  }
  return bags
}
