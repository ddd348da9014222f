import { describe, expect, it } from 'vitest'
import { vinylClasses, vinylSchema } from '../../../src/domain/material/material.ts'
import { glitter } from '../press/builders.ts'
import { readJson, starter } from '../press/workbench.ts'

describe('a material record', () => {
  it('is refused when its usual point lies outside its window', () => {
    const parsed = vinylSchema.safeParse(
      glitter({ window: { ...glitter().window, tenthsC: { least: 1500, most: 1600, usual: 1601 } } }),
    )
    expect(parsed.success).toBe(false)
    expect(vinylSchema.safeParse(glitter()).success).toBe(true)
  })
})

describe('the materials of the starter shop', () => {
  it('hold every class in at least seven colours, with an id made of class and colour', () => {
    for (const of of vinylClasses) {
      const own = starter.vinyls.filter((vinyl) => vinyl.class === of)
      expect(own.length).toBeGreaterThanOrEqual(7)
      expect(own.every((vinyl) => vinyl.id === `vinyl-${of}-${vinyl.colour}`)).toBe(true)
    }
  })

  it('hold stones of four sizes in five colours, leaded and lead-free, with and without a certificate', () => {
    expect(new Set(starter.stones.map((stone) => stone.size))).toEqual(new Set(['SS6', 'SS10', 'SS16', 'SS20']))
    expect(new Set(starter.stones.map((stone) => stone.colour)).size).toBe(5)
    expect(starter.stones.every((stone) => stone.id === `stone-${stone.size.toLowerCase()}-${stone.colour}`)).toBe(true)
    expect(new Set(starter.stones.map((stone) => stone.glass))).toEqual(new Set(['leaded', 'lead-free']))
    expect(starter.stones.some((stone) => stone.glass === 'lead-free' && stone.leadFreeCertificate === null)).toBe(true)
    expect(starter.stones.every((stone) => stone.glass === 'lead-free' || stone.leadFreeCertificate === null)).toBe(true)
  })

  it('cut clear-carrier vinyl mirrored and printed vinyl as read (common practice)', () => {
    expect(starter.vinyls.every((vinyl) => (vinyl.class === 'printed') === (vinyl.cut === 'as-read'))).toBe(true)
  })

  it('take nothing on glitter, flock, puff, foil or reflective (common practice)', () => {
    const closed = starter.vinyls.filter((vinyl) => ['glitter', 'flock', 'puff', 'foil', 'reflective'].includes(vinyl.class))
    expect(closed.every((vinyl) => vinyl.takesOnTop.length === 0)).toBe(true)
  })

  it('have holes within 0.3-0.5 mm over the largest stone of their size (common practice)', () => {
    const settings = readJson('templates/shop/stone-settings.json')
    const largest: Readonly<Record<string, number>> = {
      SS6: 2100,
      SS8: 2500,
      SS10: 2900,
      SS12: 3200,
      SS16: 4000,
      SS20: 4800,
      SS30: 6500,
      SS34: 7300,
    }
    expect(Array.isArray(settings) ? settings.length : 0).toBe(8)
    for (const setting of Array.isArray(settings) ? settings : []) {
      const over = setting.holeMicrometres - (largest[setting.size] ?? 0)
      expect([setting.size, over >= 300 && over <= 500]).toEqual([setting.size, true])
    }
  })
})
