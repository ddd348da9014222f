import { describe, expect, it } from 'vitest'
import { run } from '../../../src/adapters/store/embedded/run.ts'

const lastPipeful = 60_000

describe('what a program said', () => {
  it('is whole, though its end is heard of before its last words', async () => {
    const words = `head -c ${lastPipeful} /dev/zero | tr '\\0' x`
    const together = Array.from({ length: 24 }, () => run('sh', ['-c', words], null))
    const lengths = (await Promise.all(together)).map(({ code, said }) => [code, said.length])
    expect(lengths).toEqual(together.map(() => [0, lastPipeful]))
  })

  it('is told at its end, though something it started keeps the pipes open', async () => {
    const { code, said } = await run('sh', ['-c', 'sleep 60 & echo $!'], null)
    expect(code).toBe(0)
    expect(process.kill(Number(said), 0)).toBe(true)
    process.kill(Number(said))
  })

  it('is the reason why it could not be run', async () => {
    const { code, said } = await run('/no/such/program', [], null)
    expect([code, said]).toEqual([null, expect.stringContaining('ENOENT')])
  })
})
