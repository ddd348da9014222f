import type { Decoration, Layer } from '../../src/domain/order/order.ts'
import type { Show } from '../../src/domain/shop/show.ts'
import type { Known, KnownDecoration, KnownGarment } from '../../src/domain/understanding/known.ts'
import type { Tidy } from '../../src/domain/understanding/replies.ts'
import type { Sentence } from './catalogue.ts'

type Words = { readonly [word: string]: string }

/** The words a language lends to the list that is read back. */
export type TidyWords = {
  readonly names: {
    readonly [field in
      | 'team'
      | 'sport'
      | 'use'
      | 'needBy'
      | 'needFor'
      | 'gameDay'
      | 'handOver'
      | 'garment'
      | 'people'
      | 'money'
      | 'notes']: string
  }
  readonly head: readonly [line: string, number: string, name: string, size: string, garment: string, remark: string]
  /** What garments are called by their ids; a second one of a kind is numbered. */
  readonly garments: Words
  readonly sports: Words
  readonly uses: Words
  readonly handOver: Words
  readonly knits: Words
  readonly fibres: Words
  readonly dyes: Words
  readonly finishes: Words
  readonly features: Words
  readonly fits: Words
  /** What sizes are called, where that is not their usual sign. */
  readonly sizes: Words
  readonly classes: Words
  readonly places: Words
  readonly contents: Words
  readonly money: Words
  readonly people: Words
  readonly own: string
  readonly without: string
  readonly hourOpen: string
  readonly noColour: string
  readonly bySize: string
  readonly face: (name: string) => string
  readonly vinyl: (colour: string, vinylClass: string) => string
  readonly outline: (colour: string, width: string) => string
  readonly shadow: (colour: string) => string
  readonly stones: (stones: {
    readonly size: string
    readonly colour: string
    readonly style: string
    readonly rows: number
    readonly contours: string
  }) => string
  readonly with: (parts: readonly string[]) => string
  /** Taken over from an earlier order. */
  readonly asBefore: string
  readonly sizeAsBefore: string
  readonly later: Words
  readonly assumedAges: Words
  readonly plural: (count: number) => string
}

/** Something of it was taken over from an earlier order. */
const wasTaken = ({ taken }: Tidy, path: string): boolean => taken.some((one) => one === path || one.startsWith(`${path}/`))

const withMark = ({ asBefore }: TidyWords, value: string, taken: boolean): string => (taken ? `${value} (${asBefore})` : value)

type Field = NonNullable<Sentence['fields']>[number]

const word = (words: Words, key: string | undefined): string => (key === undefined ? '' : (words[key] ?? key))

/** "home jersey", "t-shirt 2": a garment of the order in words. */
export const garmentText = (garments: Words, id: string): string => {
  const [, base = id, twin = ''] = /^(.*?)(?:-(\d+))?$/.exec(id) ?? []
  const name = garments[base]
  return name === undefined ? id : [name, twin].filter((part) => part !== '').join(' ')
}

export const sizeText = (words: TidyWords, fit: string | null, size: string | null): string => {
  if (size === null) return '–'
  if (size === 'later') return words.later['sizes'] ?? size
  const called = word(words.sizes, size)
  return fit === null || fit === 'toddler' ? called : `${word(words.fits, fit)} ${called}`
}

const layerText = (words: TidyWords, show: Show, layer: Layer): string => {
  if (layer.kind === 'vinyl') {
    const colour = show.colour(layer.colour)
    if (layer.shape === 'face') return words.vinyl(colour, word(words.classes, layer.class))
    if ('surround' in layer.shape) return words.outline(colour, show.length(layer.shape.surround))
    return words.shadow(colour)
  }
  const { layout } = layer
  const rows = 'rows' in layout ? layout.rows : 1
  const contours = 'contours' in layout ? layout.contours : ''
  return words.stones({ size: layer.size, colour: show.colour(layer.colour), style: layout.style, rows, contours })
}

const heightText = (words: TidyWords, show: Show, height: Decoration['height'] | undefined): string =>
  height === undefined || 'by' in height ? words.bySize : show.given(height.micrometres)

const contentText = (words: TidyWords, known: KnownDecoration): string => {
  const { content } = known
  if (content?.kind === 'text') return `“${content.text}”`
  return word(words.contents, content?.kind)
}

