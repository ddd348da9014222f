/**
 * The units of the shop. Inside, lengths are whole micrometres, temperatures whole tenths of a degree Celsius, times whole
 * seconds at the press and whole minutes elsewhere, money whole minor units of the shop's currency. What people read is
 * made in `format.ts`.
 */
declare const unit: unique symbol

type Branded<Name extends string> = number & { readonly [unit]: Name }

export type Micrometres = Branded<'µm'>
export type TenthsC = Branded<'0.1 °C'>
export type Seconds = Branded<'s'>
/** A duration in minutes, or an instant as minutes since 1970-01-01T00:00Z. */
export type Minutes = Branded<'min'>
export type MinorUnits = Branded<'minor unit'>

const whole = (value: number, name: string): number => {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, not ${value}`)
  return Math.round(value) + 0
}

export const micrometres = (value: number): Micrometres => whole(value, 'a length') as Micrometres
export const tenthsC = (value: number): TenthsC => whole(value, 'a temperature') as TenthsC
export const seconds = (value: number): Seconds => whole(value, 'a press time') as Seconds
export const minutes = (value: number): Minutes => whole(value, 'a time') as Minutes
export const minorUnits = (value: number): MinorUnits => whole(value, 'an amount of money') as MinorUnits

/** One international inch is exactly 25.4 mm (1959 agreement). */
export const fromInches = (inches: number): Micrometres => micrometres(inches * 25_400)
export const fromMillimetres = (millimetres: number): Micrometres => micrometres(millimetres * 1_000)
export const toMillimetres = (length: Micrometres): number => length / 1_000
export const toInches = (length: Micrometres): number => length / 25_400

export const fromFahrenheit = (degrees: number): TenthsC => tenthsC(((degrees - 32) * 50) / 9)
export const toFahrenheit = (temperature: TenthsC): number => (temperature * 9) / 50 + 32
export const toCelsius = (temperature: TenthsC): number => temperature / 10
