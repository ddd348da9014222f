import { afterEach, describe, expect, test } from 'vitest'
import { readConfig } from '../../src/config.ts'
import type { Problem } from '../../src/domain/result/result.ts'
import { plainProblems, problemLines } from '../../src/wiring/say-problems.ts'

const said = (code: string, facts: Problem['facts']): string =>
  problemLines(plainProblems([{ code, at: '', severity: 'stop', facts }]))

describe('the shop’s own store in messages', () => {
  const at = '/tmp/platenpost-Ab3xYz:5432/platenpost'
  test.each([
    ['store-unreachable', { at, said: 'connect ENOENT /tmp/platenpost-Ab3xYz/.s.PGSQL.5432' }],
    ['store-in-use', { at }],
    ['store-not-empty', { at }],
    ['store-disk-full', { folder: at }],
  ])('is named in words, never by the socket of this start (%s)', (code, facts) => {
    expect(said(code, facts)).toContain('own store on this computer')
    expect(said(code, facts)).not.toContain('/tmp')
  })

  test.each([
    ['store-unreachable', { at: 'db.example:5432/shop', said: 'refused' }, 'db.example:5432/shop'],
    ['store-in-use', { at: '/srv/shop/.data' }, '/srv/shop/.data'],
    ['store-not-empty', { at: 'db.example/shop' }, 'db.example/shop'],
    ['store-disk-full', { folder: '/srv/shop/.data' }, '/srv/shop/.data'],
  ])('a server or a folder that was set is named as it was set (%s)', (code, facts, shown) => {
    expect(said(code, facts)).toContain(shown)
  })
})

describe('a store that answers and refuses', () => {
  const at = 'db.example:5432/shop'
  test.each([
    'password authentication failed for user "service"',
    'permission denied for schema platenpost',
    'permission denied to create role',
  ])('is not said to be out of reach, and the owner’s address is named (%s)', (why) => {
    const text = said('store-refused', { at, said: why })
    expect(text).toContain(`The store at ${at} answers, but refuses: ${why}.`)
    expect(text).toContain('DATABASE_OWNER_URL')
    expect(text).not.toContain('cannot be reached')
  })

  test('asks of the shop’s own store nothing that its owner cannot do', () => {
    const text = said('store-refused', { at: '/tmp/platenpost-Ab3xYz:5432/platenpost', said: 'permission denied' })
    expect(text).toContain('own store on this computer')
    expect(text).not.toContain('DATABASE')
  })
})

describe('records that are not made yet', () => {
  test('want the service first, and of a database of one’s own who may make them', () => {
    const text = said('store-not-made', { at: 'db.example:5432/shop' })
    expect(text).toContain('db.example:5432/shop')
    expect(text).toContain('Start the service')
    expect(text).toContain('DATABASE_OWNER_URL')
    expect(text).not.toContain('cannot be reached')
  })

  test('ask of the shop’s own store nothing that its owner cannot do', () => {
    const text = said('store-not-made', { at: '/tmp/platenpost-Ab3xYz:5432/platenpost' })
    expect(text).toContain('own store on this computer')
    expect(text).toContain('Start the service')
    expect(text).not.toMatch(/DATABASE|\/tmp/)
  })
})

describe('what other programs said', () => {
  test.each([
    ['store-unreachable', { at: 'db.example/shop', said: 'the server went away.' }],
    ['store-unreachable', { at: '/tmp/platenpost-Ab3xYz:5432/platenpost', said: 'the server went away. ' }],
    ['store-refused', { at: 'db.example/shop', said: 'no pg_hba.conf entry.' }],
    ['store-folder-refused', { folder: '/srv', said: 'EROFS: it cannot be written.' }],
    ['queue-unreachable', { at: 'steps.example', said: 'Connection is closed.' }],
    ['queue-refused', { at: 'steps.example', said: 'WRONGPASS invalid username-password pair or user is disabled.' }],
    ['bot-not-opened', { said: 'An invalid token was provided.' }],
  ])('ends with one full stop (%s, %o)', (code, facts) => {
    expect(said(code, facts)).toMatch(/[a-z]\. [A-Z]/)
    expect(said(code, facts)).not.toMatch(/\.\s*\./)
  })

  test.each([
    'WRONGPASS invalid username-password pair or user is disabled.',
    'NOAUTH Authentication required.',
    'NOPERM this user has no permissions to run the info command',
  ])('a Redis that refuses was reached (%s)', (why) => {
    const text = said('queue-refused', { at: 'steps.example', said: why })
    expect(text).toMatch(/^stop: Redis at steps\.example answers, but refuses: /)
    expect(text).toContain('REDIS_URL')
    expect(text).not.toContain('cannot be reached')
  })
})

describe('an order that nobody knows', () => {
  test.each(['T0002', 't12', 'T-0002', '0002', '#2', '2'])('is told apart from a ticket’s number: %s', (order) => {
    const text = said('order-unknown', { order })
    expect(text).toContain('the number of a ticket')
    expect(text).toContain('orders.csv')
  })
  test.each(['o0', 'o12ab', 'tigers', 't12-1', 'order 2', 'team'])('is told where ids stand: %s', (order) => {
    const text = said('order-unknown', { order })
    expect(text).toContain(`There is no order ${order} in this shop.`)
    expect(text).not.toContain('the number of a ticket')
    expect(text).toContain('orders.csv')
  })
})

describe('a chat server that is no server', () => {
  const before = process.env['PLATFORM_GUILD']
  afterEach(() => {
    if (before === undefined) delete process.env['PLATFORM_GUILD']
    else process.env['PLATFORM_GUILD'] = before
  })
  test.each(['our team', '1234', '<@123456789012345678>', 'https://chat.example/1', '12345678901234567890123'])('%s', (set) => {
    process.env['PLATFORM_GUILD'] = set
    const read = readConfig('/srv/shop')
    if (read.ok) throw new Error('it was taken')
    const text = problemLines(plainProblems(read.problems))
    expect(text).toBe(
      'stop at /PLATFORM_GUILD: PLATFORM_GUILD names no server of the chat. Write the server’s id, a number of 17 to 20 digits and nothing else (the README says how to copy it), or leave PLATFORM_GUILD out.\n',
    )
    expect(text).not.toContain(set)
  })

  test('an id is taken', () => {
    process.env['PLATFORM_GUILD'] = '123456789012345678'
    expect(readConfig('/srv/shop').ok).toBe(true)
  })
})
