import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { startConversation } from '../../../src/domain/understanding/conversation.ts'
import { documentOf } from '../../../src/domain/understanding/document.ts'
import { hear } from '../../../src/domain/understanding/hear.ts'
import { play, readCorpus } from './corpus.ts'
import { starterShop } from './starter-shop.ts'

const shop = await starterShop()
const corpus = readCorpus(fileURLToPath(new URL('../../fixtures/conversations', import.meta.url)))

/** Everything a shop needs to know was said in the first one or two messages; what is left is asked. */
const usual = corpus.filter(({ says, facts }) => {
  const paths = facts.map((fact) => fact.path)
  return (
    says.length <= 2 &&
    ['/team', '/needBy', '/garments', '/decorations', '/roster'].every((root) => paths.some((path) => path.startsWith(root)))
  )
})

test('when the usual facts come in one or two messages, at most three questions are left in the median', () => {
  const left = usual.map((one) => {
    const { composed } = play(one, shop)
    return composed.missing.length
  })
  const sorted = [...left].sort((a, b) => a - b)
  console.log(`${usual.length} conversations, questions left: ${sorted.join(' ')}`)
  expect(usual.length).toBeGreaterThan(8)
  expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(3)
})

test('one question at a time, none that was answered, until the order is complete and signed', () => {
  const context = { shop, now: '2026-11-25T10:05' }
  let conversation = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
  const said = [
    'Hi, 3 football jerseys, navy mesh polyester, white glitter numbers front and back with an SS10 outline in two rows, names above, for the Mesa Bulls. Dec 12 at 5 pm',
    '7 Ingrid M\n07 Lena L\n14 Marta XL',
    'nobody',
    'Dana Whitlow',
  ]
  const asked: string[] = []
  for (const [index, text] of said.entries()) {
    const heard = hear(conversation, { id: `m${index}`, kind: 'said', text }, context)
    const questions = heard.replies.filter((reply) => /^(?:ask|raise)-/.test(reply.code))
    expect(questions.length).toBeLessThanOrEqual(1)
    asked.push(...questions.map((reply) => reply.code))
    conversation = heard.conversation
    if (index === said.length - 1) expect(heard.wants?.kind).toBe('quote')
  }
  expect(asked).toEqual(['ask-roster', 'ask-ages', 'ask-who'])
  const { complete, hash } = documentOf(conversation, context)
  expect(complete?.roster.map((row) => row.number)).toEqual(['7', '07', '14'])
  expect(complete?.decorations.map((decoration) => [decoration.place, decoration.layers])).toEqual([
    ...(['front-number', 'back-number'] as const).map((place) => [
      place,
      [
        { kind: 'vinyl', class: 'glitter', colour: 'white', shape: 'face' },
        { kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'outline', rows: 2, contours: 'both' } },
      ],
    ]),
    ['name', [{ kind: 'vinyl', class: 'glitter', colour: 'white', shape: 'face' }]],
  ])
  expect(conversation.facts.find((fact) => fact.path === '/decorations/2/layers/0/colour')?.how).toBe('assumed')
  expect(conversation.facts.find((fact) => fact.path === '/garments/0/colour')).toMatchObject({ how: 'said', value: 'navy' })
  const quote = { price: null, promise: null, problems: [], picture: null }
  const shown = hear(conversation, { id: 'q', kind: 'quoted', revision: 1, hash: hash ?? '', quote }, context)
  for (const text of [
    '👍',
    'looks great',
    'looks great, but make 7 an L',
    'I approve, but is the blue ok?',
    'how much without names?',
  ]) {
    expect(hear(shown.conversation, { id: text, kind: 'said', text }, context).wants?.kind).not.toBe('sign-off')
  }
  const signed = hear(shown.conversation, { id: 's', kind: 'said', text: 'I approve revision 1' }, context)
  expect(signed.wants).toMatchObject({ kind: 'sign-off', revision: 1, hash })
})
