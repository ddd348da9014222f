import { type Micrometres, type MinorUnits, type TenthsC, toCelsius, toFahrenheit, toInches, toMillimetres } from './units.ts'

/** A decimal with at most so many places, without trailing zeros: '6.8', '10'. */
const decimal = (value: number, places: number): string => {
  const fixed = value.toFixed(places)
  const text = fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed
  return text === '-0' ? '0' : text
}

/** A length as people write it: inches to the hundredth, centimetres to the millimetre. */
export const formatLength = (length: Micrometres, unit: 'in' | 'cm'): string =>
  unit === 'in' ? `${decimal(toInches(length), 2)} in` : `${decimal(toMillimetres(length) / 10, 1)} cm`

/** A temperature in whole degrees. */
export const formatTemperature = (temperature: TenthsC, unit: 'F' | 'C'): string =>
  unit === 'F' ? `${Math.round(toFahrenheit(temperature))} °F` : `${Math.round(toCelsius(temperature))} °C`

/** A difference of temperatures (a swing), which has no zero point to shift. */
export const formatSwing = (difference: TenthsC, unit: 'F' | 'C'): string =>
  unit === 'F' ? `${Math.round((difference * 9) / 50)} °F` : `${Math.round(difference / 10)} °C`

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