const decorationField = (words: TidyWords, show: Show, { tidy, index }: { tidy: Tidy; index: number }): Field => {
  const known = tidy.order.decorations[index] ?? { id: '' }
  const layers = known.layers ?? []
  const rank = (layer: Layer): number => (layer.kind === 'stones' ? 2 : Number(layer.shape !== 'face'))
  const figureFirst = [...layers].sort((a, b) => rank(a) - rank(b)).map((layer) => layerText(words, show, layer))
  const several = tidy.order.garments.length > 1
  const make = layers.length > 0 ? words.with(figureFirst) : words.noColour
  const on = several ? ` (${show.list((known.on ?? []).map((id) => garmentText(words.garments, id)))})` : ''
  const root = `/decorations/${index}/`
  const assumed = tidy.assumed.filter((path) => path.startsWith(root))
  const colourAssumed = assumed.some((path) => /\/(colour|class|rows|contours|size|place)$/.test(path))
  const face = known.face === undefined ? '' : `, ${words.face(show.face(known.face))}`
  return {
    name: `${word(words.places, known.place)}${on}`,
    value: withMark(
      words,
      `${contentText(words, known)}: ${make}, ${heightText(words, show, known.height)}${face}`,
      wasTaken(tidy, `/decorations/${index}`),
    ),
    assumed: colourAssumed,
  }
}

const clothText = (words: TidyWords, garment: KnownGarment): string => {
  const fibres = garment.fibres
  const blend =
    fibres === undefined || fibres === 'unknown'
      ? ''
      : fibres
          .map(({ fibre, percent }) =>
            fibres.length === 1 ? word(words.fibres, fibre) : `${percent}% ${word(words.fibres, fibre)}`,
          )
          .join(' ')
  const dye = garment.dye === 'sublimated' ? word(words.dyes, 'sublimated') : ''
  const finish = garment.finish === 'repellent' ? word(words.finishes, 'repellent') : ''
  return [blend, garment.knit === 'unknown' ? '' : word(words.knits, garment.knit), dye, finish]
    .filter((part) => part !== '')
    .join(', ')
}

const garmentField = (words: TidyWords, show: Show, { tidy, index }: { tidy: Tidy; index: number }): Field => {
  const garment = tidy.order.garments[index] ?? { id: '' }
  const style = garment.from === 'customer' ? words.own : garment.catalogue === undefined ? '' : show.garment(garment.catalogue)
  const colour = garment.colour === undefined ? words.noColour : show.colour(garment.colour)
  const root = `/garments/${index}/`
  return {
    name:
      tidy.order.garments.length > 1
        ? `${words.names.garment} ${garmentText(words.garments, garment.id)}`
        : words.names.garment.replace(/:$/, ''),
    value: withMark(
      words,
      [colour, style, clothText(words, garment)].filter((part) => part !== '').join(', '),
      wasTaken(tidy, `/garments/${index}`),
    ),
    assumed: tidy.assumed.some((path) => path.startsWith(root) && /\/(catalogue|fibres|knit|from)/.test(path)),
  }
}

const peopleField = (words: TidyWords, order: Known): readonly { name: string; value: string; path: string }[] => {
  const people = Object.entries(order.people).map(([role, name]) => `${word(words.people, role)}: ${name}`)
  return people.length === 0 ? [] : [{ name: words.names.people, value: people.join('; '), path: '/people' }]
}

const moneyField = (words: TidyWords, show: Show, order: Known): readonly { name: string; value: string; path: string }[] => {
  const money = order.money
  if (money === undefined || money.state === 'none') return []
  const amount = money.amount === undefined ? '' : ` ${show.money(money.amount)}`
  const reference = money.reference === undefined ? '' : ` ${money.reference}`
  return [{ name: words.names.money, value: `${word(words.money, money.state)}${amount}${reference}`, path: '/money' }]
}

