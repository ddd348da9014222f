import type { WordValues } from '../matters/values.ts'

/** Amounts in words of English; its letters are called as they are written. */
export const enValues: WordValues = {
  lengths: {
    ...{ quarter: 0.25, half: 0.5, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, eight: 8, ten: 10, twelve: 12 },
  },
  apart: { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6 },
  dropped: { one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, a: 1 },
  steps: { one: 1, a: 1, two: 2 },
  letters: {},
}
