import { expect, it } from 'vitest'
import { wordsOf } from '../../../../src/adapters/chat/counter/answer.ts'
import { nowCard } from '../../../../src/adapters/chat/counter/press-steps.ts'
import type { StepView } from '../../../../src/ports/floor-view.ts'
import { html, markupOf } from '../../../../templates/page/html.ts'

const step: StepView = {
  no: 1001,
  title: 'Cut',
  figures: [],
  cautions: [],
  seconds: null,
  tiles: [{ line: 2, label: '#7 Bea L', state: 'spoiled', by: null, isChosen: true }],
  isDone: false,
  isNext: true,
}

it.each([
  ['en', 'spoiled: make again'],
  ['es', 'estropeada: repetir'],
] as const)('a garment that was spoiled says what is to be done with it (%s)', (language, said) => {
  const place = {
    base: '/press/t1',
    words: wordsOf(language),
    locale: language,
    zone: 'America/Chicago',
    nameOf: () => '',
  }
  const card = nowCard({ steps: [step], tick: 't:t1:tick:1', isMine: true, now: step, place })
  expect(markupOf(html`${card}`)).toContain(said)
})
