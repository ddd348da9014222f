import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import * as z from 'zod'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { planModel } from '../../src/domain/schedule/search/plan.ts'
import { flowShopBook, modelOf, objectives, taillardTimes } from '../support/scheduling.ts'
import type { Bench, Measure } from './bench.ts'

/** The permutation flow shop: on every machine the jobs keep their turn. */
const makespan = (times: readonly (readonly number[])[], seconds: number): number => {
  const end = performance.now() + seconds * 1_000
  const stop = (): boolean => performance.now() >= end
  const effort = { seed: 1, budget: Number.MAX_SAFE_INTEGER, stop, objective: objectives.makespan, keepsTurn: true }
  return planModel(modelOf(flowShopBook(times)), effort).cost
}

export const measure: Measure = async (words) => {
  const { values, positionals } = parseArgs({
    args: [...words],
    allowPositionals: true,
    options: { seconds: { type: 'string' }, json: { type: 'boolean' } },
  })
  const [jobs, machines, seed] = positionals.map(Number)
  if (jobs === undefined || machines === undefined || seed === undefined) {
    process.stderr.write('flowshop JOBS MACHINES SEED [--seconds S] [--json]\n')
    return 2
  }
  const found = makespan(taillardTimes(jobs, machines, seed), Number(values.seconds ?? 1))
  process.stdout.write(values.json === true ? `${JSON.stringify({ jobs, machines, seed, makespan: found })}\n` : `${found}\n`)
  return 0
}

const instancesSchema = z.array(z.looseObject({ seed: z.int(), best_known: z.int() }))

export const bench: Bench = async ({ quick }) => {
  const file = join(projectRoot(), 'tests', 'fixtures', 'taillard', 'ta001-010.json')
  const instances = instancesSchema.parse(JSON.parse(await readFile(file, 'utf8')))
  const gaps = instances.map((one) => {
    const found = makespan(taillardTimes(20, 5, one.seed), quick ? 0.3 : 1)
    return ((found - one.best_known) * 100) / one.best_known
  })
  return [{ name: 'mean gap to the best known', value: gaps.reduce((a, b) => a + b, 0) / gaps.length, unit: '%', most: 0.5 }]
}
