import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import * as z from 'zod'

const program = new URL('../../.build/src/cli/stones.js', import.meta.url).pathname

const stones = (...words: readonly string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], { encoding: 'utf8' })
  return { status, stdout, stderr }
}

const answer = z.strictObject({
  text: z.string(),
  count: z.int(),
  pieces: z.array(
    z.strictObject({
      text: z.string(),
      atMm: z.tuple([z.number(), z.number()]),
      count: z.int(),
      stones: z.array(z.tuple([z.number(), z.number()])),
      holeMm: z.number(),
      pitchMm: z.number(),
      coverage: z.number(),
      flags: z.array(z.looseObject({ code: z.string() })),
    }),
  ),
})

test('stones are given piece by piece in millimetres, and no two of a number are nearer than the pitch', () => {
  const { status, stdout } = stones('--text', '20', '--height', '6.8in', '--stone', 'SS10', '--rows', '2', '--json')
  expect(status).toBe(0)
  const { count, pieces } = answer.parse(JSON.parse(stdout))
  expect(pieces.map(({ text }) => text)).toEqual(['2', '0'])
  const all = pieces.flatMap(({ atMm: [x, y], stones: places }) => places.map(([sx, sy]) => [x + sx, y + sy] as const))
  expect(all).toHaveLength(count)
  for (const [index, [x, y]] of all.entries())
    for (const [ox, oy] of all.slice(index + 1))
      expect(Math.hypot(ox - x, oy - y)).toBeGreaterThan((pieces[0]?.pitchMm ?? 0) - 1e-6)
})

test('172.72 mm, 17.272 cm and 6.8 in are one height', () => {
  const counts = ['172.72mm', '17.272cm', '6.8in'].map((height) => stones('--text', '7', '--height', height).stdout)
  expect(new Set(counts).size).toBe(1)
})

test('a picture is written as PNG', () => {
  const folder = mkdtempSync(join(tmpdir(), 'stones-'))
  const file = join(folder, 'seven.png')
  expect(stones('--text', '7', '--png', file).status).toBe(0)
  expect(readFileSync(file).subarray(1, 4).toString()).toBe('PNG')
  rmSync(folder, { recursive: true })
})

test.each([
  [['--text', ''], 1],
  [['--text', '🏈'], 1],
  [['--text', '9'.repeat(500)], 1],
  [['--text', '7', '--height', '0'], 1],
  [['--text', '7', '--rows', '50'], 1],
  [['--text', 'שלום'], 1],
  [[], 2],
  [['--text', '7', '--height', 'tall'], 2],
  [['--text', '7', '--face', 'nobody'], 2],
  [['--text', '7', '--stone', 'SS99'], 2],
  [['--text', '7', '--style', 'spiral'], 2],
  [['--frame', '7'], 2],
])('%j ends with exit code %d and says why', (words, code) => {
  const { status, stderr } = stones(...words)
  expect(status).toBe(code)
  expect(stderr.length).toBeGreaterThan(10)
  expect(stderr).not.toContain('    at ')
})
