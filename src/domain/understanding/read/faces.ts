import type { Shop } from '../../shop/shop.ts'
import type { Patch } from '../patch.ts'
import { fold, type Token, tokensOf } from './tokens.ts'

/** The faces asked for by name, and the text without those words. */
export type FacesFound = { readonly patches: readonly Patch[]; readonly rest: string }

const lettering = new Set('font face typeface lettering letra letras tipo tipografia fuente'.split(' '))
const numbers = new Set('number numbers numero numeros dorsal dorsales'.split(' '))
const names = new Set('name names nombre nombres apellido apellidos'.split(' '))
const links = new Set(['in', 'en'])

type Content = 'number' | 'name'

/** The content nearest before a token in its clause. */
const contentBefore = (tokens: readonly Token[], at: number): Content | null => {
  for (const { key, kind } of tokens.slice(0, at).reverse()) {
    if (kind === 'break' || [',', '.', ';'].includes(key)) return null
    if (numbers.has(key)) return 'number'
    if (names.has(key)) return 'name'
  }
  return null
}

/** "font graduate", "Graduate font"; "in anton" only straight after numbers or names. */
const isLed = (tokens: readonly Token[], from: number, to: number): boolean => {
  const [twice, once, next] = [tokens[from - 2]?.key ?? '', tokens[from - 1]?.key ?? '', tokens[to]?.key ?? '']
  return lettering.has(once) || lettering.has(next) || (links.has(once) && (numbers.has(twice) || names.has(twice)))
}

/** Faces of the shop by id or name; a script face is never put on numbers. */
export const readFaces = (text: string, shop: Shop): FacesFound => {
  const tokens = tokensOf(text)
  const patches: Patch[] = []
  let rest = text
  for (const face of shop.faces) {
    const phrases = [face.name, face.id.replaceAll('-', ' ')].map((phrase) => tokensOf(fold(phrase)).map(({ key }) => key))
    for (const at of tokens.keys()) {
      const phrase = phrases.find((keys) => keys.every((key, index) => tokens[at + index]?.key === key))
      if (phrase === undefined || !isLed(tokens, at, at + phrase.length)) continue
      const said = contentBefore(tokens, at) ?? (face.kind === 'script' ? 'name' : 'number')
      if (said === 'number' && face.kind === 'script') continue
      const [start, end] = [tokens[at]?.start ?? 0, tokens[at + phrase.length - 1]?.end ?? 0]
      patches.push({ path: ['styles', said, 'face'], value: face.id })
      rest = rest.slice(0, start) + ' '.repeat(end - start) + rest.slice(end)
    }
  }
  return { patches, rest }
}
