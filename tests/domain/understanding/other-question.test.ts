import { expect, test } from 'vitest'
import { play } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

/** Everything but the team's name, the ages and who orders: the next question is the team's name. */
const allButTheTeam = [
  'volleyball, 3 navy polyester jerseys, white vinyl numbers on the back, by Saturday December 12 at 5 pm, we pick them up',
  '12 Ada M\n7 Ida S\n9 Mo L',
]
const talk = async (language: 'en' | 'es', says: readonly string[]) =>
  play(
    { id: 'other-question', now: '2026-11-25T09:00', language, says: [...allButTheTeam, ...says], facts: [] },
    await starterShop(),
  )

test('the question is what the team is called', async () => {
  const { conversation } = await talk('en', [])
  expect(conversation.asked?.code).toBe('ask-team')
})

test.each([
  'all are 13 or older',
  'everyone is 13+',
  'nobody is under 13',
  'they are all over 16',
  'all of them are 14 and up',
  'todos son mayores de 13',
  'todas tienen más de 13 años',
  'nadie es menor de 13',
])('"%s" says how old they are, whatever was asked, and names no team', async (said) => {
  const { composed, conversation } = await talk('en', [said])
  expect(composed.order.team ?? null).toBe(null)
  expect(conversation.draft.ages).toBe('13-up')
})

test.each([
  'yes',
  'ok',
  'nobody',
  'everyone',
  'how much is it?',
  'what does it cost',
  'I will tell you later',
  'later',
  'can I pay by card',
  'we pick them up',
  'make the 9 a medium',
  'no, that is all',
  'nothing else',
  'thanks',
  'looks good',
  'perfect, go ahead',
  'and white shorts too',
  'size M for all',
  'no names',
  'cuánto cuesta',
  'te digo luego',
  'nada más',
  'está bien',
  'todo bien',
])('"%s" is no answer to what the team is called', async (said) => {
  const { composed } = await talk('en', [said])
  expect(composed.order.team ?? null).toBe(null)
})

test.each([
  ['The Herons', 'Herons'],
  ['Herons', 'Herons'],
  ['we are the Mesa Street Owls', 'Mesa Street Owls'],
  ['Los Halcones', 'Halcones'],
  ['St. Mary’s', 'St. Mary'],
  ['Team Thunder 12U', 'Thunder'],
  ['All Stars', 'All Stars'],
  ['the team is called looks good', 'looks good'],
  ['good times', 'good times'],
])('"%s" is', async (said, name) => {
  const { composed } = await talk('en', [said])
  expect(composed.order.team).toContain(name)
})

test('what was not asked for is taken, said to be taken, and the question is put again', async () => {
  const { replies } = await talk('en', ['all are 13 or older'])
  expect(replies.slice(-2).map(({ code }) => code)).toEqual(['noted', 'ask-team'])
})
