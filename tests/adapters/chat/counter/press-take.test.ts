import { expect, test } from 'vitest'
import { wordsOf } from '../../../../src/adapters/chat/counter/answer.ts'
import { pressSheet } from '../../../../src/adapters/chat/counter/press-pages.ts'
import type { Place } from '../../../../src/adapters/chat/counter/slip.ts'
import { markupOf } from '../../../../templates/page/html.ts'
import { pressAt17 } from '../../../support/page-floor.ts'

const place: Place = { base: '/press/17', words: wordsOf('en'), locale: 'en-US', zone: 'America/Chicago', nameOf: () => '' }
const buttonsFor = (name: string): string => markupOf(pressSheet({ view: pressAt17, name, place, said: null }))

test('whoever has the ticket is not asked to take its steps; a colleague can take one', () => {
  expect(buttonsFor('Tomás')).toMatch(/value="done"/)
  expect(buttonsFor('Tomás')).not.toMatch(/value="take"/)
  expect(buttonsFor('Ana')).toMatch(/value="take"/)
})
