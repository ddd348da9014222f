import { afterEach, describe, expect, it } from 'vitest'
import { aboutStep, onceAMinute, reporter, withoutPeople } from '../../src/wiring/trouble.ts'

const write = process.stderr.write.bind(process.stderr)
afterEach(() => {
  process.stderr.write = write
})

/** What a report writes. */
const written = (cause: unknown, about?: ReturnType<typeof aboutStep>): string => {
  const parts: string[] = []
  process.stderr.write = (part: string | Uint8Array) => {
    parts.push(String(part))
    return true
  }
  reporter('worker')(cause, about)
  process.stderr.write = write
  return parts.join('')
}

describe('a line of the log', () => {
  it('is one line of JSON with the order it is about', () => {
    const step = { step: 'ticket', shopId: 's', orderId: 'o12', revision: 2, attempt: 3 } as const
    expect(JSON.parse(written(new Error('no face', { cause: new Error('the file is gone') }), aboutStep(step)))).toEqual({
      at: expect.stringMatching(/^\d{4}-\d\d-\d\dT/),
      who: 'worker',
      step: 'ticket',
      order: 'o12',
      revision: 2,
      attempt: 3,
      trouble: 'no face (the file is gone)',
    })
  })

  it('cannot be forged by line ends, control signs or escapes in what was said', () => {
    const forged = written(
      new Error('lost\n{"at":"2026","who":"service","trouble":"all is well"}\r\n\u001b[2J\u2028\u0000\u009b31m'),
    )
    expect(forged.trimEnd().split('\n')).toHaveLength(1)
    expect(JSON.parse(forged)['who']).toBe('worker')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these must not be there.
    expect(JSON.parse(forged)['trouble']).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]/)
  })

  it('holds no words, addresses or numbers of people that other programs quote', () => {
    const parsing = ((): unknown => {
      try {
        return JSON.parse('Dana Whitlow wants twelve')
      } catch (cause) {
        return cause
      }
    })()
    for (const cause of [
      parsing,
      new Error('invalid input syntax for type json: "Dana Whitlow, 12 navy jerseys"'),
      new Error('mail to dana.whitlow@example.org was refused'),
      new Error('no answer from +1 (312) 555-0142 today'),
      new Error("Cannot read properties of undefined (reading 'the whole message of Dana Whitlow, coach')"),
      'value “Dana Whitlow” is too long',
    ])
      expect(written(cause)).not.toMatch(/Whitlow|555|example\.org/)
  })

  it('says which constraint of which table was broken, not whose row', () => {
    const cause = Object.assign(new Error('duplicate key value violates unique constraint "member_pkey"'), {
      code: '23505',
      table: 'member',
      constraint: 'member_pkey',
      detail: 'Key (name)=(Dana Whitlow) already exists.',
    })
    const line = written(cause)
    expect(line).toContain('23505 member member_pkey')
    expect(line).not.toContain('Whitlow')
  })

  it('keeps ids whole and is never longer than a screen', () => {
    expect(withoutPeople('the ticket t-o0123456789abcdef-1 could not be kept: store-version-changed')).toBe(
      'the ticket t-o0123456789abcdef-1 could not be kept: store-version-changed',
    )
    expect(withoutPeople('x'.repeat(100_000)).length).toBeLessThanOrEqual(500)
  })
})

describe('trouble that comes again and again', () => {
  const hear = () => {
    const told: string[] = []
    const clock = { now: 5_000 }
    const say = onceAMinute(
      (cause) => void told.push(String(cause)),
      () => clock.now,
    )
    return { told, clock, say }
  }
  const away = () => new Error('connect ECONNREFUSED 10.0.0.9:6379')

  it('is told once a minute', () => {
    const { told, clock, say } = hear()
    for (let second = 0; second < 125; second += 1) {
      say(away())
      clock.now += 1_000
    }
    expect(told).toHaveLength(3)
  })

  it('is told at once when it is another one', () => {
    const { told, say } = hear()
    for (const text of ['read ECONNRESET', 'Redis answers again', 'the store is away']) {
      say(away())
      say(new Error(text))
    }
    expect(told).toHaveLength(4)
  })

  it('is known by its code where the words are empty, and by its cause', () => {
    const { told, say } = hear()
    const coded = (code: string) => Object.assign(new Error(''), { code })
    for (const cause of [coded('ECONNREFUSED'), coded('ECONNREFUSED'), coded('ENOTFOUND')]) say(cause)
    say(new Error('lost', { cause: away() }))
    say(new Error('lost', { cause: coded('ENOTFOUND') }))
    expect(told).toHaveLength(4)
  })

  it('whatever was thrown', () => {
    const { told, say } = hear()
    for (const cause of ['gone', 'gone', undefined, undefined, 7]) say(cause)
    expect(told).toHaveLength(3)
  })
})
