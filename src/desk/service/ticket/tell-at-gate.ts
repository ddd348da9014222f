import { floorWords } from '../../../../templates/desk/floor/words.ts'
import type { GateState } from '../../../domain/press/gate-state.ts'
import type { FormAct } from '../../../domain/ticket/acts.ts'
import type { Deed } from '../floor/deed.ts'
import { customersGarment } from '../floor/garment-text.ts'
import { readLife } from '../floor/read-life.ts'
import { orderFrom } from '../records/records.ts'
import { tellCustomer } from '../say/say-floor.ts'

type Told = 'failed' | 'bled' | 'strings' | 'goes-on'

const isShut = ({ is }: GateState): boolean => is === 'shut'

/** What shuts a gate, as its customer is told of it; what follows from drops that stand has words of its own. */
const stopOf = ({ gate, why }: GateState): Told | null => {
  if (why === 'bled') return 'bled'
  if (why !== 'failed') return null
  return gate.code === 'strings' ? 'strings' : 'failed'
}

/** Whether one of these was found at the same gate of the same garment before. */
export const wasFound = ({ life, act }: Pick<Deed, 'life' | 'act'>, garment: string, results: readonly string[]): boolean =>
  life.findings.some(({ code, facts }) => {
    if (code !== act || typeof facts !== 'object' || facts === null) return false
    const { garment: of, result } = { garment: '', result: '', ...facts }
    return of === garment && results.includes(result)
  })

/** A test press opens its own gate, or that of drops that sank slowly. */
const goesBy = (act: FormAct, { gate, is }: GateState): boolean =>
  is === 'open' && (gate.code === act || (act === 'test-press' && gate.code === 'water-drops'))

const newsOf = (deed: Deed, after: readonly GateState[], garment: string): Told | null => {
  const isOwn = ({ gate }: GateState): boolean => gate.garment === garment
  const shut = after.filter(isOwn).find(isShut)
  if (shut !== undefined) return deed.life.gates.filter(isOwn).some(isShut) ? null : stopOf(shut)
  const isOver = after.filter(isOwn).some((state) => goesBy(deed.act, state)) && !after.some(isShut)
  return isOver && wasFound(deed, garment, ['failed', 'bled', 'strings']) ? 'goes-on' : null
}

/**
 * A test that fails, dye that comes through and strings on what children wear change what a customer gets, or when: they hear of it when
 * it is written down, in plain words, and again when the work goes on.
 */
export const tellAtGate = async (deed: Deed, found: object): Promise<void> => {
  const { desk, shop, life } = deed
  const garment = 'garment' in found ? String(found.garment) : ''
  const after = garment === '' ? null : await readLife(desk, shop, life.ticket.ticketId)
  const news = after === null ? null : newsOf(deed, after.gates, garment)
  if (news === null) return
  const document = (await shop.orders.revision(life.order.orderId, life.ticket.revision))?.document ?? null
  const order = document === null ? null : orderFrom(document)
  await tellCustomer(shop, life.order, {
    nonce: `told-${deed.act}-${life.ticket.ticketId}-${life.findings.length}`,
    text: (language) => {
      const called = customersGarment(deed, order, { id: garment, language })
      const words = floorWords[language]
      return news === 'goes-on' ? words.goesOnCustomer(called) : words.stoppedCustomer[news](called)
    },
  })
}
