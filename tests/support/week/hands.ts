import type { Desk, WorkerDesk } from '../../../src/desk/service/desk.ts'
import { postMorning } from '../../../src/desk/service/morning/post-morning.ts'
import { warnTight } from '../../../src/desk/service/plan/warn-tight.ts'
import { pressAction } from '../../../src/desk/service/press-action.ts'
import { lapseHolds } from '../../../src/desk/service/quote/lapse-holds.ts'
import { forgetDue } from '../../../src/desk/service/talk/forget-order.ts'
import { hearCustomer } from '../../../src/desk/service/talk/hear-customer.ts'
import { startTalk } from '../../../src/desk/service/talk/start-talk.ts'
import { minutes } from '../../../src/domain/units/units.ts'
import type { Member } from '../../../src/ports/counter-desk.ts'
import { presses, says, type TestClock, work } from '../desk.ts'
import { unwrap } from '../embedded.ts'

export type Values = { readonly [field: string]: string }

/** What people of the week can do to the shop; `desk` is for looking only. */
export type Hands = {
  readonly desk: Desk
  /** A customer's first words; answers with the conversation's id. */
  readonly arrive: (number: number, words: string) => Promise<string>
  readonly say: (conversation: string, text: string) => Promise<void>
  readonly press: (conversation: string, action: string) => Promise<void>
  /** What a member of the shop does; answers with the word for them, null when it was done. */
  readonly act: (by: Member, action: string, values?: Values) => Promise<string | null>
  /** A process dies and is started again. */
  readonly die: () => Promise<void>
  /** Lets time go on until people look again. */
  readonly goOn: (isOpen: boolean) => Promise<void>
}

const shortLook = 20
const nightLook = 60

/** What the worker's reminder does each minute. */
const remind = async (desk: WorkerDesk): Promise<void> => {
  await lapseHolds(desk)
  await forgetDue(desk)
  await postMorning(desk)
  await warnTight(desk)
}

/** The real desk and store in this process; a process that died shows as steps and presses that come twice. */
export const deskHands = (desk: WorkerDesk, clock: TestClock): Hands => {
  const state = { twice: false }
  return {
    desk,
    arrive: async (number, words) => {
      const id = `week-${number}`
      await desk.store.together(desk.shopId, async (shop) => {
        await startTalk(desk, shop, { id, language: 'en' })
        return { ok: true, value: null }
      })
      await says(desk, id, words)
      return id
    },
    say: (conversation, text) => says(desk, conversation, text),
    press: async (conversation, action) => {
      if (!action.startsWith('p:')) return presses(desk, conversation, action)
      const incoming = { kind: 'pressed', id: `answer-${conversation}-${clock.at}`, action } as const
      unwrap(await hearCustomer(desk, conversation, { incoming, files: [] }))
    },
    act: (by, action, values = {}) => pressAction(desk, by, { action, values }),
    die: async () => {
      state.twice = true
    },
    goOn: async (isOpen) => {
      await work(desk, state.twice ? 2 : 1)
      state.twice = false
      clock.at = minutes(clock.at + (isOpen ? shortLook : nightLook))
      await remind(desk)
      await work(desk)
    },
  }
}
