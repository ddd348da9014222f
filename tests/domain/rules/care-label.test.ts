import { describe, expect, it } from 'vitest'
import type { OrderGarment } from '../../../src/domain/order/order.ts'
import type { Problem } from '../../../src/domain/result/result.ts'
import { given } from './one-order.ts'

const told = (garment: Partial<OrderGarment>): readonly Problem[] =>
  given({ garment }).filter(({ code }) => code.includes('care-label'))

describe('the care label of a garment (ISO 3758, 2012 edition, quoted)', () => {
  it('is known from the shop’s own record of the fabric: a mesh of one dot is pressed over its iron of 110 °C', () => {
    const mesh = { catalogue: 'mesh-jersey', from: 'shop', knit: 'mesh', fibres: [{ fibre: 'polyester', percent: 100 }] } as const
    expect(told({ ...mesh, fibres: [...mesh.fibres] })).toEqual([
      expect.objectContaining({
        code: 'over-care-label',
        severity: 'caution',
        facts: expect.objectContaining({ dots: 1, ironTenthsC: 1100 }),
      }),
    ])
  })

  it('is what the order says where somebody has read it, before the shop’s record', () => {
    expect(told({ catalogue: 'mesh-jersey', careDots: 3 })).toEqual([])
    expect(told({ catalogue: 'cotton-tee', careDots: 0 }).map(({ code }) => code)).toEqual(['over-care-label'])
  })

  it('is said to be unread, as a note, on a garment the customer brings and nobody has looked at', () => {
    expect(told({})).toEqual([expect.objectContaining({ code: 'care-label-unread', severity: 'note' })])
  })
})
