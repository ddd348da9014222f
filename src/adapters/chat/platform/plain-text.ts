/**
 * People's texts in a medium with markup. Whatever a customer types is shown as typed: control and direction signs are taken
 * out, every sign that could start markup, a link, a mention or a list is escaped.
 */
const lineEnds = /\r\n?|[\u2028\u2029\u0085]/g
/** Control signs and signs that only direct, hide or join; the line feed and the emoji joiner stay. */
const unseen = /(?![\n\u200d])[\p{Cc}\p{Cf}]/gu
const loneSurrogate = /\p{Cs}/gu

export const clean = (text: string): string =>
  text
    .replaceAll('\t', ' ')
    .replace(lineEnds, '\n')
    .replace(unseen, '')
    .replace(loneSurrogate, '\ufffd')
    .replace(/\n{3,}/g, '\n\n')
    .trim()

export const oneLine = (text: string): string => clean(text).replace(/\s+/g, ' ')

/** At most so many UTF-16 units, never half a sign, with an ellipsis where something is missing. */
export const cut = (text: string, most: number): string => {
  if (text.length <= most) return text
  const head = text.slice(0, most - 1)
  return `${head.replace(/[\ud800-\udbff]$/, '')}…`
}

/** A label of a button, an option or a form: one line that is not markup anywhere; never empty. */
export const label = (text: string, most: number): string => cut(oneLine(text) || '–', most)

const marks = /[\\*_~`|[\]()<>@#+-]|(?<=\d)\.|:(?=\/\/)/g

/** Cleaned text in which nothing takes effect as markup, mention, list, heading or link. */
export const shown = (text: string): string => clean(text).replace(marks, '\\$&')
export const shownLine = (text: string): string => oneLine(text).replace(marks, '\\$&')

const splitAt = (text: string, most: number): number => {
  const head = text.slice(0, most)
  for (const sign of ['\n', ' ']) {
    const at = head.lastIndexOf(sign)
    if (at > most / 2) return at
  }
  const loose = /\\*$/.exec(head)?.[0].length ?? 0
  const half = /[\ud800-\udbff]$/.test(head) ? 1 : 0
  return most - half - (loose % 2)
}

/** Escaped text in pieces of at most so many signs: at line ends, else at spaces, never inside an escape. */
export const splitText = (text: string, most: number): readonly string[] => {
  const pieces: string[] = []
  let rest = text
  while (rest.length > most) {
    const at = splitAt(rest, most)
    pieces.push(rest.slice(0, at).trimEnd())
    rest = rest.slice(at).trimStart()
  }
  return [...pieces, rest].filter((piece) => piece !== '')
}

/** A name for an uploaded file that is only letters, digits, point, hyphen and underscore. */
export const fileName = (name: string): string => {
  const plain = name
    .normalize('NFKD')
    .replace(/[^A-Za-z0-9._-]+/g, '-')
    .replace(/\.{2,}/g, '.')
    .slice(-80)
    .replace(/^[-.]+/, '')
  return plain || 'file'
}
