import type { WordValues } from '../matters/values.ts'

/** Amounts in words of Spanish, and how its letters are called. */
export const esValues: WordValues = {
  lengths: {
    ...{ cuarto: 0.25, media: 0.5, medio: 0.5, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6, siete: 7 },
    ...{ ocho: 8, nueve: 9, diez: 10, once: 11, doce: 12 },
  },
  apart: { uno: 1, una: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, seis: 6 },
  dropped: { uno: 1, un: 1, una: 1, dos: 2, tres: 3, cuatro: 4 },
  steps: { una: 1, un: 1, dos: 2 },
  figures: {
    ...{
      cero: 0,
      uno: 1,
      dos: 2,
      tres: 3,
      cuatro: 4,
      cinco: 5,
      seis: 6,
      siete: 7,
      ocho: 8,
      nueve: 9,
      diez: 10,
      once: 11,
      doce: 12,
    },
    ...{
      trece: 13,
      catorce: 14,
      quince: 15,
      dieciseis: 16,
      diecisiete: 17,
      dieciocho: 18,
      diecinueve: 19,
      veinte: 20,
      veintiuno: 21,
    },
    ...{ veintiun: 21, veintidos: 22, veintitres: 23, veinticuatro: 24, veinticinco: 25, veintiseis: 26, veintisiete: 27 },
    ...{ veintiocho: 28, veintinueve: 29, treinta: 30, cuarenta: 40, cincuenta: 50, sesenta: 60, setenta: 70, ochenta: 80 },
    noventa: 90,
  },
  ordinals: {},
  letters: {
    ...{ ele: 'l', eles: 'l', te: 't', tes: 't', ene: 'n', enes: 'n', ese: 's', eses: 's', erre: 'r', erres: 'r' },
    ...{ efe: 'f', efes: 'f', pe: 'p', ce: 'c', ces: 'c', eme: 'm', emes: 'm', zeta: 'z', zetas: 'z' },
    ...{ be: 'b', ve: 'v', uve: 'v', ge: 'g', hache: 'h', haches: 'h', jota: 'j', ka: 'k', cu: 'q', equis: 'x', ye: 'y' },
  },
}
