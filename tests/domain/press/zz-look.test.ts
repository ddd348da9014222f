import { readdirSync } from 'node:fs'
import { it } from 'vitest'
import { checkSequence } from '../../../src/domain/press/check-sequence.ts'
import { bench, codes, readJson, workOut } from './workbench.ts'
it('look', () => {
  for (const f of readdirSync('tests/fixtures/verdicts').sort()) {
    const w = workOut(readJson('tests/fixtures/verdicts/' + f))
    console.log(f, codes(w.problems, 'stop'), w.facts.press.ok ? JSON.stringify(checkSequence(w.job, bench, w.facts.press.value.steps)) : null)
  }
})
