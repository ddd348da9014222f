import { createHash } from 'node:crypto'
import pg from 'pg'
import type { Address } from '../../../src/adapters/store/address.ts'
import { openStore } from '../../../src/adapters/store/sql/open-store.ts'
import type { Press } from '../../../src/desk/make-job.ts'
import type { WorkerDesk } from '../../../src/desk/service/desk.ts'
import type { Shop } from '../../../src/domain/shop/shop.ts'
import { localMinute, openTestDesk, type TestClock, testClock } from '../desk.ts'
import { openTestStore, unwrap } from '../embedded.ts'

/** One store and one shop folder for many plays, one after the other; each play is in shops of its own. */
export type RealGround = { readonly desk: WorkerDesk; readonly clock: TestClock; readonly close: () => Promise<void> }

const startAt = (): TestClock => ({ at: localMinute('2026-11-25T09:00') })

export const openRealGround = async (change?: (shop: Shop) => Shop): Promise<RealGround> => {
  const opened = await openTestStore()
  const clock = startAt()
  return { clock, desk: await openTestDesk(opened.store, clock, change), close: opened.close }
}

const digest = (text: string): Uint8Array => createHash('sha256').update(text).digest()

/** Papers, pictures and archives of a few bytes, another for every content: for plays about who gets them, not what is in them. */
const lightPress: Press = {
  printer: { print: async (ticket) => ({ bytes: digest(JSON.stringify(ticket)), pages: 1, lacking: [] }) },
  picture: { render: (svg, width) => digest(`${width} ${svg}`) },
  pack: (entries) => digest(entries.map(({ name, bytes }) => `${name} ${digest(String(bytes))}`).join('\n')),
}

const inDatabase = (address: Address, database: string): Address => {
  if (!('host' in address)) throw new Error('the embedded server is reached by its parts')
  return { ...address, database }
}

/** Grounds for plays side by side: databases of one server, copied from one that is migrated, and a light press. */
export const openLightGrounds = async (
  count: number,
): Promise<{ readonly grounds: readonly RealGround[]; close: () => Promise<void> }> => {
  const opened = await openTestStore()
  const first = await openTestDesk(opened.store, startAt())
  await opened.store.close()
  const owner = new pg.Client(inDatabase(opened.embedded.owner, 'postgres'))
  await owner.connect()
  const grounds: RealGround[] = []
  for (let at = 0; at < count; at += 1) {
    await owner.query(`create database lane${at} template platenpost`)
    const store = unwrap(await openStore({ address: inDatabase(opened.embedded.service, `lane${at}`), time: Date.now }))
    const clock = startAt()
    const time = testClock(() => clock.at)
    grounds.push({ clock, desk: { ...first, store, clock: time, press: lightPress }, close: () => store.close() })
  }
  await owner.end()
  return {
    grounds,
    close: async () => {
      for (const ground of grounds) await ground.close()
      await opened.close()
    },
  }
}
