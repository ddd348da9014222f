import type { Player } from '../../draft.ts'
import { spoken } from '../../words/languages.ts'
import { classOf } from '../ages/age-answer.ts'
import { yearsIn } from '../ages/age-spans.ts'
import { fold } from '../text/tokens.ts'

const said = spoken.rosters
const { years, months } = spoken.ages

const remark = new RegExp(`(?:\\s*[,(–-]\\s*|\\s+)((?:${said.remark}\\b|\\d{1,2} ?(?:${years}|${months})\\b)[^\\n]{0,60})$`, 'u')
const inMonths = new RegExp(`\\b(\\d{1,2}) ?${months}\\b`)
const notYet = new RegExp(`\\b${said.remarkUnder} (\\d{1,2})\\b`)
const bareAge = new RegExp(`^${said.remarkAge} (\\d{1,2})\\b`)

/** A line of a list without what is said of the player behind it: "Theo youth M, he's 8". */
export type Remarked = { readonly line: string; readonly note?: string; readonly age?: NonNullable<Player['age']> }

const ageIn = (words: string): NonNullable<Player['age']> | null => {
  const count = inMonths.exec(words)?.[1]
  if (count !== undefined) return classOf(Math.floor(Number(count) / 12))
  const under = notYet.exec(words)?.[1]
  if (under !== undefined) return classOf(Number(under) - 1)
  const told = yearsIn(words)
  const [one, ...more] = told.map(({ from }) => from)
  const age = one !== undefined && more.length === 0 ? one : Number(bareAge.exec(words)?.[1] ?? Number.NaN)
  return Number.isInteger(age) ? classOf(age) : null
}

/** The remark behind a line of a list, its age where it tells one; null where there is none. */
export const remarkedLine = (line: string): Remarked | null => {
  const found = remark.exec(fold(line))
  const words = found?.[1]
  if (found === null || words === undefined || found.index === 0) return null
  const age = ageIn(words)
  const note = line.slice(line.length - words.length).replace(/[).\s]+$/, '')
  return { line: line.slice(0, found.index), ...(age === null ? { note } : { age }) }
}

const sizeLater = `(?:${said.sizeLater}|[?]+)`
const withoutSize = new RegExp(`(?:\\s*[-–,;:(]\\s*|\\s+)${sizeLater}(?:[\\s,;]+${sizeLater}){0,2}\\s*[).]?\\s*$`, 'u')
const saysSize = new RegExp(`\\b${said.size}\\b`)

/** A line before the words that its size comes later; `says` where they name the size. Null where it has none. */
export const beforeSizeLater = (line: string): { readonly line: string; readonly says: boolean } | null => {
  const end = withoutSize.exec(fold(line))
  return end === null || end.index === 0 ? null : { line: line.slice(0, end.index), says: saysSize.test(end[0]) }
}
