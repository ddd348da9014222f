import type { Shop } from '../shop/shop.ts'
import { fitsWanted, recordFor } from './compose/garments.ts'
import type { Conversation, Open, Reading } from './conversation.ts'
import type { Composed, Context } from './document.ts'
import type { Draft } from './draft.ts'
import type { KnownRow, Missing } from './known.ts'
import { raisedBy } from './raise.ts'
import type { Choice, Label, Reply, RowFacts } from './replies.ts'

export type Question = {
  readonly reply: Reply
  readonly code: string
  readonly path: string
  readonly readings: readonly Reading[]
}

export const rowFacts = (row: KnownRow): RowFacts => ({
  line: row.line,
  number: row.number ?? null,
  name: row.name ?? null,
  fit: row.fit ?? null,
  size: row.size ?? null,
})

const answer = (value: string, ...patches: Reading['patches']): Reading => ({ value, kind: 'word', patches })
const set = (path: readonly string[], value: Reading['patches'][number]['value']) => ({ path, value })

const sports = ['football', 'soccer', 'basketball', 'volleyball', 'baseball', 'softball', 'ice-hockey', 'other']

/** Whoever was asked for by name and is said to be like all others is taken at that word. */
const ageReadings = ({ ages, rows }: Draft): readonly Reading[] => {
  const doubted = Object.entries(rows).flatMap(([key, { age }]) => (age === 'unknown' ? [set(['rows', key, 'age'], null)] : []))
  const all = (age: '13-up' | '3-12') => [
    set(['ages'], age),
    ...(ages === undefined ? [] : [set(['agreed', `ages:${age}`], true)]),
    ...doubted,
  ]
  return [
    answer('all-13-up', ...all('13-up')),
    answer('all-3-12', ...all('3-12')),
    ...(ages === 'mixed' ? [] : [answer('mixed', set(['ages'], 'mixed'))]),
  ]
}

/** The answers that a question offers besides free words. */
const readingsOf = (missing: Missing, draft: Draft): readonly Reading[] => {
  switch (missing.code) {
    case 'ask-ages':
      return ageReadings(draft)
    case 'ask-sizes':
      return [answer('later', set(['later', 'sizes'], true))]
    case 'ask-numbers':
      return [answer('later', set(['later', 'numbers'], true)), answer('none', set(['agreed', 'numbers'], true))]
    case 'ask-names':
      return [answer('later', set(['later', 'names'], true)), answer('none', set(['agreed', 'names'], true))]
    case 'ask-fit':
      return [
        { value: 'youth', kind: 'fit', patches: [set(['common', 'fit'], 'youth')] },
        { value: 'men', kind: 'fit', patches: [set(['common', 'fit'], 'men')] },
      ]
    case 'ask-garment-sizes':
      return [
        answer('everyone', set(['garments', missing.of ?? 'jersey', 'each'], true)),
        answer('none', set(['garments', missing.of ?? 'jersey'], null)),
      ]
    case 'ask-cloth':
      return [answer('not-known', set(['agreed', 'cloth'], true))]
    case 'ask-sport':
      return sports.map((sport) => answer(sport, set(['sport'], sport)))
    default:
      return []
  }
}

const labelOf = (reading: Reading, composed: Composed): Label => {
  const { kind, value } = reading
  if (kind === 'row') {
    const row = composed.order.roster.find((one) => String(one.line) === value)
    return row === undefined ? { code: 'text', value } : { code: 'row', row: rowFacts(row) }
  }
  if (kind === 'word') return { code: 'answer', value }
  return { code: kind, value }
}

const choicesOf = (readings: readonly Reading[], composed: Composed): readonly Choice[] =>
  readings.map((reading) => ({ value: reading.value, label: labelOf(reading, composed) }))

const colourOf = (shop: Shop, conversation: Conversation, id: string | undefined): readonly string[] => {
  const { draft } = conversation
  const wish = draft.garments[id ?? '']
  return wish === undefined ? [] : (recordFor(shop, wish, fitsWanted(draft, id ?? ''))?.colours ?? [])
}

const vinylColours = (shop: Shop, conversation: Conversation, content: string | undefined): readonly string[] => {
  const wanted = conversation.draft.styles[content ?? '']?.class ?? shop.profile.usual.vinylClass
  return [...new Set(shop.vinyl.filter((vinyl) => vinyl.class === wanted).map((vinyl) => vinyl.colour))]
}

type Scene = { readonly conversation: Conversation; readonly composed: Composed; readonly shop: Shop }

const lackingRows = ({ composed }: Scene, lacks: (row: KnownRow) => boolean): readonly RowFacts[] =>
  composed.order.roster.filter(lacks).slice(0, 12).map(rowFacts)

const hasStones = ({ composed }: Scene): boolean =>
  composed.order.decorations.some((decoration) => (decoration.layers ?? []).some((layer) => layer.kind === 'stones'))

