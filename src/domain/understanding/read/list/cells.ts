const suffix = /^(?:[js]r\.?|i{2,3}|iv)$/iu

/** "Smith, John" in one cell is John Smith; "Smith, Jr." keeps its order. */
export const givenFirst = (text: string): string => {
  const [surname = '', given = '', ...more] = text.split(',').map((part) => part.trim())
  if (surname === '' || given === '' || more.length > 0) return text
  return suffix.test(given) ? `${surname} ${given}` : `${given} ${surname}`
}

const quotedCell = /(^|[\t;|,]\s*)"([^"]*)"(?=\s*(?:$|[\t;|,]))/g

/** A line whose quoted cells hold no separator any more. */
const unquoted = (line: string): string =>
  line.replace(quotedCell, (_, before: string, inner: string) => before + givenFirst(inner).replace(/[,;]/g, ' '))

type IsSize = (word: string) => boolean

const isUpper = (word: string | undefined): boolean => /^\p{Lu}/u.test(word ?? '')

/** "Smith, John 4 M", "4 Smith, John M": the one comma of a line whose other parts stand apart by spaces parts surname and given name. */
const turned = (line: string, isSize: IsSize): string => {
  const [left = '', right = '', ...more] = line.split(',')
  if (right === '' || more.length > 0) return line
  const isPart = (word: string): boolean => /^\p{L}[\p{L}\p{M}'.-]*$/u.test(word) && !isSize(word)
  const [before, behind] = [left.trim().split(/\s+/), right.trim().split(/\s+/)]
  const surname = before.slice(before.findLastIndex((word) => !isPart(word)) + 1)
  const end = behind.findIndex((word) => !isPart(word))
  const given = end < 0 ? behind : behind.slice(0, end)
  const others = [...before.slice(0, before.length - surname.length), ...behind.slice(given.length)]
  const named = surname.length > 0 && given.length > 0 && isUpper(surname[0]) === isUpper(given[0])
  if (!named || !others.some((word) => /\d/.test(word) || isSize(word))) return line
  const name = givenFirst(`${surname.join(' ')},${given.join(' ')}`)
  return [...before.slice(0, before.length - surname.length), name, ...behind.slice(given.length)].join(' ')
}

/** The cells of a line without a heading: parted by tabs, semicolons, bars, commas, wide spaces, or dashes and colons. */
export const cellsOf = (line: string, isSize: IsSize): readonly string[] => {
  const quoted = unquoted(line)
  for (const sign of ['\t', ';', '|']) if (quoted.includes(sign)) return quoted.split(sign).map(givenFirst)
  const plain = turned(quoted, isSize)
  if (plain.includes(',')) return plain.split(',')
  if (/\S {2,}\S/.test(plain)) return plain.split(/ {2,}/)
  return plain.split(/\s+[-–:]\s+|:\s+/)
}

const splitters: readonly (readonly [string, string | RegExp])[] = [
  ['\t', '\t'],
  [';', ';'],
  ['|', '|'],
  [',', ','],
  [' / ', ' / '],
  [' - ', ' - '],
  [' – ', ' – '],
  ['  ', / {2,}/],
]

/** The cells of a heading, or of a line under one of so many: where its first cell is empty it is one of them. */
export const headedCells = (line: string, count = 0): readonly string[] => {
  const whole = partedBy(unquoted(line.replace(/^ +| +$/g, '')))
  return whole.length === count ? whole : partedBy(unquoted(line.trim()))
}

const barred = /^\s*\|(.*)\|\s*$/

const partedBy = (line: string): readonly string[] => {
  const plain = barred.exec(line)?.[1] ?? line
  const splitter = splitters.find(([sign]) => plain.includes(sign))
  return splitter === undefined ? plain.split(/\s+/) : plain.split(splitter[1])
}
