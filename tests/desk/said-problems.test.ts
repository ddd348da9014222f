import { expect, test } from 'vitest'
import { replyMessage } from '../../src/desk/service/say/say-message.ts'
import type { Problem } from '../../src/domain/result/result.ts'
import type { Reply } from '../../src/domain/understanding/replies.ts'
import { starterShop } from '../domain/understanding/starter-shop.ts'

const problem = (severity: Problem['severity'], code: string): Problem => ({ code, at: '', severity, facts: {} })

test('what keeps an order from being made stands before what needs care, and is marked as what it is', async () => {
  const problems = [
    problem('note', 'an-aside'),
    problem('caution', 'mind-this'),
    problem('stop', 'not-so'),
    problem('needs-test', 'try-first'),
  ]
  const reply: Reply = { code: 'cannot-be-made', facts: { revision: 1 }, problems }
  const { blocks } = replyMessage(reply, 'en', await starterShop())
  const tones = blocks.flatMap((block) =>
    block.kind === 'text' && block.tone !== 'plain' ? [`${block.tone}: ${block.text}`] : [],
  )
  expect(tones).toEqual(['stop: not-so', 'caution: mind-this', 'caution: try-first'])
  expect(blocks).toContainEqual({ kind: 'list', title: null, items: ['an-aside'] })
})
