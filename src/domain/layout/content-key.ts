import type { Letter, StoneSetting, StoneStyle, TextShape, VinylForm } from './layout.ts'

/** Raised with every change that moves a stone. */
const ENGINE = 2

const styleKey = (style: StoneStyle): string => {
  if (style.style === 'outline') return `outline ${style.rows} ${style.contours}`
  if (style.style === 'rows') return `rows ${style.rows}`
  return style.style
}

const formKey = (form: VinylForm): string => {
  if (form === 'face') return 'face'
  return 'surround' in form ? `surround ${form.surround}` : `shadow ${form.shadow.join(' ')}`
}

export type KeyParts = {
  readonly setting: StoneSetting
  readonly style: StoneStyle
  readonly around: VinylForm
  readonly under: 'vinyl' | 'cloth'
}

/** Names a piece by what it is made of: face files, letters and their places, stone setting, style, vinyl and engine. */
export const contentKey = (shape: TextShape, letters: readonly Letter[], parts: KeyParts, engine = ENGINE): string => {
  const first = letters[0]?.at ?? { x: 0, y: 0 }
  const places = letters.map(({ form, at }) => `${form}@${at.x - first.x},${at.y - first.y}`)
  const { hole, web, edgeGap } = parts.setting
  return [
    `stones ${engine}`,
    shape.fingerprint,
    places.join(' '),
    `${hole} ${web} ${edgeGap}`,
    styleKey(parts.style),
    formKey(parts.around),
    parts.under,
  ].join('|')
}
