import { startingWords } from '../../templates/desk/starting.ts'
import { sayProblem } from '../../templates/replies/say.ts'
import type { House } from '../adapters/store/sql/other-houses.ts'
import type { Problem } from '../domain/result/result.ts'
import { oddRecords } from '../domain/shop/odd-records.ts'
import { plainShow } from '../domain/shop/plain-show.ts'
import type { Shop } from '../domain/shop/shop.ts'
import { showFor } from '../domain/shop/show.ts'
import { type Opening, otherIds } from './other-id.ts'

type SaidProblem = { readonly at: string; readonly severity: string; readonly text: string }
type Sayer = (facts: unknown) => string

/** Maker: by its type each code has the sentence that fits its facts. */
const sayerOf = (code: string): Sayer | undefined => Reflect.get(startingWords, code) as Sayer | undefined

const textOf = (problem: Problem): string => sayerOf(problem.code)?.(problem.facts) ?? sayProblem(problem, 'en', plainShow)

/** Problems in words when there is no shop yet whose way of writing could be taken. */
export const plainProblems = (problems: readonly Problem[]): readonly SaidProblem[] =>
  problems.map((problem) => ({ at: problem.at, severity: problem.severity, text: textOf(problem) }))

/** What in a shop's own records the owner should look at again, for the terminal; empty when all looks right. */
export const recordLines = (shop: Shop): string => {
  const language = shop.profile.languages[0] ?? 'en'
  const show = showFor(shop, language)
  return problemLines(
    oddRecords(shop).map((problem) => ({
      at: problem.at,
      severity: problem.severity,
      text: sayProblem(problem, language, show),
    })),
  )
}

/** What the terminal is told of orders here that belong to another id than the shop's; empty when all looks right. */
export const otherIdLines = (houses: readonly House[], opening: Opening): string =>
  problemLines(plainProblems(otherIds(houses, opening)))

/** Problems for a person at a terminal, one a line: how bad, where, what happened and what to do. */
export const problemLines = (problems: readonly SaidProblem[]): string =>
  problems.map(({ at, severity, text }) => `${severity}${at === '' ? '' : ` at ${at}`}: ${text}\n`).join('')
