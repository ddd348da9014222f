import { afterEach, describe, expect, it } from 'vitest'
import type { Call } from '../../../support/platform/rest.ts'
import type { Fault } from '../../../support/platform/server.ts'
import { idsOf, openShops, type Shops, textsOf, toldTo } from '../../../support/platform/shop-in-server.ts'
import type { Room, User } from '../../../support/platform/world.ts'

const open: Shops[] = []
afterEach(async () => {
  for (const shops of open.splice(0)) await shops.close()
})
const start = async (options: { readonly readsContent?: boolean } = {}): Promise<Shops> => {
  const shops = await openShops(options)
  open.push(shops)
  return shops
}

const until = <T>(read: () => T) => expect.poll(read, { timeout: 8_000, interval: 5 })
const roster = { name: 'roster.csv', type: 'text/csv', bytes: new Uint8Array(Buffer.from('7,VANCE\n12,ORTIZ\n')) }

/** The customer's running conversation in direct messages, with the proof of what they said. */
const withProof = async (shops: Shops, text = 'twelve jerseys'): Promise<{ where: { user: User; room: Room } }> => {
  const { platform, ours, small } = shops
  const asked = platform.command({ user: ours.customer, room: ours.lobby }, 'order', { text })
  await until(() => toldTo(asked)).toContain('written to you')
  const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
  await until(() => small.heard.length).toBe(1)
  await until(() => idsOf(platform.shown(where.room).at(-1))).toContain('o:O-C1:sign-off:1')
  return { where }
}
const withTicket = async (shops: Shops): Promise<void> => {
  const { platform, ours } = shops
  const { where } = await withProof(shops)
  const proof = platform.shown(where.room).at(-1)
  if (proof === undefined) throw new Error('no proof')
  platform.press(where, proof, 'o:O-C1:sign-off:1')
  await until(() => platform.shown(ours.bench).length).toBe(1)
}
const ticketOf = ({ platform, ours }: Shops) => {
  const ticket = platform.shown(ours.bench)[0]
  if (ticket === undefined) throw new Error('no ticket')
  return ticket
}

describe('the order command', () => {
  it('opens a conversation in direct messages and hears what came with it, text and file', async () => {
    const { platform, ours, small } = await start()
    const asked = platform.command({ user: ours.customer, room: ours.lobby }, 'order', { text: '12 jerseys', file: roster })
    await until(() => toldTo(asked)).toContain('written to you')
    expect(asked.acknowledged).toBe(5)
    const room = platform.directRoom(ours.customer)
    await until(() => small.heard.map(({ incoming }) => incoming)).toMatchObject([
      { kind: 'said', id: asked.id, text: '12 jerseys', files: [{ name: 'roster.csv', mime: 'text/csv', bytes: 17 }] },
    ])
    expect(Buffer.from(small.files.get('kept-1')?.bytes ?? []).toString()).toContain('ORTIZ')
    expect(platform.shown(room).map(textsOf)).toEqual([expect.stringContaining('Cedar Flats Press'), 'You said: 12 jerseys'])
    expect(JSON.stringify(asked.private.map((one) => one.body))).toContain(`/channels/@me/${room.id}`)
  })

  it('opens a private thread when the customer takes no direct messages, and says so when neither can be', async () => {
    const { platform, ours, small } = await start()
    ours.customer.directClosed = true
    const asked = platform.command({ user: ours.customer, room: ours.lobby }, 'order')
    await until(() => toldTo(asked)).toContain('written to you')
    const [talk] = small.talks.values()
    const thread = platform.world.rooms.get(talk?.channel ?? '')
    expect(thread).toMatchObject({ type: 12, parent: ours.lobby.id, name: 'Order of Cedar Flats Press customer' })
    expect([...(thread?.people ?? [])]).toEqual([ours.customer.id])

    ours.staff.directClosed = true
    ours.lobby.shut = true
    const other = platform.command({ user: ours.staff, room: ours.bench }, 'order')
    await until(() => toldTo(other)).toContain('could not open a conversation')
  })

  it('goes on in the running conversation when it is given again', async () => {
    const shops = await start()
    await withProof(shops)
    const { platform, ours, small } = shops
    const again = platform.command({ user: ours.customer, room: ours.lobby }, 'order', { text: 'and two hoodies' })
    await until(() => toldTo(again)).toContain('written to you')
    await until(() => small.heard.length).toBe(2)
    expect(small.talks.size).toBe(1)
  })

  it('is left to the session that acknowledged it first, so that no second room is opened', async () => {
    const { platform, ours, small } = await start()
    platform.fail((call) => call.path.endsWith('/callback'), { kind: 'answer', status: 400, code: 40_060 })
    platform.command({ user: ours.customer, room: ours.lobby }, 'order')
    const second = platform.command({ user: ours.customer, room: ours.lobby }, 'order')
    await until(() => toldTo(second)).toContain('written to you')
    expect(platform.shown(platform.directRoom(ours.customer))).toHaveLength(1)
    expect(small.talks.size).toBe(1)
  })

  it('answers in the language of the person, and says when the shop is not set up', async () => {
    const { platform } = await start()
    const stranger = platform.addUser('Dueña', { locale: 'es-419' })
    const guild = platform.addGuild('Nuevo', stranger)
    const asked = platform.command({ user: stranger, room: platform.addChannel(guild, 'uno') }, 'order')
    await until(() => toldTo(asked)).toContain('todavía no está configurado')
  })
})

