import type { Mark } from './marks.ts'

/** A stretch of text that one font file has all signs of. */
export type Run = { readonly font: 'latin' | 'extended'; readonly text: string }

export type Look = { readonly size: number; readonly bold: boolean }

/** Measures and breaks text; widths in points. `lacking` gathers what no font file has. */
export type TypeSetter = {
  readonly spell: (text: string) => string
  readonly width: (text: string, look: Look) => number
  readonly wrap: (text: string, width: number, look: Look) => readonly string[]
  readonly runs: (text: string) => readonly Run[]
  readonly lacking: ReadonlySet<string>
}

/** What a font must tell: whether it has a code point, and how wide a text is at one point. */
export type FontMeasure = {
  readonly has: (font: Run['font'], codePoint: number) => boolean
  readonly advance: (run: Run, bold: boolean) => number
}

const LEADING = 1.22

export const lineHeight = (look: Look): number => look.size * LEADING

const codePointText = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`

const PLAIN = /^[\x20-\x7e]*$/

/** A space that must not be broken is drawn as a space: it only matters where lines are broken. */
const runsWith = (measure: FontMeasure, given: string): readonly Run[] => {
  const text = given.replaceAll('\u00a0', ' ')
  if (PLAIN.test(text)) return [{ font: 'latin', text }]
  const runs: Run[] = []
  for (const character of text) {
    const font = measure.has('latin', character.codePointAt(0) ?? 0) ? 'latin' : 'extended'
    const last = runs.at(-1)
    if (last !== undefined && last.font === font) runs[runs.length - 1] = { font, text: last.text + character }
    else runs.push({ font, text: character })
  }
  return runs
}

/** A word too wide for its line is broken after a hyphen or stroke where that helps, else between signs. */
const breakWord = (word: string, room: number, width: (text: string) => number): readonly string[] => {
  const bits = word.split(/(?<=[-/_.])/).flatMap((bit) => (width(bit) > room ? [...bit] : [bit]))
  const parts: string[] = []
  let part = ''
  for (const bit of bits) {
    if (part !== '' && width(part + bit) > room) {
      parts.push(part)
      part = ''
    }
    part += bit
  }
  return [...parts, part]
}

const wrapLine = (line: string, room: number, width: (text: string) => number): readonly string[] => {
  const space = width(' ')
  const lines: string[] = []
  let now = ''
  let used = 0
  for (const word of line.split(' ')) {
    const wide = width(word)
    if (now !== '' && used + space + wide <= room) {
      now += ` ${word}`
      used += space + wide
      continue
    }
    if (now !== '') lines.push(now)
    const parts = wide > room ? breakWord(word, room, width) : [word]
    lines.push(...parts.slice(0, -1))
    now = parts.at(-1) ?? ''
    used = width(now)
  }
  return [...lines, now]
}

/** A type setter over fonts. */
export const typeSetter = (measure: FontMeasure): TypeSetter => {
  const lacking = new Set<string>()
  const runs = (text: string): readonly Run[] => runsWith(measure, text)
  const advance = (word: string, bold: boolean): number =>
    runs(word).reduce((total, run) => total + measure.advance(run, bold), 0)
  const width = (text: string, { size, bold }: Look): number => {
    const words = text.split(' ')
    const spaces = (words.length - 1) * advance(' ', bold)
    return size * words.reduce((sum, word) => sum + (word === '' ? 0 : advance(word, bold)), spaces)
  }
  const sign = (character: string): string => {
    const codePoint = character.codePointAt(0) ?? 0
    if (measure.has('latin', codePoint) || measure.has('extended', codePoint)) return character
    lacking.add(character)
    return codePointText(character)
  }
  const spell = (text: string): string => {
    if (PLAIN.test(text)) return text
    const spelt = [
      ...text
        .normalize('NFC')
        .replaceAll('\u00ad', '')
        .replaceAll(/[^\S\n\u00a0]/g, ' '),
    ]
      .map((one) => (one === '\n' ? one : sign(one)))
      .join('')
    return spelt.replaceAll(/(U\+[0-9A-F]{4,6})(?=U\+)/g, '$1 ')
  }
  const wrap = (text: string, room: number, look: Look): readonly string[] =>
    spell(text)
      .split('\n')
      .flatMap((line) => wrapLine(line, room, (part) => width(part, look)))
  return { spell, width, wrap, runs, lacking }
}

export type Align = 'left' | 'right' | 'centre'

/** Lines of text from a left top corner, each a mark of its own; `room` is the width they are aligned in. */
export const lineMarks = (
  setter: TypeSetter,
  lines: readonly string[],
  place: { readonly x: number; readonly y: number; readonly room: number; readonly align: Align; readonly look: Look },
): readonly Mark[] =>
  lines.flatMap((text, at): readonly Mark[] => {
    if (text === '') return []
    const width = setter.width(text, place.look)
    const free = place.room - width
    const x = place.x + (place.align === 'left' ? 0 : place.align === 'right' ? free : free / 2)
    const drawn = text.replaceAll('\u00a0', ' ')
    return [{ kind: 'text', x, y: place.y + at * lineHeight(place.look), text: drawn, width, ...place.look }]
  })
