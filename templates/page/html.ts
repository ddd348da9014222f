const made: unique symbol = Symbol('made by html')

/** Markup made by `html` and by nothing else: the symbol is not exported, so no text can pass for markup. */
export type Html = { readonly [made]: string }
export type Piece = Html | string | number | null | readonly Piece[]

const entities: { readonly [sign: string]: string } = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
  '`': '&#96;',
}

const escapeText = (text: string): string => text.replace(/[&<>"'`]/g, (sign) => entities[sign] ?? sign)

const render = (piece: Piece): string => {
  if (piece === null) return ''
  if (typeof piece === 'string') return escapeText(piece)
  if (typeof piece === 'number') return String(piece)
  if (made in piece) return piece[made]
  return piece.map(render).join('')
}

/** Markup with every piece escaped unless it is markup itself. Attributes are written in double quotes. */
export const html = (parts: TemplateStringsArray, ...pieces: readonly Piece[]): Html => ({
  [made]: parts.map((part, index) => part + render(pieces[index] ?? null)).join(''),
})

/** A piece that is there only when it is wanted. */
export const when = (wanted: boolean, piece: () => Piece): Piece => (wanted ? piece() : null)

export const markupOf = (page: Html): string => page[made]
