import type { Show } from './show.ts'

/** How things are written while no shop is read yet: ids, millimetres, °C and the document's own forms. */
export const plainShow: Show = {
  shop: 'the shop',
  ask: 'the shop',
  length: (inMicrometres) => `${inMicrometres / 1_000} mm`,
  given: (inMicrometres) => `${inMicrometres / 1_000} mm`,
  temperature: (inTenthsC) => `${inTenthsC / 10} °C`,
  temperatureFrom: (inTenthsC) => `${inTenthsC / 10} °C`,
  swing: (inTenthsC) => `${inTenthsC / 10} °C`,
  money: String,
  day: (day) => day,
  hour: (hour) => hour,
  moment: (minute) => minute,
  list: (items) => items.join(', '),
  colour: (id) => id,
  garment: (id) => id,
  face: (id) => id,
}