describe('direct messages and mentions', () => {
  it('start a conversation with the one shop somebody shares a server with', async () => {
    const { platform, ours, small } = await start()
    const room = platform.directRoom(ours.customer)
    platform.say({ user: ours.customer, room }, 'We need twelve jerseys', [roster])
    await until(() =>
      small.heard.map(({ talk, incoming }) => [talk.shop, incoming.kind === 'said' ? incoming.text : '']),
    ).toEqual([[`shop-${ours.guild.id}`, 'We need twelve jerseys']])
    expect(small.heard[0]?.incoming).toMatchObject({ files: [{ name: 'roster.csv' }] })
  })

  it('are heard in the order in which they were said, though the first brings a file and the next are there at once', async () => {
    const { platform, ours, small } = await start()
    const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
    platform.say(where, 'Twelve jerseys, here is the list', [roster, roster, roster])
    const rest = ['make the 9 a medium', 'no, a large', 'please cancel the order', 'yes']
    for (const text of rest) platform.say(where, text)
    await until(() => small.heard.map(({ incoming }) => (incoming.kind === 'said' ? incoming.text : ''))).toEqual([
      'Twelve jerseys, here is the list',
      ...rest,
    ])
    expect(small.talks.size).toBe(1)
  })

  it('ask which shop is meant when there are several, and take only one they share a server with', async () => {
    const { platform, ours, theirs, small } = await start()
    platform.join(theirs.guild, ours.customer)
    const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
    platform.say(where, 'hello')
    await until(() => idsOf(platform.shown(where.room).at(-1))).toEqual(['s:1:c:shop'])
    const question = platform.shown(where.room).at(-1)
    if (question === undefined) throw new Error('no question')
    platform.choose(where, question, { customId: 's:1:c:shop', values: [theirs.guild.id] })
    await until(() => [...small.talks.values()].map((talk) => talk.shop)).toEqual([`shop-${theirs.guild.id}`])

    const outsider = { user: platform.addUser('Outsider'), room: platform.addChannel(ours.guild, 'x') }
    const alone = { user: outsider.user, room: platform.directRoom(outsider.user) }
    platform.say(alone, 'hello')
    await until(() => textsOf(platform.shown(alone.room).at(-1))).toContain('do not know which shop')
    const forged = platform.forge(alone, question, 's:1:c:shop')
    await until(() => forged.acknowledged).toBe(5)
    expect(small.talks.size).toBe(1)
  })

  it('lead a customer who names us in a channel to a room of their own, without the mention in the text', async () => {
    const { platform, ours, small } = await start()
    platform.say({ user: ours.customer, room: ours.lobby }, `<@${platform.world.bot.id}> twelve jerseys`)
    await until(() => small.heard.map(({ incoming }) => (incoming.kind === 'said' ? incoming.text : ''))).toEqual([
      'twelve jerseys',
    ])
    await until(() => textsOf(platform.shown(ours.lobby).at(-1))).toContain('written to you')
    expect(textsOf(platform.shown(ours.lobby).at(-1))).not.toContain('jerseys')
  })

  it('let staff speak to the shop by naming us on the bench', async () => {
    const { platform, ours, small } = await start()
    platform.say({ user: ours.staff, room: ours.bench }, `<@${platform.world.bot.id}> out of white glitter`)
    await until(() => small.acted.map(({ actor, incoming }) => [actor.role, incoming.kind])).toEqual([['staff', 'said']])
  })

  it('pass plain messages of a server by without the right to read them, and hear them in a customer’s thread with it', async () => {
    for (const readsContent of [false, true]) {
      const { platform, ours, small } = await start({ readsContent })
      ours.customer.directClosed = true
      const asked = platform.command({ user: ours.customer, room: ours.lobby }, 'order')
      await until(() => toldTo(asked)).toContain('written to you')
      const thread = platform.world.rooms.get([...small.talks.values()][0]?.channel ?? '')
      if (thread === undefined) throw new Error('no thread')
      platform.gateway.dispatch('THREAD_CREATE', {
        id: thread.id,
        type: 12,
        guild_id: ours.guild.id,
        parent_id: ours.lobby.id,
        name: thread.name,
      })
      platform.say({ user: ours.customer, room: thread }, 'in plain words')
      platform.say({ user: ours.customer, room: ours.lobby }, 'talk of others')
      platform.say({ user: ours.customer, room: thread }, `<@${platform.world.bot.id}> by name`)
      const texts = () => small.heard.map(({ incoming }) => (incoming.kind === 'said' ? incoming.text : ''))
      await until(texts).toEqual(readsContent ? ['in plain words', 'by name'] : ['by name'])
    }
  })
})

