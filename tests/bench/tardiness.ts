import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { planModel } from '../../src/domain/schedule/search/plan.ts'
import { jobsBook, modelOf, objectives } from '../support/scheduling.ts'
import type { Bench, Measure } from './bench.ts'

type Gaps = { readonly instances: number; readonly optimal: number; readonly meanGap: number; readonly maxGap: number }

const numbersIn = async (file: string): Promise<readonly number[]> =>
  (await readFile(file, 'utf8'))
    .split(/\s+/)
    .filter((word) => word !== '')
    .map(Number)

const solve = (values: readonly number[], jobs: number, seconds: number): number => {
  const book = jobsBook({ p: values.slice(0, jobs), w: values.slice(jobs, 2 * jobs), d: values.slice(2 * jobs, 3 * jobs) })
  const end = performance.now() + seconds * 1_000
  const stop = (): boolean => performance.now() >= end
  return planModel(modelOf(book), { seed: 1, budget: Number.MAX_SAFE_INTEGER, stop, objective: objectives.tardiness }).cost
}

const gapOf = (found: number, optimum: number): number => {
  if (found === optimum) return 0
  return optimum === 0 ? 100 : ((found - optimum) * 100) / optimum
}

/** Any OR-Library file of weighted tardiness instances against the values given for them, by the general engine. */
const gapsOf = async (task: { file: string; optima: string; jobs: number; seconds: number; every: number }): Promise<Gaps> => {
  const values = await numbersIn(task.file)
  const optima = await numbersIn(task.optima)
  const length = task.jobs * 3
  const gaps = optima.flatMap((optimum, index) => {
    if (index % task.every !== 0) return []
    return [gapOf(solve(values.slice(index * length, (index + 1) * length), task.jobs, task.seconds), optimum)]
  })
  const sum = gaps.reduce((a, b) => a + b, 0)
  const optimal = gaps.filter((gap) => gap <= 0).length
  return { instances: gaps.length, optimal, meanGap: sum / Math.max(1, gaps.length), maxGap: Math.max(0, ...gaps) }
}

export const measure: Measure = async (words) => {
  const { values, positionals } = parseArgs({
    args: [...words],
    allowPositionals: true,
    options: { jobs: { type: 'string' }, seconds: { type: 'string' }, json: { type: 'boolean' } },
  })
  const [file, optima] = positionals
  if (file === undefined || optima === undefined) {
    process.stderr.write('tardiness FILE OPTIMA --jobs N [--seconds S] [--json]\n')
    return 2
  }
  const gaps = await gapsOf({ file, optima, jobs: Number(values.jobs ?? 40), seconds: Number(values.seconds ?? 1), every: 1 })
  const { instances, optimal, meanGap, maxGap } = gaps
  const line = `${optimal} of ${instances} optimal, mean gap ${meanGap.toFixed(4)} %, largest ${maxGap.toFixed(4)} %`
  process.stdout.write(values.json === true ? `${JSON.stringify(gaps)}\n` : `${line}\n`)
  return 0
}

export const bench: Bench = async ({ quick }) => {
  const folder = join(projectRoot(), 'tests', 'fixtures', 'wt')
  const files = { file: join(folder, 'wt40.txt'), optima: join(folder, 'wtopt40.txt') }
  const gaps = await gapsOf({ ...files, jobs: 40, seconds: quick ? 0.3 : 1, every: quick ? 12 : 1 })
  return [
    { name: 'instances not at the published value', value: gaps.instances - gaps.optimal, unit: `of ${gaps.instances}` },
    { name: 'mean gap', value: gaps.meanGap, unit: '%', most: 0.05 },
    { name: 'largest gap', value: gaps.maxGap, unit: '%' },
  ]
}
