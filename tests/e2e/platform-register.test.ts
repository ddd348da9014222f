import { execFile } from 'node:child_process'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import type { Ran } from '../support/command.ts'
import { type StandIn, startStandIn, token } from '../support/platform/stand-in.ts'

let platform: StandIn
beforeAll(async () => {
  platform = await startStandIn()
})
afterAll(() => platform.stop())

const program = join(projectRoot(), '.build', 'src', 'cli', 'register.js')

/** Runs beside us: the platform it talks to lives in this process. */
const register = (words: readonly string[], given: { readonly [name: string]: string }): Promise<Ran> =>
  new Promise((resolve) => {
    const env = { PATH: process.env['PATH'], PLATFORM_API: platform.api, ...given }
    execFile(process.execPath, [program, ...words], { env }, (error, out, err) => {
      resolve({ status: error === null ? 0 : Number(error.code), out, err })
    })
  })

describe('npm run register', () => {
  it('registers in one server or everywhere and says so', async () => {
    const guild = platform.addGuild('Cedar Flats Press', platform.addUser('Owner')).id
    const one = await register([], { PLATFORM_TOKEN: token, PLATFORM_GUILD: guild })
    expect(one).toMatchObject({ status: 0, out: `6 commands registered in server ${guild}\n`, err: '' })
    const all = await register(['--everywhere', '--json'], { PLATFORM_TOKEN: token, PLATFORM_GUILD: guild })
    expect(JSON.parse(all.out)).toEqual({ ok: true, commands: 6, application: platform.world.application })
    expect([...platform.world.commands.keys()]).toEqual([guild, 'global'])
  })

  it('exits 1 when it is refused, with what to do and without the token', async () => {
    const refused = await register([], { PLATFORM_TOKEN: 'not-the-token' })
    expect(refused.status).toBe(1)
    expect(refused.err).toContain('copy it again')
    expect(refused.err).not.toContain('not-the-token')
  })

  it('exits 2 when it is not understood', async () => {
    expect(await register([], {})).toMatchObject({ status: 2, err: expect.stringContaining('PLATFORM_TOKEN is not set') })
    expect((await register(['--guild', 'general'], { PLATFORM_TOKEN: token })).status).toBe(2)
    expect((await register(['--guild', '123456789012345678', '--everywhere'], { PLATFORM_TOKEN: token })).status).toBe(2)
    expect((await register(['--nothing'], { PLATFORM_TOKEN: token })).status).toBe(2)
  })
})
