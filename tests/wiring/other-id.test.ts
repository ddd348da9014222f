import { describe, expect, it } from 'vitest'
import { otherIds } from '../../src/wiring/other-id.ts'
import { plainProblems } from '../../src/wiring/say-problems.ts'

const house = (id: string, hasOrders = true) => ({ id, hasOrders })
const said = (houses: Parameters<typeof otherIds>[0], embedded: boolean): string =>
  plainProblems(otherIds(houses, { id: 'new-name', embedded }))
    .map(({ text }) => text)
    .join('')

describe('a shop that opens empty beside the orders of another id', () => {
  it.each([
    ['in a store of its own', [house('mesa-street')], true, ['mesa-street']],
    ['in a store of its own that knows it already', [house('mesa-street'), house('new-name', false)], true, ['mesa-street']],
    ['after two changes', [house('mesa-street'), house('mesa-st')], true, ['“mesa-street” and “mesa-st”']],
    ['in a served store with one other shop', [house('mesa-street')], false, ['mesa-street']],
    ['in a served store it was opened in before', [house('new-name', false), house('mesa-street')], false, ['mesa-street']],
    ['beside an id that was only tried', [house('mesa-street'), house('tried', false)], true, ['mesa-street']],
  ])('is told of: %s', (_when, houses, embedded, names) => {
    for (const name of [...names, 'new-name', 'shop.json']) expect(said(houses, embedded)).toContain(name)
    expect(said(houses, embedded)).not.toContain('tried')
  })

  it.each([
    ['a new place', [], true],
    ['a place that has only its own', [house('new-name')], true],
    ['a place that has its own and older ones', [house('new-name'), house('mesa-street')], true],
    ['a place where another id has no orders', [house('mesa-street', false)], true],
    ['a new served store', [], false],
    ['a served store of several shops', [house('mesa-street'), house('harbor')], false],
    ['a served store of several shops, of which one is new', [house('mesa-street'), house('harbor', false)], false],
    ['a served store with its own and another', [house('mesa-street'), house('new-name')], false],
  ])('and not where all is as it should be: %s', (_when, houses, embedded) => expect(said(houses, embedded)).toBe(''))
})
