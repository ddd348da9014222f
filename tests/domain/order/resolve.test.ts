import { beforeAll, describe, expect, test } from 'vitest'
import { projectRoot } from '../../../src/adapters/folder/root.ts'
import { loadShop } from '../../../src/adapters/folder/shop.ts'
import type { Catalogue } from '../../../src/domain/order/catalogue.ts'
import type { Order } from '../../../src/domain/order/order.ts'
import { resolveOrder } from '../../../src/domain/order/resolve.ts'
import { topEdge } from '../../../src/domain/order/top-edge.ts'
import { catalogueOf } from '../../../src/domain/shop/catalogue.ts'
import { decoration, order, row } from '../../support/orders.ts'

let catalogue: Catalogue

beforeAll(async () => {
  const shop = await loadShop(`${projectRoot()}/templates/shop`)
  if (!shop.ok) throw new Error(JSON.stringify(shop.problems))
  catalogue = catalogueOf(shop.value)
})

const troubles = (document: Order) => {
  const resolved = resolveOrder(document, catalogue)
  const problems = resolved.ok ? resolved.value.problems : resolved.problems
  return problems.map(({ code, at, severity }) => `${severity} ${code} ${at}`)
}

const resolve = (document: Order) => {
  const resolved = resolveOrder(document, catalogue)
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.problems))
  return resolved.value
}

describe('resolving an order against the shop', () => {
  test('takes the material of the asked class and colour, and the height of the size', () => {
    const found = resolve(order({ roster: [row(1, { fit: 'youth', size: 'S' }), row(2, { fit: 'men', size: '2XL' })] }))
    expect(found.layers.get('back-number')?.map(({ material }) => material.id)).toEqual([
      'vinyl-glitter-white',
      'stone-ss10-crystal',
    ])
    expect(found.applications.map(({ height }) => height)).toEqual([152_400, 254_000])
  })

  test('leaves out what a row is without and adds what only it has', () => {
    const captain = decoration({ id: 'captain', place: 'left-chest', content: { kind: 'text', text: 'C' } })
    const found = resolve(order({ roster: [row(1, { without: ['back-number'] }), row(2, { extras: [captain] })] }))
    expect(found.applications.map(({ line, text }) => `${line}:${text}`)).toEqual(['2:2', '2:C'])
  })

  test('notes a row without a number, and leaves the room', () => {
    const { number, ...rest } = row(1)
    expect(number).toBe('1')
    expect(troubles(order({ roster: [rest, row(2)] }))).toEqual(['note row-without-number /roster/0'])
  })

  test('refuses what the shop cannot get, each with its place', () => {
    const document = order({
      garments: [{ ...order().garments[0], catalogue: 'mesh-jersey', colour: 'pink' } as Order['garments'][number]],
      decorations: [
        decoration({ face: 'no-such-face', layers: [{ kind: 'vinyl', class: 'glitter', colour: 'plaid', shape: 'face' }] }),
        decoration({
          id: 'name',
          place: 'name',
          content: { kind: 'name' },
          layers: [{ kind: 'vinyl', class: 'standard', colour: 'white', material: 'stone-ss10-crystal', shape: 'face' }],
        }),
      ],
      roster: [row(1, { fit: 'toddler', size: '2T' })],
    })
    expect(troubles(document).sort()).toEqual([
      'stop colour-not-sold /garments/0/colour',
      'stop cut-not-sold /roster/0/size',
      'stop face-not-offered /decorations/0/face',
      'stop material-kind /decorations/1/layers/0/material',
      'stop material-not-stocked /decorations/0/layers/0/colour',
    ])
  })

  test('puts a number under its name, and at the place’s own offset without one', () => {
    const name = decoration({ id: 'name', place: 'name', content: { kind: 'name' } })
    const both = resolve(order({ decorations: [name, decoration()], roster: [row(1)] })).applications
    const [first, second] = both
    if (first === undefined || second === undefined) throw new Error('two applications were expected')
    expect(topEdge(first, both)).toBe(101_600)
    expect(topEdge(second, both)).toBe(101_600 + 63_500 + 25_400)
    expect(topEdge(second, [second])).toBe(101_600)
  })
})
