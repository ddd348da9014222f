import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { customId, readCustomId } from '../../../../src/adapters/chat/platform/custom-id.ts'
import { fieldOf, formPages, modalOf } from '../../../../src/adapters/chat/platform/form.ts'
import { clean, cut, fileName, label, shown, splitText } from '../../../../src/adapters/chat/platform/plain-text.ts'
import { bodyOf, nothingCarried, renderParts } from '../../../../src/adapters/chat/platform/render.ts'
import type { Block, Form, Message } from '../../../../src/ports/chat.ts'
import { controls, nasty, startsList, takesEffect } from '../../../support/platform/effects.ts'
import { everyComponent, messageTroubles, modalTroubles } from '../../../support/platform/limits.ts'
import { action, message, ticketActions } from '../../../support/platform/messages.ts'

const text = fc
  .array(fc.oneof(fc.constantFrom(...nasty), fc.string({ unit: 'binary', maxLength: 20 }), fc.constantFrom(' ', '\n', '\\')))
  .map((all) => all.join(''))

const unescaped = (escaped: string): string => escaped.replace(/\\([^0-9A-Za-z\s])/g, '$1')

const block: fc.Arbitrary<Block> = fc.oneof(
  fc.record({ kind: fc.constant('text' as const), text, tone: fc.constantFrom('plain', 'assumed', 'caution', 'stop', 'good') }),
  fc.record({ kind: fc.constant('list' as const), title: fc.option(text), items: fc.array(text, { maxLength: 60 }) }),
  fc.record({
    kind: fc.constant('fields' as const),
    fields: fc.array(fc.record({ name: text, value: text, assumed: fc.boolean() }), { maxLength: 30 }),
  }),
  fc.record({
    kind: fc.constant('table' as const),
    head: fc.tuple(text, text, text),
    rows: fc.array(fc.tuple(text, text, text), { maxLength: 60 }),
  }),
  fc.record({ kind: fc.constant('progress' as const), text, done: fc.nat(50), of: fc.nat(40) }),
)
const field = (name: string) =>
  fc.record({
    name: fc.constant(name),
    label: text,
    kind: fc.constantFrom('line', 'lines', 'select', 'file'),
    options: fc.array(fc.record({ value: fc.string({ minLength: 1, maxLength: 120 }), label: text }), { maxLength: 60 }),
    required: fc.boolean(),
  })
const form: fc.Arbitrary<Form> = fc
  .record({ count: fc.integer({ min: 1, max: 12 }), title: text, submit: text })
  .chain(({ count, title, submit }) =>
    fc
      .tuple(...Array.from({ length: count }, (_, at) => field(`field-${at}`)))
      .map((fields) => ({ id: 'o:A1B2:roster:3', title, fields, submit })),
  )
const anyMessage: fc.Arbitrary<Message> = fc.record({
  language: fc.constantFrom('en', 'es'),
  blocks: fc.array(block, { maxLength: 12 }),
  picture: fc.option(fc.record({ file: fc.constant('picture-1'), alt: text })),
  file: fc.constant(null),
  actions: fc.array(text, { maxLength: 60 }).map((labels) => labels.map((one, at) => action(`o:A1B2:do-${at}:3`, one))),
  choice: fc.option(
    fc.record({
      id: fc.constant('c:colour'),
      label: text,
      options: fc.array(fc.record({ value: fc.string({ minLength: 1, maxLength: 120 }), label: text }), { maxLength: 60 }),
    }),
  ),
  form: fc.option(form),
})

const isLong = process.env['LONG'] !== undefined
const sized = (name: string) => ({ name, bytes: 1_000 })
const runs = isLong ? 20_000 : 200
/** Whole messages and forms are slow to check. */
const slowRuns = isLong ? 3_000 : 200
const patience = isLong ? 900_000 : 30_000

describe('texts of people on the platform', () => {
  it('are shown as typed, and nothing in them takes effect', () => {
    fc.assert(
      fc.property(text, (typed) => {
        const escaped = shown(typed)
        expect(takesEffect(escaped)).toEqual([])
        expect(startsList(escaped)).toBe(false)
        expect(unescaped(escaped)).toBe(clean(typed))
        expect(controls(escaped)).toBe(false)
      }),
      { numRuns: runs },
    )
  })

  it('are split without losing a sign and without opening an escape', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 10, max: 60 }), (typed, most) => {
        const pieces = splitText(shown(typed), most)
        for (const piece of pieces) {
          expect(piece.length).toBeLessThanOrEqual(most)
          expect(takesEffect(piece)).toEqual([])
          expect(/\p{Cs}/u.test(piece)).toBe(false)
        }
        expect(pieces.join('').replace(/\s/g, '')).toBe(shown(typed).replace(/\s/g, ''))
      }),
      { numRuns: runs },
    )
  })

  it('become labels of one line that are never empty and never too long', () => {
    fc.assert(
      fc.property(text, fc.integer({ min: 2, max: 80 }), (typed, most) => {
        const short = label(typed, most)
        expect(short.length).toBeGreaterThan(0)
        expect(short.length).toBeLessThanOrEqual(most)
        expect(short).not.toContain('\n')
        expect(controls(short)).toBe(false)
      }),
    )
    expect(cut('abc👨', 5)).toBe('abc👨')
    expect(cut('abc👨x', 5)).toBe('abc…')
  })

  it('never reach a file’s name', () => {
    expect(fileName('../../etc/passwd')).toBe('etc-passwd')
    expect(fileName('Núñez roster (1).csv')).toBe('Nu-n-ez-roster-1-.csv')
    expect(fileName('\u202e')).toBe('file')
  })
})

