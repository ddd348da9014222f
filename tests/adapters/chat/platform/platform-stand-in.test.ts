import { Client, Events, GatewayIntentBits, MessageFlags, Partials } from 'discord.js'
import { afterEach, describe, expect, it } from 'vitest'
import { type StandIn, startStandIn, token } from '../../../support/platform/stand-in.ts'

const closing: (() => Promise<unknown>)[] = []
afterEach(async () => {
  for (const close of closing.splice(0).reverse()) await close()
})

const connect = async (platform: StandIn): Promise<Client<true>> => {
  const client = new Client({
    intents: [GatewayIntentBits.Guilds, GatewayIntentBits.GuildMessages, GatewayIntentBits.DirectMessages],
    partials: [Partials.Channel],
    rest: { api: platform.api },
  })
  client.on('error', () => undefined)
  const ready = new Promise<Client<true>>((resolve) => client.once(Events.ClientReady, resolve))
  await client.login(token)
  closing.push(() => client.destroy())
  return await ready
}

const start = async () => {
  const platform = await startStandIn()
  closing.push(platform.stop)
  const owner = platform.addUser('Owner')
  const guild = platform.addGuild('Cedar Flats Press', owner)
  const room = platform.addChannel(guild, 'bench')
  return { platform, owner, guild, room }
}

describe('the stand-in of the platform drives the real client', () => {
  it('hands over ready, servers, messages, interactions and their answers', async () => {
    const { platform, owner, guild, room } = await start()
    const client = await connect(platform)
    expect(client.user.username).toBe('platenpost')
    expect(client.guilds.cache.get(guild.id)?.name).toBe('Cedar Flats Press')

    const heard = new Promise<string>((resolve) => client.once(Events.MessageCreate, (message) => resolve(message.content)))
    platform.say({ user: owner, room: platform.directRoom(owner) }, 'twelve jerseys')
    expect(await heard).toBe('twelve jerseys')

    const answered = new Promise<void>((resolve, reject) =>
      client.once(Events.InteractionCreate, (interaction) => {
        if (!interaction.isChatInputCommand()) return
        interaction
          .deferReply({ flags: MessageFlags.Ephemeral })
          .then(() => interaction.editReply('done'))
          .then(() => resolve(), reject)
      }),
    )
    const asked = platform.command({ user: owner, room }, 'order')
    await answered
    expect(asked.acknowledged).toBe(5)
    expect(asked.private[0]?.body['content']).toBe('done')
  })

  it('gives plain messages of a server without their content when the intent is off', async () => {
    const { platform, owner, room } = await start()
    const client = await connect(platform)
    const texts: string[] = []
    client.on(Events.MessageCreate, (message) => texts.push(message.content))
    platform.say({ user: owner, room }, 'plain')
    platform.say({ user: owner, room }, `<@${platform.world.bot.id}> named`)
    await expect.poll(() => texts).toEqual(['', `<@${platform.world.bot.id}> named`])
  })

  it('resumes after a cut line and hands over what was missed, and forgets it after a refused resume', async () => {
    const { platform, owner } = await start()
    const client = await connect(platform)
    const texts: string[] = []
    client.on(Events.MessageCreate, (message) => texts.push(message.content))
    const room = platform.directRoom(owner)
    const cuts = [
      ...[undefined, 4000, 4009].map((code) => () => platform.gateway.close(code)),
      () => platform.gateway.reconnect(),
    ]
    for (const [at, cut] of cuts.entries()) {
      cut()
      platform.say({ user: owner, room }, `during ${at}`)
      await expect.poll(() => texts, { timeout: 20_000 }).toHaveLength(at + 1)
      await expect.poll(() => platform.gateway.resumed(), { timeout: 20_000 }).toBe(at + 1)
    }
    expect(platform.gateway.identified()).toBe(1)
    platform.gateway.forgetSessions()
    platform.gateway.close(4000)
    await expect.poll(() => platform.gateway.identified(), { timeout: 20_000 }).toBe(2)
  })

  it('keeps one message for one nonce inside its window, and answers 10008 when that message was deleted', async () => {
    const { platform, room } = await start()
    const client = await connect(platform)
    const post = () =>
      client.rest.post(`/channels/${room.id}/messages`, { body: { content: 'one', nonce: 'abc', enforce_nonce: true } })
    await post()
    await post()
    expect(platform.shown(room)).toHaveLength(1)
    platform.world.advance(6 * 60_000)
    await post()
    expect(platform.shown(room)).toHaveLength(2)
    for (const message of room.messages) message.deleted = true
    await expect(post()).rejects.toMatchObject({ code: 10_008 })
  })

  it('carries files both ways and refuses what breaks the platform’s limits', async () => {
    const { platform, room } = await start()
    const client = await connect(platform)
    await client.rest.post(`/channels/${room.id}/messages`, {
      body: { content: 'paper' },
      files: [{ name: 'ticket.pdf', data: Buffer.from([0x25, 0, 255]), contentType: 'application/pdf' }],
    })
    expect(platform.shown(room)[0]?.files).toMatchObject([{ name: 'ticket.pdf', bytes: new Uint8Array([0x25, 0, 255]) }])
    const long = client.rest.post(`/channels/${room.id}/messages`, { body: { content: 'x'.repeat(2001) } })
    await expect(long).rejects.toMatchObject({ code: 50_035 })
  })

  it('plays faults before and after the work is done', async () => {
    const { platform, room } = await start()
    const client = await connect(platform)
    const post = (content: string) => client.rest.post(`/channels/${room.id}/messages`, { body: { content } })
    const posting = (call: { method: string; path: string }) => call.method === 'POST' && call.path.endsWith('/messages')
    platform.fail(posting, { kind: 'drop' })
    await post('dropped')
    expect(platform.shown(room)).toHaveLength(1)
    platform.fail(posting, { kind: 'apply-then-500' })
    await post('twice')
    expect(platform.shown(room)).toHaveLength(3)
    platform.fail(posting, { kind: 'too-many', retryAfter: 0.05 })
    await post('later')
    expect(platform.shown(room)).toHaveLength(4)
  })
})