describe('files that people send', () => {
  it('are refused in words when they are too large or cannot be fetched, and the text is heard all the same', async () => {
    const { platform, ours, small } = await start()
    const large = { name: 'photo.png', type: 'image/png', bytes: new Uint8Array(9 * 1024 * 1024) }
    const room = platform.directRoom(ours.customer)
    platform.say({ user: ours.customer, room }, 'see photo', [large, roster])
    await until(() => platform.shown(room).map(textsOf).join('\n')).toContain(
      'photo.png is too large; I can take files of up to 8 MiB',
    )
    expect(small.heard[0]?.incoming).toMatchObject({ text: 'see photo', files: [{ name: 'roster.csv' }] })
  })
})

describe('buttons, choices and forms', () => {
  it('of a customer reach their conversation, acknowledged before the desk is asked', async () => {
    const shops = await start()
    const { where } = await withProof(shops)
    const { platform, small } = shops
    const proof = platform.shown(where.room).at(-1)
    if (proof === undefined) throw new Error('no proof')
    small.running.slow = 400
    const asked = platform.press(where, proof, 'o:O-C1:change:1')
    await until(() => small.heard.length).toBe(2)
    expect(asked.acknowledged).toBe(6)
    expect((asked.acknowledgedAt ?? 0) - asked.at).toBeLessThan(400)
    expect(small.heard[1]?.incoming).toEqual({ kind: 'pressed', id: asked.id, action: 'o:O-C1:change:1' })
  })

  it('carry what was chosen, and what was filled with text, list and file', async () => {
    const shops = await start()
    const { where } = await withProof(shops)
    const { platform, small } = shops
    const options = Array.from({ length: 30 }, (_, at) => ({ value: `v${at}`, label: `Value ${at}` }))
    small.forms.set('o:O-C1:roster:1', {
      id: 'o:O-C1:roster:1',
      title: 'Roster',
      submit: 'Send',
      fields: [
        { name: 'team', label: 'Team', kind: 'line', options: [], required: true },
        { name: 'size', label: 'Size', kind: 'select', options, required: false },
        { name: 'list', label: 'List', kind: 'file', options: [], required: false },
      ],
    })
    const form = small.forms.get('o:O-C1:roster:1') ?? null
    await small.running.deliver?.({
      shop: [...small.talks.values()][0]?.shop ?? '',
      channel: { kind: 'conversation', id: 'C1' },
      nonce: 'question',
      message: {
        language: 'en',
        blocks: [],
        picture: null,
        file: null,
        actions: [],
        choice: { id: 'c:colour', label: 'Colour', options },
        form,
      },
    })
    const question = platform.shown(where.room).at(-1)
    if (question === undefined) throw new Error('no question')
    expect(idsOf(question)).toEqual(['s:1:c:colour', 's:2:c:colour', 'f:1:o:O-C1:roster:1'])
    const chosen = platform.choose(where, question, { customId: 's:2:c:colour', values: ['v27'] })
    await until(() => small.heard.at(-1)?.incoming).toEqual({ kind: 'chose', id: chosen.id, choice: 'c:colour', value: 'v27' })
    const opened = platform.press(where, question, 'f:1:o:O-C1:roster:1')
    await until(() => opened.acknowledged).toBe(9)
    const sent = platform.submit(where, opened, { team: 'Herons', 'size~2': ['v27'], list: [roster] })
    await until(() => small.heard.at(-1)?.incoming).toEqual({
      kind: 'filled',
      id: sent.id,
      form: 'o:O-C1:roster:1',
      values: { team: 'Herons', size: 'v27', list: 'kept-1' },
    })
    expect(sent.acknowledged).toBe(6)
  })

  it('say "try again" when the desk is too slow to give a form in time', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    small.running.slow = 2_500
    const asked = platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:spoiled:1')
    await until(() => toldTo(asked)).toContain('try it again')
    expect((asked.acknowledgedAt ?? 0) - asked.at).toBeLessThan(3_000)
  })

  it('ask staff for what an action needs before it is done', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    small.forms.set('water-drops', {
      id: 't:T-C1:water-drops:1',
      title: 'Water drops',
      submit: 'Keep',
      fields: [1, 2, 3, 4, 5].map((drop) => ({
        name: `drop-${drop}`,
        label: `Drop ${drop}, seconds`,
        kind: 'line',
        options: [],
        required: true,
      })),
    })
    const where = { user: ours.staff, room: ours.bench }
    const opened = platform.press(where, ticketOf(shops), 't:T-C1:water-drops:1')
    await until(() => opened.acknowledged).toBe(9)
    platform.submit(where, opened, Object.fromEntries([3, 4, 2, 5, 3].map((seconds, at) => [`drop-${at + 1}`, String(seconds)])))
    await until(() => textsOf(ticketOf(shops))).toContain('water\\-drops 3 4 2 5 3')
  })

  it('count once when the same event comes twice', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    const where = { user: ours.staff, room: ours.bench }
    const asked = platform.press(where, ticketOf(shops), 't:T-C1:started:1')
    platform.again(asked, where, { type: 3, data: { custom_id: 't:T-C1:started:1', component_type: 2 } })
    await until(() => small.acted.length).toBe(1)
    await until(() => textsOf(ticketOf(shops))).toContain('started')
    expect(textsOf(ticketOf(shops)).match(/started/g)).toHaveLength(1)
  })

  it('complete the options of a command, and list tickets by station and day', async () => {
    const { platform, ours, small } = await start()
    const where = { user: ours.staff, room: ours.bench }
    const typed = platform.type(where, 'tickets', { name: 'station', value: '2' })
    await until(() => typed.suggestions).toEqual([{ name: 'station-2', value: 'station-2' }])
    platform.command(where, 'tickets', { station: 'press-1' })
    await until(() => small.acted.at(-1)?.incoming).toMatchObject({
      kind: 'filled',
      form: 'c:tickets',
      values: { station: 'press-1' },
    })
  })
})

