import { describe, expect, test } from 'vitest'
import { parseOrder } from '../../../src/domain/order/parse-order.ts'
import { decoration, order, row } from '../../support/orders.ts'

const troubles = (document: unknown) => {
  const parsed = parseOrder(document)
  return parsed.ok ? [] : parsed.problems.map(({ code, at }) => `${code} ${at}`)
}

describe('an order document', () => {
  test('that is whole is read as it stands', () => {
    const document = order()
    expect(parseOrder(document)).toEqual({ ok: true, value: document })
  })

  test('keeps numbers as text, so that 07 stays 07', () => {
    const parsed = parseOrder(order({ roster: [row(1, { number: '07' })] }))
    expect(parsed.ok && parsed.value.roster[0]?.number).toBe('07')
  })

  test('that is broken in many places names every place', () => {
    const broken = {
      ...order(),
      needBy: 'Friday',
      use: 'party',
      colour: 'navy',
      garments: [{ ...order().garments[0], fibres: [{ fibre: 'polyester', percent: 60 }] }],
      roster: [
        { ...row(1), number: 7 },
        { ...row(2), size: '5XL' },
      ],
    }
    expect(troubles(broken).sort()).toEqual([
      'shape-choice /roster/1/size',
      'shape-choice /use',
      'shape-form /needBy',
      'shape-kind /roster/0/number',
      'shape-rule /garments/0/fibres',
      'shape-unknown-key /colour',
    ])
  })

  test('without a part says what is missing and where', () => {
    const { team, ...rest } = order()
    expect(team).toBe('Cedar Flats Herons')
    expect(troubles(rest)).toEqual(['shape-missing /team'])
  })

  test('that is not an object at all is one problem at the whole', () => {
    expect(troubles('twelve jerseys please')).toEqual(['shape-kind '])
    expect(troubles(null)).toEqual(['shape-kind '])
    expect(troubles([])).toEqual(['shape-kind '])
  })

  test('may only name garments and decorations that stand in it', () => {
    const document = order({
      decorations: [decoration({ on: ['home', 'away'] }), decoration({ place: 'front-number' })],
      roster: [row(1, { garment: 'third' }), row(1), row(3, { without: ['sleeves'], extras: [decoration({ on: ['home'] })] })],
    })
    expect(troubles(document).sort()).toEqual([
      'decoration-not-in-order /roster/2/without/0',
      'garment-not-in-order /decorations/0/on/1',
      'garment-not-in-order /roster/0/garment',
      'id-twice /decorations/1/id',
      'id-twice /roster/2/extras/0/id',
      'line-twice /roster/1/line',
    ])
  })

  test('with a layer of a wrong kind points into the layer', () => {
    const layers = [{ kind: 'stones', size: 'SS10', colour: 'crystal', layout: { style: 'outline', rows: 4, contours: 'both' } }]
    expect(troubles({ ...order(), decorations: [{ ...decoration(), layers }] })).toEqual([
      'shape-choice /decorations/0/layers/0/layout/rows',
    ])
  })

  test('lets two rows wear the same extra, but not two different ones under one id', () => {
    const captain = decoration({ id: 'captain', place: 'left-chest', content: { kind: 'text', text: 'C' } })
    const alternate = decoration({ ...captain, content: { kind: 'text', text: 'A' } })
    expect(troubles(order({ roster: [row(1, { extras: [captain] }), row(2, { extras: [captain] })] }))).toEqual([])
    expect(troubles(order({ roster: [row(1, { extras: [captain] }), row(2, { extras: [alternate] })] }))).toEqual([
      'id-twice /roster/1/extras/0/id',
    ])
  })

  test('escapes a slash in a key after RFC 6901', () => {
    expect(troubles({ ...order(), 'a/b~c': 1 })).toEqual(['shape-unknown-key /a~1b~0c'])
  })
})
