import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { temporaryFolder } from '../support/embedded.ts'
import { runProgram, startService } from '../support/service.ts'
import { leftOf, workerOf } from '../support/service-watch.ts'
import { until } from '../support/until.ts'

const folder = temporaryFolder()
afterAll(() => folder.remove())

describe('a service that loses what it stands on', () => {
  it('ends with a word and leaves nothing running when its database dies', { timeout: 60_000 }, async () => {
    const lost = join(folder.path, 'lost')
    const service = await startService(lost)
    const worker = await workerOf(service.pid)
    const [server] = leftOf(lost, []).filter(({ command }) => command.includes('postgres'))
    process.kill(server?.pid ?? 0, 'SIGKILL')
    expect(await service.ended).toBe(1)
    expect(service.said()).toContain('the connection that holds the data broke; start again')
    await until('nothing is left', () => leftOf(lost, [service.pid, worker]).length === 0)
    const again = await startService(lost)
    await again.signal('SIGINT')
    expect(await again.ended).toBe(0)
  })

  it('takes its worker along when it is killed while that one still starts', { timeout: 60_000 }, async () => {
    const early = join(folder.path, 'early')
    const service = runProgram('src/main.js', { DATA: early, COUNTER_PORT: '0' })
    const worker = await workerOf(service.pid)
    await service.signal('SIGKILL')
    await until('the worker is gone', () => leftOf('no folder', [worker]).length === 0)
    const again = await startService(early)
    await again.signal('SIGINT')
    expect(leftOf(early, [])).toEqual([])
  })

  it('stops in order when it is told so while it still starts', { timeout: 60_000 }, async () => {
    const hasty = join(folder.path, 'hasty')
    const service = runProgram('src/main.js', { DATA: hasty, COUNTER_PORT: '0' })
    await until('its database runs', () =>
      leftOf(hasty, []).some(({ command }) => command.includes('-D') && !command.includes('initdb')),
    )
    await service.signal('SIGINT')
    expect(await service.ended).toBe(0)
    expect(leftOf(hasty, [service.pid])).toEqual([])
  })
})
