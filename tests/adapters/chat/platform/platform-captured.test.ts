import { describe, expect, it } from 'vitest'
import type { Form, Message } from '../../../../src/ports/chat.ts'
import { effectsOf, nasty, saidBy } from '../../../support/platform/effects.ts'
import { message } from '../../../support/platform/messages.ts'
import type { Call } from '../../../support/platform/rest.ts'
import { idsOf, openShops, type Shops } from '../../../support/platform/shop-in-server.ts'
import type { Room, Stored, User } from '../../../support/platform/world.ts'

const until = <T>(read: () => T) => expect.poll(read, { timeout: 15_000, interval: 10 })

/** Letters that stand in every hostile text, so that each place it reached can be told. */
const mark = 'Zqx'
/** The signs stand in the words and again after a line end, where they would open a list or a heading. */
const hostile = (sign: string): string => `${mark} ${sign}\n${sign} ${mark} ${sign}`

const hostileMessage = (text: string): Message =>
  message({
    blocks: [
      { kind: 'text', text, tone: 'caution' },
      { kind: 'list', title: text, items: [text, text] },
      { kind: 'fields', fields: [{ name: text, value: text, assumed: true }] },
      { kind: 'table', head: ['No', text.slice(0, 12)], rows: [['7', text.slice(0, 12)]] },
      { kind: 'table', head: ['No', text], rows: [['7', `${text} ${'V'.repeat(60)}`]] },
      { kind: 'progress', text, done: 1, of: 2 },
    ],
    picture: { file: 'picture', alt: text },
    file: { file: 'paper', name: text, mime: 'application/pdf', bytes: 3 },
    papers: [{ file: 'more', name: text, mime: 'application/pdf', bytes: 3 }],
    actions: [{ id: 't:T9:take:1', label: text, weight: 'main' }],
    choice: { id: 'c:colour', label: text, options: [{ value: 'red', label: text }] },
    form: hostileForm('o:O-C1:roster:1', text),
  })

const hostileForm = (id: string, text: string): Form => ({
  id,
  title: text,
  submit: text,
  fields: [
    { name: 'note', label: text, kind: 'line', options: [], required: true },
    { name: 'more', label: `${text} ${'long '.repeat(12)}`, kind: 'lines', options: [], required: false },
    { name: 'pick', label: text, kind: 'select', options: [{ value: 'one', label: text }], required: false },
  ],
})

type Place = { readonly user: User; readonly room: Room }
const lastOurs = ({ platform }: Shops, room: Room): Stored | undefined =>
  platform.shown(room).findLast((one) => one.author === platform.world.bot.id)

/** A customer whose name, words and file names are hostile, in a server of such a name. */
const customerOf = (shops: Shops, text: string): Place => {
  const { platform, ours } = shops
  const user = platform.addUser(text)
  platform.join(ours.guild, user)
  return { user, room: platform.directRoom(user) }
}

const orders = async (shops: Shops, { user, room }: Place, text: string): Promise<void> => {
  const { platform, ours, small } = shops
  const far = { name: text, type: 'text/csv', bytes: new Uint8Array(30 * 1024 * 1024) }
  platform.command({ user, room: ours.lobby }, 'order', { text, file: far })
  await until(() => small.heard.length).toBe(1)
  await until(() => idsOf(lastOurs(shops, room))).toContain('o:O-C1:sign-off:1')
  platform.say({ user, room }, `${text} again`)
  await until(() => small.heard.length).toBe(2)
}

const opensThread = async (shops: Shops, { user }: Place): Promise<void> => {
  const { platform, ours } = shops
  user.directClosed = true
  platform.command({ user, room: ours.lobby }, 'order', { text: 'two more' })
  await until(() => [...platform.world.rooms.values()].filter(({ type }) => type === 12).length).toBe(1)
}

const deliversAndEdits = async ({ platform, small, ours }: Shops, text: string): Promise<void> => {
  const { shop = '' } = [...small.guilds.values()][0] ?? {}
  for (const id of ['picture', 'paper', 'more']) {
    small.files.set(id, { name: text, mime: 'image/png', bytes: new Uint8Array(3) })
    small.owners.set(id, shop)
  }
  const send = async (shown: Message) =>
    await small.running.deliver?.({ shop, channel: { kind: 'shop', name: 'bench' }, nonce: 'hostile', message: shown })
  await send(hostileMessage(text))
  await send(hostileMessage(`${text} edited`))
  await until(() => platform.shown(ours.bench).length).toBeGreaterThan(0)
}