describe('who may do what', () => {
  it('is decided by role and shop for every action; the forbidden ones are refused in private and noted', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, theirs, small } = shops
    const { owner, staff, customer, bench, lobby, guild } = ours
    const other = platform.addUser('Other customer')
    platform.join(guild, other)
    const outsider = platform.addUser('Outsider')
    const direct = { user: customer, room: platform.directRoom(customer) }
    const proof = platform.shown(direct.room).at(-2)
    if (proof === undefined) throw new Error('no proof')
    platform.join(guild, theirs.staff)
    platform.join(guild, theirs.owner)
    platform.join(theirs.guild, outsider)
    const press = (user: User, room: Room, id: string) => () => platform.forge({ user, room }, ticketOf(shops), id)
    const command = (user: User, room: Room, word: string) => () => platform.command({ user, room }, word)
    const table: readonly (readonly [string, boolean, () => ReturnType<typeof platform.forge>])[] = [
      ['customer takes a ticket', false, press(customer, bench, 't:T-C1:take:1')],
      ['other customer takes a ticket', false, press(other, bench, 't:T-C1:take:1')],
      ['outsider takes a ticket', false, press(outsider, theirs.bench, 't:T-C1:take:1')],
      ['staff of another shop, on our bench', false, press(theirs.staff, bench, 't:T-C1:take:1')],
      ['staff of another shop, on their bench, with our ticket', false, press(theirs.staff, theirs.bench, 't:T-C1:take:1')],
      ['owner of another shop, on their bench, with our ticket', false, press(theirs.owner, theirs.bench, 't:T-C1:finished:1')],
      ['staff take it', true, press(staff, bench, 't:T-C1:take:1')],
      ['owner finishes it', true, press(owner, bench, 't:T-C1:finished:1')],
      ['customer signs another’s order', false, () => platform.forge(direct, proof, 'o:O-C2:sign-off:1')],
      [
        'staff press in a customer’s conversation',
        false,
        () => platform.forge({ user: staff, room: direct.room }, proof, 'o:O-C1:sign-off:1'),
      ],
      ['customer signs their own', true, () => platform.forge(direct, proof, 'o:O-C1:change:1')],
      ['customer wants the morning sheet', false, command(customer, lobby, 'morning')],
      ['staff want the morning sheet', false, command(staff, bench, 'morning')],
      ['owner wants the morning sheet', true, command(owner, bench, 'morning')],
      ['other shop’s owner wants ours', false, command(theirs.owner, bench, 'load')],
      ['customer lists tickets', false, command(customer, lobby, 'tickets')],
      ['staff list tickets', true, command(staff, lobby, 'tickets')],
      ['customer opens the set-up', false, command(customer, lobby, 'setup')],
      ['staff open the set-up', false, command(staff, lobby, 'setup')],
      ['owner opens the set-up', true, command(owner, lobby, 'setup')],
    ]
    for (const [name, allowed, deed] of table) {
      const before = { refused: small.refusals.length, done: small.acted.length + small.heard.length }
      const asked = deed()
      if (allowed) {
        await until(() => asked.acknowledged).not.toBeNull()
        expect(toldTo(asked), name).not.toContain('not yours')
        if (!name.includes('set-up')) await until(() => small.acted.length + small.heard.length).toBe(before.done + 1)
        expect(small.refusals.length, name).toBe(before.refused)
        continue
      }
      await until(() => toldTo(asked)).toContain('not yours to do')
      expect(small.acted.length + small.heard.length, name).toBe(before.done)
      expect(small.refusals.length, name).toBe(before.refused + 1)
      expect(
        asked.private.every((one) => (Number(one.body['flags']) & 64) !== 0 || asked.acknowledged === 5),
        name,
      ).toBe(true)
    }
  })

  it('never lets two take one ticket', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    const second = platform.addUser('Second pair of hands')
    platform.join(ours.guild, second, { roles: [ours.guild.roles[1]?.id ?? ''] })
    const asked = [ours.staff, second].map((user) => platform.press({ user, room: ours.bench }, ticketOf(shops), 't:T-C1:take:1'))
    await until(() => asked.map(toldTo).join('')).toContain('Already taken by')
    expect(small.acted).toHaveLength(1)
    await until(() => textsOf(ticketOf(shops))).toContain('taken by')
    expect(platform.shown(ours.bench)).toHaveLength(1)
  })

  it('is told politely when an id is none of ours', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours } = shops
    for (const id of ['anything at all', 'f:99', 's:x:y', '<@1>']) {
      const asked = platform.forge({ user: ours.staff, room: ours.bench }, ticketOf(shops), id)
      await until(() => toldTo(asked)).toContain('no longer open')
    }
  })
})

