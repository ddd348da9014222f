import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { startPlatform } from '../../../../src/adapters/chat/platform/platform.ts'
import { changeOf } from '../../../../src/adapters/chat/platform/set-up.ts'
import { smallDesk } from '../../../support/platform/desk.ts'
import { everyComponent } from '../../../support/platform/limits.ts'
import { addServer, idsOf, textsOf, toldTo } from '../../../support/platform/shop-in-server.ts'
import { startStandIn, token } from '../../../support/platform/stand-in.ts'
import type { Asked, Room, User } from '../../../support/platform/world.ts'

const until = <T>(read: () => T) => expect.poll(read, { timeout: 8_000, interval: 5 })
const start = async () => {
  const platform = await startStandIn()
  const small = smallDesk()
  const server = addServer(platform, 'Cedar Flats Press')
  const reports: unknown[] = []
  const bot = await startPlatform(small.desk, {
    token,
    api: platform.api,
    readsContent: false,
    report: (error) => reports.push(error),
  })
  return { platform, small, server, reports, stop: () => bot.stop().then(platform.stop) }
}
let open: Awaited<ReturnType<typeof start>>
beforeEach(async () => {
  open = await start()
})
afterEach(async () => {
  expect(open.reports).toEqual([])
  await open.stop()
})

/** The private dialogue as it stands now. */
const dialogueOf = (asked: Asked) => {
  const dialogue = asked.private[0]
  if (dialogue === undefined) throw new Error('no dialogue')
  return dialogue
}

describe('the first-run dialogue', () => {
  it('keeps every choice at once, says what is missing, and tries the channels', async () => {
    const { platform, small, server } = open
    const where = { user: server.owner, room: server.lobby }
    const asked = platform.command(where, 'setup')
    await until(() => toldTo(asked)).toContain('Still to choose')
    expect(idsOf(dialogueOf(asked))).toEqual(
      ['bench', 'owner', 'orders', 'staffRoles', 'ownerRoles', 'talks', 'language', 'finish'].map((name) => `g:${name}`),
    )
    const [owners, floor] = server.guild.roles.map((role) => role.id)
    const choices: readonly (readonly [string, readonly string[]])[] = [
      ['bench', [server.bench.id]],
      ['owner', [server.office.id]],
      ['orders', [server.lobby.id]],
      ['staffRoles', [floor ?? '']],
      ['ownerRoles', [owners ?? '']],
      ['talks', ['thread']],
      ['language', ['es']],
    ]
    for (const [name, values] of choices) {
      const chosen = platform.choose(where, dialogueOf(asked), { customId: `g:${name}`, values })
      await until(() => chosen.acknowledged).toBe(6)
      await until(() => platform.calls.filter((call) => call.path.endsWith(`${chosen.token}/messages/@original`)).length).toBe(1)
    }
    expect(small.guilds.get(server.guild.id)).toMatchObject({
      name: 'Cedar Flats Press',
      bench: server.bench.id,
      owner: server.office.id,
      orders: server.lobby.id,
      staffRoles: [floor],
      ownerRoles: [owners],
      talks: 'thread',
      language: 'es',
    })
    expect(textsOf(dialogueOf(asked))).toContain('Everything needed is chosen')
    const defaults = everyComponent(dialogueOf(asked).body['components']).flatMap((one) => one['default_values'] ?? [])
    expect(JSON.stringify(defaults)).toContain(server.bench.id)

    server.office.shut = true
    platform.press(where, dialogueOf(asked), 'g:finish')
    await until(() => textsOf(dialogueOf(asked))).toContain('could not write to')
    expect(textsOf(platform.shown(server.bench)[0])).toContain('Publicaré aquí')
  })

  it('is for those who manage the server, or the shop’s owner, only', async () => {
    const { platform, small, server } = open
    const asks = (user: User, room: Room): Asked => platform.command({ user, room }, 'setup')
    const before = asks(server.customer, server.lobby)
    await until(() => toldTo(before)).toContain('not yours to do')
    expect(small.guilds.size).toBe(0)
    const byOwner = asks(server.owner, server.lobby)
    await until(() => toldTo(byOwner)).toContain('Still to choose')
    const forged = platform.forge({ user: server.customer, room: server.lobby }, dialogueOf(byOwner), 'g:finish')
    await until(() => toldTo(forged)).toContain('not yours to do')
    expect(small.refusals).toMatchObject([{ person: server.customer.id, what: 'c:setup' }])
    const direct = asks(server.owner, platform.directRoom(server.owner))
    await until(() => toldTo(direct)).toContain('in the shop’s server')
  })

  it('is offered where a server that has just added us posts its notices', async () => {
    const { platform, small } = open
    const owner = platform.addUser('New owner')
    const guild = platform.addGuild('Birch Hollow Prints', owner)
    const room = platform.addChannel(guild, 'notices')
    platform.gateway.join(guild.id, room.id)
    await until(() => idsOf(platform.shown(room)[0])).toEqual(['g:start'])
    const welcome = platform.shown(room)[0]
    if (welcome === undefined) throw new Error('no welcome')
    const asked = platform.press({ user: owner, room }, welcome, 'g:start')
    await until(() => toldTo(asked)).toContain('Still to choose')
    expect(textsOf(platform.shown(room)[0])).toContain('decorated jerseys')
    expect(small.guilds.get(guild.id)?.name).toBe('Birch Hollow Prints')
  })

  it('takes only what it offers', () => {
    expect(changeOf('bench', ['123456789012345678'])).toEqual({ bench: '123456789012345678' })
    for (const [name, values] of [
      ['bench', []],
      ['bench', ['general']],
      ['staffRoles', ['123456789012345678', 'x']],
      ['talks', ['everywhere']],
      ['language', ['fr']],
      ['shop', ['123456789012345678']],
    ] as const) {
      expect(changeOf(name, values), name).toBeNull()
    }
  })
})
