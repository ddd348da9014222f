import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'

const root = join(import.meta.dirname, '../..')
const folder = mkdtempSync(join(tmpdir(), 'style-'))

const lines = (count: number, line: (at: number) => string): string =>
  Array.from({ length: count }, (_, at) => line(at)).join('\n')
const longFunction = (length: number): string =>
  `export const long = (seed: number): number => {\n  let sum = seed\n${lines(length - 4, (at) => `  sum += ${at}`)}\n  return sum\n}\n`

const breaches: readonly (readonly [rule: string, file: string, text: string])[] = [
  ['nursery/noFloatingPromises', 'src/desk/a.ts', 'const later = (): Promise<number> => Promise.resolve(1)\nlater()\n'],
  [
    'nursery/noMisusedPromises',
    'src/desk/b.ts',
    'const later = (): Promise<boolean> => Promise.resolve(true)\nexport const b = (): number => {\n  if (later()) return 1\n  return 2\n}\n',
  ],
  [
    'nursery/useExhaustiveSwitchCases',
    'src/desk/c.ts',
    "export const c = (side: 'front' | 'back'): number => {\n  switch (side) {\n    case 'front':\n      return 1\n  }\n  return 2\n}\n",
  ],
  ['suspicious/noExplicitAny', 'src/desk/d.ts', 'export const d = (value: any): number => value.length\n'],
  ['style/noNonNullAssertion', 'src/desk/e.ts', 'export const e = (value?: string): number => value!.length\n'],
  ['style/noDefaultExport', 'src/desk/f.ts', 'export default 1\n'],
  [
    'style/noUselessElse',
    'src/desk/g.ts',
    'export const g = (on: boolean): number => {\n  if (on) return 1\n  else return 2\n}\n',
  ],
  ['style/noProcessEnv', 'src/desk/h.ts', "export const h = process.env['HOME']\n"],
  [
    'complexity/useMaxParams',
    'src/desk/i.ts',
    'export const i = (a: number, b: number, c: number, d: number): number => a + b + c + d\n',
  ],
  ['complexity/noExcessiveLinesPerFunction', 'src/desk/j.ts', longFunction(46)],
  ['style/noExcessiveLinesPerFile', 'src/desk/k.ts', `${lines(251, (at) => `export const k${at} = ${at}`)}\n`],
  ['plugin', 'src/domain/price/l.ts', 'export const l = (): number => Math.random()\n'],
  ['plugin', 'src/domain/price/m.ts', 'export const m = async (): Promise<number> => await Promise.resolve(1)\n'],
  ['style/noRestrictedGlobals', 'src/domain/price/n.ts', 'export const n = (): number => performance.now()\n'],
  ['suspicious/noSkippedTests', 'tests/o.test.ts', "import { it } from 'vitest'\n\nit.skip('counts', () => undefined)\n"],
]

const allowed: readonly (readonly [file: string, text: string])[] = [
  ['src/config.ts', "export const home = process.env['HOME']\n"],
  ['src/domain/layout/long.ts', longFunction(56)],
  ['src/domain/layout/four.ts', 'export const four = (a: number, b: number, c: number, d: number): number => a + b + c + d\n'],
]

const rulesBroken = (): readonly { readonly rule: string; readonly file: string }[] => {
  const biome = join(root, 'node_modules/.bin/biome')
  const { stdout } = spawnSync(biome, ['lint', '--reporter=json', '--max-diagnostics=none'], { cwd: folder, encoding: 'utf8' })
  const report: { diagnostics: { category: string; location: { path: string } }[] } = JSON.parse(stdout)
  return report.diagnostics.map(({ category, location }) => ({ rule: category.replace(/^lint\//, ''), file: location.path }))
}

beforeAll(() => {
  for (const name of ['.biome', '.biome.json', '.gitignore', 'package.json', 'tsconfig.json']) {
    cpSync(join(root, name), join(folder, name), { recursive: true })
  }
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
  for (const [file, text] of [...breaches.map(([, file, text]) => [file, text] as const), ...allowed]) {
    mkdirSync(join(folder, dirname(file)), { recursive: true })
    writeFileSync(join(folder, file), text)
  }
})

afterAll(() => {
  rmSync(folder, { recursive: true, force: true })
})

describe('the check of style', () => {
  it('refuses each planted breach and nothing that is allowed', () => {
    const broken = rulesBroken()
    expect(breaches.filter(([rule, file]) => !broken.some((found) => found.rule === rule && found.file === file))).toEqual([])
    expect(broken.filter(({ file }) => allowed.some(([name]) => name === file))).toEqual([])
  })
})
