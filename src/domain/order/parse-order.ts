import type { Problem, Result } from '../result/result.ts'
import { ok, pointer } from '../result/result.ts'
import { parseShape } from '../result/shape.ts'
import { type Decoration, type Order, orderSchema, type Row } from './order.ts'
import type { OrderProblem } from './problems.ts'

type Named = { readonly id: string }

const twice = (items: readonly Named[], kind: string, root: string): readonly OrderProblem[] =>
  items.flatMap((item, index) =>
    items.findIndex((other) => other.id === item.id) < index
      ? [{ code: 'id-twice', at: `${root}${pointer(index, 'id')}`, severity: 'stop', facts: { id: item.id, kind } } as const]
      : [],
  )

const unknownGarments = (order: Order, decoration: Decoration, at: string): readonly OrderProblem[] => {
  const known = order.garments.map((garment) => garment.id)
  return decoration.on.flatMap((id, index) =>
    known.includes(id)
      ? []
      : [{ code: 'garment-not-in-order', at: `${at}${pointer('on', index)}`, severity: 'stop', facts: { id, known } } as const],
  )
}

/** An extra's id names one decoration: the order's own ids are taken, and another extra may share it only when it is the same. */
const extraTwice = (order: Order, row: Row, at: string): readonly OrderProblem[] => {
  const extras = row.extras ?? []
  const others = order.roster.filter((one) => one.line < row.line).flatMap((one) => one.extras ?? [])
  const taken = (extra: Decoration, index: number) =>
    order.decorations.some(({ id }) => id === extra.id) ||
    extras.findIndex(({ id }) => id === extra.id) < index ||
    others.some((other) => other.id === extra.id && JSON.stringify(other) !== JSON.stringify(extra))
  return extras.flatMap((extra, index) =>
    taken(extra, index)
      ? [
          {
            code: 'id-twice',
            at: `${at}${pointer('extras', index, 'id')}`,
            severity: 'stop',
            facts: { id: extra.id, kind: 'decoration' },
          } as const,
        ]
      : [],
  )
}

const rowProblems = (order: Order, index: number): readonly OrderProblem[] => {
  const row = order.roster[index]
  if (row === undefined) return []
  const at = pointer('roster', index)
  const garments = order.garments.map((garment) => garment.id)
  const decorations = order.decorations.map((decoration) => decoration.id)
  const problems: OrderProblem[] = []
  if (!garments.includes(row.garment)) {
    problems.push({
      code: 'garment-not-in-order',
      at: `${at}/garment`,
      severity: 'stop',
      facts: { id: row.garment, known: garments },
    })
  }
  if (order.roster.findIndex((other) => other.line === row.line) < index) {
    problems.push({ code: 'line-twice', at: `${at}/line`, severity: 'stop', facts: { line: row.line } })
  }
  for (const [place, id] of (row.without ?? []).entries()) {
    if (decorations.includes(id)) continue
    problems.push({
      code: 'decoration-not-in-order',
      at: `${at}${pointer('without', place)}`,
      severity: 'stop',
      facts: { id, known: decorations },
    })
  }
  return [
    ...problems,
    ...(row.extras ?? []).flatMap((extra, place) => unknownGarments(order, extra, `${at}${pointer('extras', place)}`)),
    ...extraTwice(order, row, at),
  ]
}

/** Reads an order document: its shape first, then that every id it uses stands in it. All problems carry a JSON Pointer. */
export const parseOrder = (document: unknown): Result<Order, Problem> => {
  const shape = parseShape(orderSchema, document)
  if (!shape.ok) return shape
  const order = shape.value
  const problems: readonly Problem[] = [
    ...twice(order.garments, 'garment', '/garments'),
    ...twice(order.decorations, 'decoration', '/decorations'),
    ...order.decorations.flatMap((decoration, index) => unknownGarments(order, decoration, pointer('decorations', index))),
    ...order.roster.flatMap((_, index) => rowProblems(order, index)),
  ]
  return problems.length > 0 ? { ok: false, problems } : ok(order)
}
