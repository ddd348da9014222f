import { expect, it } from 'vitest'
import { wordsOf } from '../../../../src/adapters/chat/counter/answer.ts'
import { renderSlip } from '../../../../src/adapters/chat/counter/slip.ts'
import type { Line } from '../../../../src/ports/counter-desk.ts'
import { markupOf } from '../../../../templates/page/html.ts'

const question: Line = {
  id: 'm-1',
  seq: 1,
  change: 1,
  by: { kind: 'bot', name: 'the shop' },
  at: 0,
  edited: 0,
  message: {
    language: 'en',
    blocks: [],
    picture: null,
    file: null,
    actions: [{ id: 'c:sign-off:1', label: 'Sign', weight: 'main' }],
    choice: { id: 'c:choice', label: 'How old are they?', options: [{ value: 'all-3-12', label: 'All are 3 to 12' }] },
    form: null,
  },
}

it.each([
  [undefined, false],
  [false, false],
  [true, true],
])('the buttons of a question that is answered (%s) stay to be read and cannot be pressed', (isAnswered, isShut) => {
  const place = { base: '/c/t', words: wordsOf('en'), locale: 'en-US', zone: 'America/Chicago', nameOf: () => '' }
  const slip = markupOf(renderSlip({ ...question, ...(isAnswered === undefined ? {} : { isAnswered }) }, place))
  expect(/<fieldset disabled>/.test(slip)).toBe(isShut)
  expect(slip).toContain('All are 3 to 12')
  expect(slip).toContain('<button class="main" name="action" value="c:sign-off:1">')
})
