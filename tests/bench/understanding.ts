import { startConversation } from '../../src/domain/understanding/conversation.ts'
import { hear } from '../../src/domain/understanding/hear.ts'
import { readCorpus } from '../domain/understanding/corpus.ts'
import { starterShop } from '../domain/understanding/starter-shop.ts'
import type { Bench, Figure } from './bench.ts'

/** Most characters of a message that are read; the growth is measured up to it. */
const most = 4_000

/** Texts that once took more than their length in time, and a plain roster. */
const inputs: readonly (readonly [string, string])[] = [
  ["O'O'O'…", "O'"],
  ['Aa-Aa-…', 'Aa-'],
  ['Coach Coach …', 'Coach '],
  ['roster lines', '12 Fitzgerald M\n'],
  ['numbers 1-5, …', 'numbers 1-5, '],
  ['home white away navy …', 'home white away navy '],
]

const cpuMs = (work: () => unknown): number => {
  const start = process.cpuUsage()
  work()
  const { user, system } = process.cpuUsage(start)
  return (user + system) / 1_000
}

/** What one message takes of the processor, at its best of some rounds: noise only adds. */
const cost = (text: string, rounds: number, say: (text: string) => unknown): number =>
  Math.min(...Array.from({ length: rounds }, () => cpuMs(() => say(text))))

/** How the time to hear a message grows with its length (1×, 2×, 4×), and what a message of the corpus takes. */
export const bench: Bench = async ({ quick }) => {
  const shop = await starterShop()
  const context = { shop, now: '2027-01-04T09:00' }
  const say = (text: string) => {
    const conversation = startConversation({ id: 'c', person: { id: 'p', name: null }, language: 'en' })
    return hear(conversation, { id: 'm', kind: 'said', text }, context)
  }
  const rounds = quick ? 3 : 9
  const said = readCorpus('tests/fixtures/conversations').flatMap((one) => one.says)
  const all = cpuMs(() => said.map(say))
  const grown = inputs.flatMap(([name, piece]): readonly Figure[] => {
    const [one = 0, two = 0, four = 0] = [most / 4, most / 2, most].map((length) =>
      cost(piece.repeat(Math.ceil(length / piece.length)).slice(0, length), rounds, say),
    )
    return [
      { name: `${name} 1× (1,000 characters)`, value: one, unit: 'ms' },
      { name: `${name} 2×`, value: two / one, unit: 'of 1×' },
      { name: `${name} 4×`, value: four / one, unit: 'of 1×' },
    ]
  })
  return [{ name: `a message of the corpus, mean of ${said.length}`, value: all / said.length, unit: 'ms' }, ...grown]
}
