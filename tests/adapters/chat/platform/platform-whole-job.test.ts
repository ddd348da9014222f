import { describe, expect, it } from 'vitest'
import type { Form } from '../../../../src/ports/chat.ts'
import type { Call } from '../../../support/platform/rest.ts'
import type { Fault } from '../../../support/platform/server.ts'
import { idsOf, openShops, type Shops, textsOf } from '../../../support/platform/shop-in-server.ts'
import type { Stored } from '../../../support/platform/world.ts'

const until = <T>(read: () => T) => expect.poll(read, { timeout: 15_000, interval: 4 })

const formOf = (name: string, fields: readonly string[]): Form => ({
  id: `t:T-C1:${name}:1`,
  title: name,
  submit: 'Keep',
  fields: fields.map((field) => ({ name: field, label: field, kind: 'line', options: [], required: true })),
})

/** What the bot has written there, oldest first. */
const oursIn = ({ platform, ours }: Shops, where: 'direct' | 'bench'): readonly Stored[] => {
  const room = where === 'bench' ? ours.bench : platform.directRoom(ours.customer)
  return platform.shown(room).filter((one) => one.author === platform.world.bot.id)
}
const lastIn = (shops: Shops, where: 'direct' | 'bench'): Stored => {
  const shown = oursIn(shops, where).at(-1)
  if (shown === undefined) throw new Error(`nothing stands in ${where}`)
  return shown
}

type Event = (shops: Shops) => Promise<void>

const order: Event = async (shops) => {
  const { platform, ours } = shops
  platform.command({ user: ours.customer, room: ours.lobby }, 'order', { text: 'twelve jerseys' })
  await until(() => idsOf(platform.shown(platform.directRoom(ours.customer)).at(-1))).toContain('o:O-C1:sign-off:1')
}
const goOn: Event = async (shops) => {
  const { platform, ours } = shops
  platform.say({ user: ours.customer, room: platform.directRoom(ours.customer) }, 'and a hoodie')
  await until(() => textsOf(lastIn(shops, 'direct'))).toContain('and a hoodie')
}
const sign: Event = async (shops) => {
  const { platform, ours } = shops
  const where = { user: ours.customer, room: platform.directRoom(ours.customer) }
  platform.press(where, lastIn(shops, 'direct'), 'o:O-C1:sign-off:1')
  await until(() => platform.shown(ours.bench).length).toBe(1)
  await until(() => textsOf(lastIn(shops, 'direct'))).toContain('Signed off')
}
const press =
  (deed: string, shown: string): Event =>
  async (shops) => {
    const { platform, ours } = shops
    platform.press({ user: ours.staff, room: ours.bench }, lastIn(shops, 'bench'), `t:T-C1:${deed}:1`)
    await until(() => textsOf(lastIn(shops, 'bench'))).toContain(shown)
  }
const fill =
  (deed: string, given: { readonly [field: string]: string }): Event =>
  async (shops) => {
    const { platform, ours } = shops
    const where = { user: ours.staff, room: ours.bench }
    const opened = platform.press(where, lastIn(shops, 'bench'), `t:T-C1:${deed}:1`)
    await until(() => opened.acknowledged).toBe(9)
    platform.submit(where, opened, given)
    await until(() => textsOf(lastIn(shops, 'bench'))).toContain(Object.values(given).join(' '))
  }
const takenByTwo: Event = async (shops) => {
  const { platform, ours, small } = shops
  const before = small.acted.length
  const asked = platform.press({ user: ours.owner, room: ours.bench }, lastIn(shops, 'bench'), 't:T-C1:take:1')
  await until(() => asked.acknowledged).toBe(6)
  expect(small.acted).toHaveLength(before)
}

const job: readonly Event[] = [
  order,
  goOn,
  sign,
  press('take', 'taken by'),
  takenByTwo,
  fill('water-drops', { one: '3', two: '4', three: '2', four: '5', five: '3' }),
  press('bleed-test', 'bleed\\-test'),
  press('first-piece', 'first\\-piece'),
  fill('spoiled', { row: '7', why: 'shine' }),
  press('finished', 'finished'),
]

const play = async (between: Event, prepare: (shops: Shops) => void): Promise<void> => {
  const shops = await openShops()
  try {
    shops.small.forms.set('water-drops', formOf('water-drops', ['one', 'two', 'three', 'four', 'five']))
    shops.small.forms.set('spoiled', formOf('spoiled', ['row', 'why']))
    prepare(shops)
    for (const event of job) {
      await event(shops)
      await between(shops)
    }
    const { platform, small, ours } = shops
    const ticket = textsOf(lastIn(shops, 'bench'))
    expect(platform.shown(ours.bench)).toHaveLength(1)
    for (const deed of ['taken by', 'water\\-drops', 'bleed\\-test', 'first\\-piece', 'spoiled', 'finished']) {
      expect(ticket.split(deed), deed).toHaveLength(2)
    }
    expect(small.acted).toHaveLength(6)
    expect(small.heard).toHaveLength(3)
    expect(oursIn(shops, 'direct')).toHaveLength(2)
    expect(shops.reports).toEqual([])
  } finally {
    await shops.close()
  }
}

const nothing: Event = async () => undefined

const faults: readonly Fault[] = [
  { kind: 'drop' },
  { kind: 'apply-then-drop' },
  { kind: 'apply-then-500' },
  { kind: 'fail-500' },
  { kind: 'too-many', retryAfter: 0.05 },
  { kind: 'too-many', retryAfter: 0.05, global: true },
  { kind: 'stall' },
  { kind: 'apply-then-stall' },
]
const isLong = process.env['LONG'] !== undefined

describe('the whole job on the platform', () => {
  it('is played from the order to the finished ticket', async () => {
    await play(nothing, () => undefined)
  })

  it('is played with the bot restarted between any two events', async () => {
    await play(
      (shops) => shops.restart(),
      () => undefined,
    )
  })

  it('is played with the line to the gateway cut between any two events', async () => {
    await play(
      async ({ platform }) => platform.gateway.close(),
      () => undefined,
    )
  })

  it(
    `is played with ${isLong ? 'every' : 'one'} fault at each call`,
    async () => {
      let calls = 0
      await play(nothing, ({ platform }) => {
        platform.fail(
          () => {
            calls += 1
            return false
          },
          { kind: 'drop' },
        )
      })
      expect(calls).toBeGreaterThan(20)
      for (let at = 0; at < calls; at += 1) {
        const chosen = isLong ? faults : [faults[at % faults.length] ?? { kind: 'drop' as const }]
        for (const fault of chosen) {
          await play(nothing, ({ platform }) => {
            let seen = -1
            const matches = (_call: Call): boolean => {
              seen += 1
              return seen === at
            }
            platform.fail(matches, fault)
          })
        }
      }
    },
    isLong ? 1_200_000 : 120_000,
  )
})
