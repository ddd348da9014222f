import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { platformCommands } from '../../../../src/adapters/chat/platform/commands.ts'
import { registerCommands } from '../../../../src/adapters/chat/platform/register.ts'
import { commandWords } from '../../../../src/ports/platform-desk.ts'
import { commandTroubles } from '../../../support/platform/limits.ts'
import { type StandIn, startStandIn, token } from '../../../support/platform/stand-in.ts'

let platform: StandIn
beforeEach(async () => {
  platform = await startStandIn()
})
afterEach(() => platform.stop())

const namesIn = (where: string): unknown => platform.world.commands.get(where)?.map((command) => command['name'])

describe('registering the commands', () => {
  it('puts them everywhere or in one server, and may be run again', async () => {
    const guild = platform.addGuild('Cedar Flats Press', platform.addUser('Owner'))
    const application = platform.world.application
    for (let time = 0; time < 2; time += 1) {
      expect(await registerCommands({ token, guild: null, api: platform.api })).toEqual({ ok: true, commands: 6, application })
      expect(await registerCommands({ token, guild: guild.id, api: platform.api })).toEqual({
        ok: true,
        commands: 6,
        application,
      })
    }
    expect(namesIn('global')).toEqual(commandWords)
    expect(namesIn(guild.id)).toEqual(commandWords)
  })

  it('keeps the platform’s limits in both languages', () => {
    expect(commandTroubles(platformCommands.map((command) => ({ ...command })))).toEqual([])
    for (const { name_localizations: names } of platformCommands) {
      for (const name of Object.values(names ?? {})) expect(name).toMatch(/^[-_'\p{Ll}\p{N}]{1,32}$/u)
    }
  })

  it('says why it was refused', async () => {
    expect(await registerCommands({ token: 'wrong', guild: null, api: platform.api })).toMatchObject({
      ok: false,
      why: 'token-refused',
    })
    expect(await registerCommands({ token, guild: '123456789012345678', api: platform.api })).toMatchObject({
      ok: false,
      why: 'server-refused',
    })
    platform.fail((call) => call.method === 'PUT', { kind: 'answer', status: 400, code: 50_035 })
    expect(await registerCommands({ token, guild: null, api: platform.api })).toMatchObject({
      ok: false,
      why: 'commands-refused',
    })
    platform.fail((call) => call.method === 'PUT', { kind: 'apply-then-500' })
    expect(await registerCommands({ token, guild: null, api: platform.api })).toMatchObject({ ok: true })
  })

  it('says that the platform could not be reached', async () => {
    expect(await registerCommands({ token, guild: null, api: 'http://127.0.0.1:1/api' })).toMatchObject({
      ok: false,
      why: 'not-reached',
    })
  })
})
