import highs from 'highs'
import type { Book, Operation } from '../../../../src/domain/schedule/book/operation.ts'

/** Its types describe another module format than the one Node loads. */
const load = 'default' in highs ? highs.default : highs

type Piece = { readonly name: string; readonly order: number; readonly operation: Operation }

/** A hyphen is a minus to the solver. */
const variable = (piece: string, station: string): string => `x_${piece}_${station.replaceAll('-', '_')}`

const sum = (terms: readonly string[]): string => terms.join(' + ')

/** Least weighted tardiness of a small book of stations that never close, as a mixed-integer program solved to a gap of 0. */
export const leastTardinessOf = async (book: Book): Promise<number> => {
  const solver = await load()
  const pieces: Piece[] = book.orders.flatMap((order, index) =>
    order.operations.map((operation, place) => ({ name: `${index}_${place}`, order: index, operation })),
  )
  const most =
    pieces.reduce((total, { operation }) => total + operation.minutes, 0) +
    Math.max(...pieces.map((one) => one.operation.release ?? 0))
  const lines: string[] = []
  const binaries: string[] = []
  /** The stations of a list are alike and stand in no other: the first piece takes the first of them, mirror images need no search. */
  const seen = new Set<string>()
  const say = (line: string): void => void lines.push(` c${lines.length}: ${line}`)
  for (const { name, order, operation } of pieces) {
    const stations = operation.needs[0] ?? []
    for (const station of stations) binaries.push(variable(name, station))
    say(`${sum(stations.map((station) => variable(name, station)))} = 1`)
    if (!seen.has(stations.join(' '))) say(`${variable(name, stations[0] ?? '')} = 1`)
    seen.add(stations.join(' '))
    say(`t_${order} - s_${name} >= ${operation.minutes - (book.orders[order]?.needBy ?? 0)}`)
    say(`s_${name} >= ${operation.release ?? 0}`)
    for (const after of operation.after) {
      const before = pieces.find((one) => one.order === order && one.operation.id === after.operation)
      say(`s_${name} - s_${before?.name ?? ''} >= ${(before?.operation.minutes ?? 0) + after.lagMinutes}`)
    }
  }
  pieces.forEach((one, index) => {
    for (const other of pieces.slice(index + 1)) {
      const shared = (one.operation.needs[0] ?? []).filter((station) => other.operation.needs[0]?.includes(station))
      if (shared.length === 0) continue
      const first = `y_${one.name}_${other.name}`
      binaries.push(first)
      for (const station of shared) {
        const both = `${most} ${variable(one.name, station)} - ${most} ${variable(other.name, station)}`
        say(`s_${other.name} - s_${one.name} - ${most} ${first} - ${both} >= ${one.operation.minutes - 3 * most}`)
        say(`s_${one.name} - s_${other.name} + ${most} ${first} - ${both} >= ${other.operation.minutes - 2 * most}`)
      }
    }
  })
  const goal = sum(book.orders.map((order, index) => `${order.weight} t_${index}`))
  const program = `Minimize\n obj: ${goal}\nSubject To\n${lines.join('\n')}\nBinary\n ${binaries.join('\n ')}\nEnd`
  const solution = solver.solve(program, { mip_rel_gap: 0 })
  if (solution.Status !== 'Optimal') throw new Error(`the oracle says ${solution.Status}`)
  return Math.round(solution.ObjectiveValue)
}
