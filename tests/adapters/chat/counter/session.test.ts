import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeSessions } from '../../../../src/adapters/chat/counter/session.ts'

const key = new Uint8Array(32).fill(1)
const day = 24 * 3_600_000

describe('a session', () => {
  it('opens to what was sealed', () => {
    const sessions = makeSessions(key, () => 1_000)
    expect(sessions.open(sessions.seal({ member: 'm-1', language: 'es' }))).toEqual({
      member: 'm-1',
      language: 'es',
      issued: 1_000,
    })
  })

  it('does not open when one sign of it was changed', () => {
    const sessions = makeSessions(key, () => 1_000)
    const sealed = sessions.seal({ member: 'm-1', language: 'en' })
    void fc.assert(
      fc.property(fc.nat(sealed.length - 2), fc.constantFrom(...'ABCxyz019-_'), (at, sign) => {
        fc.pre(sealed[at] !== sign && at !== sealed.length - 1)
        expect(sessions.open(sealed.slice(0, at) + sign + sealed.slice(at + 1))).toBeNull()
      }),
    )
  })

  it('does not open with another key, without a signature, or after 14 days', () => {
    const clock = { at: 0 }
    const sessions = makeSessions(key, () => clock.at)
    const sealed = sessions.seal({ member: 'm-1', language: 'en' })
    expect(makeSessions(new Uint8Array(32).fill(2), () => 0).open(sealed)).toBeNull()
    expect(sessions.open(sealed.split('.')[0] ?? '')).toBeNull()
    expect(sessions.open('')).toBeNull()
    clock.at = 14 * day
    expect(sessions.open(sealed)).not.toBeNull()
    clock.at += 1
    expect(sessions.open(sealed)).toBeNull()
  })

  it('refuses a key that is too short to keep a secret', () => {
    expect(() => makeSessions(new Uint8Array(31), () => 0)).toThrow(/31 bytes/)
  })
})
