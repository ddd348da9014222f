import { ok, type Result, refuse } from '../../result/result.ts'
import type { Book } from '../book/operation.ts'
import type { ScheduleProblem } from '../book/problems.ts'
import { addOrder, emptyModel, free, type Model } from '../timeline/model.ts'
import { bookProblems } from './check-book.ts'

/** The book as a model; refuses one that cannot be planned with everything that `bookProblems` finds, or with `never-together`. */
export const compile = (book: Book): Result<Model, ScheduleProblem> => {
  const problems = bookProblems(book)
  if (problems.length > 0) return refuse(...problems)
  const model = emptyModel(book.now, book.stations)
  for (const order of book.orders) addOrder(model, order)
  const shared = staffingProblem(model)
  return shared === null ? ok(model) : refuse(shared)
}

/** An operation from `first` on whose stations are never open together for long enough. */
export const staffingProblem = (model: Model, first = 0): ScheduleProblem | null => {
  const isUnstaffed = (operation: number): boolean =>
    model.state[operation] === free && (model.ways[model.waysOf[operation] ?? 0]?.length ?? 0) === 0
  let operation = first
  while (operation < model.work.length && !isUnstaffed(operation)) operation += 1
  if (operation >= model.work.length) return null
  const order = model.order[operation] ?? 0
  const facts = { order: model.orders[order]?.id ?? '', operation: model.names[operation] ?? '' }
  return { code: 'never-together', at: `/orders/${order}`, severity: 'stop', facts }
}
