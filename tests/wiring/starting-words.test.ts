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
