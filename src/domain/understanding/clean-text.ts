/** How much of one message is read. */
export const mostCharacters = 4_000

/** Controls, marks that turn the direction of writing, and signs without width: none of them is a word. */
const unseen = /[\p{Cc}\p{Cs}\p{Co}\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\uffff]/gu

const spaces = /[\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g

/** A line that would be a formula in a sheet is nobody's order. */
const formula = /^[ \t]*[=+@-][A-Za-z][\w.]*\([^\n]*$/gm

/** Words between single quotes ('St. Brendan's Picnic'), which are no apostrophes where they stand outside a word. */
const singleQuoted = /(^|[\s(:])'(\p{L}[^'"\n]{1,58}(?:'(?=\p{L})[^'"\n]{1,40})?)'(?=[\s.,;:!?)]|$)/gmu

export type CleanText = { readonly text: string; readonly cut: boolean }

/**
 * A message as it is read: at most 4,000 characters, composed (NFC), line breaks and tabs kept, typographic quotes and dashes as
 * plain ones, everything unseen taken out.
 */
export const cleanText = (raw: string): CleanText => {
  const cut = raw.length > mostCharacters
  const text = raw
    .slice(0, mostCharacters)
    .normalize('NFC')
    .replace(/\r\n?|\u2028|\u2029/g, '\n')
    .split('\n')
    .map((line) =>
      line
        .split('\t')
        .map((cell) => cell.replace(spaces, ' ').replace(unseen, ''))
        .join('\t'),
    )
    .join('\n')
    .replace(/[\u2018\u2019\u201b\u02bc\u00b4]/g, "'")
    .replace(/[\u201c\u201d\u201e\u00ab\u00bb\u2033]/g, '"')
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(formula, '')
    .replace(singleQuoted, '$1"$2"')
  return { text, cut }
}
