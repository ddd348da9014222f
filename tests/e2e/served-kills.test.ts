import { setTimeout as pause } from 'node:timers/promises'
import { describe, expect, it } from 'vitest'
import { followOrders, makeOrders, nothingWrong, wrongsOf } from '../support/many-orders.ts'
import { needs } from '../support/needs.ts'
import { seeded } from '../support/seeded.ts'
import { type Crew, startEmbeddedCrew, startServedCrew } from '../support/served-crew.ts'

const long = process.env['LONG'] === 'faults'
/** A long form of another size: ORDERS and KILLS. */
const sized = (name: 'ORDERS' | 'KILLS', usual: number): number => Number(process.env[name] ?? usual)

type Storm = {
  readonly crew: Crew
  readonly orders: number
  readonly kills: number
  readonly seed: number
  readonly atOnce: number
}

/** Kills at random while orders are made, spread over the run by how far the orders are; answers how often who was killed. */
const killDuring = async (storm: Storm, done: () => number): Promise<{ readonly [victim: string]: number }> => {
  const random = seeded(storm.seed)
  const names = Object.keys(storm.crew.victims)
  const killed: { [victim: string]: number } = {}
  for (let kill = 0; kill < storm.kills; kill += 1) {
    while (done() < Math.floor((kill * storm.orders) / storm.kills)) await pause(20)
    await pause(random() * 300)
    const name = names[Math.floor(random() * names.length)] ?? ''
    await storm.crew.victims[name]?.()
    killed[name] = (killed[name] ?? 0) + 1
  }
  return killed
}

const weather = async (name: string, storm: Storm): Promise<void> => {
  const { crew, orders, atOnce } = storm
  const progress = followOrders(crew.records)
  const front = { address: () => crew.address, records: crew.records }
  const from = performance.now()
  try {
    const said = setInterval(() => {
      const minutes = (performance.now() - from) / 60_000
      process.stdout.write(`${name}: ${progress.many('posted')} of ${orders} posted after ${minutes.toFixed(1)} minutes\n`)
    }, 30_000)
    const [made, killed] = await Promise.all([
      makeOrders({ front, progress, many: orders, atOnce }),
      killDuring(storm, () => progress.many('posted')),
    ]).finally(() => clearInterval(said))
    const wrongs = await wrongsOf(crew.records(), made)
    const minutes = (performance.now() - from) / 60_000
    process.stdout.write(
      `${name}: ${orders} orders, ${storm.kills} kills ${JSON.stringify(killed)} in ${minutes.toFixed(1)} minutes: ${JSON.stringify(wrongs)}\n`,
    )
    expect(wrongs).toEqual(nothingWrong(orders, wrongs))
  } finally {
    await progress.close()
  }
}

describe.runIf(needs('redis-server'))('a served shop whose service, workers, PostgreSQL and Redis are killed at random', () => {
  it('makes one ticket of every order, posts it once, keeps its stock and its log', { timeout: 7_200_000 }, async () => {
    const crew = await startServedCrew(long ? 3 : 2)
    const size = long
      ? { orders: sized('ORDERS', 1_000), kills: sized('KILLS', 200), atOnce: 8 }
      : { orders: 10, kills: 8, atOnce: 4 }
    try {
      await weather('served', { crew, ...size, seed: 11 })
    } finally {
      await crew.close()
    }
  })
})

describe('an embedded shop whose service, worker and PostgreSQL are killed at random', () => {
  it('makes one ticket of every order, posts it once, keeps its stock and its log', { timeout: 7_200_000 }, async () => {
    const crew = await startEmbeddedCrew()
    const size = long
      ? { orders: sized('ORDERS', 1_000), kills: sized('KILLS', 200) / 2, atOnce: 6 }
      : { orders: 6, kills: 4, atOnce: 3 }
    try {
      await weather('embedded', { crew, ...size, seed: 12 })
    } finally {
      await crew.close()
    }
  })
})
