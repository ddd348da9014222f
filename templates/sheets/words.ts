import type { SheetWords } from '../../src/domain/cutting/sheet.ts'

const millimetres = (micrometres: number): string => (micrometres / 1_000).toFixed(2)

/** What is printed on the sheets for the cutter. */
export const sheetWords = {
  en: {
    backwards: 'READS BACKWARDS',
    right: 'READS RIGHT',
    top: 'TOP',
    kerf: (width) => `kerf ${millimetres(width)} mm, not taken off`,
    blade: (offset) => `blade offset ${millimetres(offset)} mm, set it at the cutter`,
  },
  es: {
    backwards: 'SE LEE AL REVÉS',
    right: 'SE LEE AL DERECHO',
    top: 'ARRIBA',
    kerf: (width) => `ancho de corte ${millimetres(width)} mm, sin descontar`,
    blade: (offset) => `desfase de cuchilla ${millimetres(offset)} mm, se ajusta en la cortadora`,
  },
} as const satisfies { readonly [language: string]: SheetWords }
