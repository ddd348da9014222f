import { describe, expect, it } from 'vitest'
import type { Ticket } from '../../src/domain/ticket/ticket.ts'
import type { Printer } from '../../src/ports/printer.ts'

const paper: Ticket = {
  title: 'A paper',
  language: 'en',
  paper: 'letter',
  made: '2026-11-02T08:30',
  running: 'A paper',
  foot: 'page {page} of {pages}',
  lacking: 'U+… is a sign that cannot be printed',
  sheets: [
    {
      title: 'one',
      blocks: [
        { kind: 'heading', level: 1, text: 'One' },
        { kind: 'text', style: 'body', text: 'Łukasz and 中' },
      ],
    },
    { title: 'two', blocks: [{ kind: 'text', style: 'body', text: 'Two' }] },
  ],
}

/** What every printer must do with a document. */
export const printerContract = (name: string, printer: () => Printer): void => {
  describe(`printer: ${name}`, () => {
    it('gives the same bytes for the same document', async () => {
      const first = await printer().print(paper)
      const second = await printer().print(paper)
      expect(Buffer.compare(first.bytes, second.bytes)).toBe(0)
    })

    it('gives other bytes for another minute', async () => {
      const first = await printer().print(paper)
      const second = await printer().print({ ...paper, made: '2026-11-02T08:31' })
      expect(Buffer.compare(first.bytes, second.bytes)).not.toBe(0)
    })

    it('begins a page for every sheet and counts them', async () => {
      expect((await printer().print(paper)).pages).toBe(2)
    })

    it('names the characters it has no sign for', async () => {
      expect((await printer().print(paper)).lacking).toEqual(['中'])
    })
  })
}
