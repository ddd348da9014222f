import type { Language } from '../../shop/show.ts'
import { fold } from './tokens.ts'

const english = new Set(
  'the and we need for with on are is our you have them please team numbers of this that want by in front back will my i it names roster would all'.split(
    ' ',
  ),
)
const spanish = new Set(
  'el la los las de que con para y en por un una necesito quiero equipo numero es son del al mi nuestro somos ocupo hola buenas atras adelante talla playeras favor se lo le porfa kiero pa'.split(
    ' ',
  ),
)

/** The language a message is in, by its small words; null when it cannot be told. */
export const languageOf = (text: string): Language | null => {
  const words = fold(text).match(/[a-z']+/g) ?? []
  const en = words.filter((word) => english.has(word)).length
  const es = words.filter((word) => spanish.has(word)).length + (/[¿¡ñ]/.test(text) ? 2 : 0)
  if (en === es) return null
  return en > es ? 'en' : 'es'
}