const callback = (call: Call): boolean => call.path.endsWith('/callback')
const faults: readonly (readonly [string, Fault])[] = [
  ['the line drops before it', { kind: 'drop' }],
  ['it is never answered', { kind: 'stall' }],
  ['the line drops after it', { kind: 'apply-then-drop' }],
  ['it is done and never answered', { kind: 'apply-then-stall' }],
  ['it is done and answered 500', { kind: 'apply-then-500' }],
  ['it fails with 500', { kind: 'fail-500' }],
  ['the event was acknowledged by another session', { kind: 'answer', status: 400, code: 40_060 }],
  ['the platform no longer takes it', { kind: 'answer', status: 404, code: 10_062 }],
]

describe('when something goes wrong', () => {
  for (const [name, fault] of faults) {
    it(`a deed is done once although at its acknowledgement ${name}`, async () => {
      const shops = await start()
      await withTicket(shops)
      const { platform, ours, small } = shops
      platform.fail(callback, fault)
      platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:started:1')
      await until(() => textsOf(ticketOf(shops))).toContain('started')
      expect(small.acted).toHaveLength(1)
      expect(shops.reports).toEqual([])
    })
  }

  it('a private answer that cannot be sent is not said twice and undoes nothing', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    const where = { user: ours.customer, room: ours.bench }
    platform.fail((call) => call.path.startsWith('/webhooks/'), { kind: 'apply-then-500' })
    const asked = platform.press(where, ticketOf(shops), 't:T-C1:take:1')
    await until(() => toldTo(asked)).toContain('not yours')
    platform.fail((call) => call.path.startsWith('/webhooks/'), { kind: 'answer', status: 401, code: 50_027 })
    platform.press(where, ticketOf(shops), 't:T-C1:take:1')
    await until(() => small.refusals.length).toBe(2)
    expect(asked.private).toHaveLength(1)
    expect(shops.reports).toEqual([])
  })

  it('a desk that fails is reported, the person is told, and the next press works', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    small.running.fails = 1
    const asked = platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:started:1')
    await until(() => toldTo(asked)).toContain('try it again')
    expect(textsOf(ticketOf(shops))).toContain('Ticket T')
    expect(shops.reports).toMatchObject([{ message: 'the store is away' }])
    platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:started:1')
    await until(() => textsOf(ticketOf(shops))).toContain('started')
  })

  it('a conversation goes on over restarts of the bot between any two events', async () => {
    const shops = await start()
    const { platform, ours, small } = shops
    const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
    platform.command({ user: ours.customer, room: ours.lobby }, 'order')
    await until(() => platform.shown(where.room).length).toBe(1)
    await shops.restart()
    platform.say(where, 'twelve jerseys')
    await until(() => idsOf(platform.shown(where.room).at(-1))).toContain('o:O-C1:sign-off:1')
    await shops.restart()
    const proof = platform.shown(where.room).at(-1)
    if (proof === undefined) throw new Error('no proof')
    platform.press(where, proof, 'o:O-C1:sign-off:1')
    await until(() => platform.shown(ours.bench).length).toBe(1)
    for (const deed of ['take', 'started', 'first-piece', 'finished']) {
      await shops.restart()
      platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), `t:T-C1:${deed}:1`)
      await until(() => textsOf(ticketOf(shops))).toContain(deed === 'take' ? 'taken by' : deed.replaceAll('-', '\\-'))
    }
    expect(small.acted).toHaveLength(4)
    expect(platform.shown(ours.bench)).toHaveLength(1)
  })

  it('nothing is lost when the line to the gateway is cut or closed with any code that can be resumed', async () => {
    const shops = await start()
    await withTicket(shops)
    const { platform, ours, small } = shops
    const codes = [undefined, 4000, 4001, 4002, 4009]
    for (const [at, code] of codes.entries()) {
      platform.gateway.close(code)
      platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:started:1')
      await until(() => small.acted.length).toBe(at + 1)
    }
    expect(platform.gateway.identified()).toBe(1)
  })

  for (const code of process.env['LONG'] === undefined ? [1000] : [1000, 1001, 4003, 4005, 4007, 4008]) {
    it(`the bot comes back with a new session after close code ${code}, and the same button works`, async () => {
      const shops = await start()
      await withTicket(shops)
      const { platform, ours, small } = shops
      platform.gateway.close(code)
      await expect.poll(() => platform.gateway.identified(), { timeout: 20_000 }).toBe(2)
      platform.press({ user: ours.staff, room: ours.bench }, ticketOf(shops), 't:T-C1:started:1')
      await until(() => small.acted.length).toBe(1)
    })
  }

  it('the bot comes back with a new session after a refused resume', async () => {
    const shops = await start()
    const { platform, ours, small } = shops
    platform.gateway.forgetSessions()
    platform.gateway.close(4000)
    await expect.poll(() => platform.gateway.identified(), { timeout: 20_000 }).toBe(2)
    platform.say({ user: ours.customer, room: platform.directRoom(ours.customer) }, 'hello again')
    await until(() => small.heard.length).toBe(1)
  })
})

