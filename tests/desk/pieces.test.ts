import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { projectRoot } from '../../src/adapters/folder/root.ts'
import { machineIds } from '../../src/adapters/machine/machine.ts'
import { emptyShopFloor } from '../../src/desk/floor.ts'
import { keepPieces, knownPieces } from '../../src/desk/service/records/kept-pieces.ts'
import { piecesOf, type Work, type Workshop, workOut } from '../../src/desk/work-out.ts'
import type { PieceStones } from '../../src/domain/layout/layout.ts'
import type { Shop } from '../../src/domain/shop/shop.ts'
import { openWorkshop } from '../../src/wiring/open-workshop.ts'
import { openTestStore, type TestStore, unwrap } from '../support/embedded.ts'
import { decoration, order, row } from '../support/orders.ts'

let opened: TestStore
let workshop: Workshop
beforeAll(async () => {
  opened = await openTestStore()
  workshop = unwrap(await openWorkshop(projectRoot(), undefined))
}, 60_000)
afterAll(() => opened.close())

const document = order({ roster: [row(1, { number: '12' }), row(2, { number: '21' }), row(3, { number: '11' })] })

const worked = (given: Workshop, asked: unknown = document): Work => {
  const { work, problems } = workOut({ document: asked, now: '2026-11-25T09:00', job: 'o-1', floor: emptyShopFloor }, given)
  if (work === null) throw new Error(JSON.stringify(problems))
  return work
}

const withShop = (change: (shop: Shop) => Shop): Workshop => ({ ...workshop, shop: change(workshop.shop), cache: new Map() })

describe('laid-out pieces', () => {
  test('are found by the next process that needs them, and nothing is laid out again', async () => {
    const shop = await opened.store.openShop('shop-pieces')
    const keys = piecesOf(document, workshop)
    expect(keys).toHaveLength(2)
    const first = await knownPieces(shop, machineIds, keys)
    expect(first.size).toBe(0)
    const fresh = worked({ ...workshop, cache: first })
    await keepPieces(shop, machineIds, { orderId: 'o-1', pieces: first, keys })

    const next = unwrap(await openWorkshop(projectRoot(), undefined))
    const known = await knownPieces(shop, machineIds, piecesOf(document, next))
    expect([...known.keys()].sort()).toEqual([...keys].sort())
    const laid: string[] = []
    const kept = (key: string, piece: PieceStones): void => {
      if (known.get(key) !== piece) laid.push(key)
    }
    const again = worked({ ...next, cache: { get: (key) => known.get(key), set: kept } })
    expect(laid).toEqual([])
    expect(again.counted).toEqual(fresh.counted)
    expect(again.cuts.templates).toEqual(fresh.cuts.templates)
  })

  test('are other pieces when the edge gap or the face differ, and none for an order that is refused', () => {
    const keys = new Set(piecesOf(document, workshop))
    const wider = withShop((shop) => ({
      ...shop,
      stoneSettings: shop.stoneSettings.map((one) => ({ ...one, edgeGapMicrometres: one.edgeGapMicrometres + 50 })),
    }))
    const inOtherFace = order({ ...document, decorations: [decoration({ face: 'anton' })] })
    for (const others of [piecesOf(document, wider), piecesOf(inOtherFace, workshop)]) {
      expect(others.length).toBeGreaterThan(0)
      for (const key of others) expect(keys.has(key)).toBe(false)
    }
    expect(piecesOf({ version: 1 }, workshop)).toEqual([])
  })
})

test('templates on the shelf are counted as brushed but neither cut, nor charged, nor planned', () => {
  const first = worked(workshop)
  const onShelf = first.counted.templates.map(({ key }) => ({ key, box: 'T1', made: '2026-10-01', brushed: 4 }))
  const shelved = withShop((shop) => ({ ...shop, stock: { ...shop.stock, templates: onShelf } }))
  const again = worked(shelved)
  expect(first.cuts.templates.length).toBeGreaterThan(0)
  expect(again.cuts.templates).toEqual([])
  expect(again.facts.templates).toEqual([])
  expect(again.counted.templates.map(({ text, brushed }) => [text, brushed])).toEqual([
    ['1', 4],
    ['2', 2],
  ])
  const charged = ({ price }: Work): readonly string[] =>
    price.parts.map(({ code }) => code).filter((code) => /template/i.test(code))
  expect(charged(first).length).toBeGreaterThan(0)
  expect(charged(again)).toEqual([])
  const minutes = ({ operations }: Work): number => operations.reduce((sum, one) => sum + one.minutes, 0)
  expect(minutes(again)).toBeLessThan(minutes(first))
})

test('a decoration is told of once for each kind of hard case, however many numbers it has', () => {
  const many = order({
    decorations: [decoration({ face: 'anton', height: { micrometres: 101_600 } })],
    roster: Array.from({ length: 9 }, (_, index) => row(index + 1, { number: String(80 + index) })),
  })
  const { problems } = workOut({ document: many, now: '2026-11-25T09:00', job: 'o-2', floor: emptyShopFloor }, workshop)
  const kinds = problems.map(({ code, at, facts }) => JSON.stringify([code, at, 'row' in facts ? facts['row'] : null]))
  const ofStones = kinds.filter((kind) => /corner-|row-|letters-joined/.test(kind))
  expect(ofStones.length).toBeGreaterThan(0)
  expect(new Set(ofStones).size).toBe(ofStones.length)
})

test('a lot of stones that is new to the shop gets a coupon to cut, and a tried lot is laid out with the hole it got', () => {
  const untried = withShop((shop) => ({ ...shop, stones: shop.stones.map(({ coupon: _, ...stone }) => stone) }))
  const wider = withShop((shop) => ({
    ...shop,
    stones: shop.stones.map((stone) => ({ ...stone, coupon: { date: '2026-10-01', holeMicrometres: 3_400 } })),
  }))
  const ids = (work: Work): readonly string[] => work.cuts.templates.map(({ id }) => id)
  expect(ids(worked(workshop)).filter((id) => id.startsWith('coupon'))).toEqual([])
  const [first] = worked(untried).cuts.templates
  expect(first?.id).toBe('coupon-1')
  expect(first?.parts.map(({ holes }) => holes.length)).toEqual([25, 25, 25])
  const words = first?.parts.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []))) ?? []
  for (const text of words) expect(text).toMatch(/SS10 · 3\.\d mm · \S+ · o-1$/)
  const holes = worked(wider).counted.templates.map(({ hole }) => hole)
  expect(new Set(holes)).toEqual(new Set([3_400]))
})

test('the templates that a number needs at a place are told by the list alone, each letter by one template', () => {
  const numbers = ['2', '20', '12', '7', '70', '89', '48']
  const height = { micrometres: 254_000 }
  const [front, back] = [
    decoration({ id: 'front', place: 'front-number', height }),
    decoration({ id: 'back', place: 'back-number', height }),
  ]
  const roster = numbers.map((number, at) => row(at + 1, { number }))
  const { templates } = worked(workshop, order({ decorations: [front, back], roster })).counted
  expect(templates.map(({ no }) => no)).toEqual(templates.map((_, at) => at + 1))
  for (const place of ['front-number', 'back-number'] as const) {
    for (const number of numbers) {
      const needed = templates.filter(({ on, places, text }) =>
        on.length === 0
          ? places.includes(place) && number.includes(text)
          : on.some((one) => one.place === place && one.texts.includes(number)),
      )
      const letters = needed.flatMap(({ text }) => [...text])
      expect(letters.toSorted(), `${number} at ${place}`).toEqual([...number].toSorted())
    }
  }
})
