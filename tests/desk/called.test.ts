import { expect, test } from 'vitest'
import { calledForCustomer, sayForOrder } from '../../src/desk/say-for-order.ts'
import { parseOrder } from '../../src/domain/order/parse-order.ts'
import { starterShop } from '../domain/understanding/starter-shop.ts'
import { unwrap } from '../support/embedded.ts'
import { order } from '../support/orders.ts'

const shop = await starterShop()
const asked = unwrap(parseOrder(order({})))
const [garment] = asked.garments

test.each([
  ['vinyl-blocker-white', /white/],
  ['stone-ss10-crystal', /SS10 crystal/],
])('a customer is told of %s in words', (material, words) => {
  const problem = {
    code: 'finish-needs-test',
    at: '',
    severity: 'needs-test',
    facts: { garment: garment?.id ?? '', material },
  } as const
  const { facts } = calledForCustomer(problem, asked, shop)
  expect(facts['material']).toMatch(words)
  expect(facts['material']).not.toBe(material)
  expect(facts['garment']).not.toBe(garment?.id)
})

test('every material of a sentence is called in words, whatever it is there for', () => {
  const facts = { decoration: 'nowhere', above: 'vinyl-puff-gold', below: 'vinyl-standard-black', ways: [] }
  const { facts: called } = calledForCustomer({ code: 'not-on-top', at: '', severity: 'stop', facts }, asked, shop)
  expect(called).toEqual({ decoration: 'nowhere', above: 'gold puff vinyl', below: 'black standard vinyl', ways: [] })
})

test('what the shop has no name for stays as it is', () => {
  const problem = {
    code: 'finish-needs-test',
    at: '',
    severity: 'needs-test',
    facts: { garment: 'cape', material: 'nothing' },
  } as const
  expect(calledForCustomer(problem, asked, shop)).toEqual(problem)
})

test('ways out and decorations are called as people call them', () => {
  const [decoration] = asked.decorations
  const problem = {
    code: 'places-collide',
    at: '',
    severity: 'caution',
    facts: {
      first: decoration?.id ?? '',
      second: 'nowhere',
      ways: [{ way: 'blocker', subject: 'vinyl-blocker-white', inStock: 1 }],
    },
  } as const
  const { facts } = calledForCustomer(problem, asked, shop)
  expect(facts['first']).toBe('back number')
  expect(facts['second']).toBe('nowhere')
  expect(facts['ways']).toEqual([{ way: 'blocker', subject: expect.stringMatching(/^white /), inStock: 1 }])
})

test('the bench reads problems in the same words', () => {
  const facts = {
    garment: garment?.id ?? '',
    colour: 'navy',
    fromTenthsC: 1380,
    setTenthsC: 1600,
    ways: [{ way: 'blocker', subject: 'vinyl-blocker-white', inStock: 1 }],
  }
  const problem = { code: 'bleed-risk', at: '', severity: 'caution', facts } as const
  expect(sayForOrder(problem, asked, shop)).not.toMatch(/vinyl-|-white/)
})
