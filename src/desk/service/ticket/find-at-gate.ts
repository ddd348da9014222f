import * as z from 'zod'
import type { Found } from '../../../domain/press/gate-state.ts'
import { ok } from '../../../domain/result/result.ts'
import { beforeFirstPiece } from '../../../domain/ticket/made.ts'
import { type Answered, type Deed, readValues } from '../floor/deed.ts'
import { gateName } from '../floor/gate-name.ts'
import { markGates } from '../floor/mark-gates.ts'
import { stepNames } from '../floor/step-name.ts'
import { ticketName } from '../records/ticket-names.ts'
import { momentOf, tellOwner, wordsFor } from '../say/say-floor.ts'
import { askAfterBeaded } from './ask-after-beaded.ts'
import { tellAtGate, wasFound } from './tell-at-gate.ts'

const text = z.string().trim().max(200)
const optional = text.default('')
const count = z.coerce.number().int().min(0).max(500)

const dropsSchema = text
  .transform((said) =>
    said
      .split(/[^\d]+/)
      .filter((part) => part !== '')
      .map(Number),
  )
  .refine((seconds) => seconds.length === 5 && seconds.every((one) => one <= 60))

const garment = text.min(1)
const schemas = {
  'count-in': z.object({ garment, missing: count, faults: optional, label: optional, bin: optional }),
  strings: z.object({ garment, result: z.enum(['no-strings', 'strings']) }),
  'water-drops': z.object({ garment, drops: dropsSchema }),
  'test-press': z.object({ garment, result: z.enum(['held', 'failed']) }),
  'bleed-test': z
    .object({ garment, result: z.enum(['pressed', 'clean', 'bled', 'skipped']), signedBy: optional })
    .refine(({ result, signedBy }) => result !== 'skipped' || signedBy !== '', { path: ['signedBy'] }),
  certificate: z.object({ subject: text.min(1), certificate: text.min(1) }),
  coupon: z.object({ subject: text.min(1), hole: z.coerce.number().positive().max(20) }),
  'first-piece': z.object({ garment, photo: optional }),
  'second-look': z.object({ garment, result: z.enum(['right', 'wrong']), note: optional }),
} as const
export type GateAct = keyof typeof schemas

const isGateAct = (act: string): act is GateAct => Object.hasOwn(schemas, act)

/** What was found, as it is kept: the gate's own fields, nothing that names a wearer. */
const factsOf = (
  deed: Deed,
  act: GateAct,
): { readonly ok: true; readonly facts: object } | { readonly ok: false; readonly said: string } => {
  const read = readValues(deed, schemas[act])
  if (!read.ok) return read
  const { value } = read
  if ('drops' in value) return { ok: true, facts: { garment: value.garment, seconds: value.drops } }
  if ('certificate' in value) return { ok: true, facts: { ...value, result: 'seen' } }
  return { ok: true, facts: 'hole' in value ? { ...value, result: 'held' } : value }
}

const isMissing = (facts: object): facts is { readonly missing: number } =>
  'missing' in facts && typeof facts.missing === 'number'

/** The gate that something was found at, in words. */
const gateOf = ({ desk, life, facts: ticket }: Deed, act: GateAct, facts: object): string => {
  const about = 'garment' in facts ? facts.garment : null
  const found = life.gates.find(({ gate }) => gate.code === act && gate.garment === about)?.gate
  return found === undefined ? wordsFor(desk).acts[act] : gateName(desk, ticket, found)
}

/** What follows from a finding beside its own gate: lots learn their certificate, the owner hears what went wrong. */
const follow = async (deed: Deed, act: GateAct, facts: object): Promise<void> => {
  const { desk, shop, life } = deed
  const words = wordsFor(desk)
  const ticket = ticketName(life.ticket.number)
  const nonce = `${act}-${life.ticket.ticketId}-${life.findings.length}`
  if (act === 'certificate' && 'subject' in facts && 'certificate' in facts) {
    const [item = '', lot = ''] = String(facts.subject).split(' ')
    await shop.stock.putLot({ item, lot, certificate: String(facts.certificate), grossMilligrams: null, bin: null })
  }
  if (act === 'count-in' && isMissing(facts) && facts.missing > 0)
    await tellOwner(desk, shop, { nonce, text: words.ownerNote.counted(ticket, facts.missing) })
  const failed = 'result' in facts && (facts.result === 'failed' || facts.result === 'bled' || facts.result === 'strings')
  if (failed) await tellOwner(desk, shop, { nonce, text: words.ownerNote.shut(ticket, gateOf(deed, act, facts)) })
}

/** Whoever made the first piece does not sign it themselves. */
const isOwnWork = ({ life, by, values }: Deed, act: GateAct): boolean => {
  if (act !== 'second-look') return false
  const isOf = (facts: unknown): boolean =>
    typeof facts === 'object' && facts !== null && 'garment' in facts && facts.garment === values['garment']
  const made = life.findings.filter(({ code, facts }) => code === 'first-piece' && isOf(facts)).at(-1)
  return made === undefined || made.by === by.name
}

/** A first piece is looked at when it is made: the steps that are not ticked yet, or null when they are. */
const notMade = ({ desk, life, facts: ticket }: Deed, act: GateAct, facts: object): string | null => {
  if (act !== 'first-piece' || !('garment' in facts)) return null
  const before = beforeFirstPiece(life, String(facts.garment)).map(({ step }) => step)
  return before.length === 0 ? null : wordsFor(desk).first(stepNames(desk, ticket, before))
}

/** A bleed test is clean after its wait, not before: what to do instead, or null when it is time. */
const looksEarly = (deed: Deed, facts: object): string | null => {
  if (!('garment' in facts && 'result' in facts)) return null
  const { desk, life } = deed
  if (facts.result === 'skipped' && wasFound(deed, String(facts.garment), ['bled'])) return wordsFor(desk).bledBefore
  if (facts.result !== 'clean') return null
  const test = life.gates.find(({ gate }) => gate.code === 'bleed-test' && gate.garment === facts.garment)
  const words = wordsFor(desk)
  if (test?.is === 'shut') return words.bledBefore
  if (test?.is !== 'closed') return null
  if (test.lookAt === null) return words.pressFirst
  return desk.clock.now() < test.lookAt ? words.looksEarly(momentOf(desk, test.lookAt)) : null
}

/** Writes down what somebody found at a gate. Drops that stand close the ticket and ask the customer. */
export const findAtGate = async (deed: Deed): Answered => {
  const { desk, shop, life, act, by } = deed
  if (!isGateAct(act)) return ok(null)
  if (act === 'strings' && by.role !== 'owner') return ok(wordsFor(desk).ownerOnly)
  if (isOwnWork(deed, act)) return ok(wordsFor(desk).gateIs['wants-second'])
  const read = factsOf(deed, act)
  if (!read.ok) return ok(read.said)
  const early = looksEarly(deed, read.facts) ?? notMade(deed, act, read.facts)
  if (early !== null) return ok(early)
  const at = desk.clock.now()
  await shop.tickets.find(life.ticket.ticketId, { code: act, facts: read.facts, by: by.name, at })
  await follow(deed, act, read.facts)
  await markGates(deed, act, read.facts)
  await tellAtGate(deed, read.facts)
  const found: Found = { code: act, by: by.name, at, ...read.facts }
  return act === 'water-drops' ? askAfterBeaded(deed, found) : ok(null)
}
