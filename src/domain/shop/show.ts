import { monthName, weekdayName } from '../calendar/day-names.ts'
import { dayNumber } from '../calendar/local-time.ts'
import {
  formatGivenLength,
  formatLength,
  formatMoney,
  formatSwing,
  formatTemperature,
  formatTemperatureFrom,
} from '../units/format.ts'
import type { Language } from '../units/language.ts'
import { micrometres, minorUnits, tenthsC } from '../units/units.ts'
import type { Shop } from './shop.ts'

/** How this shop writes things for people, in one language. Arguments are the domain's plain numbers and ids. */
export type Show = {
  readonly shop: string
  readonly ask: string
  /** Rounded down as a rule; up for a least that is asked, and for what is more than is allowed. */
  readonly length: (inMicrometres: number, round?: 'down' | 'up') => string
  /** A length that a customer gave, in their unit first. */
  readonly given: (inMicrometres: number) => string
  readonly temperature: (inTenthsC: number) => string
  /** Where something begins to suffer: whole degrees, never more than it is. */
  readonly temperatureFrom: (inTenthsC: number) => string
  readonly swing: (inTenthsC: number) => string
  /** Minor units of the price list's currency. */
  readonly money: (inMinorUnits: number) => string
  /** 'YYYY-MM-DD' → 'Friday, October 9'. */
  readonly day: (day: string) => string
  /** 'HH:MM' → '5 pm'. */
  readonly hour: (hour: string) => string
  /** 'YYYY-MM-DDTHH:MM' → 'Friday, October 9, 5 pm'. */
  readonly moment: (minute: string) => string
  /** 'a, b and c'. */
  readonly list: (items: readonly string[]) => string
  readonly colour: (id: string) => string
  readonly garment: (id: string) => string
  readonly face: (id: string) => string
}

const dayText = (language: Language, day: string): string => {
  const [, month = '', date = ''] = day.split('-')
  const number = dayNumber(day)
  // 1970-01-01 was a Thursday.
  const weekday = number === null ? '' : weekdayName(language, (((number + 4) % 7) + 7) % 7)
  const name = monthName(language, Number(month))
  if (language === 'es') return `${weekday} ${Number(date)} de ${name}`
  return `${weekday}, ${name} ${Number(date)}`
}

const halves: Readonly<Record<Language, readonly [string, string]>> = { en: ['am', 'pm'], es: ['a. m.', 'p. m.'] }

const hourText = (language: Language, hour: string): string => {
  const [hours = '', minute = '00'] = hour.split(':')
  const past = minute === '00' ? '' : `:${minute}`
  const [before, after] = halves[language]
  return `${Number(hours) % 12 === 0 ? 12 : Number(hours) % 12}${past} ${Number(hours) < 12 ? before : after}`
}

const momentText = (language: Language, minute: string): string => {
  const [day = '', hour = ''] = minute.split('T')
  if (hour === '') return dayText(language, day)
  return `${dayText(language, day)}, ${hourText(language, hour)}`
}

const listText = (language: Language, items: readonly string[]): string => {
  if (items.length < 2) return items.join('')
  const last = items.at(-1) ?? ''
  const before = items.slice(0, -1).join(', ')
  if (language === 'en') return `${before} and ${last}`
  return `${before} ${/^h?i(?!e)/iu.test(last) ? 'e' : 'y'} ${last}`
}

const nameById = (records: readonly { readonly id: string; readonly name: string }[]): ((id: string) => string) => {
  const names = new Map(records.map((record) => [record.id, record.name]))
  return (id) => names.get(id) ?? id
}

/** The shop's way of writing lengths, temperatures, money, days, hours, lists and names, in the language asked for. */
export const showFor = (shop: Shop, language: Language): Show => {
  const { units } = shop.profile
  return {
    shop: shop.profile.name,
    ask: shop.profile.ask,
    length: (value, round) => formatLength(micrometres(value), units.length, round),
    given: (value) => formatGivenLength(micrometres(value), units.length),
    temperature: (value) => formatTemperature(tenthsC(value), units.temperature),
    temperatureFrom: (value) => formatTemperatureFrom(tenthsC(value), units.temperature),
    swing: (value) => formatSwing(tenthsC(value), units.temperature),
    money: (value) => formatMoney(minorUnits(value), shop.prices.currency, shop.prices.minorDigits),
    day: (day) => dayText(language, day),
    hour: (hour) => hourText(language, hour),
    moment: (minute) => momentText(language, minute),
    list: (items) => listText(language, items),
    colour: nameById(shop.colours.map(({ id, names }) => ({ id, name: names[language][0] ?? id }))),
    garment: nameById(shop.garments.map(({ id, name }) => ({ id, name: name[language] }))),
    face: nameById(shop.faces),
  }
}
