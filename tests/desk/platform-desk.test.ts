import { platformDesk } from '../../src/desk/platform/platform-desk.ts'
import { minutes } from '../../src/domain/units/units.ts'
import { platformDeskContract } from '../ports/platform-desk.contract.ts'
import { smallDesk } from '../support/platform/desk.ts'
import { openRealGround } from '../support/platform/ground.ts'

platformDeskContract('in memory', async () => {
  const { desk, refusals } = smallDesk()
  return {
    desk,
    refusals: async (shop) => refusals.filter((one) => one.shop === shop).length,
    close: async () => undefined,
  }
})

platformDeskContract('over the store', async () => {
  const { desk, clock, close } = await openRealGround()
  return {
    desk: platformDesk(desk, null),
    refusals: async (shop) => {
      const events = await desk.store.shop(shop).events.between(minutes(clock.at - 1), minutes(clock.at + 1))
      return events.filter(({ code }) => code === 'refused').length
    },
    close,
  }
})