const opensForms = async (shops: Shops, text: string): Promise<void> => {
  const { platform, ours, small } = shops
  small.forms.set('o:O-C1:roster:1', hostileForm('o:O-C1:roster:1', text))
  const where = { user: ours.staff, room: ours.bench }
  const shown = platform.shown(ours.bench).find((one) => idsOf(one).includes('f:1:o:O-C1:roster:1'))
  if (shown === undefined) throw new Error('nothing carries the form')
  const opened = platform.press(where, shown, 'f:1:o:O-C1:roster:1')
  await until(() => opened.acknowledged).toBe(9)
  small.hints.push([...text].slice(0, 45).join(''))
  const typing = platform.type(where, 'tickets', { name: 'station', value: '' })
  await until(() => typing.acknowledged).toBe(8)
}

/** Every kind of place in which the platform shows people's words. */
const everywhere = [
  'text',
  'edit, text',
  'button',
  'edit, button',
  'select: placeholder',
  'select: option',
  'picture: description',
  'edit, picture: description',
  'form: title',
  'form: label',
  'form: description',
  'thread: name',
  'file: name',
  'edit, file: name',
  'paper',
  'picture',
  'completion: option',
]

const capture = async (text: string): Promise<readonly Call[]> => {
  const shops = await openShops()
  try {
    const place = customerOf(shops, text)
    await orders(shops, place, text)
    await deliversAndEdits(shops, text)
    await opensForms(shops, text)
    await opensThread(shops, place)
    expect(shops.reports).toEqual([])
    return shops.platform.calls
  } finally {
    await shops.close()
  }
}

describe('what customers type, in every payload that leaves for the platform', () => {
  for (const sign of nasty) {
    it(`has no effect: ${JSON.stringify(sign)}`, async () => {
      const calls = await capture(hostile(sign))
      expect(calls.flatMap(effectsOf)).toEqual([])
      const reached = new Set(calls.flatMap(saidBy).flatMap(({ kind, text }) => (text.includes(mark) ? [kind] : [])))
      expect(everywhere.filter((kind) => !reached.has(kind))).toEqual([])
    }, 60_000)
  }

  it('is told when it would have one, in each kind of place', () => {
    const call = (body: object, more: Partial<Call> = {}): Call => ({
      method: 'POST',
      path: '/channels/1/messages',
      query: new URLSearchParams(),
      body: { flags: 32_768, allowed_mentions: { parse: [] }, ...body },
      list: null,
      files: [],
      at: 0,
      ...more,
    })
    const planted: readonly (readonly [Call, string])[] = [
      [call({ components: [{ type: 10, content: '@everyone' }] }), 'text: @'],
      [call({ components: [{ type: 17, components: [{ type: 10, content: '[a](https://x.example)' }] }] }), 'text: ['],
      [call({ components: [{ type: 10, content: '- item' }] }), 'text: list'],
      [call({ components: [{ type: 10, content: 'a\u202eb' }] }), 'text: control'],
      [call({ components: [{ type: 2, label: 'a\nb' }] }), 'button: control'],
      [call({ components: [{ type: 2, url: 'https://evil.example' }] }), 'button: address'],
      [call({ data: { title: 'a\u0007' } }), 'form: title: control'],
      [call({ name: 'x\u200b' }), 'thread: name: control'],
      [call({}, { files: [{ name: '../x', type: '', bytes: new Uint8Array() }] }), 'file: name: file name'],
      [call({ allowed_mentions: undefined }), 'mentions'],
      [call({ embeds: [] }), 'nobody looked at'],
      [call({ components: [{ type: 2, custom_id: 'ö' }] }), 'custom id'],
    ]
    for (const [one, told] of planted) expect(effectsOf(one).join('; ')).toContain(told)
    expect(effectsOf(call({ components: [{ type: 10, content: 'Ana\\@home **bold**' }] }))).toEqual([])
  })
})
