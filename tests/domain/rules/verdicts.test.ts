import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import type { Problem } from '../../../src/domain/result/result.ts'
import { bench, codes, readJson, workOut } from '../press/workbench.ts'

const fixtures = new URL('../../fixtures/', import.meta.url)

type Verdict = { readonly order: string; readonly columns: Readonly<Record<'stop' | 'needs-test' | 'caution' | 'gates', string>> }

/** The table of verdicts.md: what each order must give. */
const verdicts: readonly Verdict[] = readFileSync(new URL('verdicts.md', fixtures), 'utf8')
  .split('\n')
  .filter((line) => /^\| \d+ \|/.test(line))
  .map((line) => {
    const [, number = '', , stop = '', test = '', caution = '', gates = ''] = line.split('|').map((cell) => cell.trim())
    return { order: number.padStart(2, '0'), columns: { stop, 'needs-test': test, caution, gates } }
  })

const files: Readonly<Record<string, string>> = {
  '01': '01-football-mesh',
  '02': '02-basketball-interlock',
  '03': '03-nylon-beaded',
  '04': '04-sublimated-soccer',
  '05': '05-cotton-stones-only',
  '06': '06-polypropylene',
  '07': '07-toddler-stones',
  '08': '08-youth-leaded',
  '09': '09-two-layer-vinyl',
  '10': '10-zip-hoodie',
}

const fixture = (name: string): unknown => readJson(`tests/fixtures/verdicts/${name}.json`)

const quoted = (cell: string): readonly string[] =>
  [...cell.matchAll(/`([a-z0-9-]+)`/g)].flatMap((match) => match[1] ?? []).toSorted()

const seen = (problems: readonly Problem[], severity: Problem['severity']): readonly string[] =>
  codes(problems, severity).toSorted()

describe('the ten orders of verdicts.md', () => {
  it('are ten', () => {
    expect(verdicts.map((verdict) => verdict.order)).toEqual(Object.keys(files).toSorted())
  })

  it.each(verdicts.map((verdict) => [files[verdict.order] ?? '', verdict] as const))(
    '%s gives its verdict and no other stop',
    (name, { columns }) => {
      const { problems, facts } = workOut(fixture(name))
      for (const severity of ['stop', 'needs-test', 'caution'] as const) {
        if (columns[severity] === 'any') continue
        const wanted = quoted(columns[severity])
        const exact = severity === 'stop' || wanted.length === 0
        expect(seen(problems, severity)).toEqual(exact ? wanted : expect.arrayContaining([...wanted]))
      }
      if (columns.gates === 'any' || !facts.press.ok) return
      const gates = facts.press.value.gates.map((gate) => gate.code)
      expect(gates).toEqual(expect.arrayContaining([...quoted(columns.gates)]))
    },
  )

  it.each(Object.values(files))('%s has a sequence that the checker finds sound, wherever one is planned', (name) => {
    const { job, facts } = workOut(fixture(name))
    const steps = facts.press.ok ? facts.press.value.steps : []
    expect(checkSequence(job, bench, steps).filter((breach) => steps.length > 0 || breach.code !== 'not-finished')).toEqual([])
  })

  it('every problem names a source and its ways out', () => {
    const problems = Object.values(files).flatMap((name) => workOut(fixture(name)).problems)
    expect(problems.length).toBeGreaterThan(20)
    for (const { facts } of problems) {
      expect(typeof facts['source'] === 'string' && facts['source'].length > 3).toBe(true)
      expect(Array.isArray(facts['ways'])).toBe(true)
    }
  })
})

describe('their twins', () => {
  it('nylon of unknown finish is not refused, it waits for water drops', () => {
    const { problems, facts } = workOut(fixture('03b-nylon-unknown-finish'))
    expect(seen(problems, 'stop')).toEqual([])
    expect(seen(problems, 'needs-test')).toContain('finish-unknown')
    expect(facts.press.ok ? facts.press.value.gates.map((gate) => gate.code) : []).toContain('water-drops')
  })

  it('the same nylon with beaded drops is refused, with a vinyl for coated cloth as a way out', () => {
    const findings = [{ garment: 'home', seconds: [60, 60, 60, 60, 60] }]
    const { problems } = workOut(fixture('03b-nylon-unknown-finish'), { findings })
    expect(seen(problems, 'stop')).toEqual(['drops-beaded'])
    const [beaded] = problems
    expect(beaded?.facts['ways']).toContainEqual({
      way: 'another-class',
      subject: 'vinyl-low-temperature-white',
      inStock: 4_572_000,
    })
  })

  it('standard vinyl on glitter is refused', () => {
    expect(seen(workOut(fixture('09b-vinyl-on-glitter')).problems, 'stop')).toEqual(['not-on-top'])
  })

  it('strings in the hood of an eight-year-old are not pressed', () => {
    expect(seen(workOut(fixture('10b-zip-hoodie-strings-child')).problems, 'stop')).toEqual(['strings-on-child'])
  })
})
