import type { Language } from '../units/language.ts'

type DayNames = { readonly months: readonly string[]; readonly days: readonly string[] }

const dayNames: Readonly<Record<Language, DayNames>> = {
  en: {
    months: [
      'January',
      'February',
      'March',
      'April',
      'May',
      'June',
      'July',
      'August',
      'September',
      'October',
      'November',
      'December',
    ],
    days: ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'],
  },
  es: {
    months: [
      'enero',
      'febrero',
      'marzo',
      'abril',
      'mayo',
      'junio',
      'julio',
      'agosto',
      'septiembre',
      'octubre',
      'noviembre',
      'diciembre',
    ],
    days: ['domingo', 'lunes', 'martes', 'miércoles', 'jueves', 'viernes', 'sábado'],
  },
}

/** The name of a month, 1 to 12; '' for any other number. */
export const monthName = (language: Language, month: number): string => dayNames[language].months[month - 1] ?? ''

/** The name of a day of the week, 0 = Sunday; '' for a number that is none. */
export const weekdayName = (language: Language, weekday: number): string => dayNames[language].days[weekday] ?? ''
