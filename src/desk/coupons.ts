import { coupon, type StoneTemplate } from '../domain/cutting/template-sheets.ts'
import type { StoneSettingRecord } from '../domain/material/material.ts'
import { micrometres } from '../domain/units/units.ts'
import type { Counted } from './count.ts'

/** A coupon tries the shop's usual hole and one this much narrower and wider. Common practice: a tenth of a millimetre. */
const STEP = 100

/** Test templates for the lots of stones that are new to the shop: their record names no coupon they were tried on. */
export const couponsFor = (counted: Counted, settings: readonly StoneSettingRecord[], job: string): readonly StoneTemplate[] =>
  counted.stones.flatMap(({ material }) => {
    const setting = settings.find(({ size }) => size === material.size)
    if (material.coupon !== undefined || setting === undefined) return []
    const usual = setting.holeMicrometres
    const holes = [micrometres(usual - STEP), micrometres(usual), micrometres(usual + STEP)] as const
    return coupon(material.size, holes, micrometres(setting.webMicrometres)).map((template) => ({
      ...template,
      key: `${template.key} ${material.id}`,
      lines: [...template.lines, material.lot, job],
    }))
  })
