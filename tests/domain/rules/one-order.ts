import type { Decoration, Layer, Order, OrderGarment, Row } from '../../../src/domain/order/order.ts'
import type { Problem, Severity } from '../../../src/domain/result/result.ts'
import type { RuleFacts } from '../../../src/domain/rules/facts.ts'
import { decoration, order, row } from '../../support/orders.ts'
import { workOut } from '../press/workbench.ts'

type Classes = 'standard' | 'glitter' | 'stretch' | 'low-temperature' | 'reflective' | 'flock' | 'blocker'

export const vinyl = (of: Classes, colour = 'white'): Layer => ({ kind: 'vinyl', class: of, colour, shape: 'face' })

export const stone = (size: 'SS6' | 'SS10' | 'SS16' | 'SS20', style: 'outline' | 'solid' = 'outline'): Layer => ({
  kind: 'stones',
  size,
  colour: 'crystal',
  layout: style === 'solid' ? { style } : { style, rows: 1, contours: 'both' },
})

type Asked = {
  readonly garment?: Partial<OrderGarment>
  readonly layers?: Decoration['layers']
  readonly decoration?: Partial<Decoration>
  readonly rows?: readonly Partial<Row>[]
  readonly order?: Partial<Order>
  readonly facts?: Partial<RuleFacts>
}

/** One garment, one decoration, one row as a rule, all of it cotton and white vinyl unless asked otherwise. */
export const given = (asked: Asked): readonly Problem[] => {
  const garment: OrderGarment = {
    id: 'home',
    fibres: [{ fibre: 'cotton', percent: 100 }],
    knit: 'jersey',
    finish: 'plain',
    dye: 'plain',
    features: [],
    colour: 'navy',
    from: 'customer',
    ...asked.garment,
  }
  const { rulebook: _, ...rest } = order()
  const document = {
    ...rest,
    use: 'fan',
    garments: [garment],
    decorations: [decoration({ layers: asked.layers ?? [vinyl('standard')], ...asked.decoration })],
    roster: (asked.rows ?? [{}]).map((parts, index) => row(index + 1, parts)),
    ...asked.order,
  }
  return workOut(document, asked.facts).problems
}

export const severityOf = (problems: readonly Problem[], code: string): Severity | null =>
  problems.find((problem) => problem.code === code)?.severity ?? null

export const waysOf = (problems: readonly Problem[], code: string): readonly unknown[] => {
  const ways = problems.find((problem) => problem.code === code)?.facts['ways']
  return Array.isArray(ways) ? ways : []
}
