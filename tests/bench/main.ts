import { readdirSync } from 'node:fs'
import { parseArgs } from 'node:util'
import type { Bench, Figure, Measure } from './bench.ts'

const benches = (): readonly string[] =>
  readdirSync(import.meta.dirname)
    .filter((file) => /^[a-z-]+\.js$/.test(file) && file !== 'main.js' && file !== 'bench.js')
    .map((file) => file.slice(0, -3))

const isBench = (value: unknown): value is { readonly bench: Bench } =>
  typeof value === 'object' && value !== null && 'bench' in value && typeof value.bench === 'function'

const line = ({ name, value, unit, most }: Figure): string =>
  `  ${name.padEnd(44)} ${String(Math.round(value * 100) / 100).padStart(10)} ${unit}${most === undefined ? '' : `  (at most ${most})`}`

const isMeasure = (value: unknown): value is { readonly measure: Measure } =>
  typeof value === 'object' && value !== null && 'measure' in value && typeof value.measure === 'function'

/** A benchmark that takes words of its own: `bench tardiness FILE OPTIMA --jobs 40`. */
const measured = async (words: readonly string[]): Promise<boolean> => {
  const [name, ...rest] = words
  if (name === undefined || !rest.some((word) => !word.startsWith('--')) || !benches().includes(name)) return false
  const loaded: unknown = await import(`./${name}.js`)
  if (!isMeasure(loaded)) return false
  process.exitCode = await loaded.measure(rest)
  return true
}

const usage = () => `npm run bench -- [name …] [--quick] [--json]
Measures, each figure beside its floor in the same run; without a name all of: ${benches().join(', ')}.
Exit code 0: measured. 1: a figure is over what it may be. 2: there is no such benchmark.
`

const runAll = async (): Promise<void> => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { quick: { type: 'boolean' }, json: { type: 'boolean' } },
  })

  const asked = positionals.length > 0 ? positionals : benches()
  const unknown = asked.filter((name) => !benches().includes(name))
  if (unknown.length > 0) {
    process.stderr.write(`there is no benchmark ${unknown.join(', ')}; there is ${benches().join(', ')}\n`)
    process.exitCode = 2
  } else {
    const results: { name: string; figures: readonly Figure[] }[] = []
    for (const name of asked) {
      const loaded: unknown = await import(`./${name}.js`)
      if (!isBench(loaded)) throw new Error(`${name} exports no bench`)
      const figures = await loaded.bench({ quick: values.quick === true })
      results.push({ name, figures })
      if (values.json !== true) process.stdout.write(`${[name, ...figures.map(line)].join('\n')}\n`)
    }
    if (values.json === true) process.stdout.write(`${JSON.stringify(results)}\n`)
    const over = results.flatMap(({ figures }) => figures.filter(({ value, most }) => most !== undefined && value > most))
    if (over.length > 0) process.exitCode = 1
  }
}

if (process.argv.includes('--help')) process.stdout.write(usage())
else if (!(await measured(process.argv.slice(2)))) await runAll()
