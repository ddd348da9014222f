import type { WordValues } from '../matters/values.ts'

/** Amounts in words of Spanish, and how its letters are called. */
export const esValues: WordValues = {
  lengths: {
    ...{ cuarto: 0.25, media: 0.5, medio: 0.5, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, ocho: 8, diez: 10 },
    doce: 12,
  },
  apart: { uno: 1, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6 },
  dropped: { uno: 1, un: 1, una: 1, dos: 2, tres: 3, cuatro: 4 },
  steps: { una: 1, un: 1, dos: 2 },
  letters: {
    ...{ ele: 'l', eles: 'l', te: 't', tes: 't', ene: 'n', enes: 'n', ese: 's', eses: 's', erre: 'r', erres: 'r' },
    ...{ efe: 'f', efes: 'f', pe: 'p', ce: 'c', ces: 'c', eme: 'm', emes: 'm', zeta: 'z', zetas: 'z' },
    ...{ be: 'b', ve: 'v', uve: 'v', ge: 'g', hache: 'h', haches: 'h', jota: 'j', ka: 'k', cu: 'q', equis: 'x', ye: 'y' },
  },
}
