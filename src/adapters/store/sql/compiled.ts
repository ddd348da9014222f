import type { Compilable, CompiledQuery, RawBuilder } from 'kysely'
import type { Database } from './tables.ts'

/** Stands in a statement for a value that is given when it is run. */
class Slot {
  readonly name: string
  constructor(name: string) {
    this.name = name
  }
}

/** The values of a statement while it is built: each knows its own name alone. */
const slotsOf = <V extends object>(): V =>
  new Proxy({}, { get: (_, name) => (typeof name === 'string' ? new Slot(name) : undefined) }) as V

const given = (parameter: unknown, values: object): unknown =>
  parameter instanceof Slot ? Reflect.get(values, parameter.name) : parameter

type Ran<Row> = { readonly rows: readonly Row[] }
export type Compiled<V, Row> = {
  /** Every row of the answer. */
  readonly all: (db: Database, values: V) => Promise<readonly Row[]>
  /** The first row, if there is one. */
  readonly first: (db: Database, values: V) => Promise<Row | undefined>
}

/**
 * A statement that is built and compiled when it is run first, and then only gets its values: building one each time costs about as much as
 * sending it. The values are told apart by their names, so `build` may name each, and must not look at any.
 */
export const compiled = <V extends object, Row>(build: (db: Database, values: V) => Compilable<Row>): Compiled<V, Row> => {
  let known: CompiledQuery<Row> | undefined
  const run = (db: Database, values: V): Promise<Ran<Row>> => {
    known ??= build(db, slotsOf<V>()).compile()
    return db.executeQuery({ ...known, parameters: known.parameters.map((one) => given(one, values)) })
  }
  return {
    all: async (db, values) => (await run(db, values)).rows,
    first: async (db, values) => (await run(db, values)).rows[0],
  }
}

/** The same for a statement that is written out. */
export const compiledText = <V extends object, Row>(write: (values: V) => RawBuilder<Row>): Compiled<V, Row> =>
  compiled((db, values) => ({ compile: () => write(values).compile(db) }))

/** The same for a statement whose shape depends on what is written: one for each shape that comes. */
export const compiledByShape = <V extends object, Row>(
  build: (db: Database, values: V, shape: readonly string[]) => Compilable<Row>,
): ((shape: readonly string[]) => Compiled<V, Row>) => {
  const known = new Map<string, Compiled<V, Row>>()
  return (shape) => {
    const name = shape.join(' ')
    const one = known.get(name) ?? compiled<V, Row>((db, values) => build(db, values, shape))
    known.set(name, one)
    return one
  }
}
