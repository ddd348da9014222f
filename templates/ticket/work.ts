import type { Language } from '../../src/domain/units/language.ts'

type WorkWords = { readonly [kind: string]: (part: string | null) => string }

const numbered = (words: string, part: string | null): string => (part === null ? words : `${words} ${part}`)

/** What the pieces of work of the plan are called; `part` tells vinyls, sides and turns apart. */
const work = {
  en: {
    proof: (part) => numbered('proof', part),
    'count-in': (part) => numbered('count-in', part),
    'water-drops': (part) => numbered('water drops', part),
    'test-press': (part) => numbered('test press', part),
    'bleed-test': (part) => numbered('bleed test', part),
    'cut-vinyl': (part) => numbered('cut vinyl', part),
    'cut-templates': (part) => numbered('cut templates', part),
    plugs: (part) => numbered('pick plugs, mount on board', part),
    coupon: (part) => numbered('coupon for the stone lot', part),
    weed: (part) => numbered('weed', part),
    brush: (part) => numbered('brush and tape', part),
    'first-piece': (part) => numbered('first piece', part),
    press: (part) => numbered('press', part),
    inspect: (part) => numbered('inspect and bag', part),
  },
  es: {
    proof: (part) => numbered('prueba', part),
    'count-in': (part) => numbered('conteo de entrada', part),
    'water-drops': (part) => numbered('gotas de agua', part),
    'test-press': (part) => numbered('prueba de prensa', part),
    'bleed-test': (part) => numbered('prueba de sangrado', part),
    'cut-vinyl': (part) => numbered('cortar vinilo', part),
    'cut-templates': (part) => numbered('cortar plantillas', part),
    plugs: (part) => numbered('sacar tapones, montar', part),
    coupon: (part) => numbered('cupón del lote de piedras', part),
    weed: (part) => numbered('depilar', part),
    brush: (part) => numbered('cepillar y encintar', part),
    'first-piece': (part) => numbered('primera pieza', part),
    press: (part) => numbered('prensar', part),
    inspect: (part) => numbered('revisar y embolsar', part),
  },
} as const satisfies Record<Language, WorkWords>

/** An operation's id (`weed-1-2`) in words (`weed 1-2`). */
export const workName = (operation: string, language: Language): string => {
  const [, kind = operation, part = null] = /^(.*?)(?:-(\d+(?:-\d+)*))?$/.exec(operation) ?? []
  const words: WorkWords = work[language]
  return words[kind]?.(part) ?? operation
}

type HangsOn = 'sign-off' | 'garments' | 'materials'

/** What a promise hangs on, with the latest moment in words. */
const hangsOn = {
  en: {
    'sign-off': (moment) => `signed off by ${moment}`,
    garments: (moment) => `garments in the door by ${moment}`,
    materials: (moment) => `materials in the door by ${moment}`,
  },
  es: {
    'sign-off': (moment) => `firmado a más tardar ${moment}`,
    garments: (moment) => `prendas en el taller a más tardar ${moment}`,
    materials: (moment) => `materiales en el taller a más tardar ${moment}`,
  },
} as const satisfies Record<Language, Record<HangsOn, (moment: string) => string>>

export const sayHangsOn = (code: HangsOn, language: Language, moment: string): string => hangsOn[language][code](moment)