describe('what customers type', () => {
  it('never takes effect in any payload that leaves us', async () => {
    const { platform, ours, small } = await start()
    const nasty = [
      '@everyone <@123456789012345678> <@&1> <#2> [free](https://evil.example) **b** `c` ||s||',
      '# big\n> quote\n- item\n1. one',
      '\u202egnp.exe\u0007\u200b',
    ]
    const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
    for (const [at, text] of nasty.entries()) {
      platform.say(where, text)
      await until(() => small.heard.length).toBe(at + 1)
    }
    const evil = platform.addUser('@here <@1> **x** `y`')
    platform.join(ours.guild, evil)
    platform.command({ user: evil, room: ours.lobby }, 'order', { text: nasty[0] ?? '' })
    await until(() => small.heard.length).toBe(nasty.length + 1)
    await until(() => platform.shown(platform.directRoom(evil)).length).toBe(2)
    const sent = platform.calls.filter((call) => call.body['components'] !== undefined)
    expect(sent.length).toBeGreaterThan(3)
    for (const call of sent) {
      expect(call.body['allowed_mentions']).toEqual({ parse: [] })
      const text = textsOf({ id: '', author: '', nonce: null, at: 0, body: call.body, files: [], edits: 0, deleted: false })
      const bare = text.replace(/\\[^0-9A-Za-z\s]/g, '').replaceAll('**', '')
      expect(bare).not.toMatch(/[@<>[\]`|#*~]|:\/\/|(?![\n\u200d])[\p{Cc}\p{Cf}]/u)
    }
  })
})
