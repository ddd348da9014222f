import type { Profiler } from 'node:inspector'
import { describe, expect, it } from 'vitest'
import { shareOf } from '../bench/served/share.ts'

/** Calls as a profile tells them: each with its caller, the first without. */
type Call = { readonly name: string; readonly file: string; readonly by: number | null }

const calls: readonly Call[] = [
  { name: '(root)', file: '', by: null },
  { name: '(idle)', file: '', by: 0 },
  { name: '(garbage collector)', file: '', by: 0 },
  { name: 'hearCustomer', file: 'file:///p/.build/src/desk/service/talk/hear-customer.js', by: 0 },
  { name: 'hear', file: 'file:///p/.build/src/domain/understanding/hear.js', by: 3 },
  { name: 'exec', file: '', by: 4 },
  { name: 'writev', file: '', by: 3 },
  { name: 'workOut', file: 'file:///p/.build/src/desk/work-out.js', by: 0 },
  { name: 'answer', file: 'file:///p/.build/tests/bench/served/sampled.js', by: 0 },
  { name: 'end', file: 'file:///p/node_modules/pdfkit/js/pdfkit.js', by: 10 },
  { name: 'print', file: 'file:///p/.build/src/adapters/printer/pdf/print.js', by: 0 },
]
const [root, idle, garbage, service, , inDomain, written, desk, sampler, paper] = calls.map((_, at) => at)

const profileOf = (samples: readonly (readonly [call: number | undefined, microseconds: number])[]): Profiler.Profile => ({
  nodes: calls.map(({ name, file }, id) => ({
    id,
    callFrame: { functionName: name, scriptId: '1', url: file, lineNumber: 0, columnNumber: 0 },
    children: calls.flatMap(({ by }, child) => (by === id ? [child] : [])),
  })),
  startTime: 0,
  endTime: samples.reduce((sum, [, microseconds]) => sum + microseconds, 0),
  samples: samples.map(([call]) => call ?? 0),
  timeDeltas: samples.map(([, microseconds]) => microseconds),
})

describe('the domain’s part of what a process does', () => {
  it('is everything that was called by it, and the paper; waiting and the sampler are nobody’s', () => {
    const profile = profileOf([
      [inDomain, 100],
      [desk, 50],
      [paper, 25],
      [service, 10],
      [idle, 1_000],
      [root, 1_000],
      [sampler, 1_000],
    ])
    expect(shareOf(profile, 185)).toEqual({ busy: 185, domain: 175 })
  })

  it('has the garbage that is collected while it works, and no other', () => {
    const during = profileOf([
      [inDomain, 100],
      [garbage, 30],
      [service, 10],
      [garbage, 5],
      [idle, 1_000],
      [garbage, 5],
    ])
    expect(shareOf(during, 150)).toEqual({ busy: 150, domain: 130 })
  })

  it('is a part of the processor that writes took, not of the time on the clock', () => {
    const profile = profileOf([
      [inDomain, 100],
      [written, 80],
      [service, 20],
    ])
    expect(shareOf(profile, 128)).toEqual({ busy: 128, domain: 100 })
    // Where it had less than what the samples show, because others were in between, these have it by their parts.
    expect(shareOf(profile, 90)).toEqual({ busy: 120, domain: 100 })
  })
})
