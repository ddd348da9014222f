import { type Order, orderSchema } from '../order/order.ts'
import { pointer } from '../result/result.ts'
import type { Shop } from '../shop/shop.ts'
import { type ComposedDecoration, composeDecorations } from './compose/decorations.ts'
import { type ComposedGarment, composeGarments } from './compose/garments.ts'
import { type ComposedRow, composeRoster } from './compose/roster.ts'
import { contentHash } from './content-hash.ts'
import type { Conversation } from './conversation.ts'
import type { Draft } from './draft.ts'
import type { Known, Missing } from './known.ts'
import { missingOf } from './missing.ts'

export type Context = { readonly shop: Shop; readonly now: string }

export type Parts = {
  readonly draft: Draft
  readonly garments: readonly ComposedGarment[]
  readonly decorations: readonly ComposedDecoration[]
  readonly rows: readonly ComposedRow[]
}

export type Composed = {
  /** As far as known, assumptions filled in. */
  readonly order: Known
  /** The whole document, when nothing is missing any more. */
  readonly complete: Order | null
  /** What a customer signs: the hash of the complete document. */
  readonly hash: string | null
  readonly missing: readonly Missing[]
  readonly assumed: ReadonlySet<string>
}

type Speaker = Pick<Conversation, 'draft' | 'language' | 'person'>

/** Who games are for follows from the sport and the number; a cheer squad is cheer; one piece is a keepsake only when said. */
const usualUse = (draft: Draft): Order['use'] => {
  if (draft.sport === 'cheer') return 'cheer'
  const numbered = Object.values(draft.marks).some((mark) => mark.content === 'number' && mark.wanted !== false)
  return numbered ? 'game' : 'fan'
}

/** Where no game is played, the sport is nobody's question. */
const usualSport = (draft: Draft): string | undefined =>
  draft.sport ?? (['fan', 'staff', 'keepsake'].includes(draft.use ?? usualUse(draft)) ? 'other' : undefined)

const optional = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  value === undefined ? {} : ({ [key]: value } as { readonly [K in Key]: Value })

const heads = ({ draft, language, person }: Speaker) => {
  const needBy = draft.day !== undefined && draft.hour !== undefined ? `${draft.day}T${draft.hour}` : undefined
  const orders = draft.orders ?? person.name ?? undefined
  return {
    version: 1 as const,
    ...optional('team', draft.team),
    language,
    ...optional('sport', usualSport(draft)),
    use: draft.use ?? usualUse(draft),
    ...optional('rulebook', draft.rulebook),
    ...optional('needBy', needBy),
    ...optional('needFor', draft.needFor),
    ...optional('gameDay', draft.gameDay),
    handOver: draft.handOver ?? ('collect' as const),
    ...optional('from', draft.from),
    people: {
      ...optional('orders', orders),
      ...optional('signsOff', draft.signsOff),
      ...optional('pays', draft.pays),
      ...optional('collects', draft.collects),
    },
    money: {
      ...optional('amount', draft.money?.amount),
      ...optional('reference', draft.money?.reference),
      ...optional('taxExempt', draft.money?.taxExempt),
      state: draft.money?.state ?? ('none' as const),
    },
    ...(draft.notes.length === 0 ? {} : { notes: draft.notes.join('\n') }),
  }
}

const assumedHeads = ({ draft, person }: Speaker): readonly string[] => [
  '/language',
  ...(draft.use === undefined ? ['/use'] : []),
  ...(draft.sport === undefined ? ['/sport'] : []),
  ...(draft.handOver === undefined ? ['/handOver'] : []),
  ...(draft.orders === undefined && person.name !== null ? ['/people/orders'] : []),
  ...(draft.money?.state === undefined ? ['/money/state'] : []),
]

const assumedParts = ({ garments, decorations, rows }: Parts): readonly string[] => [
  ...garments.flatMap(({ assumed, known }, index) =>
    assumed.flatMap((key) => everyLeaf(pointer('garments', index, key), Reflect.get(known, key))),
  ),
  ...decorations.flatMap(({ assumed }, index) => assumed.map((path) => `${pointer('decorations', index)}${path}`)),
  ...rows.flatMap(({ assumed }, index) => assumed.map((path) => `${pointer('roster', index)}${path}`)),
]

/** All pointers under one that was assumed as a whole. */
const everyLeaf = (path: string, value: unknown): readonly string[] => {
  if (typeof value !== 'object' || value === null) return [path]
  return Object.entries(value).flatMap(([key, inner]) => everyLeaf(`${path}/${key}`, inner))
}

/** The order document that a draft amounts to: assumptions filled in and named, what is missing with the question that gets it. */
export const documentOf = (speaker: Speaker, { shop }: Pick<Context, 'shop'>): Composed => {
  const { draft } = speaker
  const decorations = composeDecorations(shop, draft)
  const parts: Parts = {
    draft,
    garments: composeGarments(shop, draft),
    decorations,
    rows: composeRoster(shop, { draft, decorations }),
  }
  const order: Known = {
    ...heads(speaker),
    garments: parts.garments.map((garment) => garment.known),
    decorations: parts.decorations.map((decoration) => decoration.known),
    roster: parts.rows.map((row) => row.known),
  }
  const missing = missingOf(order, parts)
  const parsed = missing.length === 0 ? orderSchema.safeParse(order) : null
  const complete = parsed?.success ? parsed.data : null
  return {
    order,
    complete,
    hash: complete === null ? null : contentHash(complete),
    missing,
    assumed: new Set([...assumedHeads(speaker), ...assumedParts(parts)]),
  }
}