const missingReply = (missing: Missing, scene: Scene): Reply => {
  const { conversation, shop } = scene
  switch (missing.code) {
    case 'ask-garment':
      return { code: missing.code, facts: { garments: shop.garments.map((garment) => garment.id) } }
    case 'ask-garment-colour':
      return { code: missing.code, facts: { garment: missing.of ?? '', colours: colourOf(shop, conversation, missing.of) } }
    case 'ask-vinyl-colour':
      return {
        code: missing.code,
        facts: { content: missing.of ?? 'number', colours: vinylColours(shop, conversation, missing.of) },
      }
    case 'ask-text':
      return { code: missing.code, facts: { place: missing.of ?? 'full-front' } }
    case 'ask-hour':
      return { code: missing.code, facts: { day: conversation.draft.day ?? '' } }
    case 'ask-garment-sizes':
    case 'ask-cloth':
      return { code: missing.code, facts: { garment: missing.of ?? '' } }
    case 'ask-numbers':
      return { code: missing.code, facts: { rows: lackingRows(scene, (row) => row.number === undefined) } }
    case 'ask-names':
      return { code: missing.code, facts: { rows: lackingRows(scene, (row) => row.name === undefined) } }
    case 'ask-sizes':
      return { code: missing.code, facts: { rows: lackingRows(scene, (row) => row.size === undefined) } }
    case 'ask-fit':
      return { code: missing.code, facts: { rows: lackingRows(scene, (row) => row.fit === undefined) } }
    case 'ask-ages':
      return conversation.draft.ages !== undefined
        ? { code: 'ask-ages-rows', facts: { rows: lackingRows(scene, (row) => row.age === 'unknown') } }
        : { code: missing.code, facts: { stones: hasStones(scene) } }
    default:
      return { code: missing.code, facts: {} }
  }
}

const membersOf = (open: Open, { composed }: Scene): readonly RowFacts[] => {
  const same =
    open.about === 'duplicate-number'
      ? (row: KnownRow) => row.number === open.quote
      : (row: KnownRow) => row.name?.toLowerCase() === open.quote.toLowerCase()
  const garment = composed.order.roster[0]?.garment
  return composed.order.roster.filter((row) => row.garment === garment && same(row)).map(rowFacts)
}

const isFace = (shop: Shop, said: string): boolean =>
  shop.faces.some(({ id, name }) => [name, id.replaceAll('-', ' ')].some((one) => one.toLowerCase() === said.toLowerCase()))

const openReply = (open: Open, scene: Scene): Reply => {
  switch (open.about) {
    case 'duplicate-number':
      return { code: 'raise-duplicate-number', facts: { number: open.quote, rows: membersOf(open, scene) } }
    case 'same-surname':
      return { code: 'raise-same-surname', facts: { name: open.quote, rows: membersOf(open, scene) } }
    case 'count':
      return { code: 'raise-count', facts: { said: Number(open.quote), rows: Number(open.readings[0]?.value ?? 0) } }
    case 'face':
      return { code: 'ask-face', facts: { quote: open.quote, known: isFace(scene.shop, open.quote) } }
    case 'leaving':
      return { code: 'ask-leaving', facts: { lines: open.readings.length - 1, seniors: open.quote !== '' } }
    case 'sizes-again':
      return { code: 'ask-sizes-again', facts: {} }
    case 'whose':
      return { code: 'ask-whose', facts: {} }
    case 'name-order':
      return { code: 'ask-name-order', facts: { quote: open.quote } }
    case 'drop':
      return { code: 'ask-drop', facts: { quote: open.quote } }
    default:
      return { code: 'ask-reading', facts: { about: open.about, quote: open.quote } }
  }
}

/** Of a whole team who leaves is said in words; a list of buttons would be longer than the roster. */
const offered = ({ about, readings }: Open): readonly Reading[] =>
  about === 'leaving' ? readings.slice(0, 1) : readings.slice(0, 25)

/** The one question to put now: what was left open first, then what the roster raises, then the most valuable thing missing. */
export const nextQuestion = (
  conversation: Conversation,
  composed: Composed,
  { shop }: Pick<Context, 'shop'>,
): Question | null => {
  const scene = { conversation, composed, shop }
  const open = [...conversation.open, ...raisedBy(conversation, composed.order)][0]
  if (open !== undefined) {
    const choices = choicesOf(offered(open), composed)
    const code = open.about
    return { reply: { ...openReply(open, scene), choices }, code, path: open.path, readings: open.readings }
  }
  const missing = composed.missing[0]
  if (missing === undefined) return null
  const readings = readingsOf(missing, conversation.draft)
  const reply = missingReply(missing, scene)
  const choices = choicesOf(readings, composed)
  return { reply: choices.length === 0 ? reply : { ...reply, choices }, code: missing.code, path: missing.path, readings }
}