const headFields = (words: TidyWords, show: Show, tidy: Tidy): readonly Field[] => {
  const { order } = tidy
  const isTaken = (path: string): boolean => wasTaken(tidy, path)
  const needBy =
    order.needBy === undefined
      ? tidy.day === null
        ? undefined
        : `${show.day(tidy.day)} (${words.hourOpen})`
      : show.moment(order.needBy)
  const fields = [
    { name: words.names.team, value: order.team, path: '/team' },
    { name: words.names.sport, value: order.sport === undefined ? undefined : word(words.sports, order.sport), path: '/sport' },
    { name: words.names.use, value: word(words.uses, order.use), path: '/use' },
    { name: words.names.needBy, value: needBy, path: '/needBy' },
    { name: words.names.needFor, value: order.needFor, path: '/needFor' },
    { name: words.names.gameDay, value: order.gameDay === undefined ? undefined : show.day(order.gameDay), path: '/gameDay' },
    { name: words.names.handOver, value: word(words.handOver, order.handOver), path: '/handOver' },
    ...peopleField(words, order),
    ...moneyField(words, show, order),
    { name: words.names.notes, value: order.notes?.split('\n').join('; '), path: '/notes' },
  ]
  return fields.flatMap(({ name, value, path }) =>
    value === undefined || value === ''
      ? []
      : [
          {
            name,
            value: withMark(words, value, isTaken(path)),
            assumed: tidy.assumed.includes(path) || tidy.assumed.includes(`${path}/orders`),
          },
        ],
  )
}

/** What a line goes without: "number", "name". */
const contentsOff = ({ order }: Tidy, ids: readonly string[]): readonly string[] => [
  ...new Set(order.decorations.flatMap(({ id, content }) => (ids.includes(id) && content !== undefined ? [content.kind] : []))),
]

const remarkOf = (words: TidyWords, tidy: Tidy, index: number): string => {
  const row = tidy.order.roster[index] ?? { line: 0 }
  return [
    ...(row.extras ?? []).map((extra) => `${contentText(words, extra)} ${word(words.places, extra.place)}`),
    ...(row.age === 'under-3' || row.age === '3-12' ? [words.assumedAges[row.age] ?? ''] : []),
    ...(row.note === undefined ? [] : [row.note]),
    ...contentsOff(tidy, row.without ?? []).map((kind) => `${words.without} ${word(words.contents, kind)}`),
    ...(wasTaken(tidy, `/roster/${index}/size`) ? [words.sizeAsBefore] : []),
  ].join('; ')
}

const rosterTable = (words: TidyWords, tidy: Tidy): NonNullable<Sentence['table']> => {
  const { order } = tidy
  const several = order.garments.length > 1
  const [line, number, name, size, garment, remark] = words.head
  const counted = order.roster.some((row) => (row.quantity ?? 1) > 1)
  const remarks = order.roster.some((_, index) => remarkOf(words, tidy, index) !== '')
  const head = [counted ? words.plural(0) : line, number, name, size, ...(several ? [garment] : []), ...(remarks ? [remark] : [])]
  const rows = order.roster.map((row, index) => [
    counted ? `${row.quantity ?? 1} ×` : String(row.line),
    row.number ?? '–',
    row.name ?? '–',
    sizeText(words, row.fit ?? null, row.size ?? null),
    ...(several ? [garmentText(words.garments, row.garment ?? '')] : []),
    ...(remarks ? [remarkOf(words, tidy, index)] : []),
  ])
  return { head, rows }
}

/** What is said of the whole order now and was not before, or otherwise: "Needed: Friday, January 15, 5 pm.". */
export const newHeads = (
  words: TidyWords,
  show: Show,
  { before, now }: { readonly before: Tidy; readonly now: Tidy },
): readonly string[] => {
  const known = headFields(words, show, before).filter(({ assumed }) => !assumed)
  const isNew = ({ name, value, assumed }: Field): boolean =>
    !assumed && !known.some((field) => field.name === name && field.value === value)
  return headFields(words, show, now)
    .filter(isNew)
    .map(({ name, value }) => `${name}: ${value}${value.endsWith('.') ? '' : '.'}`)
}

/** The order read back: fields with the assumed ones marked, then the roster line by line. */
export const tidyList = (words: TidyWords, show: Show, tidy: Tidy): Pick<Sentence, 'fields' | 'table'> => {
  const { order } = tidy
  const fields = [
    ...headFields(words, show, tidy),
    ...order.garments.map((_, index) => garmentField(words, show, { tidy, index })),
    ...order.decorations.map((_, index) => decorationField(words, show, { tidy, index })),
  ]
  return order.roster.length === 0 ? { fields } : { fields, table: rosterTable(words, tidy) }
}
