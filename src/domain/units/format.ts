import { type Micrometres, type MinorUnits, type TenthsC, toCelsius, toFahrenheit, toInches, toMillimetres } from './units.ts'

/** A decimal with at most so many places, without trailing zeros: '6.8', '10'. */
const decimal = (value: number, places: number): string => {
  const fixed = value.toFixed(places)
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  return text === '-0' ? '0' : text
}

const micrometresIn = { in: 25_400, cm: 10_000 } as const

/** Half a micrometre: nearer than this a length is the hundredth itself. */
const isHundredth = 0.5

/**
 * A length in hundredths of an inch or of a centimetre. Rounded down as a rule: 100 mm must not read as 4 in where 4 in
 * (101.6 mm) are asked for; what is a least asked, or more than is allowed, is rounded up.
 */
export const formatLength = (length: Micrometres, unit: 'in' | 'cm', round: 'down' | 'up' = 'down'): string => {
  const hundredths = (unit === 'in' ? toInches(length) : toMillimetres(length) / 10) * 100
  const nearest = Math.round(hundredths)
  const isThere = (Math.abs(hundredths - nearest) / 100) * micrometresIn[unit] <= isHundredth
  const rounded = round === 'up' ? Math.ceil(hundredths) : Math.floor(hundredths)
  return `${decimal((isThere ? nearest : rounded) / 100, 2)} ${unit}`
}

/** An eighth of an inch, and a millimetre: what people measure letters in. No whole or half centimetre up to 24 in is whole eighths too. */
const eighth = 3_175
const millimetre = 1_000

/**
 * A length that somebody gave, in the unit it was given in and then in the shop's: "20 cm (7.87 in)", in the shop's alone where they
 * are the same. Which it was shows in the figure: eighths of an inch are no whole millimetres but at every 5 in, where the shop's is taken.
 */
export const formatGivenLength = (length: Micrometres, unit: 'in' | 'cm'): string => {
  const [inches, metric] = [length % eighth === 0, length % millimetre === 0]
  const own = formatLength(length, unit)
  const given = unit === 'in' ? metric && !inches : inches && !metric
  return given ? `${formatLength(length, unit === 'in' ? 'cm' : 'in')} (${own})` : own
}

/** Hundredths of a degree Fahrenheit that lie within half a tenth of a degree Celsius. */
const halfTenthC = 9

/** Hundredths of a degree with as few decimals as read back as the same tenth of a degree Celsius. */
const degrees = (hundredths: number): string => {
  const whole = Math.round(hundredths / 100)
  return Math.abs(hundredths - 100 * whole) < halfTenthC ? String(whole) : decimal(hundredths / 100, 1)
}

/**
 * A temperature: a whole degree where the tenths of °C it is kept in stand for one (305 °F is kept as 151.7 °C), else with one
 * decimal. It reads back as the very tenth of °C it stands for, so that no rounding crosses a limit in either unit.
 */
export const formatTemperature = (temperature: TenthsC, unit: 'F' | 'C'): string =>
  `${unit === 'F' ? degrees(Math.round(toFahrenheit(temperature) * 100)) : decimal(toCelsius(temperature), 1)} °${unit}`

/** What a whole degree Fahrenheit loses at most where it is kept in tenths of a degree Celsius. */
const lostInTenths = 0.1

/** A temperature from which something happens, in whole degrees: rounded down, because nobody measures a tenth of it. */
export const formatTemperatureFrom = (temperature: TenthsC, unit: 'F' | 'C'): string =>
  `${Math.floor(unit === 'F' ? toFahrenheit(temperature) + lostInTenths : toCelsius(temperature))} °${unit}`

/** A difference of temperatures (a swing), which has no zero point to shift. */
export const formatSwing = (difference: TenthsC, unit: 'F' | 'C'): string =>
  `${unit === 'F' ? degrees(difference * 18) : decimal(toCelsius(difference), 1)} °${unit}`

/** An amount with the currency's own number of decimals (ISO 4217), thousands set off: 'USD 1,234.50'. */
export const formatMoney = (amount: MinorUnits, currency: string, minorDigits: number): string => {
  const digits = Math.abs(amount)
    .toString()
    .padStart(minorDigits + 1, '0')
  const cut = digits.length - minorDigits
  const major = digits.slice(0, cut).replace(/\B(?=(\d{3})+$)/g, ',')
  const minor = minorDigits > 0 ? `.${digits.slice(cut)}` : ''
  return `${amount < 0 ? '−' : ''}${currency === 'USD' ? '$' : `${currency} `}${major}${minor}`
}
