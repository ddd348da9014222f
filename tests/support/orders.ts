import type { Decoration, Layer, Order, Row } from '../../src/domain/order/order.ts'

/** Builders for order documents of an invented team; every part can be overridden. */
export const glitterWithStones: readonly Layer[] = [
  { kind: 'vinyl', class: 'glitter', colour: 'white', shape: 'face' },
  { kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'outline', rows: 2, contours: 'both' } },
]

export const decoration = (parts: Partial<Decoration> = {}): Decoration => ({
  id: 'back-number',
  on: ['home'],
  place: 'back-number',
  content: { kind: 'number' },
  face: 'saira-condensed-800',
  height: { by: 'size' },
  line: { kind: 'straight' },
  layers: [...glitterWithStones],
  ...parts,
})

export const row = (line: number, parts: Partial<Row> = {}): Row => ({
  line,
  garment: 'home',
  fit: 'men',
  size: 'M',
  number: String(line),
  name: `PLAYER ${String.fromCharCode(64 + line)}`,
  quantity: 1,
  age: '13-up',
  ...parts,
})

export const order = (parts: Partial<Order> = {}): Order => ({
  version: 1,
  team: 'Cedar Flats Herons',
  language: 'en',
  sport: 'football',
  use: 'game',
  rulebook: 'nfhs-football',
  needBy: '2026-12-11T17:00',
  gameDay: '2026-12-12',
  handOver: 'collect',
  people: { orders: 'Coach Ybarra' },
  money: { state: 'none' },
  garments: [
    {
      id: 'home',
      catalogue: 'mesh-jersey',
      fibres: [{ fibre: 'polyester', percent: 100 }],
      knit: 'mesh',
      finish: 'plain',
      dye: 'plain',
      features: [],
      colour: 'navy',
      from: 'shop',
    },
  ],
  decorations: [decoration()],
  roster: [row(1), row(2), row(3)],
  ...parts,
})