describe('a message on the platform', () => {
  it(
    'keeps every limit, mentions nobody and has no effect of its texts, whatever it holds',
    () => {
      fc.assert(
        fc.property(anyMessage, fc.boolean(), fc.nat(25), (any, withPicture, count) => {
          const papers = Array.from({ length: count }, (_, at) => `paper-${at}.pdf`)
          const parts = renderParts(any, {
            picture: withPicture ? sized('picture.png') : null,
            papers: papers.map(sized),
            note: null,
          })
          for (const [at, part] of parts.entries()) {
            const body = bodyOf(part, 1_000_000 + at, 0)
            expect(messageTroubles({ ...body }, part.files)).toEqual([])
            expect(body.allowed_mentions).toEqual({ parse: [] })
            const texts = everyComponent(body.components).flatMap((one) => (one['type'] === 10 ? [String(one['content'])] : []))
            for (const one of texts) {
              const outside = one.replace(/^```\n[^`]*\n```$/g, '').replaceAll('**', '')
              expect(takesEffect(outside)).toEqual([])
              expect(controls(one)).toBe(false)
            }
          }
          expect(parts.flatMap((part) => part.files)).toEqual([...(withPicture ? ['picture.png'] : []), ...papers])
        }),
        { numRuns: slowRuns },
      )
    },
    patience,
  )

  it('fits a ticket with eleven actions, a picture and its paper in one part', () => {
    const ticket = message({ actions: ticketActions('T9'), picture: { file: 'p', alt: 'front and back' } })
    const parts = renderParts(ticket, { picture: sized('p.png'), papers: [sized('ticket.pdf')], note: null })
    expect(parts).toHaveLength(1)
    const ids = everyComponent(bodyOf(parts[0] ?? { inside: [], files: [] }, 1, 0).components).flatMap(
      (one) => one['custom_id'] ?? [],
    )
    expect(ids).toEqual(ticketActions('T9').map(({ id }) => id))
  })

  it('shows a narrow table in columns and a wide one line by line', () => {
    const table = (name: string): Message =>
      message({
        blocks: [
          {
            kind: 'table',
            head: ['No', 'Name'],
            rows: [
              ['7', name],
              ['12', 'ORTIZ'],
            ],
          },
        ],
      })
    const textOf = (one: Message): unknown => renderParts(one, nothingCarried)[0]?.inside[0]
    expect(textOf(table('VANCE'))).toMatchObject({ content: '```\nNo  Name\n7   VANCE\n12  ORTIZ\n```' })
    expect(textOf(table('V'.repeat(60)))).toMatchObject({
      content: `**No** 7 · **Name** ${'V'.repeat(60)}\n**No** 12 · **Name** ORTIZ`,
    })
  })

  it('says when something is only assumed, and warns with a sign', () => {
    const one = message({
      blocks: [
        { kind: 'text', text: 'Hot press.', tone: 'caution' },
        { kind: 'fields', fields: [{ name: 'Colour', value: 'white', assumed: true }] },
        { kind: 'progress', text: 'Cut', done: 3, of: 10 },
      ],
    })
    const texts = renderParts(one, nothingCarried)[0]?.inside
    expect(texts).toMatchObject([
      { content: '⚠ Hot press.' },
      { content: '**Colour** white \\(assumed\\)' },
      { content: 'Cut\n▰▰▰▱▱▱▱▱▱▱ 3/10' },
    ])
  })
})

describe('a form on the platform', () => {
  it(
    'keeps the limits of a modal on every page, and every field stands on one',
    () => {
      fc.assert(
        fc.property(form, (any) => {
          const pages = formPages(any)
          const modals = pages.map((_, at) => modalOf(any, at + 1)).filter((modal) => modal !== null)
          for (const modal of modals) expect(modalTroubles({ ...modal })).toEqual([])
          const names = modals.flatMap((modal) =>
            everyComponent(modal.components).flatMap((one) =>
              typeof one['custom_id'] === 'string' ? [fieldOf(one['custom_id'])] : [],
            ),
          )
          const wanted = any.fields.filter((one) => one.kind !== 'select' || one.options.length > 0).map((one) => one.name)
          expect([...new Set(names)]).toEqual(wanted)
          expect(modalOf(any, pages.length + 1)).toBeNull()
        }),
        { numRuns: slowRuns },
      )
    },
    patience,
  )
})

describe('what a component carries', () => {
  it('comes back as it was sent', () => {
    for (const ref of [
      { kind: 'action', id: 't:T9:water-drops:2' },
      { kind: 'choice', id: 'c:colour', part: 2 },
      { kind: 'form', id: 'o:A1:roster:3', page: 1 },
      { kind: 'setting', name: 'bench' },
    ] as const) {
      expect(readCustomId(customId(ref))).toEqual(ref)
    }
  })

  it('is ids only: a text is refused when sent and unknown when it comes', () => {
    for (const id of ['', 'o:a b:c:1', 'o:"x":c:1', `o:${'x'.repeat(100)}`, '<@1>', 'ö']) {
      expect(() => customId({ kind: 'action', id })).toThrow('not an id')
      expect(readCustomId(id)).toBeNull()
    }
    expect(readCustomId('f:x:y')).toBeNull()
    expect(readCustomId('s:1')).toBeNull()
  })
})
