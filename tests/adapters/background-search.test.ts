import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, it } from 'vitest'
import { searchInThread } from '../../src/adapters/machine/search-plan.ts'
import { verify } from '../../src/domain/schedule/verify/verify.ts'
import { startBackground } from '../../workers/search.ts'
import { root } from '../support/embedded.ts'
import { jobsBook } from '../support/scheduling.ts'

const compiled = pathToFileURL(join(root, '.build/src/adapters/machine/search-thread.js'))
const quiet = 10

/** A search that ends when it is told to. */
const heldSearch = () => {
  const begun: string[] = []
  const ends: (() => void)[] = []
  const search = (shopId: string) =>
    new Promise<void>((end) => {
      begun.push(shopId)
      ends.push(end)
    })
  return { begun, ends, search }
}

const until = async (holds: () => boolean): Promise<void> => {
  while (!holds()) await new Promise((next) => setTimeout(next, 5))
}

describe('the search in a thread', () => {
  it('finds the same sound plan each time it is given the same book and seed', async () => {
    const book = jobsBook({ p: [30, 20, 10, 40], d: [100, 20, 30, 70], w: [1, 2, 3, 1] })
    const search = searchInThread(compiled)
    const [one, two] = await Promise.all([0, 1].map(() => search({ book, slots: [], seed: 7, seconds: 0.1 })))
    expect(verify(book, one ?? [])).toEqual([])
    expect(two).toEqual(one)
  })
})

describe('searching in the background', () => {
  it('searches once for a burst, and once more for what comes while it searches', async () => {
    const { begun, ends, search } = heldSearch()
    const background = startBackground(search, () => undefined, quiet)
    for (let times = 0; times < 20; times += 1) background.wake('shop')
    await until(() => begun.length === 1)
    background.wake('shop')
    background.wake('shop')
    ends[0]?.()
    await until(() => begun.length === 2)
    ends[1]?.()
    await background.close()
    expect(begun).toEqual(['shop', 'shop'])
  })

  it('goes on after a search that failed, says why, and does nothing once it is closed', async () => {
    const troubles: unknown[] = []
    const search = async (shopId: string): Promise<void> => {
      if (shopId === 'bad') throw new Error('no plan')
    }
    const background = startBackground(search, (trouble) => troubles.push(trouble), quiet)
    background.wake('bad')
    await until(() => troubles.length === 1)
    await background.close()
    background.wake('bad')
    expect(troubles.map(String)).toEqual(['Error: no plan'])
  })
})
