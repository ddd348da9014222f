import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { temporaryFolder } from '../support/embedded.ts'
import { freePort, type OpenService, startService } from '../support/service.ts'
import { arrive, type Customer, giveAges, orderOf, pageOf, signOff, wordsFor } from '../support/service-customer.ts'
import { eventsOf, openRecords, postedOf, type Records, untilEvent, workerOf } from '../support/service-watch.ts'

/** Each step of an order commits one of these; whatever comes next is then due and not done. */
const boundaries = ['asked', 'quoted', 'signed-off', 'planned', 'ticketed', 'posted'] as const
const victims = ['worker', 'service', 'both'] as const
type Victim = (typeof victims)[number]

const folder = temporaryFolder()
const data = join(folder.path, 'data')
let settings: { readonly [name: string]: string }
let service: OpenService
let records: Records

beforeAll(async () => {
  settings = { COUNTER_PORT: await freePort(), STEP_LOCK_SECONDS: '1', STEP_OVERDUE_SECONDS: '1' }
  service = await startService(data, settings)
  records = await openRecords(data)
})
afterAll(async () => {
  await records.close()
  await service.signal('SIGINT')
  folder.remove()
})

const kill = async (victim: Victim): Promise<void> => {
  if (victim !== 'service') process.kill(await workerOf(service.pid), 'SIGKILL')
  if (victim === 'worker') return
  await service.signal('SIGKILL')
  service = await startService(data, settings)
}

/** An order that its customer brings as far as the sign-off whatever happens to the service meanwhile. */
const begin = async (team: string) => {
  const customer = await arrive(service.address, wordsFor(team, 3))
  return { customer, id: await orderOf(records, customer) }
}
const bringToSignOff = async (customer: Customer): Promise<void> => {
  await giveAges(customer)
  await signOff(customer)
}
const places = ['Harbor Point', 'Cedar Flats', 'Juniper Hill', 'Mill Creek', 'Stone Bridge', 'Dry Lake']
const birds = ['Herons', 'Kites', 'Larks', 'Martins', 'Plovers', 'Swifts']
/** Three orders pair each kind of victim with each boundary; the long form kills 216 times. */
const teams = places
  .flatMap((place) => birds.map((bird) => `${place} ${bird}`))
  .slice(0, process.env['LONG'] === 'service' ? 36 : 3)

describe('a service that is killed', () => {
  it.each(teams)(
    'brings the order of the %s to its ticket, once, whoever is killed at whichever step',
    { timeout: 120_000 },
    async (team) => {
      const turn = teams.indexOf(team)
      const { id, customer } = await begin(team)
      const killAtEach = async (): Promise<void> => {
        for (const [index, boundary] of boundaries.entries()) {
          await untilEvent(records, id, boundary)
          await kill(victims[(index + turn) % victims.length] ?? 'both')
        }
      }
      await Promise.all([killAtEach(), bringToSignOff(customer)])
      expect(await eventsOf(records, id)).toEqual(boundaries)
      expect(await postedOf(records, team)).toBe(1)
      expect(await records.rows('select state from platenpost."order" where order_id = $1', id)).toEqual([{ state: 'on-bench' }])
      expect(await pageOf(customer)).toContain(`ticket T${String(turn + 1).padStart(4, '0')} is on the bench`)
    },
  )
})
