import type { StoneSize, VinylClass } from '../material/material.ts'
import { type MinorUnits, minorUnits } from '../units/units.ts'
import type { PriceList } from './price-list.ts'

/** What is charged for, counted. `work` has one entry per decoration kind and make-up; quantities are pieces. */
export type PriceFacts = {
  readonly garments: readonly { readonly garment: string | null; readonly quantity: number }[]
  readonly work: readonly {
    readonly kind: 'number' | 'name' | 'text'
    readonly classes: readonly VinylClass[]
    readonly quantity: number
  }[]
  readonly stones: readonly { readonly size: StoneSize; readonly pieces: number }[]
  readonly templates: number
  readonly nameTemplates: number
  readonly daysUntilNeeded: number
}

export type PricePart = {
  readonly code:
    | 'set-up'
    | 'garment'
    | 'own-garment'
    | 'number'
    | 'name'
    | 'text'
    | 'extra-layer'
    | 'stones'
    | 'template'
    | 'name-template'
    | 'quantity-break'
    | 'remake'
    | 'rush'
    | 'tax'
  readonly what: string | null
  readonly quantity: number
  readonly unit: MinorUnits
  readonly amount: MinorUnits
}

export type Price = { readonly currency: string; readonly total: MinorUnits; readonly parts: readonly PricePart[] }

type Label = readonly [code: PricePart['code'], what: string | null]

const part = ([code, what]: Label, quantity: number, unit: number): PricePart => ({
  code,
  what,
  quantity,
  unit: minorUnits(unit),
  amount: minorUnits(quantity * unit),
})

const garmentParts = (facts: PriceFacts, list: PriceList): readonly PricePart[] =>
  facts.garments.map(({ garment, quantity }) => {
    const sold = list.garment.find((entry) => entry.garment === garment)
    return sold === undefined
      ? part(['own-garment', null], quantity, list.pressOwnGarment)
      : part(['garment', garment], quantity, sold.amount)
  })

const workParts = (facts: PriceFacts, list: PriceList): readonly PricePart[] =>
  facts.work.flatMap(({ kind, classes, quantity }) => {
    const dearest = Math.max(...classes.map((one) => list.classPercent[one] ?? 100), classes.length === 0 ? 100 : 0)
    const parts = [part([kind, classes.join('+') || null], quantity, Math.round((list[kind] * dearest) / 100))]
    return classes.length > 1 ? [...parts, part(['extra-layer', null], quantity * (classes.length - 1), list.extraLayer)] : parts
  })

/** Stones are charged per hundred begun, as the list gives a price per hundred. */
const stoneParts = (facts: PriceFacts, list: PriceList): readonly PricePart[] =>
  facts.stones.map(({ size, pieces }) => part(['stones', size], Math.ceil(pieces / 100), list.stonePer100[size] ?? 0))

const sum = (parts: readonly PricePart[]): number => parts.reduce((total, one) => total + one.amount, 0)

/** The highest break that the number of garments reaches. */
const breakFor = (facts: PriceFacts, list: PriceList): number => {
  const pieces = facts.garments.reduce((total, one) => total + one.quantity, 0)
  const reached = list.quantityBreaks.filter((entry) => pieces >= entry.from).map((entry) => entry.percentOff)
  return Math.max(0, ...reached)
}

/**
 * The price of an order with its parts, in minor units of the list's currency: set-up, garments, work by kind and vinyl class,
 * stones, templates, less the quantity break, plus rush and tax. Parts add up to the total exactly.
 */
export const priceOf = (facts: PriceFacts, list: PriceList): Price => {
  const plain: readonly PricePart[] = [
    part(['set-up', null], 1, list.setUp),
    ...garmentParts(facts, list),
    ...workParts(facts, list),
    ...stoneParts(facts, list),
    part(['template', null], facts.templates, list.template),
    part(['name-template', null], facts.nameTemplates, list.nameTemplate),
  ].filter((one) => one.quantity > 0)
  const off = breakFor(facts, list)
  const reduced = off > 0 ? [...plain, part(['quantity-break', `${off} %`], 1, -Math.round((sum(plain) * off) / 100))] : plain
  const hurried = facts.daysUntilNeeded <= list.rush.withinDays && list.rush.percent > 0
  const rush = hurried
    ? [...reduced, part(['rush', `${list.rush.percent} %`], 1, Math.round((sum(reduced) * list.rush.percent) / 100))]
    : reduced
  const tax = Math.round((sum(rush) * list.taxPercentTimes100) / 10_000)
  const parts = tax > 0 ? [...rush, part(['tax', `${list.taxPercentTimes100 / 100} %`], 1, tax)] : rush
  return { currency: list.currency, total: minorUnits(sum(parts)), parts }
}
